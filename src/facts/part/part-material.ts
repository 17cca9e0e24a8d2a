import type { Part } from '../../generated/plan-types.ts';
import type { ColdWork } from '../../steel/cold-work.ts';
import { settleMaterial } from '../../steel/settling/settle-material.ts';
import type { SettledMaterial, StatedMaterial } from '../../steel/settling/settle-material.ts';
import { spokenUpTo } from '../../steel/strength/spoken-strength.ts';
import { strongest } from '../../steel/strength-class.ts';
import { quantityOf } from '../quantity-of.ts';

type Zone = NonNullable<Part['zones']>[number];

/**
 * What a part is made of: the strongest of its zones where it has several. A zone that states no material of its own is of the
 * part's. Where the material of a zone, or of what the zones leave over, is not known, that of the part is not, unless
 * another is the strongest that there is.
 */
export function settlePartMaterial(part: Part): SettledMaterial {
  const whole = settleMaterial(statedMaterial(part));
  const stated = part.zones ?? [];
  if (stated.length === 0) return whole;
  const zones = stated.map((zone) => (statesNothing(zone) ? whole : settleMaterial(statedMaterial(zone))));
  // Two zones or more may be all that there is of the part; a single one leaves something over.
  const covered = statesNothing(part) && stated.length > 1;
  const all = covered ? zones : [...new Set([whole, ...zones])];
  const ambiguity = all.flatMap((one) => (one.ambiguity === undefined ? [] : [one.ambiguity])).join(' ');
  return {
    ...whatCounts(all),
    ...(ambiguity === '' ? {} : { ambiguity }),
    ...(all.some((one) => one.unreadable === true) ? { unreadable: true } : {}),
    ...(all.some((one) => one.mistyped === true) ? { mistyped: true } : {}),
    coldWork: coldWorkOfAll(all.map((one) => one.coldWork)),
    ...doubtOfAll(all),
    contradictions: [whole, ...zones].flatMap((one) => one.contradictions),
  };
}

/** What the zone is made of that an operation names; undefined where the part has no such zone, or it names no grade of its own. */
export function zoneMaterial(part: Part, name: string | undefined): SettledMaterial | undefined {
  const zone = name === undefined ? undefined : part.zones?.find((one) => one.name === name);
  return zone?.grade === undefined ? undefined : settleMaterial(statedMaterial(zone));
}

function whatCounts(all: readonly SettledMaterial[]): SettledMaterial {
  const hardest = all.find((one) => one.class === 'press-hardened');
  const open = all.find((one) => one.class === undefined);
  const [first] = all;
  const counts = hardest ?? open;
  if (counts !== undefined) return counts;
  const top = strongest(all.flatMap((one) => one.class ?? []));
  const strong = all.find((one) => one.class === top);
  if (top !== undefined && strong !== undefined) return strong;
  // Steel beside aluminium or a composite: neither stands for the other.
  return {
    readings: [],
    provenance: 'stated',
    reason: `The part is of several materials (${[...new Set(all.map((one) => one.class))].join(', ')}); none of them stands for the whole.`,
    coldWork: coldWorkOfAll(all.map((one) => one.coldWork)),
    notes: first?.notes ?? [],
    contradictions: [],
  };
}

/** The hardest zone counts, and an open one before a soft one. */
function coldWorkOfAll(all: readonly ColdWork[]): ColdWork {
  const worked = all.filter((one) => one.is === true);
  const strengths = worked.flatMap((one) => one.toMpa ?? []);
  if (worked.length > 0)
    return strengths.length < worked.length ? { is: true } : { is: true, toMpa: Math.max(...strengths) };
  return all.find((one) => one.is === 'unknown') ?? { is: false };
}

function doubtOfAll(all: readonly SettledMaterial[]): Pick<SettledMaterial, 'strengthDoubt'> {
  const doubts = all.flatMap((one) => one.strengthDoubt ?? []);
  const doubt = doubts.find((one) => one.changesClass) ?? doubts[0];
  return doubt === undefined ? {} : { strengthDoubt: doubt };
}

function statesNothing(from: Pick<Part | Zone, 'grade' | 'strength' | 'class'>): boolean {
  return from.grade === undefined && from.strength === undefined && from.class === undefined;
}

function statedMaterial(from: Pick<Part | Zone, 'grade' | 'strength' | 'class'>): StatedMaterial {
  const tensileMpa = quantityOf(from.strength, 'stress');
  const tensileUpToMpa = spokenUpToMpa(from.strength);
  return {
    ...(from.grade === undefined ? {} : { grade: from.grade }),
    ...(tensileMpa === undefined ? {} : { tensileMpa }),
    ...(tensileUpToMpa === undefined ? {} : { tensileUpToMpa }),
    ...(from.class === undefined ? {} : { class: from.class }),
  };
}

/** Whole ksi and kgf/mm² are a number cut off or rounded. */
function spokenUpToMpa(strength: string | undefined): number | undefined {
  const [, whole, unit] = /^\s*(\d{2,3})\s*(ksi|kgf\/mm(?:2|²|\^2))\s*$/iu.exec(strength ?? '') ?? [];
  return whole === undefined || unit === undefined
    ? undefined
    : quantityOf(`${String(spokenUpTo(Number(whole)))} ${unit}`, 'stress');
}
