import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { truthOfAll } from '../../src/judge/truth.ts';
import { implies } from '../../src/packs/reading/implies.ts';
import type { Line } from '../../src/packs/pack.ts';
import { dictionary } from '../../src/cli/dictionary.ts';
import { FaultList } from '../../src/packs/reading/fault-list.ts';
import type { Rule as StatedRule } from '../../src/generated/pack-types.ts';
import { readRule } from '../../src/packs/reading/read-rule.ts';

function faultsOf(when: StatedRule['when'], unless?: StatedRule['unless']): readonly string[] {
  const list = new FaultList({ path: 'a.yaml', text: '' }, undefined);
  readRule(
    {
      id: 'a-rule',
      topic: 'heat',
      since: '1.0.0',
      judges: 'operation',
      severity: 'stop',
      from: 'draft',
      when,
      ...(unless === undefined ? {} : { unless }),
      message: 'Too hot.',
      instead: 'Colder.',
      why: 'It softens.',
      source: { practice: 'common' },
      cases: { finds: [{ 'operation.do': 'heat' }], passes: [{ 'operation.do': 'leave' }] },
    },
    '/rules/0',
    dictionary,
    list,
  );
  return list.faults.map(({ sentence }) => sentence);
}

const never = 'Wherever `when` holds this exception does too: the rule could never find anything.';

describe('a rule that could never find anything is refused', () => {
  test.each<readonly [string, StatedRule['when'], StatedRule['unless'], readonly string[]]>([
    [
      'an exception with one of two lines',
      { 'operation.do': 'heat', 'operation.temperature': { above: '650 °C' } },
      { 'operation.do': ['heat', 'weld'] },
      [never],
    ],
    [
      'an exception with a wider range',
      { 'operation.temperature': { above: '650 °C' } },
      { 'operation.temperature': { min: '650 °C' } },
      [never],
    ],
    [
      'an exception for what is known',
      { 'operation.temperature': { above: '650 °C' } },
      { 'operation.temperature': { known: true } },
      [never],
    ],
    [
      'the second of two exceptions',
      { 'operation.do': 'heat' },
      [{ 'operation.do': 'weld' }, { 'operation.do': ['heat'] }],
      ['`unless` asks the same as `when`: the rule could never find anything.'],
    ],
    [
      'an exception with a narrower range',
      { 'operation.temperature': { above: '650 °C' } },
      { 'operation.temperature': { above: '651 °C' } },
      [],
    ],
    [
      'an exception that asks something else too',
      { 'operation.do': 'heat' },
      { 'operation.do': 'heat', 'operation.hot': true },
      [],
    ],
    [
      'a count between two whole numbers',
      { 'operation.times': { above: 1, below: 2 } },
      undefined,
      ['No whole number lies in this range, and this fact is a count.'],
    ],
    ['a count of just one number', { 'operation.times': { above: 1, below: 3 } }, undefined, []],
    [
      'an unknown that is always known',
      { 'part.name': { known: false } },
      undefined,
      ['This fact is known on every sheet: the line would never hold.'],
    ],
  ])('%s', (_name, when, unless, expected) => {
    expect(faultsOf(when, unless)).toEqual(expected);
  });

  const bound = fc.integer({ min: 0, max: 4 });
  const range = fc.record({ min: bound, max: bound, above: bound, below: bound }, { requiredKeys: [] });
  const line = fc.oneof(
    range.map((one): Line => ({ fact: 'n', test: { range: one } })),
    fc.boolean().map((known): Line => ({ fact: 'n', test: { known } })),
  );

  test('what is told to follow does follow, for every value and none', () => {
    fc.assert(
      fc.property(line, line, (given, asked) => {
        fc.pre(implies([given], [asked]));
        const facts = [
          ...Array.from(
            { length: 11 },
            (_, index) => ({ known: true, value: index / 2, from: 'stated' }) as const,
          ),
          { known: false, reason: 'none' } as const,
        ];
        for (const fact of facts) {
          if (truthOfAll([given], () => fact) === 'true')
            expect(truthOfAll([asked], () => fact)).toBe('true');
        }
      }),
      { numRuns: 2000 },
    );
  });
});

test('a word of the trade is answered with the word of the plan, as a plan answers it', () => {
  expect(faultsOf({ 'operation.do': 'splice' })).toEqual([
    '`splice` is not a word of this fact. Nearest known: `section`.',
  ]);
});
