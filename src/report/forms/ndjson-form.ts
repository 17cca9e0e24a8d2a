import { reportFormat } from './json-form.ts';
import { planAsJson } from '../plan-json.ts';
import type { ReportForm, RunHead } from '../plan-report.ts';

/**
 * One plan a line, each line whole in itself; schemas/report-line.schema.json. The last line also says what the run came to, so that
 * a file that was cut off is known by its lack; for that each line is held back until the next one comes.
 */
export function ndjsonForm(): ReportForm {
  let about: object = {};
  let held: object | undefined;
  const release = (): string => (held === undefined ? '' : `${JSON.stringify(held)}\n`);
  return {
    begin: (head) => {
      about = headAsJson(head);
      return '';
    },
    plan: (plan) => {
      const line = release();
      held = Object.assign({}, about, planAsJson(plan));
      return line;
    },
    end: ({ plans, verdicts, verdict }) =>
      `${JSON.stringify({ ...about, ...held, run: { plans, verdicts, verdict } })}\n`,
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
