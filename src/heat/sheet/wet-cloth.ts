import { cell } from '../cell.ts';

/** A wet cloth lying on one face of a strip, across its whole width. */
export interface WetCloth {
  readonly fromM: number;
  readonly toM: number;
  /** Water in the cloth and added to it while the heat lasts, kg for each m² of it. */
  readonly waterKgPerM2: number;
}

export const boilingCelsius = 100;

/** The cloth seen from each node of the strip, for a metre of its width. */
export interface WetRow {
  readonly coveredM2: Float64Array;
  readonly waterKg: Float64Array;
  /** What boils off for each kelvin above 100 °C in the present round, W/K. */
  readonly boiling: Float64Array;
}

/**
 * What a wet cloth takes from the sheet under it, so that the sheet comes out too hot rather than too cold.
 *
 * It takes heat only where the sheet is above 100 °C, at 1000 W/(m²·K) towards 100 °C, until its water has boiled
 * off; warming the water and drying in the air count as nothing. Textbooks put boiling at 2500 W/(m²·K) and more
 * (from memory). Where the sheet is ever above 150 °C the cloth counts as dry from then on: beyond some 30 K above
 * boiling a blanket of steam begins to lift the water off (boiling curve of water, from memory). Its face loses
 * nothing to the air, wet or dry. Water does not run from one place of the cloth to another.
 */
export function wetRow(cloth: WetCloth, positionsM: Float64Array): WetRow {
  const last = positionsM.length - 1;
  const coveredM2 = positionsM.map((here, i) => {
    const from = i === 0 ? here : (cell(positionsM, i - 1) + here) / 2;
    const to = i === last ? here : (here + cell(positionsM, i + 1)) / 2;
    return Math.max(0, Math.min(to, cloth.toM) - Math.max(from, cloth.fromM));
  });
  return {
    coveredM2,
    waterKg: coveredM2.map((area) => area * cloth.waterKgPerM2),
    boiling: new Float64Array(positionsM.length),
  };
}

/** Looks at the temperatures of the present round: a place too hot, or without water for the step, is dry for good. */
export function boil({ coveredM2, waterKg, boiling }: WetRow, now: Float64Array, dt: number): void {
  for (let i = 0; i < now.length; i++) {
    const over = cell(now, i) - boilingCelsius;
    const perKelvin = over > 0 ? coefficient * cell(coveredM2, i) : 0;
    if (over > mostOver || (perKelvin * over * dt) / latentHeat > cell(waterKg, i)) waterKg[i] = 0;
    boiling[i] = cell(waterKg, i) > 0 ? perKelvin : 0;
  }
}

/** Takes the steam of a finished step from the water. */
export function boilOff({ waterKg, boiling }: WetRow, now: Float64Array, dt: number): void {
  for (let i = 0; i < now.length; i++) {
    const steam = (cell(boiling, i) * Math.max(0, cell(now, i) - boilingCelsius) * dt) / latentHeat;
    waterKg[i] = Math.max(0, cell(waterKg, i) - steam);
  }
}

/** W/(m²·K). */
const coefficient = 1000;
const mostOver = 50;
/** J/kg at 100 °C, steam tables. */
const latentHeat = 2.257e6;
