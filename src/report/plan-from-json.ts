import type * as Json from '../../schemas/report.d.ts';
import type { Finding } from '../judge/finding.ts';
import type { Place } from '../plan/source-text.ts';
import { measuringFromJson } from './measuring/measuring-from-json.ts';
import type { NotJudgedReason, PlacedFinding, PlanReport, RunHead } from './plan-report.ts';

/** The run that a JSON report tells of. The rules are not in it. */
export function headFromJson(report: Omit<Json.Report, 'plans' | 'verdicts' | 'verdict'>): RunHead {
  return {
    planish: report.planish,
    packs: report.packs,
    factSchema: report.facts,
    asOf: report.as_of,
    ...(report.shard === undefined ? {} : { shard: report.shard }),
  };
}

/** One plan of a JSON report. What a report leaves out (the title, where operations stand) stays absent. */
export function planFromJson(plan: Json.Plan): PlanReport {
  const {
    file,
    stage,
    digest,
    verdict,
    counts,
    asked,
    judged_by: packs,
    set_aside: setAside,
    lifted,
    measurements,
  } = plan;
  return {
    file,
    ...(stage === undefined ? {} : { stage }),
    ...(digest === undefined ? {} : { digest }),
    ...(packs === undefined ? {} : { packs }),
    verdict,
    counts,
    ...(asked === undefined ? {} : { asked: askedFromJson(asked) }),
    ...(setAside === undefined
      ? {}
      : { setAside: setAside.map(({ pack, version, reason }) => ({ name: pack, version, reason })) }),
    ...(measurements === undefined ? {} : { measuring: measuringFromJson(measurements) }),
    lifted,
    notJudged: plan.not_judged.map(reasonFromJson),
    findings: plan.findings.map(findingFromJson),
  };
}

function askedFromJson({
  could_not_tell: couldNotTell,
  not_applied: notApplied,
  ...rest
}: Json.PlanAsked): NonNullable<PlanReport['asked']> {
  return { ...rest, couldNotTell, notApplied };
}

function reasonFromJson({ sentence, rule, at }: Json.NotJudged): NotJudgedReason {
  return {
    sentence,
    ...(at === undefined ? {} : { place: placeFromJson(at) }),
    ...(rule === undefined ? {} : { rule }),
  };
}

function findingFromJson({ at, against, ...given }: Json.Finding): PlacedFinding {
  const { part_name: partName, asks_unknown: asksUnknown, ...rest } = given;
  const finding: Finding = {
    ...rest,
    ...(partName === undefined ? {} : { partName }),
    asksUnknown,
    // Not in the report, and needed only where deviations are applied, before it.
    standsForStop: false,
  };
  return {
    finding,
    place: placeFromJson(at),
    ...(against === undefined ? {} : { against: against.map(placeFromJson) }),
  };
}

function placeFromJson({ line, column, end_line: endLine, end_column: endColumn }: Json.Place): Place {
  return { line, column, endLine, endColumn };
}
