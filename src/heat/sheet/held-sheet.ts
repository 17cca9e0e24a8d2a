import { conductSheet } from './conduct-sheet.ts';
import type { SheetTask } from './conduct-sheet.ts';
import { conductUnderBar } from './copper-bar.ts';
import type { CopperBar } from './copper-bar.ts';
import type { SheetHistory } from './sheet-answer.ts';
import { historyAlong } from './sheet-answer.ts';
import { sheetGrid } from './sheet-grid.ts';
import { propertiesOf } from '../metal/sheet-metals.ts';
import type { SheetMetal } from '../metal/sheet-metals.ts';
import { outOfSheetRange } from './sheet-range.ts';
import type { BarOnSheet, ClothOnSheet } from './sheet-range.ts';
import type { TimeSteps } from './time-march.ts';
import type { WetCloth } from './wet-cloth.ts';

/** A place on sheet metal held at a temperature (torch, induction), and the sheet that leads away from it. */
export interface HeldSheet {
  readonly sourceCelsius: number;
  /** Length of one heating, s. */
  readonly holdSeconds: number;
  /** How many such heatings; computed as one hold of the whole time, see `solveHeldSheet`. */
  readonly times: number;
  /** Of all sheets in full contact together. */
  readonly thicknessMm: number;
  readonly metal: SheetMetal;
  /** A strip when absent: it errs high. A disc is the likely shape of a spot in the middle of a panel. */
  readonly shape?: 'strip' | 'disc';
  /** Of the heated disc; needed for a disc and only for it. */
  readonly radiusMm?: number;
  /**
   * From the edge of the heated zone to the free end of the sheet, along the path. Absent: a long sheet. A disc ends
   * there all round, which errs high for a panel with one edge near.
   */
  readonly freeEndMm?: number;
  /** Length of a strip's heated zone along the path, 40 when absent. Its heat goes on feeding the sheet afterwards. */
  readonly heatedZoneMm?: number;
  /** 2 when absent; see `solveHeldSheet`. */
  readonly cooledFaces?: 1 | 2;
  /** 0.3 when absent: bright zinc. */
  readonly emissivity?: number;
  /** W/(m²·K) on each cooled face, 8 when absent: still air. */
  readonly convection?: number;
  /** 20 when absent. */
  readonly ambientCelsius?: number;
  /** Only as a stated measure, on a strip. */
  readonly wetCloth?: ClothOnSheet;
  /** Only as a stated measure, on a strip. */
  readonly copperBar?: BarOnSheet;
}

export type SheetAnswer =
  { readonly ok: true; readonly history: SheetHistory } | { readonly ok: false; readonly reason: string };

/**
 * The temperature that sheet metal near a held hot place goes through, cool-down included: a neighbour 40 mm away
 * peaks some 20 s after the flame is gone, at 80 mm more than a minute after.
 *
 * Method: `conductSheet`, with the metal's own curves (EN 1993-1-2, EN 1999-1-2), cooling by still air and
 * radiation. Cool-down runs until no place is more than 1 K above the surroundings; a place still
 * warming then is given that last kelvin as its peak.
 *
 * Every choice that the plan leaves open errs high: a strip (a round spot spreads its heat wider), emissivity 0.3,
 * 8 W/(m²·K), a free end that loses nothing, sheets in full contact, a heated zone of 40 mm (common practice, no
 * source) whose heat is lumped at its edge. One is not the highest: both faces lose heat, as free sheet does. A face
 * on foam, sound pad or another hot sheet does not, and one cooled face is the higher answer: state it where it
 * is so. Not in it: flame washing over the neighbour, hot gas in a cavity.
 *
 * Several heatings are computed as one hold of the whole time. No order of the same heatings gives a higher peak;
 * but heatings far apart, each cooling in between, can add up to a longer time above a temperature: see `pointHistory`.
 *
 * Error of the computation, where the rise is above 5 K: against seven finite-element cases (five strips, two discs;
 * 1 mm, 0.1 s) peak rises are 1.3 % low to 0.3 % high; against itself with finer steps and cells (0.5 to 900 s, 0.4 to
 * 4 mm, four metals, free ends from 15 mm, discs of 5 to 100 mm) 1 % low to 0.9 % high; the early rise of far places
 * comes out up to 5 % high. The answer therefore carries 1.5 % more rise than computed, never above the source. Lumping the heated zone
 * adds 1 to 4 % more after a minute's hold, and up to 20 % within 10 mm of a hold of seconds, against a zone with
 * cells of its own. That is the arithmetic only: what metal and surface really are weighs more (about ±10 %).
 *
 * A wet cloth or a copper bar is taken only as stated, across the whole way of the heat; how, and on which side it errs, stands with
 * `wetRow` and `conductUnderBar`. Not both at once.
 *
 * Range: source 30 to 1200 °C (aluminium 600), 0.5 s to 1 h in all, sheet 0.4 to 4 mm (aluminium 6), disc of 3 to
 * 150 mm radius; elsewhere there is no answer but a reason. Some 620 steps of 97 cells, at most half as many again:
 * steps grow with time, so that an hour costs hardly more than a minute.
 */
export function solveHeldSheet(sheet: HeldSheet): SheetAnswer {
  const whole = { ...assumed, ...sheet };
  const { heatedZoneMm: zoneMm = 40 } = sheet;
  const reason = outOfSheetRange(whole);
  if (reason !== undefined) return { ok: false, reason };
  const { ambientCelsius, sourceCelsius, radiusMm, wetCloth, copperBar } = whole;
  const lengthMm = Math.min(whole.freeEndMm ?? longMm, longMm);
  const radiusM = radiusMm === undefined ? undefined : radiusMm / 1000;
  const holdSeconds = whole.holdSeconds * whole.times;
  const task: SheetTask = {
    grid: sheetGrid(lengthMm / 1000, 5e-4, 1.06, radiusM),
    properties: propertiesOf[whole.metal],
    thicknessM: whole.thicknessMm / 1000,
    zoneM2: radiusM === undefined ? zoneMm / 2000 : Math.PI * radiusM * radiusM,
    cooledFaces: whole.cooledFaces,
    convection: whole.convection,
    emissivity: whole.emissivity,
    ambientCelsius,
    sourceCelsius,
    holdSeconds,
    endRiseKelvin: 1,
    coolSeconds: 1e6,
    steps: usualSteps(holdSeconds, whole.shape),
    ...(wetCloth === undefined ? {} : { cloth: clothOf(wetCloth) }),
  };
  const { field, positionsM } = copperBar
    ? conductUnderBar(task, barOf(copperBar))
    : { field: conductSheet(task), positionsM: task.grid.positionsM };
  const end = whole.freeEndMm === undefined ? {} : { endMm: whole.freeEndMm };
  return {
    ok: true,
    history: historyAlong({
      field,
      positionsM,
      sourceCelsius,
      ambientCelsius,
      heatings: whole.times,
      ...end,
    }),
  };
}

/**
 * Steps that change no peak rise by 1 % when made finer; a hold of half a second begins with finer ones, and rings,
 * along which heat thins out faster, grow theirs more slowly.
 */
export function usualSteps(holdSeconds: number, shape: 'strip' | 'disc' = 'strip'): TimeSteps {
  return { firstSeconds: Math.min(0.02, holdSeconds / 100), growth: shape === 'disc' ? 1.015 : 1.018 };
}

const clothOf = ({ fromMm, toMm, waterKgPerM2 }: ClothOnSheet): WetCloth => ({
  fromM: fromMm / 1000,
  toM: toMm / 1000,
  waterKgPerM2,
});

const barOf = ({ fromMm, toMm, thicknessMm, contactWattPerM2K }: BarOnSheet): CopperBar => ({
  fromM: fromMm / 1000,
  toM: toMm / 1000,
  thicknessM: thicknessMm / 1000,
  contact: contactWattPerM2K,
});

const assumed = {
  emissivity: 0.3,
  convection: 8,
  ambientCelsius: 20,
  cooledFaces: 2,
} as const;
// No body sheet conducts a noticeable rise this far within an hour.
const longMm = 2000;
