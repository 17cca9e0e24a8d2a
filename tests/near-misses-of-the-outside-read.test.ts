import { describe, expect, test } from 'vitest';
import { heatedAndPulled, roofAndScreen } from './faults-of-the-outside-read.ts';
import { wholeJob } from './faults-of-the-whole-job.ts';
import { judgeText, ruleIds } from './judge-text.ts';
import { changed, rail } from './one-change.ts';
import type { Change } from './one-change.ts';

// Good plans in which an independent reader met a hold or a sentence that was not true. Common practice of the trade.
describe('good plans stay cleared', () => {
  test.each<readonly [string, string, readonly Change[]]>([
    ['a windscreen bonded in when the body is sealed and painted', roofAndScreen, []],
    ['a rail that is heated, and straightened in that heat by an entry of its own', rail, heatedAndPulled],
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

describe('one heat in two entries', () => {
  test.each<readonly [string, Change]>([
    ['is to be heated to 660 °C', ['temperature: 600 °C', 'temperature: 660 °C']],
    ['How long the place is held hot', ['        hold: 60 s\n', '']],
  ])('%s: told at the heat alone, and in the same words', (words, change) => {
    const report = judgeText(changed(rail, [...heatedAndPulled, change]));
    const found = report.findings.filter(({ finding }) => finding.message.includes(words));
    expect(new Set(found.map(({ finding }) => finding.message)).size).toBe(1);
    for (const { finding } of found) expect(finding.pointer).toContain('/parts/0/operations/0/');
  });

  test('a pull that says of a second heat is asked for what it does not say', () => {
    const again: Change = ['method: with heat', 'method: with heat, times: 1'];
    expect(ruleIds(judgeText(changed(rail, [...heatedAndPulled, again])))).toEqual(
      expect.arrayContaining(['heat-held-too-long', 'heat-not-measured', 'heat-neighbours-not-stated']),
    );
  });
});

describe('a document for later builds', () => {
  const changes: readonly Change[] = [
    ['  model_year: 2023\n', '  model_year: 2023\n  build_date: 2023-04-18\n'],
    [
      'years: 2022-2024 }, looked_up',
      'years: 2022-2024, built: { from: 2023-05-01, to: 2024-12-31 } }, looked_up',
    ],
    ['method: resistance spot', 'method: plug weld\n            cite: { reference: rail, at: p. 9 }'],
  ];

  test('is told of by the days that do not fit', () => {
    expect(told('joint-cited-elsewhere', wholeJob, changes)).toEqual([
      'The joint of Front rail, left to Apron, left is cited from a page that does not count as procedure for this vehicle: BRM-ILX-2200 revision C, which covers build dates 2023-05-01 to 2024-12-31, not 2023-04-18.',
    ]);
  });

  test('leaves open which steel it is, and not whether it is one', () => {
    const { findings } = judgeText(changed(wholeJob, changes));
    const whys = findings.flatMap(({ finding: { message, why } }) =>
      message.includes('is read in no document of the maker') ? [why] : [],
    );
    expect(whys.join('\n')).toContain('arc-on-hardened-steel');
    expect(whys.join('\n')).not.toContain('aluminium');
  });
});
