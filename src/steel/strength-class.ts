export const strengthClasses = [
  'mild',
  'high-strength',
  'advanced high-strength',
  'ultra-high-strength',
  'press-hardened',
  'aluminium',
  'stainless',
  'magnesium',
  'composite',
  'plastic',
] as const;

export type StrengthClass = (typeof strengthClasses)[number];

const steelLadder: readonly StrengthClass[] = strengthClasses.slice(0, 5);

/** Place of a steel class on the ladder, 0 for mild to 4 for press-hardened; undefined for a material off the ladder. */
export function steelRank(strengthClass: StrengthClass): number | undefined {
  const rank = steelLadder.indexOf(strengthClass);
  return rank < 0 ? undefined : rank;
}

/**
 * The strongest of some classes. Undefined for none, and for different materials that have no common ladder (mild
 * steel beside aluminium): to pick either would be a guess.
 */
export function strongest(classes: readonly StrengthClass[]): StrengthClass | undefined {
  const [first] = classes;
  if (first === undefined || classes.every((one) => one === first)) return first;
  let top = -1;
  for (const one of classes) {
    const rank = steelRank(one);
    if (rank === undefined) return undefined;
    top = Math.max(top, rank);
  }
  return steelLadder[top];
}

/** From here a steel of unknown family may be press-hardened as well as martensitic, tensile strength in MPa. Common practice. */
export const pressHardenedFromMpa = 1200;

/**
 * Class of a steel of unknown family by its minimum tensile strength in MPa. The bounds 340, 590 and 980 are steps of
 * the tensile series that sheet standards share; that the classes begin there is common practice, no standard says so.
 * Press-hardened cannot be told from a strength. Throws a RangeError unless the strength is a positive number.
 */
export function classOfTensile(tensileMinMpa: number): StrengthClass {
  if (!(tensileMinMpa > 0)) throw new RangeError(`a tensile strength is above 0 MPa, got ${tensileMinMpa}`);
  if (tensileMinMpa >= 980) return 'ultra-high-strength';
  if (tensileMinMpa >= 590) return 'advanced high-strength';
  if (tensileMinMpa >= 340) return 'high-strength';
  return 'mild';
}
