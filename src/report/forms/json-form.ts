import { planAsJson } from '../plan-json.ts';
import type { ReportForm } from '../plan-report.ts';

/** Format number of the JSON report; see schemas/report.schema.json. */
export const reportFormat = 1;

/**
 * The report as JSON, schemas/report.schema.json. It is written piece by piece; the verdict of the run comes last, since it is
 * known last. The bytes depend on plans, packs and as-of date alone.
 */
export function jsonForm(): ReportForm {
  let plans = 0;
  return {
    begin: (head) => {
      const start = {
        report: reportFormat,
        planish: head.planish,
        packs: head.packs,
        facts: head.factSchema,
        as_of: head.asOf,
        ...(head.shard === undefined ? {} : { shard: head.shard }),
      };
      return `${JSON.stringify(start, null, 2).slice(0, -2)},\n  "plans": [`;
    },
    plan: (plan) => {
      plans += 1;
      const text = JSON.stringify(planAsJson(plan), null, 2).replaceAll('\n', '\n    ');
      return `${plans === 1 ? '' : ','}\n    ${text}`;
    },
    end: (tail) => {
      const closed = plans === 0 ? ']' : '\n  ]';
      const counted = JSON.stringify(tail.verdicts, null, 2).replaceAll('\n', '\n  ');
      return `${closed},\n  "verdicts": ${counted},\n  "verdict": ${JSON.stringify(tail.verdict)}\n}\n`;
    },
  };
}
