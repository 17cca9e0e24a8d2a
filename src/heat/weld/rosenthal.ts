import { scaledK0, scaledK1 } from './bessel.ts';
import { firstOutside } from '../outside.ts';

/** A heat source moving steadily along +x, and the metal that it moves over. */
export interface MovingSource {
  /** Net power k·U·I. */
  readonly watts: number;
  readonly speedMmPerSecond: number;
  /** W/(m·K), constant. */
  readonly conductivity: number;
  /** Density times specific heat, constant. */
  readonly joulePerMm3K: number;
  /** Temperature before the pass; 20 when absent. */
  readonly ambientCelsius?: number;
  /** Absent: a half space, heated at a point of its surface. Present: a sheet, heated on a line through it. */
  readonly thicknessMm?: number;
  /** Where the metal is molten the formula says nothing. */
  readonly meltCelsius: number;
}

export type FieldTemperature =
  { readonly ok: true; readonly celsius: number } | { readonly ok: false; readonly reason: string };

export type FieldPeak =
  | {
      readonly ok: true;
      readonly peakCelsius: number;
      /** How far the source has gone on when this place is hottest. */
      readonly behindMm: number;
    }
  | { readonly ok: false; readonly reason: string };

/**
 * Temperature at a place that moves with the source, D. Rosenthal 1946 (as in the Welding Handbook, from memory).
 * `aheadMm` is ξ, negative behind the source; `besideMm` the distance from the centre line.
 *
 * - sheet: T − T0 = q/(2πkd)·exp(−vξ/2a)·K0(vr/2a)
 * - half space: T − T0 = q/(2πkR)·exp(−v(ξ + R)/2a)
 *
 * Quasi-steady, constant properties, no loss from the faces; the source has no size, so within the pool there is a
 * reason in place of a number. Too hot beyond about 30 mm and for short stitches.
 */
export function fieldCelsius(source: MovingSource, aheadMm: number, besideMm: number): FieldTemperature {
  const off =
    sourceOutside(source) ??
    firstOutside([
      ['distance ahead', aheadMm, -20000, 20000, 'mm'],
      ['distance from the centre line', besideMm, 0, farthestMm, 'mm'],
    ]);
  if (off !== undefined) return { ok: false, reason: off };
  const r = Math.hypot(aheadMm, besideMm);
  const celsius = (source.ambientCelsius ?? 20) + riseAt(source, r, perMm(source) * (aheadMm + r));
  // At the source itself the rise is not finite, and NaN is not below melting either.
  return celsius < source.meltCelsius ? { ok: true, celsius } : { ok: false, reason: inThePool };
}

/**
 * Highest temperature that a place beside the centre line goes through. When it is hottest, at the distance r from
 * the source, dT/dξ = 0 gives ξ = −r·K0/K1 (sheet) or ξ = −r·u·r/(1 + u·r) (half space), u = v/2a;
 * r is found by bisection, to 1e-9 of itself.
 */
export function fieldPeakCelsius(source: MovingSource, besideMm: number): FieldPeak {
  const off =
    sourceOutside(source) ??
    firstOutside([['distance from the centre line', besideMm, 0.01, farthestMm, 'mm']]);
  if (off !== undefined) return { ok: false, reason: off };
  const u = perMm(source);
  const gap = source.thicknessMm === undefined ? gapInHalfSpace : gapInSheet;
  const beside = (r: number): number => r * Math.sqrt(gap(u * r) * (2 - gap(u * r)));
  let near = besideMm;
  let far = 2 * besideMm;
  while (beside(far) < besideMm) far *= 2;
  while (far - near > 1e-9 * far) {
    const middle = (near + far) / 2;
    if (beside(middle) < besideMm) near = middle;
    else far = middle;
  }
  const behindMm = far * (1 - gap(u * far));
  const rise = riseAt(source, far, u * far * gap(u * far));
  const peakCelsius = (source.ambientCelsius ?? 20) + rise;
  if (!(peakCelsius < source.meltCelsius)) return { ok: false, reason: inThePool };
  return { ok: true, peakCelsius, behindMm };
}

/** v/2a in 1/mm. */
function perMm({ speedMmPerSecond, joulePerMm3K, conductivity }: MovingSource): number {
  return (speedMmPerSecond * joulePerMm3K * 1000) / (2 * conductivity);
}

/** Rise at the distance r; `fallen` is v(ξ + r)/2a, taken apart because the two nearly cancel far behind. */
function riseAt(source: MovingSource, r: number, fallen: number): number {
  const { watts, conductivity, thicknessMm } = source;
  const strength = ((1000 * watts) / (2 * Math.PI * conductivity)) * Math.exp(-fallen);
  if (thicknessMm === undefined) return strength / r;
  return (strength / thicknessMm) * scaledK0(perMm(source) * r);
}

/** 1 − K0(x)/K1(x). Far out the quotient nearly is one, and the series of both functions is used. */
function gapInSheet(x: number): number {
  if (x > 20) return (0.5 - (0.375 - 0.375 / x) / x) / x;
  return 1 - scaledK0(x) / scaledK1(x);
}

/** 1 − x/(1 + x). */
function gapInHalfSpace(x: number): number {
  return 1 / (1 + x);
}

function sourceOutside(source: MovingSource): string | undefined {
  return firstOutside([
    ['power', source.watts, 25, 20000, 'W'],
    ['travel speed', source.speedMmPerSecond, 0.5, 200, 'mm/s'],
    ['conductivity', source.conductivity, 5, 300, 'W/(m·K)'],
    ['density times specific heat', source.joulePerMm3K, 0.001, 0.01, 'J/(mm³·K)'],
    ['temperature before the pass', source.ambientCelsius ?? 20, -30, 300, '°C'],
    ['thickness', source.thicknessMm ?? 1, 0.4, 100, 'mm'],
    ['melting temperature', source.meltCelsius, 400, 1600, '°C'],
  ]);
}

const inThePool = 'this place lies in or at the molten pool, where the formula does not hold';
const farthestMm = 200;
