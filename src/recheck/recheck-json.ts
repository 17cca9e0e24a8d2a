import type { NotJudgedReason, PlacedFinding } from '../report/plan-report.ts';
import type { Change, RecheckedPlan } from './rechecked-plan.ts';
import { byRule } from './recheck-report.ts';
import type { RecheckReport, RuleGroup } from './recheck-report.ts';

const groups: readonly (readonly [string, Change])[] = [
  ['no_longer_passes', 'no longer passes'],
  ['worse', 'worse'],
  ['passes_now', 'passes now'],
  ['better', 'better'],
];

/** The recheck as schemas/recheck.schema.json has it. */
export function recheckJson(report: RecheckReport): string {
  const { planish, factSchema, from, to, asOf, today, earlier, plans, counts } = report;
  const { changed, computedDifferently, left } = report;
  const json = {
    recheck: 1,
    planish,
    facts: factSchema,
    from,
    to,
    today,
    ...(asOf === undefined ? {} : { as_of: asOf }),
    ...(earlier === undefined ? {} : { earlier_report: earlier }),
    counts: {
      plans,
      ...Object.fromEntries(groups.map(([key, change]) => [key, counts[change]])),
      same: counts.same,
      not_judged: counts['not judged'],
    },
    rules: Object.fromEntries(groups.map(([key, change]) => [key, byRule(report, change).map(ruleAsJson)])),
    plans: changed.filter(({ change }) => change !== 'not judged').map(planAsJson),
    not_judged: changed
      .filter(({ change }) => change === 'not judged')
      .map(({ file, notJudged }) => ({ file, reasons: notJudged.map(reasonAsJson) })),
    computed_differently: computedDifferently.map(computingAsJson),
    not_among_these: left,
  };
  return `${JSON.stringify(json, null, 2)}\n`;
}

function ruleAsJson({ history, plans, ...rule }: RuleGroup): object {
  return {
    ...rule,
    ...(history === undefined
      ? {}
      : {
          since: history.since,
          ...(history.until === undefined ? {} : { until: history.until }),
          ...(history.replacedBy === undefined ? {} : { replaced_by: history.replacedBy }),
          replaces: history.replaces,
        }),
    plans: plans.map(({ file }) => file),
  };
}

function planAsJson({ file, change, then, now, stage, asOf, digest, reasons }: RecheckedPlan): object {
  return {
    file,
    digest,
    stage,
    as_of: asOf,
    change: change.replaceAll(' ', '_'),
    then,
    now,
    reasons: reasons.map(findingAsJson),
  };
}

function findingAsJson({ finding, place }: PlacedFinding): object {
  const { rule, pack, severity, part, partName, operation, message } = finding;
  return {
    ...{ rule, pack, severity },
    ...(part === undefined ? {} : { part }),
    ...(partName === undefined ? {} : { part_name: partName }),
    ...(operation === undefined ? {} : { operation }),
    message,
    at: { line: place.line, column: place.column },
  };
}

function reasonAsJson({ sentence, place, rule }: NotJudgedReason): object {
  return {
    sentence,
    ...(rule === undefined ? {} : { rule }),
    ...(place === undefined ? {} : { at: { line: place.line, column: place.column } }),
  };
}

function computingAsJson({ file, computing }: RecheckReport['computedDifferently'][number]): object {
  const { by, planish, facts, isOther, verdictThen, verdictAgain, moved, gone, come, remarks } = computing;
  return {
    file,
    recorded_by: by,
    ...(planish === undefined ? {} : { planish }),
    ...(facts === undefined ? {} : { facts }),
    other_planish: isOther,
    ...(verdictThen === undefined ? {} : { then: verdictThen }),
    ...(verdictAgain === undefined ? {} : { again: verdictAgain }),
    moved: moved.map(({ name, ...rest }) => ({ fact: name, ...rest })),
    not_found_any_more: gone,
    not_found_then: come,
    remarks,
  };
}
