import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { comparePointers } from '../../src/judge/compare-pointers.ts';
import { orderFindings } from '../../src/judge/order-findings.ts';
import { finding } from './invented-finding.ts';

describe('order of pointers', () => {
  test.each([
    ['/parts/2', '/parts/10', 'list places as numbers'],
    ['/parts/1', '/parts/1/do', 'an entry before what is in it'],
    ['', '/parts', 'the plan before all in it'],
    ['/B', '/a', 'keys by code unit, not by locale'],
    ['/parts/9/z', '/parts/10/a', 'the first difference counts'],
    ['/a/01', '/a/1', 'a key that is no list place stays a key'],
  ])('%s before %s: %s', (a, b) => {
    expect(comparePointers(a, b)).toBeLessThan(0);
    expect(comparePointers(b, a)).toBeGreaterThan(0);
    expect(comparePointers(a, a)).toBe(0);
  });
});

describe('order of findings', () => {
  const parts = ['z', 'a'];
  // Written down in the order in which they must come out.
  const inOrder = [
    finding({ rule: 'r', severity: 'stop', part: 'z', pointer: '/parts/0/operations/10' }),
    finding({ rule: 'q', severity: 'hold', part: 'z', pointer: '/parts/0/operations/2' }),
    finding({ rule: 'r', severity: 'hold', part: 'z', pointer: '/parts/0/operations/2' }),
    finding({ rule: 'a', severity: 'hold', part: 'z', pointer: '/parts/0/operations/10' }),
    finding({ rule: 'r', severity: 'note', part: 'z', pointer: '/parts/0' }),
    finding({ rule: 'r', severity: 'stop', part: 'a', pointer: '/parts/1' }),
    finding({ rule: 'r', severity: 'stop', part: 'b-not-in-the-plan', pointer: '/parts/2' }),
    finding({ rule: 'r', severity: 'stop', part: 'c-not-in-the-plan', pointer: '/make_safe' }),
    finding({ rule: 'r', severity: 'hold', pointer: '/vehicle' }),
    finding({ rule: 'r', severity: 'note', pointer: '/job' }),
    finding({ rule: 'r', severity: 'hold', part: 'd-not-in-the-plan', pointer: '/damage' }),
  ];

  test('part by part, the part with the worst first, the plan before parts alike, by place, by rule; in whatever order they come', () => {
    fc.assert(
      fc.property(fc.shuffledSubarray(inOrder, { minLength: inOrder.length }), (shuffled) => {
        expect(orderFindings(shuffled, parts)).toEqual(inOrder);
      }),
    );
  });

  test('a hold that is accepted stays among the holds', () => {
    const deviation = { by: 'N', role: 'r', date: '2026-10-01', reason: 'x', expires: '2026-11-01' };
    const accepted = finding({ rule: 'a', severity: 'hold', part: 'z', pointer: '/parts/0/1', deviation });
    const open = finding({ rule: 'b', severity: 'hold', part: 'z', pointer: '/parts/0/2' });
    expect(orderFindings([open, accepted], parts)).toEqual([accepted, open]);
  });

  test('what counts the others comes after them, and its part is not the worst for it', () => {
    const facts = [{ name: 'sign-off.open_stops', value: 1, from: 'computed' }] as const;
    const counted = finding({ rule: 'a', severity: 'stop', pointer: '/sign_off', facts });
    const own = finding({ rule: 'b', severity: 'stop', pointer: '/verify' });
    const ofPart = finding({ rule: 'c', severity: 'hold', part: 'z', pointer: '/parts/0' });
    expect(orderFindings([counted, ofPart], parts)).toEqual([ofPart, counted]);
    expect(orderFindings([counted, ofPart, own], parts)).toEqual([own, counted, ofPart]);
  });

  test('findings that differ in nothing but a fact still have one order', () => {
    const one = finding({ rule: 'r', severity: 'hold', facts: [{ name: 'a', value: 1, from: 'stated' }] });
    const two = finding({ rule: 'r', severity: 'hold', facts: [{ name: 'a', value: 2, from: 'stated' }] });
    expect(orderFindings([two, one], [])).toEqual([one, two]);
  });
});
