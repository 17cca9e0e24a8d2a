import type { SettledMaterial } from '../../steel/settling/settle-material.ts';

/**
 * Whether the plan tells of what metal a part is. A strength alone does not where it lies within what aluminium of bodies reaches too
 * (some 570 MPa, EN 485-2, from memory): there the class that was computed from it is mild or high-strength.
 */
export function isMetalTold({ class: strengthClass, provenance }: SettledMaterial): boolean {
  if (strengthClass === undefined) return false;
  return provenance !== 'computed' || (strengthClass !== 'mild' && strengthClass !== 'high-strength');
}
