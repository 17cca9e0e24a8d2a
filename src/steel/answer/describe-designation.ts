import { coatingMeaning } from './coating-meaning.ts';
import type { DesignationAnswer, ReadingAnswer, StrengthRange } from './designation-answer.ts';
import { designationKey } from '../designation-key.ts';
import { strengthEquivalents } from './equivalents.ts';
import { nearestGrades } from '../reading/explain-unknown.ts';
import { hardnessOfTensile } from '../strength/hardness.ts';
import type { Material } from '../material.ts';
import { numberMeaning } from './number-meaning.ts';
import type { KnownDesignation, UnknownDesignation } from '../reading/known-designation.ts';
import { readDesignation } from '../reading/read-designation.ts';
import type { StrengthClass } from '../strength-class.ts';
import { steelRank, strengthClasses, strongest } from '../strength-class.ts';
import { thicknessRange } from './thickness-range.ts';
import { weldability } from './weldability.ts';
import type { Weldability } from './weldability.ts';

export interface DescribeOptions {
  /** Look wider for known grades that resemble a text that is none, or one that is read with doubt. */
  readonly find: boolean;
}

/** Longer texts are answered with their beginning: nobody is helped by ten thousand characters handed back. */
const longestGiven = 120;

/** Everything that is known of a designation, for reports. Never throws; a text that is none is answered with the reason. */
export function describeDesignation(text: string, options: DescribeOptions): DesignationAnswer {
  const reading = readDesignation(text);
  const answer = reading.known ? describeKnown(text, reading) : describeUnknown(text, reading);
  if (!options.find || answer.known === 'known' || text.length > longestGiven) return answer;
  const wide = nearestGrades(designationKey(text), true);
  return { ...answer, nearest: [...new Set([...answer.nearest, ...wide])] };
}

const nothing = {
  same_class: false,
  class: null,
  weakest_class: null,
  family: null,
  tensile: null,
  tensile_only_if: null,
  yield: null,
  typical: null,
  coating: null,
  coating_mass: null,
  coating_means: null,
  hardened: null,
  condition: null,
  standard: null,
  mark: null,
  number_means: null,
  thickness: null,
  equivalents: null,
  hardness: null,
  carbon_equivalents: null,
  blank: null,
  laminated: false,
  readings: [],
  note: null,
  warnings: [],
} as const;

function describeUnknown(text: string, { reason, nearest, unusable }: UnknownDesignation): DesignationAnswer {
  return {
    given: shown(text),
    known: 'unknown',
    usable: unusable !== true,
    ...nothing,
    reason,
    nearest: nearest ?? [],
  };
}

function describeKnown(text: string, reading: KnownDesignation): DesignationAnswer {
  const { readings, ambiguity, assumed, warnings } = reading;
  const counts = strongest(readings.map((one) => one.class));
  const first = readings.find((one) => one.class === counts) ?? readings[0];
  const different = counts === undefined;
  // A strength without a grade is converted as the tensile strength, whichever reading counts for the class.
  const tensileMin = different ? undefined : (reading.statedMpa ?? first?.tensileMinMpa);
  // ISO 18265 converts tensile strength alone: of a yield there is no hardness to tell.
  const isTensile =
    readings.some((one) => one.tensileMinMpa !== undefined) && first?.tensileMinOnlyIf === undefined;
  const hardness =
    tensileMin === undefined || !isTensile || !isSteel(counts) ? undefined : hardnessOfTensile(tensileMin);
  const coating = oneOf(readings.map((one) => one.coating));
  const [mass] = readings.flatMap((one) => one.coatingMass ?? []);
  const thickness = first === undefined ? undefined : thicknessRange(first.standard);
  const unlike =
    different && readings.length > 0
      ? `The ${reading.blank === undefined ? 'readings' : 'sheets'} are of different materials (${[...new Set(readings.map((one) => one.class))].join(', ')}), which have no common class.`
      : undefined;
  const reason = [ambiguity, unlike].filter((one) => one !== undefined).join(' ');
  return {
    given: shown(text),
    known: reason === '' ? 'known' : 'ambiguous',
    usable: true,
    same_class: reading.sameClass === true,
    class: counts ?? null,
    weakest_class: different ? null : (weakest(readings) ?? null),
    family: different ? null : (first?.family ?? null),
    tensile: different || first === undefined ? null : range(first.tensileMinMpa, first.tensileMaxMpa),
    tensile_only_if: different ? null : (first?.tensileMinOnlyIf ?? null),
    yield: different || first === undefined ? null : range(first.yieldMinMpa, first.yieldMaxMpa),
    typical: different || first === undefined ? null : typical(first),
    coating: coating ?? null,
    coating_mass: coating === undefined || coating === 'none' ? null : (mass ?? null),
    coating_means: coating === undefined ? null : coatingMeaning(coating),
    hardened: counts === undefined ? null : counts === 'press-hardened',
    condition: first?.condition ?? null,
    standard: first?.standard ?? null,
    mark: first?.mark ?? null,
    number_means: first === undefined ? null : (numberMeaning(first.designation) ?? null),
    thickness: thickness === undefined ? null : { min: thickness.minMm, max: thickness.maxMm, unit: 'mm' },
    equivalents: tensileMin === undefined ? null : strengthEquivalents(tensileMin),
    hardness: hardness ?? null,
    carbon_equivalents: rounded(weldability(readings)),
    blank: reading.blank ?? null,
    laminated: reading.laminated === true,
    readings: readings.map(readingAnswer),
    reason: reason === '' ? null : reason,
    note: assumed ?? null,
    warnings,
    nearest: [],
  };
}

function typical({ yieldTypicalMpa, tensileTypicalMpa }: Material): DesignationAnswer['typical'] {
  if (yieldTypicalMpa === undefined && tensileTypicalMpa === undefined) return null;
  return { yield: yieldTypicalMpa ?? null, tensile: tensileTypicalMpa ?? null, unit: 'MPa' };
}

/** Compositions have two or three decimals; more in an equivalent would feign knowledge. */
function rounded(found: Weldability | undefined): Weldability | null {
  if (found === undefined) return null;
  const round = (value: number): number => Math.round(value * 1000) / 1000;
  return { ...found, ce: round(found.ce), cet: round(found.cet), pcm: round(found.pcm) };
}

function readingAnswer(material: Material): ReadingAnswer {
  return {
    designation: material.designation,
    standard: material.standard,
    class: material.class,
    weakest_class: material.weakestClass ?? null,
    family: material.family,
    tensile: range(material.tensileMinMpa, material.tensileMaxMpa),
    yield: range(material.yieldMinMpa, material.yieldMaxMpa),
    coating: material.coating ?? null,
    condition: material.condition,
    mark: material.mark,
    from: material.from,
  };
}

function range(min: number | undefined, max: number | undefined): StrengthRange | null {
  return min === undefined && max === undefined ? null : { min: min ?? null, max: max ?? null, unit: 'MPa' };
}

function weakest(readings: readonly Material[]): StrengthClass | undefined {
  const ranks = readings.map((one) => steelRank(one.weakestClass ?? one.class));
  if (readings.length === 0 || ranks.includes(undefined)) return readings[0]?.class;
  return strengthClasses[Math.min(...ranks.map((rank) => rank ?? 0))];
}

function isSteel(strengthClass: StrengthClass | undefined): boolean {
  return strengthClass !== undefined && steelRank(strengthClass) !== undefined;
}

/** The coating that all sheets have; undefined where they differ. */
function oneOf<T>(values: readonly (T | undefined)[]): T | undefined {
  const [first] = values;
  return values.every((one) => one === first) ? first : undefined;
}

function shown(text: string): string {
  return text.length > longestGiven ? `${text.slice(0, longestGiven)}…` : text;
}
