import type { MassNotation } from '../coating/coating-mass.ts';
import type { Coating } from '../coating/coating.ts';
import type { GradeState } from '../table/grade-row.ts';

/** The named groups of a matched form. */
export type NameParts = Readonly<Record<string, string | undefined>>;

/** What a name says by the way it is formed. Strengths in MPa. */
export interface NameContent {
  /** Key of the family table; `unnamed` where the letters that tell it are missing. */
  readonly familyKey: string;
  readonly yieldMinMpa?: number;
  readonly tensileMinMpa?: number;
  /** What is usual, not promised: the nominal class of a press-hardened name. */
  readonly tensileTypicalMpa?: number;
  readonly state?: GradeState;
  /** The coating that the letters of the product tell: JAC is galvannealed. */
  readonly coating?: Coating;
  /** True where speakers differ whether the one number is the yield or the tensile strength. */
  readonly either?: true;
  /** Nothing but the family hangs on the name, so a name without a row of the table is as sure as one with it. */
  readonly sure?: boolean;
}

/** A name that has the form and yet cannot be right. */
export interface NameFault {
  readonly fault: string;
}

/** One rule by which a standard forms its names. */
export interface NameForm {
  /** Standards that form names so, the usual one first; empty for the wording of the trade. */
  readonly standards: readonly string[];
  /** Matches a whole comparison key. Every repetition in it is bounded, so that its time is that of one pass. */
  readonly form: RegExp;
  /** Undefined where the figures are none that such names have. */
  readonly read: (parts: NameParts) => NameContent | NameFault | undefined;
  /** The name is too short to be sure of without its standard. */
  readonly onlyNamed?: true;
  /** How the standard writes the mass of a coating; European where it is left out. */
  readonly mass?: MassNotation;
}

/** A strength out of a name, in MPa; undefined for figures that no sheet's name has. Steps of 5 are common to all standards. */
export function figure(text: string | undefined, least: number, most: number): number | undefined {
  const value = Number(text);
  return value >= least && value <= most && value % 5 === 0 ? value : undefined;
}

export function ofTensile(familyKey: string | undefined, text: string | undefined): NameContent | undefined {
  const tensileMinMpa = figure(text, 260, 2200);
  return familyKey === undefined || tensileMinMpa === undefined ? undefined : { familyKey, tensileMinMpa };
}

export function ofYield(familyKey: string | undefined, text: string | undefined): NameContent | undefined {
  const yieldMinMpa = figure(text, 100, 1500);
  return familyKey === undefined || yieldMinMpa === undefined ? undefined : { familyKey, yieldMinMpa };
}

/** A press-hardened name: its number is a nominal class after hardening, so it gives no minimum. */
export function ofNominal(text: string | undefined): NameContent | undefined {
  const tensileTypicalMpa = figure(text, 400, 2200);
  return tensileTypicalMpa === undefined
    ? undefined
    : { familyKey: 'press_hardening', tensileTypicalMpa, state: 'hardened' };
}

/** Dual-phase sheet of the standards has at least 1.35 times its minimum yield; below this a figure is misprinted. */
const leastDualPhaseRatio = 1.25;

/** A name with both strengths: they must stand in their order, and far enough apart for the family. */
export function ofPair(
  familyKey: string | undefined,
  yieldText: string | undefined,
  tensileText: string | undefined,
  order: string,
): NameContent | NameFault | undefined {
  const yieldMinMpa = figure(yieldText, 100, 2200);
  const tensileMinMpa = figure(tensileText, 100, 2200);
  if (familyKey === undefined || yieldMinMpa === undefined || tensileMinMpa === undefined) return undefined;
  if (yieldMinMpa >= tensileMinMpa) {
    return {
      fault: `gives a yield (${yieldMinMpa} MPa) that is not below its tensile strength (${tensileMinMpa} MPa); ${order}. Read the drawing again.`,
    };
  }
  if (familyKey.startsWith('dual_phase') && tensileMinMpa / yieldMinMpa < leastDualPhaseRatio) {
    return {
      fault: `has its yield (${yieldMinMpa} MPa) too near its tensile strength (${tensileMinMpa} MPa) for dual-phase steel; one of the figures is probably misprinted. Read the drawing again.`,
    };
  }
  return { familyKey, yieldMinMpa, tensileMinMpa };
}

/** The value of a key in a small table that came from user text. */
export function entry(table: Readonly<Record<string, string>>, key: string | undefined): string | undefined {
  return key !== undefined && Object.hasOwn(table, key) ? table[key] : undefined;
}
