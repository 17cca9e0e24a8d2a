/** By the letters alone, so that neither the place of a thing in the plan nor the locale decides. */
export function inOrder(one: string, other: string): number {
  return one < other ? -1 : one > other ? 1 : 0;
}
