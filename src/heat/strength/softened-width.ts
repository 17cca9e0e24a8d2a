import { firstOutside } from '../outside.ts';
import type { TemperatureHistory } from '../point-history.ts';
import type { Delivered, StrengthKind } from './strength-answer.ts';
import { strengthLeft } from './strength-left.ts';

export type HistoryAt = (
  distanceMm: number,
) =>
  | { readonly ok: true; readonly history: TemperatureHistory }
  | { readonly ok: false; readonly reason: string };

export type SoftenedWidth =
  | {
      readonly ok: true;
      /** From distance 0. At this distance the loss is within the limit: the wide end of the last bracket. */
      readonly widthMm: number;
    }
  | { readonly ok: false; readonly reason: string };

/**
 * Width of the softened zone: the distance from which on no more than `lossPercent` of the strength must be reckoned
 * with as lost. Bisection between 0 and `farthestMm` to `toleranceMm`; further away must never be hotter or longer.
 * Where what is left is unknown or re-transformed, it counts as softened.
 *
 * 0 when not even distance 0 is softened; a reason when `farthestMm` still is, or when a history has one.
 */
export function softenedWidthMm(
  historyAt: HistoryAt,
  kind: StrengthKind,
  options: {
    readonly lossPercent: number;
    readonly farthestMm: number;
    readonly toleranceMm?: number;
    readonly delivered?: Delivered;
  },
): SoftenedWidth {
  const { lossPercent, farthestMm, toleranceMm = 0.5, delivered } = options;
  const off = firstOutside([
    ['loss', lossPercent, 0, 100, '%'],
    ['farthest distance', farthestMm, 1, 5000, 'mm'],
    ['tolerance', toleranceMm, 0.01, 10, 'mm'],
  ]);
  if (off !== undefined) return { ok: false, reason: off };
  const isSound = (mm: number): boolean | string => {
    const at = historyAt(mm);
    if (!at.ok) return at.reason;
    const left = strengthLeft(kind, at.history, delivered);
    return 'lossPercent' in left && left.lossPercent <= lossPercent;
  };
  const nearest = isSound(0);
  if (typeof nearest === 'string') return { ok: false, reason: nearest };
  if (nearest) return { ok: true, widthMm: 0 };
  const farthest = isSound(farthestMm);
  if (typeof farthest === 'string') return { ok: false, reason: farthest };
  if (!farthest) return { ok: false, reason: `still softened, or not known, at ${farthestMm} mm` };
  let soft = 0;
  let sound = farthestMm;
  while (sound - soft > toleranceMm) {
    const middle = (soft + sound) / 2;
    const answer = isSound(middle);
    if (typeof answer === 'string') return { ok: false, reason: answer };
    if (answer) sound = middle;
    else soft = middle;
  }
  return { ok: true, widthMm: sound };
}
