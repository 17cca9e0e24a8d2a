import { erfc, erfcx } from './error-function.ts';

/** A semi-infinite fin with constant properties, cooled on two faces. SI units; temperatures as rise above ambient. */
export interface Fin {
  readonly rise: number;
  readonly conductivity: number;
  readonly density: number;
  readonly heatCapacity: number;
  readonly convection: number;
  readonly thicknessM: number;
}

const diffusivity = (fin: Fin): number => fin.conductivity / (fin.density * fin.heatCapacity);

export const decay = (fin: Fin): number =>
  Math.sqrt((2 * fin.convection) / (fin.conductivity * fin.thicknessM));

/** H. S. Carslaw and J. C. Jaeger, Conduction of Heat in Solids: root stepped to `rise` at time 0 (from memory). */
export function heldRise(fin: Fin, x: number, seconds: number): number {
  const root = Math.sqrt(diffusivity(fin) * seconds);
  const m = decay(fin);
  const plus = x / (2 * root) + m * root;
  // exp(m·x)·erfc(plus) overflows times underflows far out; the scaled function does not.
  const second = Math.exp(m * x - plus * plus) * erfcx(plus);
  return (fin.rise / 2) * (Math.exp(-m * x) * erfc(x / (2 * root) - m * root) + second);
}

/** After the root is let go and passes no heat: the profile at `hold`, spread by the mirrored Gaussian (Simpson). */
export function releasedRise(fin: Fin, x: number, hold: number, since: number): number {
  const a = diffusivity(fin);
  const spread = 4 * a * since;
  const part = (s: number): number =>
    (s === 0 ? fin.rise : heldRise(fin, s, hold)) *
    (Math.exp(-((x - s) ** 2) / spread) + Math.exp(-((x + s) ** 2) / spread));
  const intervals = 3000;
  const width = 0.6 / intervals;
  let sum = part(0) + part(0.6);
  for (let n = 1; n < intervals; n++) sum += (n % 2 === 1 ? 4 : 2) * part(n * width);
  return (((sum * width) / 3) * Math.exp(-a * decay(fin) ** 2 * since)) / Math.sqrt(Math.PI * spread);
}
