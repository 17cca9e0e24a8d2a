/** The numbers of a strip that can be out of range, all of them stated. */
export interface StripNumbers {
  readonly metal: string;
  readonly sourceCelsius: number;
  readonly holdSeconds: number;
  readonly times: number;
  readonly thicknessMm: number;
  readonly freeEndMm?: number;
  readonly heatedZoneMm: number;
  readonly emissivity: number;
  readonly convection: number;
  readonly ambientCelsius: number;
}

interface Range {
  readonly what: string;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly unit: string;
}

/**
 * Says why a strip is outside what has been checked, or undefined when it is inside.
 *
 * A misread unit (1.2 m of sheet, 600 °F taken as 600 K) must end here and not as a plausible temperature.
 */
export function outOfStripRange(strip: StripNumbers): string | undefined {
  const { metal } = strip;
  const ranges: readonly Range[] = [
    { what: 'source temperature', value: strip.sourceCelsius, ...sourceRange(metal), unit: '°C' },
    { what: 'hold', value: strip.holdSeconds, least: 0.5, most: 3600, unit: 's' },
    { what: 'number of heatings', value: strip.times, least: 1, most: 100, unit: '' },
    {
      what: 'total time of heating',
      value: strip.holdSeconds * strip.times,
      least: 0.5,
      most: 3600,
      unit: 's',
    },
    {
      what: 'thickness',
      value: strip.thicknessMm,
      least: 0.4,
      most: metal === 'aluminium' ? 6 : 4,
      unit: 'mm',
    },
    { what: 'distance to the free end', value: strip.freeEndMm ?? 1, least: 1, most: 20000, unit: 'mm' },
    { what: 'length of the heated zone', value: strip.heatedZoneMm, least: 0, most: 300, unit: 'mm' },
    { what: 'emissivity', value: strip.emissivity, least: 0, most: 1, unit: '' },
    { what: 'convection', value: strip.convection, least: 3, most: 100, unit: 'W/m²K' },
    {
      what: 'temperature of the surroundings',
      value: strip.ambientCelsius,
      least: -30,
      most: 50,
      unit: '°C',
    },
  ];
  const off = ranges.find(({ value, least, most }) => !(value >= least && value <= most));
  if (off) {
    const unit = off.unit === '' ? '' : ` ${off.unit}`;
    return `${off.what} ${off.value}${unit} is outside what can be computed for ${metal}: ${off.least} to ${off.most}${unit}`;
  }
  if (!Number.isInteger(strip.times)) return `number of heatings ${strip.times} is not a whole number`;
  if (strip.sourceCelsius <= strip.ambientCelsius) {
    return `source temperature ${strip.sourceCelsius} °C is not above the surroundings at ${strip.ambientCelsius} °C`;
  }
  return undefined;
}

// Aluminium melts from about 585 °C on; the curves of its standard end at 500 and are held level to 600.
const sourceRange = (metal: string): { readonly least: number; readonly most: number } => ({
  least: 30,
  most: metal === 'aluminium' ? 600 : 1200,
});
