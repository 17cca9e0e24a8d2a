import { countOf, verdictCounts } from '../count-words.ts';
import type { RunSummary } from '../run-summary.ts';
import { visibleText } from '../visible-text.ts';
import { wrapText } from '../wrap-text.ts';

/** The totals of a run for the terminal: which rule found most, and what each folder comes to. */
export function summaryText(summary: RunSummary, columns: number): readonly string[] {
  const rules = summary.rules();
  const folders = summary.folders();
  const lines: string[] = [];
  const add = (text: string): void => {
    lines.push(...wrapText(visibleText(text), columns, '    ', '  '));
  };
  if (rules.length > 0) lines.push('By rule:');
  for (const { rule, pack, severity, findings, plans } of rules)
    add(
      `${severity.toUpperCase()} ${rule} of ${pack}: ${countOf(findings, 'finding')} in ${countOf(plans, 'plan')}`,
    );
  if (folders.length > 0) lines.push('By folder:');
  for (const { folder, plans, verdicts } of folders)
    add(`${folder}: ${countOf(plans, 'plan')}, ${verdictCounts(verdicts)}`);
  if (lines.length > 0) lines.push('');
  return lines;
}
