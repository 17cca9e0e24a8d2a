import { micromark } from 'micromark';
import { gfm, gfmHtml } from 'micromark-extension-gfm';
import { describe, expect, test } from 'vitest';
import { markdownForm } from '../../src/report/forms/markdown-form.ts';
import type { PlanReport } from '../../src/report/plan-report.ts';
import { visibleText } from '../../src/report/visible-text.ts';
import { hostilePlan } from './hostile-plan.ts';
import { hostileTexts } from './hostile-texts.ts';
import { head, placed, planReport, tail } from './invented-report.ts';

function written(plans: readonly PlanReport[], mostFindings = 0): string {
  const form = markdownForm({ mostFindings });
  const verdicts = { cleared: 0, held: 0, stopped: 0, 'not judged': 0 };
  for (const { verdict } of plans) verdicts[verdict] += 1;
  const text = form.begin(head) + plans.map(form.plan).join('');
  return text + form.end(tail('held', plans.length, verdicts));
}

/** CommonMark with the extensions of the common hosts; HTML in it is let through, so that one that slips in is seen. */
const html = (text: string): string =>
  micromark(text, { extensions: [gfm()], htmlExtensions: [gfmHtml()], allowDangerousHtml: true });

const plain = (text: string): string =>
  html(text)
    .replace(/<[^>]+>/gu, '')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&amp;', '&');

const stopped = planReport({
  file: 'jobs/a/K-1.yaml',
  verdict: 'stopped',
  findings: [placed({ rule: 'no-cut', severity: 'stop', partName: 'Pillar', message: 'Cut.' }, 12)],
});

describe('what it says', () => {
  test('worst plans first, cleared ones counted, totals by rule and by folder, and the cautions', () => {
    const held = planReport({
      verdict: 'held',
      file: 'h.yaml',
      findings: [placed({ rule: 'ask', severity: 'hold' })],
    });
    const text = written([planReport({ file: 'c.yaml' }), held, stopped]);
    expect(text).toMatch(/^## planish: 3 plans, 1 stopped, 1 held, 1 cleared\n/u);
    expect(text.indexOf('### STOPPED: jobs/a/K-1.yaml')).toBeLessThan(text.indexOf('### HELD: h.yaml'));
    expect(text).not.toContain('### CLEARED');
    expect(text).toContain('- **STOP** (line 12, Pillar) Cut. _Instead:_ do otherwise (rule no-cut)');
    expect(html(text)).toContain('<td>STOP</td>\n<td>no-cut</td>\n<td align="right">1</td>');
    expect(html(text)).toContain('<td>jobs/a</td>\n<td align="right">1</td>\n<td>1 stopped</td>');
    expect(text).toContain('2026-10-21');
    expect(text).toContain('never says that a repair is safe');
  });

  test('no plan', () => {
    expect(written([])).toMatch(/^## planish: no plan was judged\n/u);
  });

  test('the worst findings of a plan when not all are shown', () => {
    const findings = [
      ...Array.from({ length: 5 }, () => placed({ rule: 'n', severity: 'note' })),
      placed({ rule: 's', severity: 'stop' }),
    ];
    const text = written([planReport({ verdict: 'stopped', findings })], 2);
    expect(text).toContain('(rule s)');
    expect(text).toContain('- 4 more findings are not shown: 4 notes.');
  });
});

describe('length', () => {
  const long = (verdict: 'held' | 'stopped', index: number): PlanReport =>
    planReport({
      verdict,
      file: `${verdict}-${String(index)}.yaml`,
      findings: Array.from({ length: 20 }, () =>
        placed({ rule: 'a', severity: verdict === 'held' ? 'hold' : 'stop', message: 'm'.repeat(300) }),
      ),
    });

  test('of thousands of plans stays below what a comment takes, worst first, and the rest is counted', () => {
    const held = Array.from({ length: 500 }, (_, index) => long('held', index));
    const text = written([...held, long('stopped', 1)]);
    expect(text.length).toBeLessThan(65_536);
    expect(text).toContain('### STOPPED: stopped-1.yaml');
    const shown = text.match(/^### HELD/gmu)?.length ?? 0;
    expect(shown).toBeGreaterThan(0);
    expect(text).toContain(`More plans are not shown: ${String(500 - shown)} held.`);
  });

  test('a single plan that is too long is cut at a line, and that is said', () => {
    const findings = Array.from({ length: 1000 }, () =>
      placed({ rule: 'a', severity: 'stop', message: 'm'.repeat(200) }),
    );
    const text = written([planReport({ verdict: 'stopped', findings })]);
    expect(text.length).toBeLessThan(65_536);
    expect(text).toContain('\n- More is not shown.');
  });

  test('thousands of rules and folders', () => {
    const plans = Array.from({ length: 3000 }, (_, index) =>
      planReport({
        file: `${String(index)}/a.yaml`,
        findings: [placed({ rule: `r${String(index)}`, severity: 'note' })],
      }),
    );
    const text = written(plans);
    expect(text.length).toBeLessThan(65_536);
    expect(text).toContain('2950 more rows are not shown.');
  });
});

// The longest is cut, as a test above has it.
const short = hostileTexts.filter((text) => text.trim() !== '' && text.length < 1000);

test.each(short)('%j is text and nothing else', (text) => {
  const safe = html(written([hostilePlan('plain')]));
  const given = html(written([hostilePlan(text)]));
  // The same elements in the same order: none added, none broken.
  const elements = (of: string): readonly string[] => of.match(/<[^>]*>/gu) ?? [];
  expect(elements(given)).toEqual(elements(safe));
  const shown = visibleText(text.replace(/\s*\n\s*/gu, ' '))
    .replace(/\p{Surrogate}/gu, '\ufffd')
    .trim();
  expect(plain(written([hostilePlan(text)]))).toContain(shown);
});
