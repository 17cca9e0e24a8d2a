/** Yes, no, or undefined for cannot tell. */
export type TriState = boolean | undefined;

/** Yes when one is yes; cannot tell when none is yes and one cannot be told. */
export function anyYes(values: Iterable<TriState>): TriState {
  let answer: TriState = false;
  for (const value of values) {
    if (value === true) return true;
    if (value === undefined) answer = undefined;
  }
  return answer;
}

/** No when one is no; cannot tell when none is no and one cannot be told. */
export function allYes(values: Iterable<TriState>): TriState {
  let answer: TriState = true;
  for (const value of values) {
    if (value === false) return false;
    if (value === undefined) answer = undefined;
  }
  return answer;
}
