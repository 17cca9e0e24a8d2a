import { reportFormat } from './json-form.ts';
import { planAsJson } from './plan-json.ts';
import type { ReportForm, RunHead } from './plan-report.ts';

/**
 * One plan a line, each line whole in itself, and at the end one line with `run`, by which a file that was cut off is known. See
 * `line` and `run_line` in schemas/report.schema.json.
 */
export function ndjsonForm(): ReportForm {
  let about: object = {};
  return {
    begin: (head) => {
      about = headAsJson(head);
      return '';
    },
    plan: (plan) => `${JSON.stringify({ ...about, ...planAsJson(plan) })}\n`,
    end: ({ plans, verdicts, verdict }) =>
      `${JSON.stringify({ ...about, run: { plans, verdicts, verdict } })}\n`,
  };
}

function headAsJson(head: RunHead): object {
  return {
    report: reportFormat,
    planish: head.planish,
    packs: head.packs,
    facts: head.factSchema,
    as_of: head.asOf,
    ...(head.shard === undefined ? {} : { shard: head.shard }),
  };
}
