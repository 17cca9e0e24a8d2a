import type { Verdict } from '../judge/verdict.ts';

/** `1 stop`, `no holds`, `3 plans`. */
export function countOf(count: number, word: string): string {
  return `${count === 0 ? 'no' : String(count)} ${word}${count === 1 ? '' : 's'}`;
}

/** `1 stopped, 2 not judged, 3 cleared`: the verdicts that occur, the ones that need looking at first. */
export function verdictCounts(counts: Readonly<Record<Verdict, number>>): string {
  return (['stopped', 'not judged', 'held', 'cleared'] as const)
    .filter((verdict) => counts[verdict] > 0)
    .map((verdict) => `${String(counts[verdict])} ${verdict}`)
    .join(', ');
}
