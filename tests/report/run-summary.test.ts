import { expect, test } from 'vitest';
import { runSummary } from '../../src/report/run-summary.ts';
import { summaryText } from '../../src/report/forms/summary-text.ts';
import { placed, planReport } from './invented-report.ts';

function summed(): ReturnType<typeof runSummary> {
  const summary = runSummary();
  const stop = placed({ rule: 'cut', severity: 'stop' });
  const note = placed({ rule: 'worth', severity: 'note' });
  summary.add(planReport({ file: 'b/1.yaml', verdict: 'stopped', findings: [stop, stop, note] }));
  summary.add(planReport({ file: 'a/1.yaml', findings: [note] }));
  summary.add(
    planReport({ file: 'a/2.yaml', findings: [placed({ rule: 'ask', severity: 'hold' })], verdict: 'held' }),
  );
  summary.add(planReport({ file: 'here.yaml' }));
  summary.add(planReport({ file: '/whole.yaml' }));
  return summary;
}

test('rules: findings and plans, the worst first, then the most frequent', () => {
  expect(summed().rules()).toEqual([
    { rule: 'cut', pack: 'invented', severity: 'stop', findings: 2, plans: 1 },
    { rule: 'ask', pack: 'invented', severity: 'hold', findings: 1, plans: 1 },
    { rule: 'worth', pack: 'invented', severity: 'note', findings: 2, plans: 2 },
  ]);
});

test('folders: the one with the worst plan first', () => {
  expect(
    summed()
      .folders()
      .map(({ folder, plans }) => [folder, plans]),
  ).toEqual([
    ['b', 1],
    ['a', 2],
    ['.', 1],
    ['/', 1],
  ]);
});

test('as text, at 80 columns', () => {
  const lines = summaryText(summed(), 80);
  expect(lines).toContain('  STOP cut of invented: 2 findings in 1 plan');
  expect(lines).toContain('  a: 2 plans, 1 held, 1 cleared');
});

test('a run of nothing says nothing', () => {
  expect(summaryText(runSummary(), 80)).toEqual([]);
});
