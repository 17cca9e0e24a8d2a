import { hardnessOfTensile, tensileOfHardness } from './hardness-to-tensile.ts';
import { firstOutside } from '../outside.ts';
import type { TemperatureHistory } from '../point-history.ts';
import { reTransformed, strengthRange } from './strength-answer.ts';
import type { Delivered, StrengthLeft } from './strength-answer.ts';
import { bakedParameter, temperedRange } from './tempered-range.ts';
import { bakedHv } from './tempering.ts';

/**
 * Tensile strength left in press-hardened or martensitic sheet: the range of `temperedRange` through ISO 18265.
 *
 * Hardness to tensile is good to 5 %. Before and after are the same piece, so while the structure is the same that error
 * is in both and falls out of the per cent; it is counted in proportion to the hardness lost, in full from a fifth on.
 * That proportion is a judgement, not a measurement.
 *
 * Start: the stated hardness (300 to 520 HV), else the one that belongs to the stated tensile strength, else 480 HV.
 */
export function martensiteLeft(history: TemperatureHistory, delivered: Delivered): StrengthLeft {
  const start = startHardness(delivered);
  if (!start.ok) return { state: 'unknown', reason: start.reason };
  const range = temperedRange(history, start.hv);
  if (range.state === 're-transformed') return reTransformed;
  if (range.state === 'not computed') return { state: 'unknown', reason: range.reason };
  const unchanged = range.parameterHours <= bakedParameter;
  const least = unchanged ? 100 : percentAt(range.leastHv, start.hv, -1);
  const most = unchanged ? 100 : percentAt(range.mostHv, start.hv, 1);
  if (least === undefined || most === undefined) {
    const reason = `a hardness of ${Math.round(range.leastHv)} HV is outside the table of tensile strengths`;
    return { state: 'unknown', reason };
  }
  return strengthRange(
    {
      of: 'tensile strength',
      leastPercent: least,
      mostPercent: Math.min(100, most),
      howSure: 'measured scatter',
      note: 'Tempering curve of hardened C-Mn steel, 0.2 to 0.35 % carbon, less the scatter of its measurements.',
    },
    delivered.tensileMpa ?? tensileOfHardness(start.hv),
  );
}

function percentAt(hv: number, startHv: number, sign: 1 | -1): number | undefined {
  const now = tensileOfHardness(hv);
  const before = tensileOfHardness(startHv);
  if (now === undefined || before === undefined) return undefined;
  const doubt = 0.05 * Math.min(1, (1 - hv / startHv) / 0.2);
  return ((100 * now) / before) * (1 + sign * doubt);
}

type Start = { readonly ok: true; readonly hv: number } | { readonly ok: false; readonly reason: string };

function startHardness({ hv, tensileMpa }: Delivered): Start {
  const wrong =
    firstOutside([['start hardness', hv ?? bakedHv, 300, 520, 'HV']]) ??
    firstOutside([['tensile strength before', tensileMpa ?? 1500, 965, 1700, 'MPa']]);
  if (wrong !== undefined) return { ok: false, reason: wrong };
  if (hv !== undefined) return { ok: true, hv };
  return { ok: true, hv: tensileMpa === undefined ? bakedHv : (hardnessOfTensile(tensileMpa) ?? bakedHv) };
}
