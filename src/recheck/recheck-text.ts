import { cautions } from '../report/cautions.ts';
import { countOf } from '../report/count-words.ts';
import { packWords } from '../report/judged-by.ts';
import { paintWith } from '../report/paint.ts';
import type { Paint } from '../report/paint.ts';
import type { UsedPack } from '../report/plan-report.ts';
import { visibleText } from '../report/visible-text.ts';
import { wrapText } from '../report/wrap-text.ts';
import { computingLines } from './computing-text.ts';
import type { Change, RecheckedPlan } from './rechecked-plan.ts';
import { byRule } from './recheck-report.ts';
import type { RecheckReport, RuleGroup } from './recheck-report.ts';

export interface RecheckTextOptions {
  readonly colour: boolean;
  readonly columns: number;
  /** Plans that are named under one rule, and in each list; 0 names all. */
  readonly mostPlans: number;
}

const indent = '  ';
const deep = '       ';

const titles: readonly (readonly [Change, string, string])[] = [
  ['no longer passes', 'passed then and would not now', 'Passed then, would not now'],
  ['worse', 'worse now, without crossing that line', 'Worse now, without crossing that line'],
  ['passes now', 'did not pass then and would now', 'Did not pass then, would now'],
  ['better', 'better now, and still not passing', 'Better now, and still not passing'],
];

/** The recheck as plain text: what got worse first, each kind of change by the rules behind it. */
export function recheckText(report: RecheckReport, options: RecheckTextOptions): string {
  const paint = paintWith(options.colour);
  const { columns } = options;
  const lines = [...wrapText(visibleText(headText(report)), columns, ''), '', ...countLines(report)];
  for (const [change, , title] of titles) {
    const groups = byRule(report, change);
    if (report.counts[change] === 0) continue;
    lines.push('', paint.strong(title));
    for (const group of groups) lines.push('', ...ruleLines(group, change, options, paint));
    lines.push(...withoutRule(report.changed, change, options));
  }
  lines.push(...unjudgedLines(report, options, paint), ...computingLines(report, options, paint));
  lines.push('');
  for (const caution of cautions) lines.push(...wrapText(caution, columns, ''));
  return `${lines.join('\n')}\n`;
}

function headText({ plans, from, to, asOf, today, earlier, planish, factSchema }: RecheckReport): string {
  const then =
    from.length > 0
      ? packsText(from)
      : earlier === undefined
        ? 'what each plan names'
        : 'what the report names';
  const now = to.length > 0 ? packsText(to) : 'the newest that are here';
  const days =
    asOf !== undefined
      ? `as of ${asOf}`
      : `as of the day of ${earlier === undefined ? 'each signature' : 'the report'}, unsigned plans as of ${today}`;
  return `Rechecked ${countOf(plans, 'plan')}: then by ${then}; now by ${now}; ${days}; planish ${planish}, fact schema ${String(factSchema)}.`;
}

function packsText(packs: readonly UsedPack[]): string {
  return packs.map(packWords).join(' and ');
}

function countLines({ counts }: RecheckReport): readonly string[] {
  const rows = [
    ...titles.map(([change, words]) => [counts[change], words] as const),
    [counts.same, 'the same verdict'] as const,
    [counts['not judged'], 'could not be judged'] as const,
  ];
  const width = Math.max(...rows.map(([count]) => String(count).length));
  return rows.map(([count, words]) => `${indent}${String(count).padStart(width)}  ${words}`);
}

function ruleLines(
  group: RuleGroup,
  change: Change,
  { columns, mostPlans }: RecheckTextOptions,
  paint: Paint,
): readonly string[] {
  const label = group.severity.toUpperCase();
  const lead = `${indent}${label.padEnd(deep.length - indent.length)}`;
  const said = `${group.rule}: ${countOf(group.plans.length, 'plan')}${historyText(group)}.`;
  const [opening = '', ...rest] = wrapText(visibleText(said), columns, deep, lead);
  const lines = [opening.replace(label, paint.severity(group.severity, label)), ...rest];
  const add = (name: string, text: string): void => {
    lines.push(...wrapText(visibleText(`${name}: ${text}`), columns, `${deep}${indent}`, deep));
  };
  add('Why', group.why);
  const shown = mostPlans === 0 ? group.plans : group.plans.slice(0, mostPlans);
  const reasons = shown.flatMap((plan) =>
    plan.reasons
      .filter(({ finding }) => finding.rule === group.rule && finding.severity === group.severity)
      .map((reason) => ({ ...reason, plan })),
  );
  const isWorse = change === 'no longer passes' || change === 'worse';
  const isOneAnswer = reasons.every(({ finding }) => finding.instead === group.instead);
  if (isWorse && isOneAnswer) add('Instead', group.instead);
  for (const { finding, place, plan } of reasons) {
    const tail = isWorse && !isOneAnswer ? ` Instead: ${finding.instead}` : '';
    const where = `${plan.file}, line ${String(place.line)} (${plan.then ?? ''} then, ${plan.now ?? ''} now):`;
    lines.push(
      ...wrapText(visibleText(`${where} ${finding.message}${tail}`), columns, `${deep}${indent}`, deep),
    );
  }
  if (shown.length < group.plans.length) lines.push(moreLine(group.plans.length - shown.length, deep));
  return lines;
}

function historyText({ history, pack }: RuleGroup): string {
  if (history === undefined) return ` (pack ${pack})`;
  const { since, until, replaces, replacedBy } = history;
  const words = [
    `since ${pack} ${since}${replaces.length === 0 ? '' : ` in place of ${replaces.join(', ')}`}`,
    ...(until === undefined ? [] : [`ended with ${until}`]),
    ...(replacedBy === undefined ? [] : [`${replacedBy} took its place`]),
  ];
  return `; ${words.join('; ')}`;
}

/** Plans whose change no finding explains: what is recorded of them was computed differently. */
function withoutRule(
  changed: readonly RecheckedPlan[],
  change: Change,
  { columns, mostPlans }: RecheckTextOptions,
): readonly string[] {
  const plans = changed.filter((plan) => plan.change === change && plan.reasons.length === 0);
  if (plans.length === 0) return [];
  const shown = mostPlans === 0 ? plans : plans.slice(0, mostPlans);
  const more = plans.length - shown.length;
  return [
    '',
    `${indent}By no rule: the record was computed differently, see below.`,
    ...shown.flatMap(({ file, then = '', now = '' }) =>
      wrapText(visibleText(`${file}: ${then} then, ${now} now.`), columns, `${deep}${indent}`, deep),
    ),
    ...(more === 0 ? [] : [moreLine(more, deep)]),
  ];
}

function unjudgedLines(
  { changed }: RecheckReport,
  { columns }: RecheckTextOptions,
  paint: Paint,
): readonly string[] {
  const plans = changed.filter(({ change }) => change === 'not judged');
  if (plans.length === 0) return [];
  const lines = ['', paint.strong('Could not be judged'), ''];
  for (const { file, notJudged } of plans) {
    for (const { sentence, place, rule } of notJudged) {
      const where = place === undefined ? '' : `, line ${String(place.line)}`;
      const which = rule === undefined ? '' : `Rule ${rule} could not be asked: `;
      lines.push(
        ...wrapText(
          visibleText(`${file}${where}: ${which}${sentence}`),
          columns,
          `${indent}${indent}`,
          indent,
        ),
      );
    }
  }
  return lines;
}

/** How many are left out of a list. */
export function moreLine(count: number, lead: string): string {
  return `${lead}and ${String(count)} more; --max-plans 0 names all.`;
}
