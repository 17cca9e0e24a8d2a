import type { PlacedFinding } from './plan-report.ts';

/** `, against line 98`: the other lines of a contradiction, behind the line of the finding; nothing where it has one line. */
export function againstLines({ place, against = [] }: PlacedFinding): string {
  const lines = [...new Set(against.map(({ line }) => line))].filter((line) => line !== place.line);
  const [first, ...more] = lines.sort((a, b) => a - b).map(String);
  if (first === undefined) return '';
  const last = more.pop();
  return last === undefined
    ? `, against line ${first}`
    : `, against lines ${[first, ...more].join(', ')} and ${last}`;
}
