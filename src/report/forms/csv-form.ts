import { csv } from '../csv.ts';
import type { CsvCell } from '../csv.ts';
import type { PlacedFinding, PlanReport, ReportForm } from '../plan-report.ts';

const columns = [
  ...['file', 'verdict', 'stage', 'severity', 'part', 'part_name', 'operation', 'line', 'column', 'message'],
  ...['instead', 'rule', 'pack', 'source', 'accepted_by', 'accepted_until', 'fingerprint', 'as_of'],
];

/** One row a finding, and one for each reason why something could not be judged; a plan with neither has one row. */
export function csvForm(): ReportForm {
  let asOf = '';
  return {
    begin: (head) => {
      asOf = head.asOf;
      return csv([columns]);
    },
    plan: (plan) => csv(rowsOf(plan, asOf)),
    end: () => '',
  };
}

function rowsOf(plan: PlanReport, asOf: string): readonly (readonly CsvCell[])[] {
  const start = [plan.file, plan.verdict, plan.stage];
  const rows = [
    ...plan.notJudged.map(({ sentence, place, rule }) => [
      ...[...start, 'not judged', undefined, undefined, undefined, place?.line, place?.column, sentence],
      ...[undefined, rule, undefined, undefined, undefined, undefined, undefined, asOf],
    ]),
    ...plan.findings.map((placed) => [...start, ...findingCells(placed), asOf]),
  ];
  return rows.length > 0 ? rows : [[...start, ...columns.slice(start.length, -1).map(() => undefined), asOf]];
}

function findingCells({ finding, place }: PlacedFinding): readonly CsvCell[] {
  const { severity, part, partName, operation, message, instead, rule, pack, source } = finding;
  return [
    ...[severity, part, partName, operation, place.line, place.column, message, instead, rule, pack, source],
    ...[finding.deviation?.by, finding.deviation?.expires, finding.fingerprint],
  ];
}
