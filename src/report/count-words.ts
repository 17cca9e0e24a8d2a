import type { Verdict } from '../judge/verdict.ts';
import type { SeverityCounts } from './plan-report.ts';

/** `1 stop`, `no holds`, `3 plans`. */
export function countOf(count: number, word: string): string {
  return `${count === 0 ? 'no' : String(count)} ${word}${count === 1 ? '' : 's'}`;
}

/** `3 stops, no holds, 1 note`. */
export function severityCounts({ stop, hold, note, accepted }: SeverityCounts): string {
  const taken = accepted === 0 ? '' : ` (${String(accepted)} accepted by deviation)`;
  return `${countOf(stop, 'stop')}, ${countOf(hold, 'hold')}${taken}, ${countOf(note, 'note')}`;
}

/** `1 stopped, 2 not judged, 3 cleared`: the verdicts that occur, the ones that need looking at first. */
export function verdictCounts(counts: Readonly<Record<Verdict, number>>): string {
  return (['stopped', 'not judged', 'held', 'cleared'] as const)
    .filter((verdict) => counts[verdict] > 0)
    .map((verdict) => `${String(counts[verdict])} ${verdict}`)
    .join(', ');
}
