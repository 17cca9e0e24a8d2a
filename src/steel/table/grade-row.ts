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
  /** What is usual, not promised: body aluminium after the paint oven. */
  readonly yieldTypicalMpa?: number;
  readonly tensileTypicalMpa?: number;
  /** When the minimum tensile strength holds, as "ordered with T"; left out where it always does. */
  readonly tensileMinOnlyIf?: string;
  readonly state: GradeState;
  readonly mark: GradeMark;
}

/** From the surest to the least sure. */
const marks: readonly GradeMark[] = ['seen', 'memory', 'practice'];

/** The less sure of two marks: an answer is no surer than its weakest link. */
export function worseMark(one: GradeMark, other: GradeMark): GradeMark {
  return marks.indexOf(one) >= marks.indexOf(other) ? one : other;
}

/** Throws an Error for a word that is no mark. */
export function gradeMark(text: string | undefined): GradeMark {
  const mark = marks.find((one) => one === text);
  if (mark === undefined) throw new Error(`not a mark: ${String(text)}`);
  return mark;
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
  const [
    designation,
    standard,
    familyKey,
    yieldMin,
    yieldMax,
    tensileMin,
    tensileMax,
    stateKey,
    mark,
    ...more
  ] = line.split('|');
  const [yieldTypical, tensileTypical, onlyIf] = more;
  const state = stateKey === undefined ? undefined : states[stateKey];
  if (!designation || !standard || !familyKey || state === undefined)
    throw new Error(`not a grade line: ${line}`);
  return {
    designation,
    standard,
    familyKey,
    ...(yieldMin ? { yieldMinMpa: Number(yieldMin) } : {}),
    ...(yieldMax ? { yieldMaxMpa: Number(yieldMax) } : {}),
    ...(tensileMin ? { tensileMinMpa: Number(tensileMin) } : {}),
    ...(tensileMax ? { tensileMaxMpa: Number(tensileMax) } : {}),
    ...(yieldTypical ? { yieldTypicalMpa: Number(yieldTypical) } : {}),
    ...(tensileTypical ? { tensileTypicalMpa: Number(tensileTypical) } : {}),
    ...(onlyIf ? { tensileMinOnlyIf: onlyIf } : {}),
    state,
    mark: gradeMark(mark),
  };
}
