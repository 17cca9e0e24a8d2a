import { describe, expect, test } from 'vitest';
import { built, heatedAndPulledAt } from './faults-of-pages-and-hours.ts';
import { wholeJob } from './faults-of-the-whole-job.ts';
import { judgeText, ruleIds } from './judge-text.ts';
import { changed, rail } from './one-change.ts';

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
