import { againstLines } from '../against-lines.ts';
import type { Verdict } from '../../judge/verdict.ts';
import { cautions } from '../cautions.ts';
import { countOf, verdictCounts } from '../count-words.ts';
import { keepWorst, leftText } from '../keep-worst.ts';
import { judgedSentence } from '../judged-by.ts';
import { markdownText } from './markdown-text.ts';
import type { PlacedFinding, PlanReport, ReportForm, RunHead, RunTail } from '../plan-report.ts';
import { runSummary } from '../run-summary.ts';
import type { RunSummary } from '../run-summary.ts';

export interface MarkdownOptions {
  /** Findings shown of one plan; 0 shows all. */
  readonly mostFindings: number;
}

/** A comment on the common hosts takes 65,536 characters; the tables and the end need room too. */
const mostOfPlans = 40_000;
const mostRows = 50;

const order = ['stopped', 'not judged', 'held', 'cleared'] as const;

/**
 * A summary in Markdown for the page of a CI run or a comment. The worst plans come first; of a cleared one only the holds
 * that a deviation accepts are shown, and what has no room is counted.
 */
export function markdownForm({ mostFindings }: MarkdownOptions): ReportForm {
  const summary = runSummary();
  const buckets = new Map<Verdict, Bucket>(order.map((verdict) => [verdict, { texts: [], length: 0 }]));
  let head: RunHead | undefined;
  let accepted = 0;
  return {
    begin: (given) => {
      head = given;
      return '';
    },
    plan: (plan) => {
      summary.add(plan);
      const shown = plan.verdict === 'cleared' ? acceptedOnly(plan) : plan;
      if (shown === undefined) return '';
      if (plan.verdict === 'cleared') accepted += 1;
      const bucket = buckets.get(plan.verdict);
      // A bucket that is full alone fills the page: what follows in it is only counted.
      if (bucket === undefined || bucket.length > mostOfPlans) return '';
      const text = section(shown, mostFindings);
      bucket.texts.push(text);
      bucket.length += text.length;
      return '';
    },
    end: (tail) =>
      [
        `## planish: ${tail.plans === 0 ? 'no plan was judged' : `${countOf(tail.plans, 'plan')}, ${verdictCounts(tail.verdicts)}`}`,
        ...shownSections({ ...tail.verdicts, cleared: accepted }, buckets),
        ...tables(summary, tail),
        ...about(head),
      ].join('\n\n') + '\n',
  };
}

/** What of a cleared plan stays visible; undefined when nobody had to accept anything. */
function acceptedOnly(plan: PlanReport): PlanReport | undefined {
  const findings = plan.findings.filter(({ finding }) => finding.deviation !== undefined);
  return findings.length === 0 ? undefined : { ...plan, findings };
}

const leftWords = {
  stopped: 'stopped',
  'not judged': 'not judged',
  held: 'held',
  cleared: 'cleared with accepted holds',
} as const;

interface Bucket {
  readonly texts: string[];
  length: number;
}

function section(plan: PlanReport, mostFindings: number): string {
  const { kept, ...rest } = keepWorst(plan.findings, mostFindings);
  const left = leftText({ kept, ...rest });
  const lines = [
    ...plan.notJudged.map(({ sentence, place }) => {
      const where = place === undefined ? '' : `line ${String(place.line)}: `;
      return `- **NOT JUDGED** ${where}${markdownText(sentence)}`;
    }),
    ...kept.map(findingLine),
    ...(left === undefined ? [] : [`- ${left}`]),
  ];
  const title = plan.title === undefined ? '' : `\n\nVehicle and job: ${markdownText(plan.title)}`;
  return `### ${plan.verdict.toUpperCase()}: ${markdownText(plan.file)}${title}\n\n${lines.join('\n')}`;
}

function findingLine(placed: PlacedFinding): string {
  const { finding, place } = placed;
  const { severity, part, partName, message, instead, rule, deviation } = finding;
  const accepted =
    deviation === undefined
      ? ''
      : ` _Accepted by ${markdownText(deviation.by)} until ${markdownText(deviation.expires)}._`;
  const on = partName ?? part;
  const where = `line ${String(place.line)}${againstLines(placed)}${on === undefined ? '' : `, ${markdownText(on)}`}`;
  return `- **${severity.toUpperCase()}** (${where}) ${markdownText(message)} _Instead:_ ${markdownText(instead)} (rule ${markdownText(rule)})${accepted}`;
}

function shownSections(
  verdicts: RunTail['verdicts'],
  buckets: ReadonlyMap<Verdict, Bucket>,
): readonly string[] {
  const shown: string[] = [];
  const left: string[] = [];
  let room = mostOfPlans;
  for (const verdict of order) {
    let count = 0;
    for (const text of buckets.get(verdict)?.texts ?? []) {
      if (text.length > room && shown.length > 0) break;
      shown.push(text.length <= mostOfPlans ? text : cutAt(text, mostOfPlans));
      room -= text.length;
      count += 1;
    }
    if (verdicts[verdict] > count) left.push(`${String(verdicts[verdict] - count)} ${leftWords[verdict]}`);
    // A milder plan is never shown in the place of a worse one.
    if (left.length > 0) room = 0;
  }
  return left.length === 0 ? shown : [...shown, `More plans are not shown: ${left.join(', ')}.`];
}

/** At the end of a line, so that no markup is left open. */
function cutAt(text: string, most: number): string {
  return `${text.slice(0, text.lastIndexOf('\n', most))}\n- More is not shown.`;
}

function tables(summary: RunSummary, tail: RunTail): readonly string[] {
  if (tail.plans < 2) return [];
  const rules = summary
    .rules()
    .map(
      ({ rule, severity, findings, plans }) =>
        `| ${severity.toUpperCase()} | ${markdownText(rule)} | ${String(findings)} | ${String(plans)} |`,
    );
  const folders = summary
    .folders()
    .map(
      ({ folder, plans, verdicts }) =>
        `| ${markdownText(folder)} | ${String(plans)} | ${verdictCounts(verdicts)} |`,
    );
  return [
    ...table('| severity | rule | findings | plans |\n| --- | --- | ---: | ---: |', rules),
    ...table('| folder | plans | verdicts |\n| --- | ---: | --- |', folders),
  ];
}

function table(start: string, rows: readonly string[]): readonly string[] {
  if (rows.length === 0) return [];
  const left = rows.length - mostRows;
  return [
    [start, ...rows.slice(0, mostRows)].join('\n'),
    ...(left > 0 ? [`${String(left)} more rows are not shown.`] : []),
  ];
}

function about(head: RunHead | undefined): readonly string[] {
  if (head === undefined) return [];
  const judged = markdownText(judgedSentence(head));
  return [judged, ...cautions.map((caution) => `_${caution}_`)];
}
