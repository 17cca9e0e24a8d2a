import type { AcceptedDeviation, Finding, Severity } from './finding.ts';

/** What the sheets of deviations and sign-off are derived from: the findings so far, without their words. */
export interface Outcome {
  readonly rule: string;
  readonly pack: string;
  readonly severity: Severity;
  readonly part?: string;
  readonly operation?: string;
  readonly operationAt?: string;
  readonly pointer: string;
  readonly fingerprint: string;
  readonly standsForStop: boolean;
}

/**
 * A deviation that is in force: complete, not expired. Every field that is given must be that of the finding; `part` must
 * be, given or not. So a permit for one part never pays for another, and one without `operationAt` covers the rule
 * on that part alone.
 */
export interface Permit {
  readonly rule: string;
  readonly part?: string;
  readonly operationAt?: string;
  readonly fingerprint?: string;
  readonly deviation: AcceptedDeviation;
}

export function outcomesOf(findings: readonly Finding[]): readonly Outcome[] {
  return findings.map((finding) => ({
    rule: finding.rule,
    pack: finding.pack,
    severity: finding.severity,
    ...(finding.part === undefined ? {} : { part: finding.part }),
    ...(finding.operation === undefined ? {} : { operation: finding.operation }),
    ...(finding.operationAt === undefined ? {} : { operationAt: finding.operationAt }),
    pointer: finding.pointer,
    standsForStop: finding.standsForStop,
    fingerprint: finding.fingerprint,
  }));
}

/** Marks the holds that a permit accepts; the first one that fits counts. Stops, what stands for one, and notes come out as they went in. */
export function applyDeviations(
  findings: readonly Finding[],
  permits: readonly Permit[],
): readonly Finding[] {
  if (permits.length === 0) return findings;
  return findings.map((finding) => {
    if (finding.severity !== 'hold' || finding.standsForStop) return finding;
    const permit = permits.find((candidate) => covers(candidate, finding));
    return permit === undefined ? finding : { ...finding, deviation: permit.deviation };
  });
}

function covers(permit: Permit, finding: Finding): boolean {
  if (permit.rule !== finding.rule || permit.part !== finding.part) return false;
  if (permit.operationAt !== undefined && permit.operationAt !== finding.operationAt) return false;
  return permit.fingerprint === undefined || permit.fingerprint === finding.fingerprint;
}
