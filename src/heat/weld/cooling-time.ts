import { firstOutside } from '../outside.ts';

/** A pass as EN 1011-2 looks at it. */
export interface CoolingPass {
  /** Net heat input (after the process efficiency), J per mm of seam. */
  readonly heatInputJPerMm: number;
  readonly thicknessMm: number;
  /** Temperature of the sheet before the pass; 20 when absent. */
  readonly ambientCelsius?: number;
  /** Bead on plate when absent. */
  readonly weld?: WeldForm;
}

export type WeldForm = keyof typeof formFactors;

export type CoolingTime =
  | {
      readonly ok: true;
      /** Time from 800 to 500 °C. The two ends differ only where the standard gives the form factor as a range. */
      readonly leastSeconds: number;
      readonly mostSeconds: number;
      /** The way the heat leaves that gives the longer time; `either` when the form factor decides it. */
      readonly governs: 'two-dimensional' | 'three-dimensional' | 'either';
      /** Above this thickness the heat leaves in three dimensions; with the larger factor of the weld form. */
      readonly transitionMm: number;
      /** Below 3 mm the formula lies outside the plates that it was proved on. */
      readonly howSure: 'proved for plate' | 'order of magnitude';
      readonly note: string;
    }
  | { readonly ok: false; readonly reason: string };

/**
 * Cooling time t8/5 by EN 1011-2 annex D for unalloyed and low-alloy steel, Q in kJ/mm, d in mm, T0 in °C:
 *
 * - thick: (6700 − 5·T0)·Q·[1/(500 − T0) − 1/(800 − T0)]·F3
 * - thin: (4300 − 4.3·T0)·10⁵·(Q/d)²·[1/(500 − T0)² − 1/(800 − T0)²]·F2
 *
 * The longer time governs. The form factors are from memory; the two formulas were read in public calculators.
 *
 * Range: 0.4 to 100 mm, 0.02 to 10 kJ/mm, −30 to 300 °C before the pass. No loss from the faces: at 650 °C a 1.2 mm
 * sheet loses about as much to air as the thin formula conducts away, so in free air the real time may be half,
 * and less on copper. That is why body sheet gets "order of magnitude", never to be compared with a limit.
 */
export function coolingTime(pass: CoolingPass): CoolingTime {
  const { heatInputJPerMm, thicknessMm, ambientCelsius = 20, weld = 'bead on plate' } = pass;
  const off = firstOutside([
    ['thickness', thicknessMm, 0.4, 100, 'mm'],
    ['heat input', heatInputJPerMm, 20, 10000, 'J/mm'],
    ['temperature before the pass', ambientCelsius, -30, 300, '°C'],
  ]);
  if (off !== undefined) return { ok: false, reason: off };
  const { leastTwo, mostTwo, three } = formFactors[weld];
  const kJPerMm = heatInputJPerMm / 1000;
  const toFive = 1 / (500 - ambientCelsius);
  const toEight = 1 / (800 - ambientCelsius);
  const thinFactor = (4300 - 4.3 * ambientCelsius) * 1e5;
  const thickFactor = 6700 - 5 * ambientCelsius;
  const thick = thickFactor * kJPerMm * (toFive - toEight) * three;
  const thin = thinFactor * (kJPerMm / thicknessMm) ** 2 * (toFive ** 2 - toEight ** 2);
  const isSheet = thicknessMm < provedFromMm;
  return {
    ok: true,
    leastSeconds: Math.max(thick, thin * leastTwo),
    mostSeconds: Math.max(thick, thin * mostTwo),
    governs:
      thin * leastTwo >= thick ? 'two-dimensional' : thin * mostTwo < thick ? 'three-dimensional' : 'either',
    transitionMm: Math.sqrt(((mostTwo * thinFactor) / (three * thickFactor)) * kJPerMm * (toFive + toEight)),
    howSure: isSheet ? 'order of magnitude' : 'proved for plate',
    note: isSheet
      ? 'EN 1011-2 was proved on plate: on sheet below 3 mm, which loses much to the air, an order of magnitude.'
      : 'EN 1011-2 annex D; form factors from memory.',
  };
}

const provedFromMm = 3;

/** F2 (thin) and F3 (thick) of EN 1011-2, table D.1, from memory. */
const formFactors = {
  'bead on plate': { leastTwo: 1, mostTwo: 1, three: 1 },
  'between runs of a butt': { leastTwo: 0.9, mostTwo: 0.9, three: 0.9 },
  'single fillet, corner': { leastTwo: 0.67, mostTwo: 0.9, three: 0.67 },
  'single fillet, T': { leastTwo: 0.45, mostTwo: 0.67, three: 0.67 },
} as const;
