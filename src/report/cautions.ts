/** Said once at the end of every report that a person reads. */
export const cautions: readonly string[] = [
  'planish judges the plan as it is written, not the vehicle. It never says that a repair is safe. The maker’s current procedure for this very vehicle and qualified people decide; local law applies.',
  'Hazards: undeployed airbags and pretensioners, high voltage, battery fire, fuel and gas, zinc and paint fumes, isocyanates, fire, stored spring and gas energy. Follow the maker’s document and the safety rules of the shop.',
];
