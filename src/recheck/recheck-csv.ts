import { csv } from '../report/csv.ts';
import type { CsvCell } from '../report/csv.ts';
import { factTexts } from './fact-text.ts';
import type { FactThen } from './moved-facts.ts';
import type { RecheckedPlan } from './rechecked-plan.ts';
import type { RecheckReport } from './recheck-report.ts';

const columns = [
  ...['file', 'change', 'then', 'now', 'stage', 'as_of', 'rule', 'pack', 'severity', 'part', 'operation'],
  ...['line', 'column', 'message', 'instead', 'why', 'source', 'planish_then', 'facts_then'],
];

/** One row a reason, a fact that moved, or a plan that has neither. */
export function recheckCsv({ changed, computedDifferently }: RecheckReport): string {
  return csv([columns, ...changed.flatMap(changeRows), ...computedDifferently.flatMap(movedRows)]);
}

function changeRows(plan: RecheckedPlan): readonly (readonly CsvCell[])[] {
  const start = head(plan, plan.change);
  const rows = [
    ...plan.notJudged.map(({ sentence, place, rule }) => [
      ...[...start, rule, undefined, undefined, undefined, undefined, place?.line, place?.column, sentence],
    ]),
    ...plan.reasons.map(({ finding, place }) => [
      ...[...start, finding.rule, finding.pack, finding.severity, finding.part, finding.operation],
      ...[place.line, place.column, finding.message, finding.instead, finding.why, finding.source],
    ]),
  ];
  return (rows.length > 0 ? rows : [start]).map(filled);
}

function movedRows(plan: RecheckReport['computedDifferently'][number]): readonly (readonly CsvCell[])[] {
  const { computing } = plan;
  const start = head(plan, 'computed differently');
  const end = [undefined, undefined, undefined, computing.planish, computing.facts];
  const row = (rule: CsvCell, part: CsvCell, message: string): readonly CsvCell[] => [
    ...[...start, rule, undefined, undefined, part, undefined, undefined, undefined, message],
    ...end,
  ];
  const rows = [
    ...computing.remarks.map((sentence) => row(undefined, undefined, sentence)),
    ...computing.moved.map(({ rule, part, name, then, now }) => row(rule, part, movedText(name, then, now))),
    ...computing.gone.map((rule) => row(rule, undefined, 'not found any more')),
    ...computing.come.map((rule) => row(rule, undefined, 'not found then')),
  ];
  return rows.length > 0 ? rows : [row(undefined, undefined, nothingMoved[computing.by])];
}

const nothingMoved = {
  report: 'no fact moved that the report carries',
  'sign-off': 'a sign-off carries no facts; only a report of then can tell which moved',
} as const;

function head(plan: RecheckedPlan, change: string): readonly CsvCell[] {
  return [plan.file, change, plan.then, plan.now, plan.stage, plan.asOf];
}

function filled(row: readonly CsvCell[]): readonly CsvCell[] {
  return [...row, ...columns.slice(row.length).map(() => undefined)];
}

function movedText(name: string, then: FactThen, now: FactThen | undefined): string {
  const [before, after] = factTexts(then, now);
  return `${name}: ${before} then, ${after} now`;
}
