import { describe, expect, test } from 'vitest';
import { applyDeviations, outcomesOf } from '../../src/judge/deviations.ts';
import type { Permit } from '../../src/judge/deviations.ts';
import { verdictOf } from '../../src/judge/verdict.ts';
import { finding } from './invented-finding.ts';

const deviation = { by: 'N', role: 'r', date: '2026-10-01', reason: 'x', expires: '2026-11-01' };
const hold = finding({
  rule: 'r',
  severity: 'hold',
  part: 'a',
  operation: 'heat',
  operationAt: '/parts/0/operations/0',
  fingerprint: 'f1',
});

function isAccepted(given: Partial<Permit>, one = hold): boolean {
  const permit: Permit = { rule: 'r', part: 'a', deviation, ...given };
  return applyDeviations([one], [permit])[0]?.deviation !== undefined;
}

describe('a permit accepts', () => {
  test('the hold of its rule on its part', () => {
    expect(isAccepted({})).toBe(true);
  });

  test('with the operation and the fingerprint given, that one', () => {
    expect(isAccepted({ operationAt: '/parts/0/operations/0', fingerprint: 'f1' })).toBe(true);
  });

  test('a hold of the whole plan, when it names no part', () => {
    const ofPlan = finding({ rule: 'r', severity: 'hold' });
    expect(applyDeviations([ofPlan], [{ rule: 'r', deviation }])[0]?.deviation).toEqual(deviation);
  });
});

describe('a permit does not accept', () => {
  test.each<readonly [string, Partial<Permit>]>([
    ['a hold of another rule', { rule: 'r-2' }],
    ['a hold on another part', { part: 'b' }],
    ['a hold of another operation on the same part', { operationAt: '/parts/0/operations/1' }],
    ['a hold with another fingerprint', { fingerprint: 'f2' }],
  ])('%s', (_name, given) => {
    expect(isAccepted(given)).toBe(false);
  });

  test('a hold on a part, when it names no part', () => {
    expect(applyDeviations([hold], [{ rule: 'r', deviation }])[0]?.deviation).toBeUndefined();
  });

  test('a hold that stands where a stop might', () => {
    expect(isAccepted({}, { ...hold, standsForStop: true })).toBe(false);
  });

  test.each(['stop', 'note'] as const)('a %s', (severity) => {
    expect(isAccepted({}, { ...hold, severity })).toBe(false);
  });
});

test('a finding stays as it was but for the deviation, and the first permit that fits counts', () => {
  const later = { ...deviation, by: 'M' };
  expect(
    applyDeviations(
      [hold],
      [
        { rule: 'r', part: 'a', deviation },
        { rule: 'r', part: 'a', deviation: later },
      ],
    ),
  ).toEqual([{ ...hold, deviation }]);
});

test('what deviations and sign-off are derived from has no words in it', () => {
  expect(outcomesOf([hold])).toEqual([
    {
      rule: 'r',
      pack: 'invented',
      severity: 'hold',
      part: 'a',
      operation: 'heat',
      operationAt: '/parts/0/operations/0',
      pointer: '',
      standsForStop: false,
      fingerprint: 'f1',
    },
  ]);
});

describe('verdict of one plan', () => {
  const stop = finding({ rule: 's', severity: 'stop' });
  const note = finding({ rule: 'n', severity: 'note' });

  test.each([
    ['nothing found', [], 'cleared'],
    ['notes only', [note], 'cleared'],
    ['an accepted hold', [{ ...hold, deviation }], 'cleared'],
    ['one accepted hold and one open', [{ ...hold, deviation }, hold], 'held'],
    ['a hold and a stop', [hold, stop], 'stopped'],
    // Nothing gives a stop a deviation; should anything ever do so, it stops all the same.
    ['a stop with a deviation', [{ ...stop, deviation }], 'stopped'],
  ])('%s', (_name, findings, verdict) => {
    expect(verdictOf(findings, [])).toBe(verdict);
  });

  test('with a rule that failed, nothing is known of what it would have found', () => {
    expect(verdictOf([stop], ['a-rule'])).toBe('not judged');
    expect(verdictOf([], ['a-rule'])).toBe('not judged');
  });
});
