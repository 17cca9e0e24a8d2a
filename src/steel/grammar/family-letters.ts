/** Letters of a multiphase or other modern steel, alike in VDA 239-100, GB/T 20564, SAE J2745, national lists and the trade. */
export const phaseLetters: Readonly<Record<string, string>> = {
  DP: 'dual_phase',
  DH: 'dual_phase_high_ductility',
  TR: 'trip',
  TRIP: 'trip',
  TBF: 'trip',
  CP: 'complex_phase',
  CH: 'complex_phase',
  ...{ MS: 'martensitic', MART: 'martensitic' },
  FB: 'ferrite_bainite',
  QP: 'quench_partition',
  TWIP: 'twip',
};

/** Letters of a single-phase steel behind or before its yield, alike in VDA 239-100, GB/T 20564, SEW 093 and 094 and the trade. */
export const yieldLetters: Readonly<Record<string, string>> = {
  LA: 'hsla',
  HSLA: 'hsla',
  BH: 'bake_hardening',
  IF: 'high_strength_if',
  P: 'rephosphorised',
};

/** The part of a table whose keys a standard uses. */
export function only(
  table: Readonly<Record<string, string>>,
  ...keys: readonly string[]
): Readonly<Record<string, string>> {
  return Object.fromEntries(Object.entries(table).filter(([key]) => keys.includes(key)));
}
