import { describe, expect, test } from 'vitest';
import { roofAndScreen } from './faults-of-the-outside-read.ts';
import { judgeText, ruleIds } from './judge-text.ts';
import { changed } from './one-change.ts';
import type { Change } from './one-change.ts';

// Good plans in which an independent reader met a hold or a sentence that was not true. Common practice of the trade.
describe('good plans stay cleared', () => {
  test.each<readonly [string, string, readonly Change[]]>([
    ['a windscreen bonded in when the body is sealed and painted', roofAndScreen, []],
  ])('%s', (_name, plan, changes) => {
    expect(ruleIds(judgeText(changed(plan, changes)))).toEqual([]);
  });
});

/** The sentences that a rule tells of a plan. */
const told = (rule: string, plan: string, changes: readonly Change[]): readonly string[] =>
  judgeText(changed(plan, changes)).findings.flatMap(({ finding }) =>
    finding.rule === rule ? [finding.message] : [],
  );

describe('only what is missing is named', () => {
  test('of the current of a plasma cut', () => {
    const rule = 'earth-clamp-and-units-not-stated';
    const cut: Change = ['cut_with: drill', 'cut_with: plasma'];
    const noUnits: Change = ['        control_units: Unplugged in the roof console.\n', ''];
    expect(told(rule, roofAndScreen, [cut])).toEqual([
      'For the plasma cut on Roof skin this is not stated: the place of the earth clamp.',
    ]);
    expect(told(rule, roofAndScreen, [cut, noUnits])).toEqual([
      'For the plasma cut on Roof skin this is not stated: the place of the earth clamp and what is done with control units.',
    ]);
    expect(told(rule, roofAndScreen, [['cut_with: drill', 'cut_with: flame']])).toEqual([]);
  });
});
