import type { PlanShown } from '../../facts/plan-shown.ts';
import type { Severity } from '../../judge/finding.ts';
import type { PlacedFinding } from '../plan-report.ts';

/** The sections that findings stand in when they concern no part. */
export type Section = 'plan' | 'documents' | 'measuring' | 'steps' | 'sign-off';

/** A finding with the number that the sheet calls it by: Stop 1, Hold 1, Hold 2 … */
export interface NumberedFinding extends PlacedFinding {
  readonly number: number;
}

export interface FindingPlaces {
  readonly inSection: (section: Section) => readonly NumberedFinding[];
  /** By the pointer of the part. */
  readonly atPart: (at: string) => readonly NumberedFinding[];
  /** In the order of the page. */
  readonly all: readonly NumberedFinding[];
}

/** Every finding once: beside its part, else in the section of the plan that it points into. Numbers run down the page. */
export function placeFindings(findings: readonly PlacedFinding[], parts: PlanShown['parts']): FindingPlaces {
  const homes = new Map<string, PlacedFinding[]>();
  const home = homeFinder(parts);
  for (const placed of findings) {
    const key = home(placed);
    const there = homes.get(key);
    if (there === undefined) homes.set(key, [placed]);
    else there.push(placed);
  }
  const counts: Record<Severity, number> = { stop: 0, hold: 0, note: 0 };
  const numbered = new Map<string, readonly NumberedFinding[]>();
  const order = ['plan', 'documents', ...parts.map(({ at }) => at), 'measuring', 'steps', 'sign-off'];
  for (const key of order) {
    const here = homes.get(key) ?? [];
    numbered.set(
      key,
      here.map((placed) => {
        counts[placed.finding.severity] += 1;
        return { ...placed, number: counts[placed.finding.severity] };
      }),
    );
  }
  const at = (key: string): readonly NumberedFinding[] => numbered.get(key) ?? [];
  return { inSection: at, atPart: at, all: order.flatMap(at) };
}

/** Part pointers begin with a slash, section names do not: one map holds both. */
function homeFinder(parts: PlanShown['parts']): (placed: PlacedFinding) => string {
  const places = new Set(parts.map(({ at }) => at));
  const byId = new Map<string, string>();
  for (const { id, at } of parts) if (id !== undefined && !byId.has(id)) byId.set(id, at);
  return ({ finding: { pointer, part, operationAt } }) => {
    for (const one of [operationAt, pointer]) {
      const [own] = /^\/parts\/\d+(?=\/|$)/u.exec(one ?? '') ?? [];
      if (own !== undefined && places.has(own)) return own;
    }
    return (part === undefined ? undefined : byId.get(part)) ?? sectionOf(pointer);
  };
}

function sectionOf(pointer: string): Section {
  switch (pointer.split('/')[1]) {
    case 'references':
      return 'documents';
    case 'measurements':
      return 'measuring';
    case 'make_safe':
    case 'finish':
    case 'verify':
    case 'hold_points':
      return 'steps';
    case 'deviations':
    case 'sign_off':
      return 'sign-off';
    default:
      return 'plan';
  }
}
