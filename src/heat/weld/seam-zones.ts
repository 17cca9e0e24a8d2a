import { adamsWidthMm } from './adams.ts';
import { coolingRate } from './cooling-rate.ts';
import { martensiteHardness, martensiteOf22MnB5 } from './martensite.ts';
import { ac1Celsius, ac3Celsius } from './transformation.ts';
import type { SteelShares } from './transformation.ts';

/** Composition of 22MnB5 that the test vectors of the method are for, % of mass. */
const boronSteel: SteelShares = { c: 0.23, mn: 1.18, cr: 0.16, si: 0.22 };

/** What one pass makes of press-hardened 22MnB5 beside it. */
export type SeamZones =
  | {
      readonly ok: true;
      /** From the edge of the fused metal: re-hardened or not by its cooling rate, up to here. */
      readonly austenitisedMm: number;
      /** From there to here a mixture; beyond, tempered. */
      readonly transformedMm: number;
      /** On the centre line at 400 °C, where it is slowest of the span that decides. */
      readonly coolingKelvinPerSecond: number;
      /** Share of martensite in the first zone, 0 to 1. */
      readonly martensiteLeast: number;
      readonly martensiteMost: number;
      readonly note: string;
      /** Of that martensite by three formulas (from memory, ±30 HV); absent outside their range. */
      readonly hardnessHv?: readonly [number, number];
    }
  | { readonly ok: false; readonly reason: string };

/**
 * The zones beside a pass in press-hardened sheet: Adams' widths to Ac3 and Ac1 of Andrews, the cooling rate on the centre line and
 * the martensite that it leaves. Heating of seconds moves both temperatures up, so that the zones are at most so wide.
 * Loss to air and clamps cools thin sheet faster than the rate says.
 */
export function boronSteelZones(pass: {
  readonly heatInputJPerMm: number;
  readonly thicknessMm: number;
  readonly freeEndMm?: number;
}): SeamZones {
  const ac1 = ac1Celsius(boronSteel);
  const ac3 = ac3Celsius(boronSteel);
  if (!ac1.ok) return ac1;
  if (!ac3.ok) return ac3;
  const hardened = adamsWidthMm({ ...pass, metal: 'steel', celsius: ac3.celsius });
  const transformed = adamsWidthMm({ ...pass, metal: 'steel', celsius: ac1.celsius });
  const { heatInputJPerMm, thicknessMm } = pass;
  const rate = coolingRate({ heatInputJPerMm, thicknessMm, atCelsius: 400 });
  if (!hardened.ok) return hardened;
  if (!transformed.ok) return transformed;
  if (!rate.ok) return rate;
  const share = martensiteOf22MnB5(rate.kelvinPerSecond);
  if (!share.ok) return share;
  const hardness = martensiteHardness(boronSteel, rate.kelvinPerSecond);
  const values = hardness.ok ? [hardness.yurioka, hardness.dueren, hardness.maynier] : [];
  return {
    ok: true,
    austenitisedMm: hardened.widthMm,
    transformedMm: transformed.widthMm,
    coolingKelvinPerSecond: rate.kelvinPerSecond,
    martensiteLeast: share.least,
    martensiteMost: share.most,
    note: share.note,
    ...(values.length === 0 ? {} : { hardnessHv: [Math.min(...values), Math.max(...values)] }),
  };
}
