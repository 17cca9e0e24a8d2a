import type { Finding } from '../../judge/finding.ts';
import type { Verdict } from '../../judge/verdict.ts';
import { againstLines } from '../against-lines.ts';
import { cautions } from '../cautions.ts';
import { severityCounts, verdictCounts } from '../count-words.ts';
import { keepWorst, leftText } from '../keep-worst.ts';
import { findingNumbers } from '../finding-numbers.ts';
import { judgedSentence, packWords } from '../judged-by.ts';
import { measuringLines } from '../measuring/measuring-text.ts';
import { paintWith } from '../paint.ts';
import type { Paint } from '../paint.ts';
import type { PlacedFinding, PlanReport, ReportForm, RunHead, RunTail, UsedPack } from '../plan-report.ts';
import { runSummary } from '../run-summary.ts';
import { summaryText } from './summary-text.ts';
import { visibleText } from '../visible-text.ts';
import { wrapText } from '../wrap-text.ts';

export interface TextOptions {
  readonly colour: boolean;
  /** Width of a line; 80 when it goes into a file or an email. */
  readonly columns: number;
  /** Only what is not cleared, or only by accepted holds; one line a plan. */
  readonly quiet: boolean;
  /** Findings shown of one plan, the worst; 0 shows all. */
  readonly mostFindings: number;
  /** Totals by rule and by folder at the end. */
  readonly summary: boolean;
}

const indent = '  ';
const deep = '       ';
/** Room for the longest of STOP, HOLD and NOTE and a blank. */
const labelWidth = deep.length - indent.length;

/** The report as plain text: grouped by part, worst first, legible without colour and when pasted into an email. */
export function textForm(options: TextOptions): ReportForm {
  const paint = paintWith(options.colour);
  const summary = options.summary ? runSummary() : undefined;
  let head: RunHead | undefined;
  const used = new Map<string, UsedPack>();
  const sameAsHead = (packs: readonly UsedPack[]): boolean =>
    packs.every(({ digest }) => head?.packs.some((pack) => pack.digest === digest) === true);
  return {
    begin: (given) => {
      head = given;
      return '';
    },
    plan: (plan) => {
      for (const pack of plan.packs ?? []) used.set(pack.digest, pack);
      summary?.add(plan);
      return options.quiet ? quietLine(plan, paint) : planText(plan, options, paint, sameAsHead);
    },
    end: (tail) => {
      const totals = (summary === undefined ? [] : summaryText(summary, options.columns))
        .map((line) => `${line}\n`)
        .join('');
      return options.quiet ? totals : `${totals}${closing(tail, head, [...used.values()], options, paint)}`;
    },
  };
}

function quietLine(plan: PlanReport, paint: Paint): string {
  // What passes only because a person took it upon themselves is no matter for silence.
  if (plan.verdict === 'cleared' && plan.counts.accepted === 0) return '';
  const [reason] = plan.notJudged;
  const said =
    plan.verdict === 'not judged' && reason !== undefined ? visibleText(reason.sentence) : countText(plan);
  return `${visibleText(plan.file)}: ${paint.verdict(plan.verdict, plan.verdict)}, ${said}\n`;
}

function planText(
  plan: PlanReport,
  { columns, mostFindings }: TextOptions,
  paint: Paint,
  sameAsHead: (packs: readonly UsedPack[]) => boolean,
): string {
  const lines: string[] = [paint.strong(visibleText(plan.file))];
  const about = [plan.title, plan.stage === undefined ? undefined : `stage ${plan.stage}`];
  const aboutText = about.filter((text) => text !== undefined).join(', ');
  if (aboutText !== '') lines.push(...wrapText(visibleText(aboutText), columns, indent));
  lines.push(`${indent}${paint.verdict(plan.verdict, verdictWords[plan.verdict])}: ${countText(plan)}.`);
  if (plan.stage === 'draft') lines.push(...wrapText(draftOnly, columns, indent));

  if (plan.packs !== undefined && !sameAsHead(plan.packs)) {
    lines.push(
      ...wrapText(visibleText(`Rules of ${plan.packs.map(packWords).join('; ')}.`), columns, indent),
    );
  }
  for (const { name, version, reason } of plan.setAside ?? []) {
    lines.push(...wrapText(visibleText(`Pack ${name} ${version} was not asked: ${reason}`), columns, indent));
  }
  for (const reason of plan.notJudged) {
    const where =
      reason.place === undefined
        ? ''
        : `Line ${String(reason.place.line)}, column ${String(reason.place.column)}: `;
    const rule = reason.rule === undefined ? '' : `Rule ${reason.rule} could not be asked: `;
    lines.push('', ...wrapText(visibleText(`${where}${rule}${reason.sentence}`), columns, indent));
  }
  let part: string | undefined;
  let first = true;
  const shown = keepWorst(plan.findings, mostFindings);
  for (const placed of shown.kept) {
    const group = groupName(placed.finding);
    if (first || group !== part) {
      lines.push('', ...wrapText(visibleText(group), columns, indent).map((line) => paint.strong(line)));
      part = group;
      first = false;
    }
    lines.push(...findingLines(placed, columns, paint));
  }
  const left = leftText(shown);
  if (left !== undefined) lines.push('', ...wrapText(`${left} --max-findings 0 shows all.`, columns, indent));
  if (plan.measuring !== undefined) {
    const [title, ...table] = measuringLines(plan.measuring, columns);
    if (title !== undefined) lines.push('', paint.strong(title), ...table);
  }
  if (plan.lifted.length > 0) {
    lines.push('', `${indent}${paint.strong('Lifted by the maker’s statement')}`);
    for (const { rule, by, part: on, operation } of plan.lifted) {
      const what = [operation, on === undefined ? undefined : `of ${on}`]
        .filter((word) => word !== undefined)
        .join(' ');
      lines.push(
        ...wrapText(
          visibleText(`${rule}${what === '' ? '' : ` (${what})`}: ${by}.`),
          columns,
          deep,
          `${indent}${indent}`,
        ),
      );
    }
  }
  lines.push('', '');
  return lines.join('\n');
}

const draftOnly =
  'Judged as a draft: what must be stated before work begins, and before the vehicle goes, was not asked.';

const verdictWords: Readonly<Record<Verdict, string>> = {
  cleared: 'CLEARED',
  held: 'HELD',
  stopped: 'STOPPED',
  'not judged': 'NOT JUDGED',
};

function countText({ counts, verdict }: PlanReport): string {
  const { stop, hold, note } = counts;
  return verdict === 'not judged' && stop + hold + note === 0 ? 'see below' : severityCounts(counts);
}

function groupName({ part, partName }: Finding): string {
  if (part === undefined && partName === undefined) return 'The plan and the vehicle';
  if (part === undefined || partName === undefined || part === partName) return partName ?? part ?? '';
  return `${partName} (${part})`;
}

function findingLines(placed: PlacedFinding, columns: number, paint: Paint): readonly string[] {
  const { finding, place } = placed;
  const label = finding.severity.toUpperCase();
  const lead = `${indent}${label.padEnd(labelWidth)}`;
  const [opening = '', ...rest] = wrapText(visibleText(finding.message), columns, deep, lead);
  const painted = opening.replace(label, paint.severity(finding.severity, label));
  const lines = [painted, ...rest];
  const add = (name: string, text: string): void => {
    lines.push(...wrapText(visibleText(`${name}: ${text}`), columns, `${deep}${indent}`, deep));
  };
  add('Instead', finding.instead);
  add('Why', finding.why);
  const numbers = findingNumbers(finding);
  if (numbers !== '') add('Numbers', numbers);
  for (const assumption of finding.assumptions) add('Assumed', assumption);
  if (finding.deviation !== undefined) {
    const { by, role, date, reason, expires } = finding.deviation;
    add('Accepted', `by ${by}, ${role}, on ${date}, until ${expires}: ${reason}`);
  }
  const where = `Line ${String(place.line)}, column ${String(place.column)}${againstLines(placed)}. Rule ${finding.rule} of pack ${finding.pack}; source: ${finding.source}.`;
  lines.push(
    ...wrapText(visibleText(where), columns, `${deep}${indent}`, deep).map((line) => paint.faint(line)),
  );
  return lines;
}

function closing(
  tail: RunTail,
  head: RunHead | undefined,
  used: readonly UsedPack[],
  { columns }: TextOptions,
  paint: Paint,
): string {
  const lines: string[] = [];
  if (tail.plans > 1) {
    lines.push(`${paint.strong(`${String(tail.plans)} plans`)}: ${verdictCounts(tail.verdicts)}.`);
  }
  if (head !== undefined) {
    const judged = judgedSentence(head, used.length === 0 ? undefined : used);
    lines.push(...wrapText(visibleText(judged), columns, ''));
  }
  lines.push('');
  for (const caution of cautions) lines.push(...wrapText(caution, columns, ''));
  return `${lines.join('\n')}\n`;
}
