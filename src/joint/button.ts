/**
 * Button or nugget diameter as a multiple of the root of the governing thickness, √mm: 4 is the conventional least of
 * automotive spots, 5 what is aimed at (BS 1140:1993: least slug diameters are 5 √t to rounding). Which multiple is asked of
 * which steel is for a rule to say. Diameter and thickness in mm, both above 0.
 */
export function rootMultiple(diameterMm: number, governingMm: number): number {
  return diameterMm / Math.sqrt(governingMm);
}

/** The diameter of that multiple, mm. */
export function diameterOf(multiple: number, governingMm: number): number {
  return multiple * Math.sqrt(governingMm);
}
