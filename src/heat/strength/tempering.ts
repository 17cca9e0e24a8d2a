import { cell } from '../cell.ts';
import { historyFault } from '../history-fault.ts';
import { firstOutside } from '../outside.ts';
import type { TemperatureHistory } from '../point-history.ts';

export type TemperedHardness =
  | { readonly state: 'tempered'; readonly hv: number; readonly parameterHours: number }
  /** Hotter than Ac1: partly austenite again, and what it becomes on cooling is not a matter of tempering. */
  | { readonly state: 're-transformed' }
  | { readonly state: 'not computed'; readonly reason: string };

/** Start of austenite in 22MnB5 by K. W. Andrews (1965), 719.5 °C rounded. */
export const ac1Celsius = 720;
/** Press-hardened, paint-baked 1500 MPa sheet. */
export const bakedHv = 480;

/**
 * Hollomon-Jaffe parameter of a whole history: TK·(20 + log10 t)/1000 with t in **hours** (with seconds the 20
 * would have to be 16.4437). −Infinity when nothing was warm enough to count.
 *
 * At each step the damage so far is turned into the time that would have done it at the present temperature, and
 * the step is added to that. A step counts at the higher of its two temperatures. Below 27 °C nothing counts.
 */
export function temperingParameterHours({ seconds, celsius }: TemperatureHistory): number {
  let parameter = -Infinity;
  for (let n = 1; n < seconds.length; n++) {
    const warmer = Math.max(cell(celsius, n - 1), cell(celsius, n));
    const dtHours = (cell(seconds, n) - cell(seconds, n - 1)) / 3600;
    if (warmer < 27 || dtHours <= 0) continue;
    const kelvin = warmer + 273.15;
    const equivalentHours = 10 ** ((1000 * parameter) / kelvin - 20);
    parameter = (kelvin * (20 + Math.log10(equivalentHours + dtHours))) / 1000;
  }
  return parameter;
}

/**
 * Hardness of press-hardened or martensitic sheet after a history of heat.
 *
 * Working curve: hardness ÷ start hardness = f(P)/0.92830 and at most 1, f(P) = 0.3188 + 0.6812/(1 + exp((P −
 * 13.424)/2.230)), fitted by least squares to published hardness of tempered 0.25 and 0.31 % C martensite (J. H.
 * Hollomon and L. D. Jaffe, 1945, and steel 1026). Paint baking (170 °C, 20 min) takes nothing off.
 * Scatter of the fit 13 HV; worst 48 HV too soft (400 °C, 10 s) and 33 too hard (150 °C, 90 s); from 250 °C and
 * longer than 90 s steel may be 25 HV softer than this. 22MnB5 itself is not among the data.
 *
 * Range: plain C-Mn-B martensite of 0.2 to 0.35 % C, below Ac1; no hold under 10 s is among the data. Not for
 * dual-phase or complex-phase steel, of which only the martensite softens.
 */
export function temperedHardness(history: TemperatureHistory, startHv = bakedHv): TemperedHardness {
  const reason = firstOutside([['start hardness', startHv, 300, 520, 'HV']]) ?? historyFault(history);
  if (reason !== undefined) return { state: 'not computed', reason };
  if (history.celsius.some((celsius) => celsius > ac1Celsius)) return { state: 're-transformed' };
  const parameterHours = temperingParameterHours(history);
  const left = 0.3188 + 0.6812 / (1 + Math.exp((parameterHours - 13.424) / 2.23));
  return { state: 'tempered', hv: startHv * Math.min(1, left / 0.9283), parameterHours };
}
