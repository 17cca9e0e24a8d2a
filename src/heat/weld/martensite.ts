import { firstOutside } from '../outside.ts';
import { sharesOutside } from './transformation.ts';
import type { SteelShares } from './transformation.ts';

export type MartensiteShare =
  | { readonly ok: true; readonly least: number; readonly most: number; readonly note: string }
  | { readonly ok: false; readonly reason: string };

export type MartensiteHardness =
  | {
      readonly ok: true;
      readonly yurioka: number;
      readonly dueren: number;
      readonly maynier: number;
    }
  | { readonly ok: false; readonly reason: string };

/**
 * Share of martensite (0 to 1) at a temperature, D. P. Koistinen and R. E. Marburger 1959: 1 − exp(−0.011·(Ms − T)) of
 * what was austenite at Ms. Ms 100 to 550 °C, T −60 to 600 °C; none above Ms.
 */
export function martensiteShare(msCelsius: number, celsius: number): MartensiteShare {
  const off = firstOutside([
    ['start of martensite', msCelsius, 100, 550, '°C'],
    ['temperature', celsius, -60, 600, '°C'],
  ]);
  if (off !== undefined) return { ok: false, reason: off };
  const share = celsius >= msCelsius ? 0 : 1 - Math.exp(-0.011 * (msCelsius - celsius));
  return { ok: true, least: share, most: share, note: 'Koistinen and Marburger' };
}

/**
 * What a place of 22MnB5 that was austenite all through becomes at room temperature, by its cooling rate between 800
 * and 400 °C. From 30 K/s on martensite, as much as Koistinen and Marburger leave (Ms 400 °C); from 27 K/s on it may be;
 * slower, any share down to none: no curve of the share by rate is at hand. The critical rate (27 K/s, up to 30) was
 * read in published studies; straining before raises it, and then even 30 K/s is no promise.
 */
export function martensiteOf22MnB5(kelvinPerSecond: number, strained = false): MartensiteShare {
  const off = firstOutside([['cooling rate', kelvinPerSecond, 0.01, 10000, 'K/s']]);
  if (off !== undefined) return { ok: false, reason: off };
  const full = martensiteShare(400, 20);
  if (!full.ok) return full;
  if (kelvinPerSecond >= 30 && !strained) return { ...full, most: 1, note: 'faster than the critical rate' };
  const note = strained
    ? 'straining before raises the critical rate by an amount that is not known'
    : kelvinPerSecond >= 27
      ? 'within the published span of the critical rate, 27 to 30 K/s'
      : 'slower than the critical rate: bainite and ferrite take a share that is not computed';
  return { ok: true, least: 0, most: 1, note };
}

/**
 * Vickers hardness of untempered martensite by three formulas, all from memory, each good to about 30 HV:
 *
 * - N. Yurioka: 884·C·(1 − 0.3·C²) + 294
 * - C. Düren: 802·C + 305
 * - Ph. Maynier and others: 127 + 949C + 27Si + 11Mn + 16Cr + 21·log10(V), V in K/h. A printed copy has molybdenum in
 *   place of the rate, apparently a misprint.
 *
 * Carbon 0.05 to 0.35 %, no nickel; cooling rate 1 to 1000 K/s.
 */
export function martensiteHardness(steel: SteelShares, kelvinPerSecond: number): MartensiteHardness {
  const { c, si = 0, mn = 0, cr = 0, ni = 0 } = steel;
  const off =
    sharesOutside(steel) ??
    firstOutside([
      ['carbon', c, 0.05, 0.35, '%'],
      ['nickel', ni, 0, 0.3, '%'],
      ['cooling rate', kelvinPerSecond, 1, 1000, 'K/s'],
    ]);
  if (off !== undefined) return { ok: false, reason: off };
  return {
    ok: true,
    yurioka: 884 * c * (1 - 0.3 * c * c) + 294,
    dueren: 802 * c + 305,
    maynier: 127 + 949 * c + 27 * si + 11 * mn + 16 * cr + 21 * Math.log10(3600 * kelvinPerSecond),
  };
}
