import { describe, expect, test } from 'vitest';
import { built, framePulled, heatedAndPulledAt, zeroOnTheRail } from './faults-of-pages-and-hours.ts';
import { wholeJob } from './faults-of-the-whole-job.ts';
import { judgeText, ruleIds } from './judge-text.ts';
import { roofAndScreen } from './faults-of-the-outside-read.ts';
import { changed, rail } from './one-change.ts';
import type { Change } from './one-change.ts';

describe('a page for build dates with one end', () => {
  test.each(['to: 2023-04-18', 'from: 2023-04-18', 'to: 2024-12-31'])('%s', (range) => {
    expect(ruleIds(judgeText(changed(wholeJob, built(range))))).toEqual(ruleIds(judgeText(wholeJob)));
  });
});

describe('heat and pull', () => {
  test('within the hour are one', () => {
    const plan = changed(rail, heatedAndPulledAt('2026-10-21T10:00', '2026-10-21T11:00'));
    expect(ruleIds(judgeText(plan))).toEqual(ruleIds(judgeText(rail)));
  });

  test('hours apart are told in one finding, and nothing that is stated is asked for', () => {
    const plan = changed(rail, heatedAndPulledAt('2026-10-21T10:00', '2026-10-21T14:00'));
    expect(ruleIds(judgeText(plan)).filter((id) => !ruleIds(judgeText(rail)).includes(id))).toEqual([
      'pulled-after-the-heat',
    ]);
  });
});

describe('what is ordinary practice finds nothing', () => {
  test.each<readonly [string, readonly Change[]]>([
    ['zero points on the rail that is bent at its end, far from the bend', zeroOnTheRail],
    [
      'the control unit reset by the page on the restraints',
      [
        [
          'control_unit: replaced\n',
          'control_unit: reset\n    control_unit_cite: { reference: safe, at: p. 12 }\n',
        ],
      ],
    ],
    [
      'wiring repaired by the page on the restraints',
      [['wiring: untouched\n', 'wiring: section renewed\n    wiring_cite: { reference: safe, at: p. 30 }\n']],
    ],
  ])('%s', (_, changes) => {
    expect(ruleIds(judgeText(changed(framePulled, changes)))).toEqual(ruleIds(judgeText(framePulled)));
  });

  test('an old dent away from the blow', () => {
    const dent: Change = [
      'found: none found',
      "found: 'none but an old dent in the boot floor, from before'",
    ];
    expect(ruleIds(judgeText(changed(roofAndScreen, [dent])))).toEqual(ruleIds(judgeText(roofAndScreen)));
  });

  test('the underbody coated before the windscreen is bonded in', () => {
    const coated: Change = [
      '  sealer: {',
      '  underbody: { planned: true, done: 2026-09-21T18:00 }\n  sealer: {',
    ];
    expect(ruleIds(judgeText(changed(roofAndScreen, [coated])))).toEqual(ruleIds(judgeText(roofAndScreen)));
  });
});

test('what one man releases of his own work is told in one note', () => {
  const own: readonly Change[] = [1, 2, 3, 4, 5].map(() => [
    'by: { name: B. Ohm, role: workshop lead',
    'by: { name: T. Holm, role: master',
  ]);
  const found = judgeText(changed(wholeJob, own)).findings.filter(
    ({ finding }) => finding.rule === 'released-by-who-did-it',
  );
  expect(found).toHaveLength(1);
  expect(found[0]?.finding.message).toMatch(
    /^Who did the work also releases it: hold point .*; .*release of the structure\.$/u,
  );
});

test.each<readonly [string, string, Change]>([
  [
    'joints-made-not-recorded',
    'were made is not recorded, or is fewer than planned: 31 of 32.',
    ['count_done: 32', 'count_done: 31'],
  ],
])('%s says what is wrong', (rule, words, change) => {
  const found = judgeText(changed(wholeJob, [change])).findings.filter(
    ({ finding }) => finding.rule === rule,
  );
  expect(found.map(({ finding }) => finding.message).join()).toContain(words);
});
