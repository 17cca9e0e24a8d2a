/** Volumetric heat of steel, J/mm³K, and its melting point above a cool shop, K; as in the handbook's peak-temperature formula. */
const steelHeat = 0.0044;
const steelRise = 1490;

/**
 * Width of the strip of steel sheet that a line source of so much heat melts, mm: H / (√(2πe) ρc t ΔT) to either side. Heat a length
 * for each mm of thickness, J/mm², 0 or more. Line-source solution in thin sheet, without loss to air (Welding Handbook, from memory).
 */
export function meltWidthMm(joulePerMm2: number): number {
  return (2 * joulePerMm2) / (Math.sqrt(2 * Math.PI * Math.E) * steelHeat * steelRise);
}
