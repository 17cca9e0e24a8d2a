/**
 * Order of two JSON pointers: step by step, list places as numbers (`/parts/2` before `/parts/10`), keys by code unit, an
 * entry before what is in it. It stands in for the order in the file, which `judge` does not know.
 */
export function comparePointers(a: string, b: string): number {
  if (a === b) return 0;
  const left = a.split('/');
  const right = b.split('/');
  const shared = Math.min(left.length, right.length);
  for (let step = 0; step < shared; step += 1) {
    const order = compareSteps(left[step] ?? '', right[step] ?? '');
    if (order !== 0) return order;
  }
  return left.length - right.length;
}

function compareSteps(a: string, b: string): number {
  if (a === b) return 0;
  if (isListPlace(a) && isListPlace(b)) return Number(a) - Number(b);
  return a < b ? -1 : 1;
}

function isListPlace(step: string): boolean {
  return /^(?:0|[1-9][0-9]{0,8})$/u.test(step);
}
