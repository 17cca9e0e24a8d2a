import { sheetRanges, sourceRangeCelsius, thicknessRangeMm } from '../../heat/sheet/sheet-range.ts';
import type { Ends } from '../../heat/sheet/sheet-range.ts';
import type { Dimension } from '../../quantity/dimension.ts';
import { excerpt } from '../../plan/excerpt.ts';
import { formatQuantity } from '../../quantity/format-quantity.ts';
import { readQuantity } from '../../quantity/read-quantity.ts';

type Fault = (sentence: string) => void;

const ends = ({ least, most }: Ends): readonly [number, number] => [least, most];

/** Of whichever metal it is computed for to the most; the engine knows which metal it is, and has the last word. */
const thickest = thicknessRangeMm('aluminium');
const hottest = sourceRangeCelsius('steel');

/** Ends of the ranges for sentences that ask for what is missing. */
export const askedRanges = {
  temperature: `${String(hottest.least)} to ${formatQuantity(hottest.most, '°C')}`,
  hold: `${String(sheetRanges.holdSeconds.least)} to ${formatQuantity(sheetRanges.holdSeconds.most, 's')}`,
  sheet: `${String(thickest.least)} to ${formatQuantity(thicknessRangeMm('steel').most, 'mm')}, of aluminium to ${String(thickest.most)}`,
  radius: `${String(sheetRanges.radiusMm.least)} to ${formatQuantity(sheetRanges.radiusMm.most, 'mm')}`,
} as const;

/**
 * What can be meant, in the canonical unit: what the engine takes, and where it sets no end what is no slip. A slipped unit must end in
 * a sentence that names the option.
 */
const plausible = {
  temperature: ['temperature', ...ends(hottest), '°C', 'a heated sheet'],
  hold: ['time', ...ends(sheetRanges.holdSeconds), 's', 'one heating'],
  sheet: ['length', ...ends(thickest), 'mm', 'the sheet of a body'],
  at: ['length', 0, 20_000, 'mm', 'a distance along the metal'],
  radius: ['length', ...ends(sheetRanges.radiusMm), 'mm', 'a heated spot'],
  edge: ['length', ...ends(sheetRanges.freeEndMm), 'mm', 'the way to the free end of the sheet'],
  ambient: ['temperature', ...ends(sheetRanges.ambientCelsius), '°C', 'a shop'],
  'sink-distance': ['length', ...ends(sheetRanges.sinkFromMm), 'mm', 'the way from the heat to a heat sink'],
  'sink-width': ['length', 10, 500, 'mm', 'a heat sink'],
  'sink-length': ['length', 10, 2000, 'mm', 'a wet cloth'],
  'sink-water': ['mass', 0.005, 20, 'kg', 'the water in a cloth'],
  'sink-thickness': ['length', ...ends(sheetRanges.barThicknessMm), 'mm', 'a copper bar'],
  'heat-input': ['energy per length', 0.01, 5, 'kJ/mm', 'a seam in sheet'],
  voltage: ['voltage', 5, 60, 'V', 'an arc'],
  current: ['current', 0.005, 0.6, 'kA', 'an arc'],
  power: ['power', 25, 20_000, 'W', 'an arc or a laser'],
  'travel-speed': ['speed', 0.5, 200, 'mm/s', 'a seam'],
  interpass: ['temperature', 0, 250, '°C', 'sheet before the next pass'],
  stitch: ['length', 3, 1000, 'mm', 'one stitch'],
  pause: ['time', 0, 36_000, 's', 'the pause between two stitches'],
} as const satisfies Record<string, readonly [Dimension, number, number, string, string]>;

export type QuantityOption = keyof typeof plausible;

/** The value of an option in the canonical unit; undefined when it is not given, or at fault, which is told. */
export function readOptionQuantity(
  option: QuantityOption,
  text: string | undefined,
  fault: Fault,
): number | undefined {
  if (text === undefined) return undefined;
  const [dimension, least, most, unit, what] = plausible[option];
  const range = `${String(least)} to ${formatQuantity(most, unit)} is plausible for ${what}`;
  const reading = readQuantity(text, dimension);
  if (reading.ok && reading.value >= least && reading.value <= most) return reading.value;
  fault(
    reading.ok
      ? `--${option} ${text.trim()} is out of range: ${range}.`
      : `--${option}: ${reading.reason.replace(/\.$/u, '')}; ${range}.`,
  );
  return undefined;
}

/** The same for a plain number. */
export function readOptionNumber(
  option: string,
  text: string | undefined,
  [least, most]: readonly [number, number],
  fault: Fault,
): number | undefined {
  if (text === undefined) return undefined;
  const trimmed = text.trim();
  const value = /^[+-]?\d+(?:\.\d+)?$/u.test(trimmed) ? Number(trimmed) : Number.NaN;
  if (value >= least && value <= most) return value;
  const shown = trimmed === '' ? '(nothing)' : excerpt(trimmed);
  fault(
    `--${option} ${shown} is out of range: a number from ${String(least)} to ${String(most)} is plausible.`,
  );
  return undefined;
}
