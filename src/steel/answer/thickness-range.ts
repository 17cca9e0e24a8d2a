export interface ThicknessRange {
  readonly minMm: number;
  readonly maxMm: number;
  /** The standard whose scope it is. */
  readonly standard: string;
}

/** Thickness of sheet in mm for which a standard is written, from memory of its scope, but for EN 10346 (its published scope: up to 3 mm, to 6.5 mm by agreement). Standards of uncertain scope are left out. */
const scopes: readonly (readonly [standard: RegExp, minMm: number, maxMm: number])[] = [
  [/^EN 10130/, 0.35, 3],
  [/^EN 10268/, 0.35, 3],
  [/^EN 10152/, 0.35, 3],
  [/^EN 10346/, 0.2, 6.5],
  [/^EN 10149/, 1.5, 20],
  [/^EN 10111/, 1, 11],
  [/^JIS G 3135/, 0.6, 2.3],
  [/^JIS G 3134/, 1.6, 6],
  [/^JIS G 3113/, 1.6, 14],
  [/^JIS G 3131/, 1.2, 14],
];

const known = new Map<string, ThicknessRange | undefined>();

/** The widest range of the standards that list a grade (names joined by " / "); undefined if the scope of one is not known. */
export function thicknessRange(standard: string): ThicknessRange | undefined {
  // Few standards answer for many grades.
  if (!known.has(standard)) known.set(standard, widestRange(standard));
  return known.get(standard);
}

function widestRange(standard: string): ThicknessRange | undefined {
  let widest: ThicknessRange | undefined;
  for (const one of standard.split(' / ')) {
    const scope = scopes.find(([name]) => name.test(one));
    if (scope === undefined) return undefined;
    const [, minMm, maxMm] = scope;
    widest = {
      minMm: Math.min(minMm, widest?.minMm ?? Infinity),
      maxMm: Math.max(maxMm, widest?.maxMm ?? 0),
      standard: widest === undefined ? one : `${widest.standard} / ${one}`,
    };
  }
  return widest;
}
