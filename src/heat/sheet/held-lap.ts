import { conductLap } from './conduct-lap.ts';
import type { LapTask } from './conduct-lap.ts';
import type { SheetField } from './conduct-sheet.ts';
import { usualSteps } from './held-sheet.ts';
import { fullContact, lapConductance, lapContactFault } from './lap-contact.ts';
import type { LapContact } from './lap-contact.ts';
import { lapGrid } from './lap-grid.ts';
import type { SheetHistory } from './sheet-answer.ts';
import { higherOf, historyAlong } from './sheet-answer.ts';
import { propertiesOf } from '../metal/sheet-metals.ts';
import type { SheetMetal } from '../metal/sheet-metals.ts';
import { firstOutside, outOfSheetRange } from './sheet-range.ts';

/** A held hot strip and a second sheet that lies on it for a stretch: a flange, a patch, a reinforcement. */
export interface HeldLap {
  readonly sourceCelsius: number;
  readonly holdSeconds: number;
  readonly times: number;
  readonly heated: {
    readonly metal: SheetMetal;
    readonly thicknessMm: number;
    /** From the edge of the heated zone. Absent: a long sheet. */
    readonly freeEndMm?: number;
  };
  readonly other: {
    readonly metal: SheetMetal;
    readonly thicknessMm: number;
    /** From the edge of the heated zone to where the second sheet begins. */
    readonly fromMm: number;
    /** From the edge of the heated zone to where it ends. Absent: a long sheet. */
    readonly freeEndMm?: number;
  };
  /** Full when absent. */
  readonly contact?: LapContact;
  readonly heatedZoneMm?: number;
  readonly cooledFaces?: 1 | 2;
  readonly emissivity?: number;
  readonly convection?: number;
  readonly ambientCelsius?: number;
}

export type LapAnswer =
  | {
      readonly ok: true;
      /** Distances count along the metal from the edge of the heated zone. */
      readonly other: SheetHistory;
      readonly heated: SheetHistory;
    }
  | { readonly ok: false; readonly reason: string };

/**
 * What a held hot place does to a second sheet that lies on the first, and to the first beside it. Method
 * `conductLap`; source, losses, margin and ranges as for `solveHeldSheet`. In the lap each sheet loses heat by its
 * outer face only; with one cooled face, by none.
 *
 * No one contact is the worst for every place, so where none is stated:
 * - on the heated sheet the higher of full contact and none, at every time. Mostly none is the higher, as the sheet then keeps its heat;
 *   full is, beyond a second sheet that carries heat past (aluminium on stainless: two thirds more rise);
 * - on the second sheet full contact and 2.5 % more rise; where it ends before the heated one, also the heated sheet without contact.
 *   In 1,400 random flanges no contact between 30 and 30,000 W/(m²·K) gave more than full contact by over 0.2 % of
 *   the rise with one metal, 2.2 % with two; with short patches it gave up to 14 % more.
 * Contact that is stated is taken as it is stated.
 *
 * @returns a reason where the lap is shorter than 5 mm or any number is outside its range. A second sheet that begins within the
 * heated zone is one with it: take `solveHeldSheet` with both thicknesses.
 */
export function solveHeldLap(lap: HeldLap): LapAnswer {
  const { heated, other, contact, heatedZoneMm = 40, cooledFaces = 2 } = lap;
  const { emissivity = 0.3, convection = 8, ambientCelsius = 20, sourceCelsius, times } = lap;
  const common = {
    sourceCelsius,
    holdSeconds: lap.holdSeconds,
    times,
    emissivity,
    convection,
    ambientCelsius,
  };
  const endMm = Math.min(heated.freeEndMm ?? longMm, longMm);
  const otherEndMm = Math.min(other.freeEndMm ?? longMm, longMm);
  const lapMm = Math.min(endMm, otherEndMm) - other.fromMm;
  const reason =
    outOfSheetRange({ ...common, ...heated, heatedZoneMm }) ??
    outOfSheetRange({ ...common, ...other, heatedZoneMm }) ??
    firstOutside('a lap', [
      { what: 'beginning of the second sheet', value: other.fromMm, least: 0, most: longMm, unit: 'mm' },
      { what: 'length of the lap', value: lapMm, least: 5, most: longMm, unit: 'mm' },
    ]) ??
    (contact && lapContactFault(contact));
  if (reason !== undefined) return { ok: false, reason };

  const holdSeconds = lap.holdSeconds * times;
  const metals = [propertiesOf[heated.metal], propertiesOf[other.metal]] as const;
  const grid = lapGrid(
    { heatedEndM: endMm / 1000, otherFromM: other.fromMm / 1000, otherEndM: otherEndMm / 1000 },
    5e-4,
    1.06,
  );
  const task = (conductance: number): LapTask => ({
    grid,
    heated: { properties: metals[0], thicknessM: heated.thicknessMm / 1000, cooledFaces },
    other: { properties: metals[1], thicknessM: other.thicknessMm / 1000, cooledFaces },
    contact: conductance,
    zoneM2: heatedZoneMm / 2000,
    ...common,
    holdSeconds,
    endRiseKelvin: 1,
    coolSeconds: 1e6,
    steps: usualSteps(holdSeconds),
  });
  const conductivity = Math.max(
    ...metals.flatMap((m) => [m.conductivity(20), m.conductivity(sourceCelsius)]),
  );
  const sheets = { lapMm, thicknessesMm: [heated.thicknessMm, other.thicknessMm], conductivity } as const;
  const { positionsM } = grid;
  const told = { positionsM, sourceCelsius, ambientCelsius, heatings: times };
  const onOther = { ...told, fromMm: other.fromMm, endMm: otherEndMm };
  const onHeated = { ...told, endMm };
  if (contact) {
    const field = conductLap(task(lapConductance(contact, sheets)));
    return {
      ok: true,
      other: historyAlong({ ...onOther, field: field.other }),
      heated: historyAlong({ ...onHeated, field: field.heated }),
    };
  }
  const full = conductLap(task(fullContact));
  let bare: SheetField | undefined;
  const none = (): SheetField => (bare ??= conductLap(task(0)).heated);
  const reaching = otherEndMm < endMm ? higherOf(full.other, none()) : full.other;
  return {
    ok: true,
    other: historyAlong({ ...onOther, field: reaching, riseFactor: 1.025 }),
    heated: lazily(() => historyAlong({ ...onHeated, field: higherOf(full.heated, none()) })),
  };
}

/** Not everyone asks about the heated sheet; its second solution waits until someone does. */
function lazily(make: () => SheetHistory): SheetHistory {
  let made: SheetHistory | undefined;
  return { at: (distanceMm) => (made ??= make()).at(distanceMm) };
}

const longMm = 2000;
