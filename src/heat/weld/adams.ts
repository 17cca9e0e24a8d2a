import { firstOutside } from '../outside.ts';
import { weldMetals } from './weld-metal.ts';
import type { WeldMetalName } from './weld-metal.ts';

/** One full-penetration pass in thin sheet. */
export interface AdamsPass {
  /** Net heat input (after the process efficiency), J per mm of seam. */
  readonly heatInputJPerMm: number;
  readonly thicknessMm: number;
  readonly metal: WeldMetalName;
  /** Temperature of the sheet before the pass; 20 when absent. */
  readonly ambientCelsius?: number;
  /** From the edge of the fused metal to a free edge beside the seam. Absent: far away. */
  readonly freeEndMm?: number;
}

export interface AdamsCase extends AdamsPass {
  /** From the edge of the fused metal. */
  readonly distanceMm: number;
  /** Share of the rise that a sheet which begins there and carries less heat throws back, 0 to 1; 1 is an end. Absent: 0. */
  readonly thrownBack?: number;
}

export type AdamsPeak =
  { readonly ok: true; readonly peakCelsius: number } | { readonly ok: false; readonly reason: string };

export type AdamsWidth =
  | {
      readonly ok: true;
      /** From the edge of the fused metal. */
      readonly widthMm: number;
      /** The temperature is passed all the way to the free edge: `widthMm` is that edge. */
      readonly toFreeEnd: boolean;
    }
  | { readonly ok: false; readonly reason: string };

/**
 * Peak temperature beside one full-penetration pass in thin sheet by C. M. Adams (1958), as in the Welding Handbook,
 * volume 1: 1/(Tp − T0) = √(2πe)·ρc·d·y/Q + 1/(Tm − T0).
 *
 * It takes a fast source and no loss from the faces, so it is an upper bound, clearly so beyond about 30 mm. A free
 * edge mirrors the heat: the rise that would have reached its mirror image is added at full height although the two
 * do not peak together, which errs high as well. Not covered: a seam on the very edge (all heat runs to one side),
 * several passes (`weld-passes.ts`), resistance spots.
 *
 * Range: sheet 0.4 to 6 mm, 30 to 1000 J/mm for each mm of sheet. With less no seam melts through, so a smaller
 * number is a slip, and would come out as a cool neighbour.
 */
export function adamsPeakCelsius(weld: AdamsCase): AdamsPeak {
  const { distanceMm, freeEndMm, thrownBack = 0, ambientCelsius = 20 } = weld;
  const off =
    passOutside(weld) ??
    firstOutside([
      ['distance', distanceMm, 0, freeEndMm ?? farthestMm, 'mm'],
      ['share thrown back', thrownBack, 0, 1, ''],
    ]);
  if (off !== undefined) return { ok: false, reason: off };
  const { perMm, most } = terms(weld);
  const riseAt = (mm: number): number => 1 / (perMm * mm + 1 / most);
  const direct = riseAt(distanceMm);
  const mirrored = freeEndMm === undefined ? 0 : riseAt(2 * freeEndMm - distanceMm);
  // Whatever lies beyond takes heat away: a place cannot get hotter than if the sheet ended there.
  const rise = Math.min(2 * direct, (1 + thrownBack) * (direct + mirrored));
  return { ok: true, peakCelsius: ambientCelsius + Math.min(most, rise) };
}

/**
 * How far beside a pass a temperature is reached: the heat-affected width, mm from the edge of the fused metal. The
 * formula of `adamsPeakCelsius` turned round, in closed form with the free edge too (a quadratic equation).
 *
 * `celsius` must lie between the temperature before the pass (5 K above it) and melting.
 */
export function adamsWidthMm(weld: AdamsPass & { readonly celsius: number }): AdamsWidth {
  const { celsius, freeEndMm, metal, ambientCelsius = 20 } = weld;
  const off =
    passOutside(weld) ??
    firstOutside([
      ['temperature at the border', celsius, ambientCelsius + 5, weldMetals[metal].meltCelsius, '°C'],
    ]);
  if (off !== undefined) return { ok: false, reason: off };
  const { perMm, most } = terms(weld);
  const rise = celsius - ambientCelsius;
  if (freeEndMm === undefined) {
    return { ok: true, widthMm: (1 / rise - 1 / most) / perMm, toFreeEnd: false };
  }
  // With s = perMm·y + 1/most and S the same sum for both images, 1/s + 1/(S − s) = rise; s is the smaller root.
  const both = 2 * (perMm * freeEndMm + 1 / most);
  const underRoot = both ** 2 / 4 - both / rise;
  if (underRoot < 0) return { ok: true, widthMm: freeEndMm, toFreeEnd: true };
  const root = both / 2 - Math.sqrt(underRoot);
  return { ok: true, widthMm: Math.max(0, (root - 1 / most) / perMm), toFreeEnd: false };
}

function terms({ heatInputJPerMm, thicknessMm, metal, ambientCelsius = 20 }: AdamsPass): {
  readonly perMm: number;
  readonly most: number;
} {
  const { meltCelsius, joulePerMm3K } = weldMetals[metal];
  return {
    perMm: (Math.sqrt(2 * Math.PI * Math.E) * joulePerMm3K * thicknessMm) / heatInputJPerMm,
    most: meltCelsius - ambientCelsius,
  };
}

function passOutside(weld: AdamsPass): string | undefined {
  const { heatInputJPerMm, thicknessMm, freeEndMm, ambientCelsius = 20 } = weld;
  return firstOutside([
    ['thickness', thicknessMm, passThicknessMm.least, passThicknessMm.most, 'mm'],
    ['heat input for each mm of sheet', heatInputJPerMm / thicknessMm, 30, 1000, 'J/mm'],
    ['temperature before the pass', ambientCelsius, -30, 250, '°C'],
    ['distance to the free edge', freeEndMm ?? 1, 0, farthestMm, 'mm'],
  ]);
}

/** Thickness of sheet that a pass is computed for, mm. */
export const passThicknessMm = { least: 0.4, most: 6 } as const;

const farthestMm = 20000;
