import type { Coating } from '../coating/coating.ts';
import type { ColdWork } from '../cold-work.ts';
import { coldWorkOf } from '../cold-work.ts';
import type { Contradiction } from './contradictions.ts';
import { contradictions } from './contradictions.ts';
import type { DesignationReading, Material } from '../reading/read-designation.ts';
import { narrowClassWord } from './narrow-class-word.ts';
import { readDesignation } from '../reading/read-designation.ts';
import type { StrengthClass } from '../strength-class.ts';
import { classOfTensile, pressHardenedFromMpa, steelRank, strongest } from '../strength-class.ts';
import type { StrengthDoubt } from './strength-doubt.ts';
import { strengthDoubt } from './strength-doubt.ts';
import { aboveLimits, strengthFits } from '../strength/strength-fit.ts';

export interface StatedMaterial {
  readonly grade?: string;
  readonly tensileMpa?: number;
  /** The most that the digits may stand for, where the trade drops decimals; `tensileMpa` when left out. */
  readonly tensileUpToMpa?: number;
  readonly class?: StrengthClass;
}

export interface SettledMaterial {
  readonly class?: StrengthClass;
  readonly family?: string;
  readonly tensileMinMpa?: number;
  readonly tensileMaxMpa?: number;
  readonly coating?: Coating;
  readonly readings: readonly Material[];
  /** What decided the class: the grade table, the stated class, or the band of the stated strength. */
  readonly provenance: 'table' | 'stated' | 'computed';
  /** Why the class is unknown, and what would settle it; present exactly when `class` is not. */
  readonly reason?: string;
  /** Why the grade can be read in more than one way, not surely, or not at all, and what would settle it. */
  readonly ambiguity?: string;
  /** True where a grade is stated that nobody can read, and the class rests on what stands beside it. */
  readonly unreadable?: true;
  /** True where such a grade looks mistyped, or stands for nothing at all (`?`, `TBD`): what the author meant has to be asked. */
  readonly mistyped?: true;
  /** True where the grade is read by the way its standard forms names, without a row of the table, and nothing else is open. */
  readonly byForm?: true;
  readonly coldWork: ColdWork;
  readonly strengthDoubt?: StrengthDoubt;
  /** True for a grade that stands for sheets or zones of different strength: a tailored blank, a soft zone. */
  readonly severalStrengths?: true;
  /** Two sheets with a plastic core between them. */
  readonly laminated?: true;
  readonly notes: readonly string[];
  readonly contradictions: readonly Contradiction[];
}

/** Enough for the steels of a folder of plans; beyond it the oldest answers go, so that memory stays flat. */
const mostKept = 256;
const answers = new Map<string, SettledMaterial>();

/**
 * Settles what a part is made of from its stated grade, tensile strength (MPa) and class. The strongest of them counts;
 * what cannot be true together is told, not decided.
 *
 * The answer hangs on what is stated alone and is kept: reading a designation tries its whole grammar, and the parts of a
 * body, and the plans of a folder, name the same few steels again and again.
 */
export function settleMaterial(stated: StatedMaterial): SettledMaterial {
  const { grade, tensileMpa, tensileUpToMpa } = stated;
  const key = JSON.stringify([grade, String(tensileMpa), String(tensileUpToMpa), stated.class]);
  const before = answers.get(key);
  if (before !== undefined) return before;
  const answer = settle(stated);
  const [oldest] = answers.keys();
  if (answers.size >= mostKept && oldest !== undefined) answers.delete(oldest);
  answers.set(key, answer);
  return answer;
}

function settle(stated: StatedMaterial): SettledMaterial {
  const notes: string[] = [];
  const tensileMpa = usableStrength(stated, notes);
  const reading = stated.grade === undefined ? undefined : readDesignation(stated.grade);
  const read = reading?.known === true ? reading.readings : [];
  const readings = read.map((one) => narrowClassWord(one, tensileMpa, stated.class));
  // A strength beside a class word answers what the word leaves open; a second word of the trade only repeats the question.
  const narrowed = readings.some((one, index) => one !== read[index]);
  const answered = narrowed && tensileMpa !== undefined;
  if (reading?.known === true && !narrowed && reading.note !== undefined) notes.push(reading.note);

  const gradeClass = strongest(readings.map((one) => one.class));
  const bandClass =
    tensileMpa === undefined
      ? undefined
      : bandThatCounts(readings, tensileMpa, Math.max(tensileMpa, stated.tensileUpToMpa ?? 0), stated.class);
  // Readings of unlike metals have no strongest; a class word beside them decides nothing.
  const ofGrades = gradeClass === undefined ? readings.map((one) => one.class) : [gradeClass];
  const candidates = [...ofGrades, stated.class, bandClass].filter((one) => one !== undefined);
  const settled = strongest(candidates);
  const found = contradictions({
    readings,
    ...(tensileMpa === undefined ? {} : { tensileMpa }),
    ...(stated.class === undefined ? {} : { class: stated.class }),
  });
  const unreadable = settled !== undefined && reading?.known === false;
  const ambiguity =
    reading?.known === true
      ? answered || reading.sameClass === true
        ? undefined
        : reading.ambiguity
      : unreadable
        ? reading.reason
        : undefined;
  if (
    settled === 'ultra-high-strength' &&
    readings.length === 0 &&
    (tensileMpa ?? 0) >= pressHardenedFromMpa
  ) {
    notes.push('The strength alone does not tell martensitic from press-hardened; state the grade.');
  }

  const provenance = settled === gradeClass ? 'table' : settled === stated.class ? 'stated' : 'computed';
  const disputes = (what: 'grade' | 'strength'): boolean => found.some((one) => one.between.includes(what));
  const ofGrade = readings.find((one) => one.class === (disputes('grade') ? settled : gradeClass));
  // A strength in dispute is passed on only if it is the stronger side of the dispute.
  const counts = !disputes('strength') || bandClass === settled;
  const doubt =
    tensileMpa === undefined || disputes('strength') || answered
      ? undefined
      : strengthDoubt(readings, tensileMpa, gradeClass);
  return {
    ...(settled === undefined
      ? { reason: whyUnknown(reading, candidates, notes) }
      : { class: settled, ...(ofGrade === undefined ? {} : { family: ofGrade.family }) }),
    ...tensileRange(ofGrade, counts ? tensileMpa : undefined),
    ...(readings[0]?.coating === undefined ? {} : { coating: readings[0].coating }),
    readings,
    provenance: settled === undefined ? 'stated' : provenance,
    ...(ambiguity === undefined ? {} : { ambiguity }),
    ...(reading?.known === true && (reading.blank !== undefined || reading.softZone === true)
      ? { severalStrengths: true }
      : {}),
    ...(unreadable ? { unreadable } : {}),
    ...(reading?.known === false && reading.unusable === true ? { mistyped: true } : {}),
    ...(reading?.known === true && reading.byForm === true ? { byForm: true } : {}),
    coldWork: coldWorkOf(readings, settled, tensileMpa),
    ...(doubt === undefined ? {} : { strengthDoubt: doubt }),
    ...(reading?.known === true && reading.laminated === true ? { laminated: true } : {}),
    notes,
    contradictions: found,
  };
}

/** Below these no sheet stands, in MPa: the softest steels of the grade table begin at 250, soft aluminium at about 100. */
const leastSteelMpa = 200;
const leastMetalMpa = 60;

/** A strength that some sheet has. A slip of the unit (psi for ksi) must not make the strongest steel the softest. */
function usableStrength({ tensileMpa, class: stated }: StatedMaterial, notes: string[]): number | undefined {
  if (tensileMpa === undefined) return undefined;
  const isSteel = stated === undefined || steelRank(stated) !== undefined;
  if (tensileMpa >= (isSteel ? leastSteelMpa : leastMetalMpa)) return tensileMpa;
  notes.push(
    `No sheet has a tensile strength of ${Math.round(tensileMpa * 10) / 10} MPa; it was left out of account. Is the unit right (ksi, not psi)?`,
  );
  return undefined;
}

/**
 * The class that a stated strength adds. It decides where the family is unknown and where it does not fit the grade; a
 * strength that fits leaves the class to the family, but from 980 MPa steel is never weaker than ultra-high-strength.
 */
function bandThatCounts(
  readings: readonly Material[],
  tensileMpa: number,
  upToMpa: number,
  statedClass: StrengthClass | undefined,
): StrengthClass | undefined {
  const band = classOfTensile(upToMpa);
  const offLadder = (one: StrengthClass): boolean => steelRank(one) === undefined;
  if (readings.length > 0) {
    if (!readings.some((one) => strengthFits(one, tensileMpa))) return band;
    if (readings.some((one) => offLadder(one.class))) return undefined;
    const above = readings.every((one) => aboveLimits(one, tensileMpa));
    return above || band === 'ultra-high-strength' ? band : undefined;
  }
  if (statedClass === undefined || !offLadder(statedClass)) return band;
  return contradictions({ readings, tensileMpa, class: statedClass }).length > 0 ? band : undefined;
}

function tensileRange(
  material: Material | undefined,
  tensileMpa: number | undefined,
): Pick<SettledMaterial, 'tensileMinMpa' | 'tensileMaxMpa'> {
  const lowest = Math.max(material?.tensileMinMpa ?? 0, tensileMpa ?? 0);
  const highest = material?.tensileMaxMpa;
  return {
    ...(lowest > 0 ? { tensileMinMpa: lowest } : {}),
    ...(highest !== undefined && highest >= lowest ? { tensileMaxMpa: highest } : {}),
  };
}

function whyUnknown(
  reading: DesignationReading | undefined,
  candidates: readonly StrengthClass[],
  notes: readonly string[],
): string {
  if (candidates.length > 0) {
    const names = [...new Set(candidates)].join(', ');
    return `What is stated points to different materials (${names}); state the grade on the drawing or the spare part.`;
  }
  if (reading?.known === false) {
    const near = reading.nearest ?? [];
    return near.length === 0 ? reading.reason : `${reading.reason} Nearest known: ${near.join(', ')}.`;
  }
  const [unusable] = notes;
  if (unusable !== undefined) return unusable;
  return 'Neither grade nor strength nor class is stated; look up the grade in the maker’s document or on the spare part.';
}
