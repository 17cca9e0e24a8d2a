/** What each of these has as its own model or threshold. */
export type StrengthKind =
  | 'press-hardened'
  | 'martensitic'
  | 'dual-phase'
  | 'complex-phase'
  | 'TRIP'
  | 'bake-hardened'
  | 'high-strength low-alloy'
  | 'mild'
  | 'aluminium 6xxx T4'
  | 'aluminium 6xxx T6'
  | 'aluminium 5xxx O'
  | 'aluminium 5xxx H'
  | 'aluminium 7xxx';

/** The part before the heat. What is left out is taken as each model says. */
export interface Delivered {
  /** Vickers hardness of the finished, paint-baked part. */
  readonly hv?: number;
  readonly tensileMpa?: number;
  /** Proof strength as the mill delivers it, before forming and paint baking. */
  readonly proofMpa?: number;
}

/** Cold, after the heat, in per cent of before. */
export interface StrengthRange {
  readonly state: 'unchanged' | 'softened';
  readonly of: 'tensile strength' | 'proof strength';
  /** The safe end. */
  readonly leastPercent: number;
  readonly mostPercent: number;
  /** The greatest loss that must be reckoned with: 100 less the least. */
  readonly lossPercent: number;
  /** Only when the strength before is known or follows from the hardness. */
  readonly leastMpa?: number;
  readonly mostMpa?: number;
  readonly howSure: HowSure;
  readonly note: string;
}

export type HowSure = 'measured scatter' | 'published figure' | 'common practice' | 'from memory';

export type StrengthLeft =
  | StrengthRange
  /** Hotter than the start of austenite: what it becomes on cooling is not a matter of softening. */
  | { readonly state: 're-transformed'; readonly reason: string }
  | { readonly state: 'unknown'; readonly reason: string };

/** A range from its two ends; `beforeMpa` is the strength that the per cent are of. */
export function strengthRange(
  range: Omit<StrengthRange, 'state' | 'lossPercent' | 'leastMpa' | 'mostMpa'>,
  beforeMpa?: number,
): StrengthRange {
  const { leastPercent, mostPercent } = range;
  return {
    state: leastPercent === 100 ? 'unchanged' : 'softened',
    lossPercent: 100 - leastPercent,
    ...range,
    ...(beforeMpa === undefined
      ? {}
      : { leastMpa: (leastPercent / 100) * beforeMpa, mostMpa: (mostPercent / 100) * beforeMpa }),
  };
}

export const reTransformed: StrengthLeft = {
  state: 're-transformed',
  reason: 'it is heated past the start of transformation (about 720 °C): what strength is left is unknown',
};
