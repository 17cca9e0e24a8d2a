import type { Part } from '../../generated/plan-types.ts';

/**
 * Whether the name of a part says the one side of the vehicle and `side` the other. A name that says both, or that says it by a
 * letter, contradicts nothing.
 */
export function isNamedForOtherSide({ name, side }: Part): boolean {
  if (side !== 'left' && side !== 'right') return false;
  const said = sideOfWords(name);
  return said !== undefined && said !== side;
}

/** The one side of the vehicle that a text names. "At a right angle" names none. */
export function sideOfWords(text: string | undefined): 'left' | 'right' | undefined {
  const words = (text ?? '').toLowerCase().replace(/\bright[- ]angle/gu, '');
  const said = new Set(words.match(/(?<![\p{L}-])(?:left|right)(?![\p{L}-])/gu) ?? []);
  if (said.size !== 1) return undefined;
  return said.has('left') ? 'left' : 'right';
}

/** Whether two parts can lie on one side of the vehicle; one that states none lies on either. */
export function sharesSide(one: Part['side'], other: Part['side']): boolean {
  return one === undefined || other === undefined || one === other || one === 'both' || other === 'both';
}
