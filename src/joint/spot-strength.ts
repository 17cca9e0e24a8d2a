import { firstOutside } from '../heat/outside.ts';
import { leastSheetMm, mostSheetMm } from './governing-thickness.ts';
import { sized, unsized } from './sized.ts';
import type { Sized } from './sized.ts';

/** The printed range of form A, MPa. */
const formARange = { least: 350, most: 700 } as const;

/** Form B rises to 1343 MPa and then falls, which no weld does; here it stays level. Computed from the polynomial. */
const formBLevelMpa = 1300;

/** Aluminium and soft steel below, hardened steel above, MPa: outside nothing is a sheet. */
const leastMpa = 200;
const mostMpa = 2200;

/**
 * Least shear strength of one spot of ordinary size, kN, as printed with the parameters of AWS C1.1 for steels of 350 to
 * 700 MPa (seen). `tensileMpa` of the weaker sheet, governing thickness in mm. Outside that range refused.
 */
export function shearFormA(tensileMpa: number, governingMm: number): Sized {
  const fault = firstOutside([
    ['tensile strength', tensileMpa, formARange.least, formARange.most, 'MPa'],
    ['sheet', governingMm, leastSheetMm, mostSheetMm, 'mm'],
  ]);
  if (fault !== undefined) return unsized(`The ${fault}.`);
  return sized(shear([-8.83e-7, 1.34e-3, 1.514], tensileMpa, governingMm));
}

/**
 * The same by the form of AWS D8.1M, kN; coefficients from memory, within 9 % of form A up to 590 MPa. Level from 1300 MPa on.
 * Nothing that was seen covers press-hardened steel.
 */
export function shearFormB(tensileMpa: number, governingMm: number): Sized {
  const fault = firstOutside([
    ['tensile strength', tensileMpa, leastMpa, mostMpa, 'MPa'],
    ['sheet', governingMm, leastSheetMm, mostSheetMm, 'mm'],
  ]);
  if (fault !== undefined) return unsized(`The ${fault}.`);
  return sized(shear([-6.36e-7, 6.58e-4, 1.674], Math.min(tensileMpa, formBLevelMpa), governingMm));
}

/**
 * Least cross tension of one spot, kN: what it bears before it is peeled open. AWS D8.1M, from memory; a floor, far below what a
 * sound spot bears, and the same for every steel.
 */
export function crossTension(governingMm: number): Sized {
  const fault = firstOutside([['sheet', governingMm, leastSheetMm, mostSheetMm, 'mm']]);
  return fault === undefined ? sized(1.25 * governingMm ** 2.2) : unsized(`The ${fault}.`);
}

function shear(
  [square, linear, level]: readonly [number, number, number],
  tensileMpa: number,
  sheetMm: number,
): number {
  const factor = square * tensileMpa ** 2 + linear * tensileMpa + level;
  return (factor * tensileMpa * 4 * sheetMm ** 1.5) / 1000;
}
