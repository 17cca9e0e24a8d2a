import type { Dimension } from './dimension.ts';

/**
 * canonical value = (number + before) × times ÷ over.
 * Multiplier and divisor are kept apart so that 30 mm/min is the correctly rounded 30 ÷ 60, not 30 × 0.01666….
 */
export interface Unit {
  readonly symbol: string;
  /** Other ways to write it. Upper and lower case need no entry of their own, see `findUnit`. */
  readonly also?: readonly string[];
  readonly before?: number;
  readonly times?: number;
  readonly over?: number;
  /** Nobody states thousandths of this unit, so that `1.500` may be one and a half thousand with a thousands point. */
  readonly coarse?: true;
}

// International yard and pound agreement (1959), as in NIST SP 811: exact. One pound-force is the
// pound under standard gravity; one square inch is 645.16 mm².
const newtonPerPoundForce = 4.4482216152605;
const mm2PerSquareInch = 645.16;

// Both code points of the degree, micro and ohm signs are in use (° º ˚, U+00B5 U+03BC, U+03A9 U+2126): keyboards and fonts differ.
const celsius = ['C', 'ºC', '˚C', '℃', 'degC', 'deg C'] as const;
const fahrenheit = ['F', 'ºF', '˚F', '℉', 'degF', 'deg F'] as const;

/** Every unit that a plan may write, the usual one first; the order is the order of lists and of ties in suggestions. */
export const units: Readonly<Record<Dimension, readonly Unit[]>> = {
  temperature: [
    { symbol: '°C', also: celsius, coarse: true },
    { symbol: '°F', also: fahrenheit, coarse: true, before: -32, times: 5, over: 9 },
    { symbol: 'K', before: -273.15 },
  ],
  // No offset here: 300 °F of difference is 166.67 K, while a temperature of 300 °F is 148.9 °C.
  'temperature difference': [
    { symbol: 'K' },
    { symbol: '°C', also: celsius },
    { symbol: '°F', also: fahrenheit, times: 5, over: 9 },
  ],
  length: [
    { symbol: 'mm' },
    { symbol: 'cm', times: 10 },
    { symbol: 'm', times: 1000 },
    { symbol: 'µm', also: ['\u03bcm', 'um'], over: 1000 },
    { symbol: 'in', also: ['inch', 'inches'], times: 25.4 },
  ],
  time: [
    { symbol: 's', also: ['sec', 'secs', 'second', 'seconds'] },
    { symbol: 'min', also: ['mins', 'minute', 'minutes'], times: 60 },
    { symbol: 'h', also: ['hr', 'hrs', 'hour', 'hours'], times: 3600 },
    { symbol: 'days', also: ['day'], times: 86_400 },
    { symbol: 'ms', over: 1000 },
  ],
  stress: [
    { symbol: 'MPa', coarse: true },
    { symbol: 'N/mm²', also: ['N/mm2', 'N/mm^2'], coarse: true },
    { symbol: 'GPa', times: 1000 },
    { symbol: 'ksi', times: newtonPerPoundForce * 1000, over: mm2PerSquareInch },
    { symbol: 'psi', times: newtonPerPoundForce, over: mm2PerSquareInch, coarse: true },
    { symbol: 'kgf/mm²', also: ['kgf/mm2', 'kgf/mm^2'], times: 9.80665 },
  ],
  force: [
    { symbol: 'kN' },
    { symbol: 'N', over: 1000 },
    { symbol: 'daN', over: 100 },
    { symbol: 'lbf', times: newtonPerPoundForce, over: 1000 },
    { symbol: 'kgf', times: 9.80665, over: 1000 },
  ],
  current: [{ symbol: 'kA' }, { symbol: 'A', over: 1000 }],
  voltage: [{ symbol: 'V' }, { symbol: 'kV', times: 1000 }, { symbol: 'mV', over: 1000 }],
  energy: [
    { symbol: 'J' },
    { symbol: 'kJ', times: 1000 },
    { symbol: 'Wh', times: 3600 },
    { symbol: 'kWh', times: 3_600_000 },
  ],
  'energy per length': [
    { symbol: 'kJ/mm' },
    { symbol: 'J/mm', over: 1000 },
    { symbol: 'kJ/cm', over: 10 },
    { symbol: 'kJ/in', over: 25.4 },
  ],
  'energy per area': [{ symbol: 'J/cm²', also: ['J/cm2', 'J/cm^2'] }],
  power: [{ symbol: 'W' }, { symbol: 'kW', times: 1000 }],
  speed: [
    { symbol: 'mm/s' },
    { symbol: 'mm/min', over: 60 },
    { symbol: 'cm/min', over: 6 },
    { symbol: 'm/min', times: 50, over: 3 },
    { symbol: 'in/min', also: ['ipm'], times: 25.4, over: 60 },
  ],
  insulation: [
    { symbol: 'Ω/V', also: ['\u2126/V', 'ohm/V'], coarse: true },
    { symbol: 'kΩ/V', also: ['k\u2126/V', 'kohm/V'], times: 1000 },
    { symbol: 'MΩ/V', also: ['M\u2126/V', 'Mohm/V', 'MOhm/V'], times: 1_000_000 },
  ],
  resistance: [
    { symbol: 'Ω', also: ['\u2126', 'ohm', 'ohms'] },
    { symbol: 'mΩ', also: ['m\u2126', 'mohm', 'mOhm'], over: 1000 },
    { symbol: 'kΩ', also: ['k\u2126', 'kohm'], times: 1000 },
    { symbol: 'MΩ', also: ['M\u2126', 'Mohm', 'MOhm'], times: 1_000_000 },
  ],
  angle: [{ symbol: '°', also: ['º', '˚', 'deg', 'degree', 'degrees'] }],
  mass: [{ symbol: 'kg' }, { symbol: 'g', over: 1000 }, { symbol: 'lb', also: ['lbs'], times: 0.45359237 }],
  percent: [{ symbol: '%', also: ['percent', 'per cent'] }],
};

/**
 * Spellings that a reader who ignores case would take for something a billion times larger. They are refused,
 * each with the spelling that was probably meant.
 */
export const milliForMega: ReadonlyMap<string, string> = new Map([
  ['mPa', 'MPa'],
  ['MV', 'mV'],
  ['Mv', 'mV'],
  ['mΩ/V', 'MΩ/V'],
  ['m\u2126/V', 'MΩ/V'],
  ['mω/v', 'MΩ/V'],
  ['mohm/V', 'MΩ/V'],
  ['mohm/v', 'MΩ/V'],
  ['mOhm/V', 'MΩ/V'],
]);
