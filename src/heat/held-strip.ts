import { aluminium } from './aluminium.ts';
import { carbonSteel } from './carbon-steel.ts';
import { cell } from './cell.ts';
import { conductStrip } from './conduct-strip.ts';
import type { StripField } from './conduct-strip.ts';
import { mildSteel } from './mild-steel.ts';
import { pointHistory } from './point-history.ts';
import type { PointHistory } from './point-history.ts';
import type { SheetProperties } from './sheet-properties.ts';
import { stainlessSteel } from './stainless-steel.ts';
import { stripGrid } from './strip-grid.ts';
import { outOfStripRange } from './strip-range.ts';

/** A place on sheet metal held at a temperature (torch, induction), and the sheet that leads away from it. */
export interface HeldStrip {
  readonly sourceCelsius: number;
  /** Length of one heating, s. */
  readonly holdSeconds: number;
  /** How many such heatings; computed as one hold of the whole time, see `solveHeldStrip`. */
  readonly times: number;
  /** Of all sheets in full contact together. */
  readonly thicknessMm: number;
  readonly metal: 'steel' | 'mild steel' | 'aluminium' | 'stainless';
  /** From the edge of the heated zone to the free end of the sheet, along the path. Absent: a long strip. */
  readonly freeEndMm?: number;
  /** Length of the heated zone along the path, 40 when absent. Its heat goes on feeding the sheet afterwards. */
  readonly heatedZoneMm?: number;
  /** 0.3 when absent: bright zinc. */
  readonly emissivity?: number;
  /** W/(m²·K) on each face, 8 when absent: still air. */
  readonly convection?: number;
  /** 20 when absent. */
  readonly ambientCelsius?: number;
}

export type StripAnswer =
  { readonly ok: true; readonly history: StripHistory } | { readonly ok: false; readonly reason: string };

export interface StripHistory {
  /** At a distance from the edge of the heated zone along the sheet; 0 is the source itself. */
  at(distanceMm: number): PointAnswer;
}

export type PointAnswer =
  { readonly ok: true; readonly point: PointHistory } | { readonly ok: false; readonly reason: string };

/**
 * The temperature that sheet metal near a held hot place goes through, cool-down included: a neighbour 40 mm away
 * peaks some 20 s after the flame is gone, at 80 mm more than a minute after.
 *
 * Method: `conductStrip`, with the metal's own curves (EN 1993-1-2, EN 1999-1-2), cooling by still air and
 * radiation on both faces. Cool-down runs until no place is more than 1 K above the surroundings; a place still
 * warming then is given that last kelvin as its peak.
 *
 * Every choice that the plan leaves open errs high: a strip (a round spot spreads its heat wider), emissivity 0.3,
 * 8 W/(m²·K), a free end that loses nothing, sheets in full contact, a heated zone of 40 mm (common practice, no
 * source) whose heat is lumped at its edge. Not in it: flame washing over the neighbour, hot gas in a cavity.
 *
 * Several heatings are computed as one hold of the whole time. No order of the same heatings gives a higher peak;
 * but heatings far apart, each cooling in between, can add up to a longer time above a temperature.
 *
 * Error of the computation, where the rise is above 5 K: against five finite-element strips (1 mm, 0.1 s) peak rises
 * come out 0.05 to 1.4 % low and the early rise of far places up to 5 % high; against itself with ten times finer
 * steps, over 0.5 to 900 s, 0.4 to 4 mm, three metals and free ends from 15 mm, peak rises are 1.4 % low to 0.2 %
 * high. The answer therefore carries 1.5 % more rise than computed, never above the source. Lumping the heated zone
 * adds 1 to 4 % more after a minute's hold, and up to 20 % within 10 mm of a hold of seconds, against a zone with
 * cells of its own. That is the arithmetic only: what metal and surface really are weighs more (about ±10 %).
 *
 * Range: source 30 to 1200 °C (aluminium 600), 0.5 s to 1 h in all, sheet 0.4 to 4 mm (aluminium 6); elsewhere
 * there is no answer but a reason. Some 560 steps of 97 cells, at most half as many again: steps grow with time, so
 * that an hour costs hardly more than a minute.
 */
export function solveHeldStrip(strip: HeldStrip): StripAnswer {
  const whole = { ...assumed, ...strip };
  const reason = outOfStripRange(whole);
  if (reason !== undefined) return { ok: false, reason };
  const { ambientCelsius, sourceCelsius } = whole;
  const lengthMm = Math.min(whole.freeEndMm ?? longMm, longMm);
  const grid = stripGrid(lengthMm / 1000, 5e-4, 1.06);
  const field = conductStrip({
    grid,
    properties: propertiesOf[whole.metal],
    thicknessM: whole.thicknessMm / 1000,
    zoneM: whole.heatedZoneMm / 2000,
    convection: whole.convection,
    emissivity: whole.emissivity,
    ambientCelsius,
    sourceCelsius,
    holdSeconds: whole.holdSeconds * whole.times,
    endRiseKelvin: 1,
    coolSeconds: 1e6,
    steps: { firstSeconds: 0.02, growth: 1.02 },
  });
  const withMargin = (celsius: number): number =>
    Math.min(sourceCelsius, ambientCelsius + margin * (celsius - ambientCelsius));
  const ceilingCelsius = withMargin(Math.max(...(field.celsius.at(-1) ?? [Number.NaN])));
  const at = (distanceMm: number): PointAnswer => {
    const off = outOfReach(distanceMm, whole.freeEndMm);
    if (off !== undefined) return { ok: false, reason: off };
    // Past the modelled length its last place answers for all: it is nearer, so it errs high.
    const celsius = rowAt(field, grid.positionsM, Math.min(distanceMm, lengthMm) / 1000).map(withMargin);
    return { ok: true, point: pointHistory({ seconds: field.seconds, celsius }, ceilingCelsius) };
  };
  return { ok: true, history: { at } };
}

const assumed = { heatedZoneMm: 40, emissivity: 0.3, convection: 8, ambientCelsius: 20 } as const;
const margin = 1.015;
// No body sheet conducts a noticeable rise this far within an hour.
const longMm = 2000;

const propertiesOf: Readonly<Record<HeldStrip['metal'], SheetProperties>> = {
  steel: carbonSteel,
  'mild steel': mildSteel,
  aluminium,
  stainless: stainlessSteel,
};

function outOfReach(distanceMm: number, freeEndMm: number | undefined): string | undefined {
  const most = freeEndMm ?? 20000;
  if (distanceMm >= 0 && distanceMm <= most) return undefined;
  if (distanceMm > most && freeEndMm !== undefined) {
    return `distance ${distanceMm} mm lies beyond the free end of the sheet at ${freeEndMm} mm`;
  }
  return `distance ${distanceMm} mm is outside what can be computed: 0 to ${most} mm`;
}

/** A straight line between two nodes lies above the sagging profile between them: errs high. */
function rowAt(field: StripField, positionsM: Float64Array, distanceM: number): number[] {
  const found = positionsM.findIndex((position) => position >= distanceM);
  const right = found === -1 ? positionsM.length - 1 : Math.max(1, found);
  const from = cell(positionsM, right - 1);
  const share = Math.min(1, (distanceM - from) / (cell(positionsM, right) - from));
  return field.celsius.map((row) => cell(row, right - 1) * (1 - share) + cell(row, right) * share);
}
