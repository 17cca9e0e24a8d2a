import type { Part } from '../../generated/plan-types.ts';

/**
 * Whether the name of a part says the one side of the vehicle and `side` the other. A name that says both, or that says it by a
 * letter, contradicts nothing.
 */
export function isNamedForOtherSide({ name, side }: Part): boolean {
  if (side !== 'left' && side !== 'right') return false;
  const said = new Set((name ?? '').toLowerCase().match(/(?<![\p{L}-])(?:left|right)(?![\p{L}-])/gu) ?? []);
  return said.size === 1 && !said.has(side);
}

/** Whether two parts can lie on one side of the vehicle; one that states none lies on either. */
export function sharesSide(one: Part['side'], other: Part['side']): boolean {
  return one === undefined || other === undefined || one === other || one === 'both' || other === 'both';
}
