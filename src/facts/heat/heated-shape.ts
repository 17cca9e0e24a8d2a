import { heatsWithoutPause } from './heats-of-place.ts';
import { quantityOf } from '../quantity-of.ts';
import type { OperationSurvey } from '../survey.ts';

/** The spot that is heated, as it is computed. */
export type HeatedShape =
  { readonly shape: 'disc'; readonly radiusMm: number } | { readonly shape: 'strip'; readonly note?: string };

/**
 * A disc only where every heat that counts together with this one states it and its radius; the largest counts, since more metal is
 * hot then. Otherwise a strip: heat that runs one way spreads least, so that it errs high.
 */
export function heatedShape(one: OperationSurvey): HeatedShape {
  const heats = heatsWithoutPause(one).map(({ operation }) => operation);
  if (heats.every(({ shape }) => shape !== 'disc')) return { shape: 'strip' };
  const radii = heats.flatMap(({ shape, radius }) => {
    const radiusMm = shape === 'disc' ? quantityOf(radius, 'length') : undefined;
    return radiusMm === undefined ? [] : [radiusMm];
  });
  if (radii.length < heats.length)
    return {
      shape: 'strip',
      note: 'The heated disc is computed as a strip: its `radius` is not stated, or not for every heat of the place.',
    };
  return { shape: 'disc', radiusMm: Math.max(...radii) };
}
