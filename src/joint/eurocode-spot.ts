import { firstOutside } from '../heat/outside.ts';
import { leastSheetMm, mostSheetMm } from './governing-thickness.ts';
import { margin } from './margin.ts';
import { sized, unsized } from './sized.ts';
import type { Sized } from './sized.ts';

export interface LappedSpot {
  /** The thinner sheet, mm. */
  readonly thinnerMm: number;
  /** The sheet on it, mm. */
  readonly thickerMm: number;
  /** Diameter of what is fused at the faying surface, mm. */
  readonly fusedMm: number;
  /** Tensile strength of the thinner sheet, MPa; 1 gives the strength for each MPa. */
  readonly tensileMpa: number;
}

/**
 * Characteristic shear strength of one spot or plug between two sheets, kN: the least of tearing, bearing and the shear of the
 * weld. EN 1993-1-3, table of spot welds, without the partial factor; from memory. The one form here that asks for the
 * diameter, so that spots of different size and plugs can be put side by side.
 */
export function eurocodeShear({ thinnerMm, thickerMm, fusedMm, tensileMpa }: LappedSpot): Sized {
  const fault = firstOutside([
    ['thinner sheet', thinnerMm, leastSheetMm, mostSheetMm, 'mm'],
    ['thicker sheet', thickerMm, thinnerMm, mostSheetMm, 'mm'],
    ['fused diameter', fusedMm, 1, 25, 'mm'],
    ['tensile strength', tensileMpa, 1, 2200, 'MPa'],
  ]);
  if (fault !== undefined) return unsized(`The ${fault}.`);
  const tearing = 2.7 * Math.sqrt(thinnerMm) * fusedMm;
  const ofWeld = (Math.PI / 4) * fusedMm ** 2;
  const onThick =
    margin(thickerMm, 2.5 * thinnerMm) > 0 ? [0.7 * fusedMm ** 2, 3.1 * thinnerMm * fusedMm] : [];
  return sized((Math.min(tearing, ofWeld, ...onThick) * tensileMpa) / 1000);
}
