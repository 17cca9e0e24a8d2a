import { firstOutside } from '../heat/outside.ts';
import { margin } from './margin.ts';
import { sized, unsized } from './sized.ts';
import type { Sized } from './sized.ts';

/** Two sheets held by one rivet. */
export interface RivetedLap {
  readonly thinnerMm: number;
  readonly thickerMm: number;
  readonly shankMm: number;
  /** Tensile strength of the thinner sheet, MPa. */
  readonly tensileMpa: number;
}

/**
 * Characteristic bearing strength of one blind rivet, kN: α · fu · d · t. EN 1993-1-3, from memory. What the rivet itself bears
 * stands only on its data sheet; the smaller of the two counts.
 */
export function rivetBearing({ thinnerMm, thickerMm, shankMm, tensileMpa }: RivetedLap): Sized {
  const fault = firstOutside([
    ['thinner sheet', thinnerMm, 0.3, 6, 'mm'],
    ['thicker sheet', thickerMm, thinnerMm, 12, 'mm'],
    ['shank', shankMm, 2, 10, 'mm'],
    ['tensile strength', tensileMpa, 60, 2200, 'MPa'],
  ]);
  if (fault !== undefined) return unsized(`The ${fault}.`);
  return sized((bearingFactor(thinnerMm, thickerMm, shankMm) * tensileMpa * shankMm * thinnerMm) / 1000);
}

/** Equal sheets tilt the rivet; from 2.5 to 1 on they do not. Between the two on the straight line. */
function bearingFactor(thinnerMm: number, thickerMm: number, shankMm: number): number {
  const equal = Math.min(3.2 * Math.sqrt(thinnerMm / shankMm), 2.1);
  const stiff = thinnerMm >= 1 ? 2.1 : equal;
  const share = Math.min((thickerMm / thinnerMm - 1) / 1.5, 1);
  return equal + share * (stiff - equal);
}

/** How far a stack lies outside the range that a fastener holds, mm: 0 inside. All in mm, `fromMm` at most `toMm`. */
export function outsideGrip(stackMm: number, fromMm: number, toMm: number): Sized {
  if (!(fromMm <= toMm) || !(stackMm > 0)) {
    return unsized(`A fastener that holds from ${fromMm} to ${toMm} mm is none.`);
  }
  return sized(Math.max(margin(fromMm, stackMm), margin(stackMm, toMm), 0));
}
