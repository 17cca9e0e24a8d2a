import { adamsPeakCelsius } from './adams.ts';
import type { AdamsCase, AdamsPeak } from './adams.ts';
import { firstOutside } from '../outside.ts';
import { weldMetals } from './weld-metal.ts';

export type PassesPeak =
  | {
      readonly ok: true;
      readonly peakCelsius: number;
      /** What was taken because it was not stated. */
      readonly assumptions: readonly string[];
    }
  | { readonly ok: false; readonly reason: string };

/**
 * Peak beside several passes along one line.
 *
 * With a stated interpass temperature (at most 250 °C) the whole sheet is taken to be that warm before each pass:
 * high, since only the strip beside the seam is. Without one the passes are taken to follow each other without any
 * pause. Heat conduction adds up and no heat is lost, so the rise is at most that of one pass times their number, up
 * to melting. A fixed value such as the 250 °C usual for structural steel would lie below that close to the seam.
 */
export function passesPeakCelsius(
  weld: AdamsCase & { readonly passes: number; readonly interpassCelsius?: number },
): PassesPeak {
  const { passes, interpassCelsius, metal, ambientCelsius = 20 } = weld;
  const off = firstOutside([['number of passes', Number.isInteger(passes) ? passes : Number.NaN, 1, 20, '']]);
  if (off !== undefined) return { ok: false, reason: off };
  if (interpassCelsius !== undefined) {
    const warm = firstOutside([['interpass temperature', interpassCelsius, ambientCelsius, 250, '°C']]);
    if (warm !== undefined) return { ok: false, reason: warm };
    // The first pass finds the sheet at its own temperature, but only a single one is the last as well.
    const before = passes === 1 ? ambientCelsius : interpassCelsius;
    return withAssumptions(adamsPeakCelsius({ ...weld, ambientCelsius: before }), []);
  }
  const one = adamsPeakCelsius(weld);
  if (!one.ok || passes === 1) return withAssumptions(one, []);
  const peakCelsius = ambientCelsius + passes * (one.peakCelsius - ambientCelsius);
  return {
    ok: true,
    peakCelsius: Math.min(weldMetals[metal].meltCelsius, peakCelsius),
    assumptions: [`No interpass temperature is stated: ${passes} passes without a pause are taken.`],
  };
}

/** A seam in stitches. */
export interface StitchCase extends AdamsCase {
  readonly stitches: number;
  readonly stitchMm: number;
  /** From the end of one stitch to the start of the next. Absent: none. */
  readonly pauseSeconds?: number;
}

/**
 * Peak beside a seam laid in stitches, no place welded twice.
 *
 * One stitch alone: the heat of a line of its length, dropped at once in an endless sheet, gives beside its middle
 * the share max[(1/s)·exp(−1/s²)·erf(L/(2ys))]/max[(1/s)·exp(−1/s²)] of an endless line's peak, whatever the metal. Each
 * earlier stitch, as old as the pauses since, adds at most Q·L/(4πk·d·t), as if it were a point at this very place;
 * k is that of hot metal, the worst conductor it can be. The seam without a pause is the upper bound, and the answer
 * when no pause is stated.
 */
export function stitchesPeakCelsius(weld: StitchCase): PassesPeak {
  const { stitches, stitchMm, pauseSeconds, ambientCelsius = 20, metal, freeEndMm, thrownBack = 0 } = weld;
  const off = firstOutside([
    ['number of stitches', Number.isInteger(stitches) ? stitches : Number.NaN, 1, 500, ''],
    ['stitch length', stitchMm, 3, 1000, 'mm'],
    ['pause', pauseSeconds ?? 0, 0, 36000, 's'],
  ]);
  if (off !== undefined) return { ok: false, reason: off };
  const whole = adamsPeakCelsius(weld);
  if (!whole.ok) return whole;
  if (stitches > 1 && (pauseSeconds === undefined || pauseSeconds === 0)) {
    const said = 'No pause between the stitches is stated: a seam in one go is taken.';
    return { ...whole, assumptions: pauseSeconds === undefined ? [said] : [] };
  }
  let earlier = 0;
  for (let n = 1; n < stitches; n++) earlier += 1 / (n * (pauseSeconds ?? 0));
  earlier *=
    (weld.heatInputJPerMm * stitchMm * 1000) / (4 * Math.PI * worstConductivity[metal] * weld.thicknessMm);
  // A free edge sends all of the earlier heat back once, a sheet that carries less a share of it.
  earlier *= freeEndMm === undefined ? 1 + thrownBack : 2;
  const alone = shareOfEndless(stitchMm, weld.distanceMm) * (whole.peakCelsius - ambientCelsius);
  return {
    ok: true,
    peakCelsius: Math.min(whole.peakCelsius, ambientCelsius + earlier + alone),
    assumptions: [],
  };
}

/** Peak beside the middle of a line of this length, as a share of that beside an endless one; 1 at the line. */
export function shareOfEndless(lengthMm: number, besideMm: number): number {
  if (besideMm === 0) return 1;
  const endless = (s: number): number => Math.exp(-1 / (s * s)) / s;
  const most = endless(Math.SQRT2);
  let best = 0;
  // The peak of a short line comes before that of an endless one, at s between 1 and √2; a step of 1/200 costs 1e-5.
  for (let s = 0.9; s <= 1.45; s += 0.005) {
    best = Math.max(best, (endless(s) / most) * errorFunction(lengthMm / (2 * besideMm * s)));
  }
  return Math.min(1, best + 1e-4);
}

/** M. Abramowitz and I. A. Stegun, 7.1.26; error below 1.5e-7. For x of zero and above. */
function errorFunction(x: number): number {
  const t = 1 / (1 + 0.3275911 * x);
  const sum = [1.061405429, -1.453152027, 1.421413741, -0.284496736, 0.254829592].reduce(
    (rest, one) => (rest + one) * t,
    0,
  );
  return 1 - sum * Math.exp(-x * x);
}

// W/(m·K): steel and stainless the lowest of EN 1993-1-2 (27.3 from 800 °C; 14.6 when cold), aluminium the 5xxx and
// 7xxx curve of EN 1999-1-2 when cold (from memory), magnesium the lowest printed for an alloy in public tables.
const worstConductivity = { steel: 27.3, aluminium: 140, stainless: 14.6, magnesium: 60 } as const;

function withAssumptions(peak: AdamsPeak, assumptions: readonly string[]): PassesPeak {
  return peak.ok ? { ...peak, assumptions } : peak;
}
