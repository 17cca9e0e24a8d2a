import type { Near } from '../../generated/plan-types.ts';
import type { HeldSheet } from '../../heat/sheet/held-sheet.ts';
import { formatQuantity } from '../../quantity/format-quantity.ts';
import type { DerivationContext } from '../context.ts';
import { quantityOf } from '../quantity-of.ts';

type Sink = NonNullable<Near['sink']>;

/** What lies on the way and takes heat, as the engine counts it. */
export interface CountedSink {
  readonly sheet: Pick<HeldSheet, 'wetCloth' | 'copperBar'>;
  /** For findings and pictures: `wet cloth from 15 mm to 55 mm`. */
  readonly words: string;
  readonly notes: readonly string[];
}

export type SinkReading =
  | { readonly counts: true; readonly sink: CountedSink }
  /** A sentence that says why it is left out. */
  | { readonly counts: false; readonly note: string };

/** Between bar and sheet, W/(m²·K): the low end for metal clamped dry on metal (from memory), and the least that is computed. */
const barContact = { clamped: 500, 'laid on': 50 } as const;
/** More water than this would be counted as this much; a folded towel holds a few, kg/m². */
const mostWaterKgPerM2 = 20;

/**
 * A measure counts only with all its numbers and across the whole way of the heat, and at release only when it is dated: a cloth
 * that was planned and left in the bucket has cooled nothing.
 */
export function readSink(sink: Sink, stage: DerivationContext['stage']): SinkReading {
  const name = sink.kind ?? 'heat sink';
  const leftOut = (why: string): SinkReading => ({
    counts: false,
    note: `The ${name} is not counted: ${why}.`,
  });
  if (sink.kind === undefined) return leftOut('whether it is a wet cloth or a copper bar is not stated');
  if (sink.across !== true)
    return leftOut('it is not stated to lie across the whole way of the heat (`across: true`)');
  if (stage === 'release' && sink.done === undefined)
    return leftOut('nothing says that it was in place (`done`)');
  const fromMm = quantityOf(sink.distance, 'length');
  const widthMm = quantityOf(sink.width, 'length');
  if (fromMm === undefined) return leftOut('its `distance` from the heated zone is not stated');
  if (widthMm === undefined || widthMm === 0) return leftOut('its `width` along the way is not stated');
  const toMm = fromMm + widthMm;
  const words = `${name} from ${formatQuantity(fromMm, 'mm')} to ${formatQuantity(toMm, 'mm')}`;
  if (sink.kind === 'wet cloth') {
    const lengthMm = quantityOf(sink.length, 'length');
    const waterKg = quantityOf(sink.water, 'mass');
    if (lengthMm === undefined || lengthMm === 0) return leftOut('its `length` across the way is not stated');
    if (waterKg === undefined) return leftOut('the `water` in it is not stated');
    const waterKgPerM2 = Math.min(mostWaterKgPerM2, waterKg / ((widthMm / 1000) * (lengthMm / 1000)));
    return {
      counts: true,
      sink: {
        sheet: { wetCloth: { fromMm, toMm, waterKgPerM2 } },
        words,
        notes: [
          `Counted: ${words}, as stated; it cools only above 100 °C, until its water has boiled off or the place passes 150 °C.`,
        ],
      },
    };
  }
  const thicknessMm = quantityOf(sink.thickness, 'length');
  if (thicknessMm === undefined) return leftOut('its `thickness` is not stated');
  if (sink.held === undefined) return leftOut('whether it is clamped or laid on (`held`) is not stated');
  const contactWattPerM2K = barContact[sink.held];
  return {
    counts: true,
    sink: {
      sheet: { copperBar: { fromMm, toMm, thicknessMm, contactWattPerM2K } },
      words: `${words}, ${formatQuantity(thicknessMm, 'mm')} thick, ${sink.held}`,
      notes: [
        `Counted: ${words}, as stated, with a contact of ${String(contactWattPerM2K)} W/m²K (${sink.held}; from memory).`,
      ],
    },
  };
}
