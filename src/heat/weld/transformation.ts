import { firstOutside } from '../outside.ts';

/** Shares of the mass in per cent; what is left out counts as none. */
export interface SteelShares {
  readonly c: number;
  readonly si?: number;
  readonly mn?: number;
  readonly cr?: number;
  readonly mo?: number;
  readonly ni?: number;
  readonly v?: number;
  readonly w?: number;
}

export type Temperature =
  { readonly ok: true; readonly celsius: number } | { readonly ok: false; readonly reason: string };

/**
 * Where austenite begins to form on slow heating: Ac1 = 723 − 10.7Mn − 16.9Ni + 29.1Si + 16.9Cr, K. W. Andrews 1965,
 * short form. Scatter about 15 to 30 K; a torch or an arc heats faster, which moves it up.
 */
export function ac1Celsius(steel: SteelShares): Temperature {
  const { mn = 0, ni = 0, si = 0, cr = 0 } = steel;
  return within(steel, 723 - 10.7 * mn - 16.9 * ni + 29.1 * si + 16.9 * cr);
}

/**
 * Where all is austenite: Ac3 = 910 − 203√C − 15.2Ni + 44.7Si + 104V + 31.5Mo + 13.1W, Andrews 1965, short form.
 *
 * The long form (−30Mn and more, from memory) lies about 40 K lower for 22MnB5, furnaces run above 850 °C: not an
 * instruction for hardening.
 */
export function ac3Celsius(steel: SteelShares): Temperature {
  const { c, ni = 0, si = 0, v = 0, mo = 0, w = 0 } = steel;
  return within(steel, 910 - 203 * Math.sqrt(c) - 15.2 * ni + 44.7 * si + 104 * v + 31.5 * mo + 13.1 * w);
}

/** Reason when a steel is none of those the formulas were made for: up to 0.6 % C and 5 % of anything else. */
export function sharesOutside(steel: SteelShares): string | undefined {
  const { c, si = 0, mn = 0, cr = 0, mo = 0, ni = 0, v = 0, w = 0 } = steel;
  return firstOutside([
    ['carbon', c, 0.01, 0.6, '%'],
    ['silicon', si, 0, 2.5, '%'],
    ['manganese', mn, 0, 5, '%'],
    ['chromium', cr, 0, 5, '%'],
    ['molybdenum', mo, 0, 5, '%'],
    ['nickel', ni, 0, 5, '%'],
    ['vanadium', v, 0, 1, '%'],
    ['tungsten', w, 0, 5, '%'],
  ]);
}

function within(steel: SteelShares, celsius: number): Temperature {
  const off = sharesOutside(steel);
  return off === undefined ? { ok: true, celsius } : { ok: false, reason: off };
}
