import type { Severity } from '../../judge/finding.ts';
import type { Place } from '../../plan/source-text.ts';
import type { PlanReport } from '../plan-report.ts';

/** What a CI host shows beside one line of one file. */
export interface Annotation {
  readonly file: string;
  /** Absent when the file as a whole is meant. */
  readonly place?: Place;
  /** `stop` also for what could not be judged. An accepted hold is a note. */
  readonly severity: Severity;
  readonly title: string;
  readonly message: string;
  readonly rule: string;
  /** Identity within the plan; made without line numbers. */
  readonly fingerprint: string;
}

/** The annotations of a plan, worst first, since hosts show only so many. */
export function annotationsOf(plan: PlanReport): readonly Annotation[] {
  const unjudged = plan.notJudged.map(({ sentence, place, rule }, index): Annotation => {
    return {
      file: plan.file,
      ...(place === undefined ? {} : { place }),
      severity: 'stop',
      title: 'NOT JUDGED',
      message: `${sentence} (${whereIs(plan.file, place)})`,
      rule: rule ?? 'not-judged',
      fingerprint: `not judged ${String(index)}`,
    };
  });
  const found = plan.findings.map(({ finding, place }): Annotation => {
    const { severity, part, partName, message, instead, rule, fingerprint, deviation } = finding;
    const accepted =
      deviation === undefined ? '' : `\nAccepted by ${deviation.by} until ${deviation.expires}.`;
    return {
      file: plan.file,
      place,
      severity: deviation === undefined ? severity : 'note',
      title: `${severity.toUpperCase()}: ${partName ?? part ?? 'the plan and the vehicle'}`,
      message: `${message}\nInstead: ${instead}${accepted}\n(${whereIs(plan.file, place)}, rule ${rule})`,
      rule,
      fingerprint,
    };
  });
  const all = [...unjudged, ...found];
  return (['stop', 'hold', 'note'] as const).flatMap((severity) =>
    all.filter((one) => one.severity === severity),
  );
}

/** The place in the words of a compiler; some hosts show the message alone. */
function whereIs(file: string, place: Place | undefined): string {
  return place === undefined ? file : `${file}:${String(place.line)}:${String(place.column)}`;
}
