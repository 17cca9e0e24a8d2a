import type { UsedFact } from '../judge/finding.ts';
import type { Counts } from '../judge/judge-sheets.ts';
import type { Place } from '../plan/source-text.ts';
import { measuringAsJson } from './measuring/measuring-json.ts';
import type { NotJudgedReason, PlacedFinding, PlanReport } from './plan-report.ts';

/** One plan as schemas/report.schema.json has it. */
export function planAsJson(plan: PlanReport): object {
  return {
    file: plan.file,
    ...(plan.stage === undefined ? {} : { stage: plan.stage }),
    ...(plan.digest === undefined ? {} : { digest: plan.digest }),
    ...(plan.packs === undefined ? {} : { judged_by: plan.packs }),
    verdict: plan.verdict,
    counts: plan.counts,
    ...(plan.asked === undefined ? {} : { asked: askedAsJson(plan.asked) }),
    ...(plan.setAside === undefined || plan.setAside.length === 0
      ? {}
      : { set_aside: plan.setAside.map(({ name, version, reason }) => ({ pack: name, version, reason })) }),
    ...(plan.measuring === undefined ? {} : { measurements: measuringAsJson(plan.measuring) }),
    lifted: plan.lifted,
    not_judged: plan.notJudged.map(notJudgedAsJson),
    findings: plan.findings.map(findingAsJson),
  };
}

function askedAsJson({ asked, passed, found, lifted, failed, couldNotTell, notApplied }: Counts): object {
  return { asked, passed, found, lifted, failed, could_not_tell: couldNotTell, not_applied: notApplied };
}

function notJudgedAsJson({ sentence, place, rule }: NotJudgedReason): object {
  return {
    sentence,
    ...(rule === undefined ? {} : { rule }),
    ...(place === undefined ? {} : { at: placeAsJson(place) }),
  };
}

function findingAsJson({ finding, place, against }: PlacedFinding): object {
  return {
    rule: finding.rule,
    pack: finding.pack,
    severity: finding.severity,
    ...(finding.part === undefined ? {} : { part: finding.part }),
    ...(finding.partName === undefined ? {} : { part_name: finding.partName }),
    ...(finding.operation === undefined ? {} : { operation: finding.operation }),
    message: finding.message,
    instead: finding.instead,
    why: finding.why,
    source: finding.source,
    at: placeAsJson(place),
    ...(against === undefined ? {} : { against: against.map(placeAsJson) }),
    pointer: finding.pointer,
    asks_unknown: finding.asksUnknown,
    facts: finding.facts.map(factAsJson),
    assumptions: finding.assumptions,
    fingerprint: finding.fingerprint,
    ...(finding.deviation === undefined ? {} : { deviation: finding.deviation }),
  };
}

function factAsJson(fact: UsedFact): object {
  // Minus infinity stands for "no limit is set", infinity for "to the end"; JSON has no number for them and the note says so.
  const isEndless = typeof fact.value === 'number' && !Number.isFinite(fact.value);
  const hasValue = fact.value !== undefined && !isEndless;
  return {
    name: fact.name,
    ...(hasValue ? { value: fact.value } : {}),
    ...(hasValue && fact.unit !== undefined ? { unit: fact.unit } : {}),
    from: fact.from,
    ...(fact.note === undefined ? {} : { note: fact.note }),
  };
}

function placeAsJson(place: Place): object {
  return { line: place.line, column: place.column, end_line: place.endLine, end_column: place.endColumn };
}
