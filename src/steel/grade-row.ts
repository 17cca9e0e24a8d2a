export type GradeState = 'as delivered' | 'hardened' | 'cold hardened' | 'paint baked' | 'unknown';

export type GradeMark = 'seen' | 'memory' | 'practice';

/** One grade as a standard lists it in one state. Strengths in MPa; a missing one is not stated, or not certain. */
export interface GradeRow {
  readonly designation: string;
  readonly standard: string;
  readonly familyKey: string;
  readonly yieldMinMpa?: number;
  readonly yieldMaxMpa?: number;
  readonly tensileMinMpa?: number;
  readonly tensileMaxMpa?: number;
  readonly state: GradeState;
  readonly mark: GradeMark;
}

const states: Readonly<Record<string, GradeState>> = {
  as_delivered: 'as delivered',
  hardened: 'hardened',
  cold_hardened: 'cold hardened',
  paint_baked: 'paint baked',
  not_applicable: 'unknown',
};

/** Reads a line of the packed grade table. Throws an Error for a line that is not one. */
export function gradeRow(line: string): GradeRow {
  const [designation, standard, familyKey, yieldMin, yieldMax, tensileMin, tensileMax, stateKey, mark] =
    line.split('|');
  const state = stateKey === undefined ? undefined : states[stateKey];
  if (!designation || !standard || !familyKey || state === undefined)
    throw new Error(`not a grade line: ${line}`);
  if (mark !== 'seen' && mark !== 'memory' && mark !== 'practice') throw new Error(`not a mark: ${line}`);
  return {
    designation,
    standard,
    familyKey,
    ...(yieldMin ? { yieldMinMpa: Number(yieldMin) } : {}),
    ...(yieldMax ? { yieldMaxMpa: Number(yieldMax) } : {}),
    ...(tensileMin ? { tensileMinMpa: Number(tensileMin) } : {}),
    ...(tensileMax ? { tensileMaxMpa: Number(tensileMax) } : {}),
    state,
    mark,
  };
}
