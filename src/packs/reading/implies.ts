import type { Bounds, Line, Test } from '../pack.ts';

/** Whether the first lines, when all of them hold, leave no case in which one of the others does not. */
export function implies(given: readonly Line[], asked: readonly Line[]): boolean {
  return asked.every(({ fact, test }) =>
    given.some((line) => line.fact === fact && testImplies(line.test, test)),
  );
}

function testImplies(given: Test, asked: Test): boolean {
  // Whatever asks a value finds one: only a fact that is known passes.
  if ('known' in asked) return 'known' in given ? given.known === asked.known : asked.known;
  if ('anyOf' in given) return 'anyOf' in asked && given.anyOf.every((word) => asked.anyOf.includes(word));
  return 'range' in given && 'range' in asked && isWithin(given.range, asked.range);
}

function isWithin(inner: Bounds, outer: Bounds): boolean {
  const { min, max, above, below } = outer;
  const [low, high] = [inner.min ?? inner.above, inner.max ?? inner.below];
  if (min !== undefined && (low === undefined || low < min)) return false;
  if (above !== undefined && (low === undefined || low < above || (low === above && inner.above !== low)))
    return false;
  if (max !== undefined && (high === undefined || high > max)) return false;
  return !(
    below !== undefined &&
    (high === undefined || high > below || (high === below && inner.below !== high))
  );
}
