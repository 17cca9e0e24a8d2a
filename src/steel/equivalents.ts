/** Named as in the JSON form of reports. */
export interface StrengthEquivalents {
  readonly mpa: number;
  readonly n_per_mm2: number;
  readonly ksi: number;
  readonly psi: number;
  readonly kgf_per_mm2: number;
}

/** Pounds-force per square inch in one megapascal, NIST SP 811, appendix B. */
const psiPerMpa = 145.0377377;
/** One kilogram-force is 9.80665 N by definition. */
const newtonPerKgf = 9.80665;

/** A strength in the units that drawings and gauges use, rounded as one reads them. */
export function strengthEquivalents(mpa: number): StrengthEquivalents {
  return {
    mpa,
    n_per_mm2: mpa,
    ksi: Math.round((mpa * psiPerMpa) / 100) / 10,
    psi: Math.round((mpa * psiPerMpa) / 100) * 100,
    kgf_per_mm2: Math.round((mpa / newtonPerKgf) * 10) / 10,
  };
}
