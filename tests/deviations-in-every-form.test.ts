import { describe, expect, test } from 'vitest';
import { formNames } from '../src/cli/reporting/report-forms.ts';
import { runPlanish } from './cli/run-planish.ts';
import { judgeText, ruleIds } from './judge-text.ts';
import { ring } from './one-change.ts';

// The look-up of the ring's document is not dated: one hold, and nothing else is wrong with the plan.
const undated = ring.replace(/^ {4}looked_up: .*\n/mu, '');
const by = 'by: { name: P. Falk, role: shop manager }';
const dates = 'date: 2026-10-10, expires: 2026-10-21';
const permit = (what: string): string => `${undated}deviations:\n  - { ${what} }\n`;
const good = permit(`rule: look-up-not-dated, ${by}, reason: seen on the day, ${dates}`);

describe('an accepted hold stays visible', () => {
  test.each(formNames)('in %s, with its rule and who accepted it', (form) => {
    const args = ['check', '--as-of', '2026-10-21', '--stage', 'start', '--format', form, '-'];
    const { status, stdout } = runPlanish(args, { input: good });
    expect(status).toBe(0);
    expect(stdout).toContain('look-up-not-dated');
    // Markdown puts a backslash before what could be markup.
    expect(stdout.replaceAll('\\', '').replaceAll('%2E', '.')).toContain('P. Falk');
  });

  test('without the permit the same plan is held', () => {
    const { status } = runPlanish(['check', '--as-of', '2026-10-21', '--stage', 'start', '-'], {
      input: undated,
    });
    expect(status).toBe(1);
  });
});

describe('a permit that does not hold is a finding of its own, and the hold stays', () => {
  test.each([
    ['good on its last day', `rule: look-up-not-dated, ${by}, reason: r, ${dates}`, undefined],
    [
      'over the day after',
      `rule: look-up-not-dated, ${by}, reason: r, date: 2026-10-10, expires: 2026-10-20`,
      'deviation-expired',
    ],
    [
      'for a rule that finds nothing',
      `rule: citation-place-missing, ${by}, reason: r, ${dates}`,
      'deviation-matches-nothing',
    ],
    [
      'for a part that the plan does not list',
      `rule: look-up-not-dated, part: nobody, ${by}, reason: r, ${dates}`,
      'deviation-matches-nothing',
    ],
    [
      'by who wrote the plan',
      `rule: look-up-not-dated, by: { name: R. Amsel, role: estimator }, reason: r, ${dates}`,
      'deviation-by-the-author',
    ],
  ])('%s', (_name, what, rule) => {
    const found = ruleIds(judgeText(permit(what)));
    expect(found.filter((id) => id.startsWith('deviation-'))).toEqual(rule === undefined ? [] : [rule]);
    expect(judgeText(permit(what)).verdict).toBe(rule === undefined ? 'cleared' : 'held');
  });

  test('for several findings at once: it accepts none of them', () => {
    // Two keys that nobody knows give two holds of one rule.
    const unknown = `colour: red\nweather: dry\n${ring}`;
    const report = judgeText(
      `${unknown}deviations:\n  - { rule: entry-unknown-key, ${by}, reason: r, ${dates} }\n`,
    );
    const held = report.findings.filter(({ finding }) => finding.rule === 'entry-unknown-key');
    expect(held.map(({ finding }) => finding.deviation)).toEqual([undefined, undefined]);
    expect(ruleIds(report)).toContain('deviation-matches-several');
    expect(report.verdict).toBe('held');
  });

  test('for a stop: it stops all the same', () => {
    const section = ring
      .replace('do: replace', 'do: section')
      .replace('extent: whole', 'extent: part\n        at: B');
    const stopped = judgeText(
      `${section}deviations:\n  - { rule: section-press-hardened, part: ring-l, ${by}, reason: r, ${dates} }\n`,
    );
    expect(stopped.verdict).toBe('stopped');
    expect(ruleIds(stopped, ['stop'])).toEqual(
      expect.arrayContaining(['section-press-hardened', 'deviation-on-a-stop']),
    );
  });
});
