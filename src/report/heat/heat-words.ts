import type { HeldHeat } from '../../heat/sheet/stay-clear.ts';
import { formatQuantity } from '../../quantity/format-quantity.ts';

/** A held heat in a few words: `torch, 900 °C for 30 s, twice, 1.2 mm mild steel`. */
export function heatWords(heat: HeldHeat, source: string | undefined): string {
  const { sourceCelsius, holdSeconds, times, thicknessMm, metal } = heat;
  const often = times === 1 ? 'once' : times === 2 ? 'twice' : `${String(times)} times`;
  const words = [
    source,
    `${formatQuantity(sourceCelsius, '°C')} for ${formatQuantity(holdSeconds, 's')}`,
    often,
    `${formatQuantity(thicknessMm, 'mm')} ${metal}`,
  ];
  return words.filter((word) => word !== undefined).join(', ');
}
