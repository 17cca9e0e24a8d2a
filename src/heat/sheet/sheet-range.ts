/** The numbers of a heated sheet that can be out of range, all of them stated. */
export interface SheetNumbers {
  readonly metal: string;
  readonly sourceCelsius: number;
  readonly holdSeconds: number;
  readonly times: number;
  readonly thicknessMm: number;
  readonly shape?: 'strip' | 'disc';
  readonly radiusMm?: number;
  readonly freeEndMm?: number;
  readonly heatedZoneMm?: number;
  readonly emissivity: number;
  readonly convection: number;
  readonly ambientCelsius: number;
  readonly wetCloth?: ClothOnSheet;
  readonly copperBar?: BarOnSheet;
}

/** A wet cloth on one cooled face, across the whole way of the heat and beyond it at both sides. */
export interface ClothOnSheet {
  /** From the edge of the heated zone. */
  readonly fromMm: number;
  readonly toMm: number;
  /** Water in it and added while the heat lasts, kg for each m² of cloth. A dripping towel holds about 1 (no source). */
  readonly waterKgPerM2: number;
}

/** A copper bar pressed on one cooled face, across the whole way of the heat and beyond it at both sides. */
export interface BarOnSheet {
  readonly fromMm: number;
  readonly toMm: number;
  readonly thicknessMm: number;
  /** Some 500 to 2000 W/(m²·K) for metal clamped dry on metal (from memory); less errs high. */
  readonly contactWattPerM2K: number;
}

export interface Range {
  readonly what: string;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly unit: string;
}

/**
 * Says why a sheet is outside what has been checked, or undefined when it is inside.
 *
 * A misread unit (1.2 m of sheet, 600 °F taken as 600 K) must end here and not as a plausible temperature.
 */
export function outOfSheetRange(sheet: SheetNumbers): string | undefined {
  const { metal, wetCloth, copperBar } = sheet;
  const off = firstOutside(metal, [...usualRanges(sheet), ...clothRanges(wetCloth), ...barRanges(copperBar)]);
  if (off !== undefined) return off;
  if (!Number.isInteger(sheet.times)) return `number of heatings ${sheet.times} is not a whole number`;
  if (sheet.sourceCelsius <= sheet.ambientCelsius) {
    return `source temperature ${sheet.sourceCelsius} °C is not above the surroundings at ${sheet.ambientCelsius} °C`;
  }
  const disc = sheet.shape === 'disc';
  if (disc && sheet.radiusMm === undefined) return 'the radius of the heated disc is not stated';
  if (!disc && sheet.radiusMm !== undefined) return 'a strip has no radius; a radius belongs to a disc';
  if (disc && sheet.heatedZoneMm !== undefined) {
    return 'the heated zone of a disc is its radius; a length of heated zone belongs to a strip';
  }
  const sink = wetCloth ?? copperBar;
  if (!sink) return undefined;
  if (wetCloth && copperBar) return 'a wet cloth and a copper bar together are not computed';
  if (disc) return 'a wet cloth or copper bar is computed on a strip only: on a disc heat goes round it';
  if (sink.toMm - sink.fromMm < 10) return 'a wet cloth or copper bar of less than 10 mm is not computed';
  if (sheet.freeEndMm !== undefined && sink.toMm > sheet.freeEndMm) {
    return `the wet cloth or copper bar ends at ${sink.toMm} mm, beyond the free end of the sheet`;
  }
  return undefined;
}

/** The sentence for the first value that is not inside its range, ends included; NaN is never inside. */
export function firstOutside(metal: string, ranges: readonly Range[]): string | undefined {
  const off = ranges.find(({ value, least, most }) => !(value >= least && value <= most));
  if (!off) return undefined;
  const unit = off.unit === '' ? '' : ` ${off.unit}`;
  return `${off.what} ${off.value}${unit} is outside what can be computed for ${metal}: ${off.least} to ${off.most}${unit}`;
}

/** Ends of a range, both included. */
export interface Ends {
  readonly least: number;
  readonly most: number;
}

/** What has been checked, whatever the metal. */
export const sheetRanges = {
  holdSeconds: { least: 0.5, most: 3600 },
  times: { least: 1, most: 100 },
  heatingSeconds: { least: 0.5, most: 3600 },
  freeEndMm: { least: 1, most: 20_000 },
  heatedZoneMm: { least: 0, most: 300 },
  radiusMm: { least: 3, most: 150 },
  emissivity: { least: 0, most: 1 },
  convection: { least: 3, most: 100 },
  ambientCelsius: { least: -30, most: 50 },
  sinkFromMm: { least: 0, most: 500 },
  barThicknessMm: { least: 2, most: 50 },
} as const satisfies Readonly<Record<string, Ends>>;

/** Thickness that has been checked, mm: to 6 for aluminium, to 4 for every other metal. */
export const thicknessRangeMm = (metal: string): Ends => ({
  least: 0.4,
  most: metal === 'aluminium' ? 6 : 4,
});

/** Aluminium melts from about 585 °C on; the curves of its standard end at 500 and are held level to 600. */
export const sourceRangeCelsius = (metal: string): Ends => ({
  least: 30,
  most: metal === 'aluminium' ? 600 : 1200,
});

function usualRanges(sheet: SheetNumbers): readonly Range[] {
  const { metal } = sheet;
  const ends = sheetRanges;
  const heating = sheet.holdSeconds * sheet.times;
  return [
    { what: 'source temperature', value: sheet.sourceCelsius, ...sourceRangeCelsius(metal), unit: '°C' },
    { what: 'hold', value: sheet.holdSeconds, ...ends.holdSeconds, unit: 's' },
    { what: 'number of heatings', value: sheet.times, ...ends.times, unit: '' },
    { what: 'total time of heating', value: heating, ...ends.heatingSeconds, unit: 's' },
    { what: 'thickness', value: sheet.thicknessMm, ...thicknessRangeMm(metal), unit: 'mm' },
    { what: 'distance to the free end', value: sheet.freeEndMm ?? 1, ...ends.freeEndMm, unit: 'mm' },
    { what: 'length of the heated zone', value: sheet.heatedZoneMm ?? 0, ...ends.heatedZoneMm, unit: 'mm' },
    { what: 'radius of the heated disc', value: sheet.radiusMm ?? 3, ...ends.radiusMm, unit: 'mm' },
    { what: 'emissivity', value: sheet.emissivity, ...ends.emissivity, unit: '' },
    { what: 'convection', value: sheet.convection, ...ends.convection, unit: 'W/m²K' },
    {
      what: 'temperature of the surroundings',
      value: sheet.ambientCelsius,
      ...ends.ambientCelsius,
      unit: '°C',
    },
  ];
}

function clothRanges(cloth: ClothOnSheet | undefined): readonly Range[] {
  if (!cloth) return [];
  return [
    { what: 'beginning of the wet cloth', value: cloth.fromMm, ...sheetRanges.sinkFromMm, unit: 'mm' },
    { what: 'end of the wet cloth', value: cloth.toMm, least: 0, most: 1000, unit: 'mm' },
    { what: 'water of the wet cloth', value: cloth.waterKgPerM2, least: 0.1, most: 20, unit: 'kg/m²' },
  ];
}

function barRanges(bar: BarOnSheet | undefined): readonly Range[] {
  if (!bar) return [];
  return [
    { what: 'beginning of the copper bar', value: bar.fromMm, ...sheetRanges.sinkFromMm, unit: 'mm' },
    { what: 'end of the copper bar', value: bar.toMm, least: 0, most: 1000, unit: 'mm' },
    {
      what: 'thickness of the copper bar',
      value: bar.thicknessMm,
      ...sheetRanges.barThicknessMm,
      unit: 'mm',
    },
    { what: 'contact of the copper bar', value: bar.contactWattPerM2K, least: 50, most: 2000, unit: 'W/m²K' },
  ];
}
