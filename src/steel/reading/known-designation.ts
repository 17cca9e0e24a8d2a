import type { Material } from '../material.ts';

export interface KnownDesignation {
  readonly known: true;
  /** One or more; several when the name is ambiguous or names several sheets, the strongest first. */
  readonly readings: readonly Material[];
  /** Why the name can be read in more than one way, or not surely, and what would settle it. The strongest reading counts. */
  readonly ambiguity?: string;
  /**
   * True where standards that share the name, or whether its one number is a yield, are all that leaves it open, and every reading has
   * the same class and family: nothing that may be done to the part hangs on which one it is.
   */
  readonly sameClass?: true;
  /**
   * True where a missing row of the table is all that leaves it open: the standard forms such names, and so class and family are told,
   * but nobody looked its figures up.
   */
  readonly byForm?: true;
  /** What was taken for granted, and what the strongest reading hides. Does not repeat the ambiguity. */
  readonly assumed?: string;
  /** `assumed` and `ambiguity` in one text. */
  readonly note?: string;
  /** What such a name is easily mistaken for; of use to a reader, of no weight for the class. */
  readonly warnings: readonly string[];
  /** The sheets of a tailored blank, as written. */
  readonly blank?: readonly string[];
  readonly laminated?: true;
  readonly softZone?: true;
  /** A strength without a grade, in MPa. */
  readonly statedMpa?: number;
}

export interface UnknownDesignation {
  readonly known: false;
  readonly reason: string;
  readonly nearest?: readonly string[];
  /** True where the text cannot be a designation at all, whatever the tables hold. */
  readonly unusable?: true;
}

export type DesignationReading = KnownDesignation | UnknownDesignation;

/** `assumed` and `note` out of the sentences that say what was taken for granted. */
export function noteOf(
  assumed: readonly string[],
  ambiguity: string | undefined,
): Pick<KnownDesignation, 'assumed' | 'note'> {
  const all = ambiguity === undefined ? assumed : [...assumed, ambiguity];
  return {
    ...(assumed.length > 0 ? { assumed: assumed.join(' ') } : {}),
    ...(all.length > 0 ? { note: all.join(' ') } : {}),
  };
}
