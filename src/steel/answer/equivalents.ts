import { mpaPerKgfOnMm2, mpaPerUnit } from '../strength/stress-unit.ts';

/** Named as in the JSON form of reports. */
export interface StrengthEquivalents {
  readonly mpa: number;
  readonly n_per_mm2: number;
  readonly ksi: number;
  readonly psi: number;
  readonly kgf_per_mm2: number;
}

/** A strength in the units that drawings and gauges use, rounded as one reads them. */
export function strengthEquivalents(mpa: number): StrengthEquivalents {
  return {
    mpa,
    n_per_mm2: mpa,
    ksi: Math.round((mpa / mpaPerUnit('ksi')) * 10) / 10,
    psi: Math.round(mpa / mpaPerUnit('psi') / 100) * 100,
    kgf_per_mm2: Math.round((mpa / mpaPerKgfOnMm2()) * 10) / 10,
  };
}
