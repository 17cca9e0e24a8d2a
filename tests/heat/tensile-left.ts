import { tensileOfHardness } from '../../src/heat/strength/hardness-to-tensile.ts';
import type { TemperatureHistory } from '../../src/heat/point-history.ts';
import { bakedHv, temperedHardness } from '../../src/heat/strength/tempering.ts';
import type { TemperedHardness } from '../../src/heat/strength/tempering.ts';

export type TensileLeft =
  | { readonly state: 'tempered'; readonly percent: number; readonly hv: number; readonly tensileMpa: number }
  | Exclude<TemperedHardness, { readonly state: 'tempered' }>;

/** Tensile strength left by the working curve itself, in % of the start, through hardness. Hardness to tensile adds about 5 %. */
export function tensileLeft(history: TemperatureHistory, startHv = bakedHv): TensileLeft {
  const hardness = temperedHardness(history, startHv);
  if (hardness.state !== 'tempered') return hardness;
  const { hv } = hardness;
  const now = tensileOfHardness(hv);
  const first = tensileOfHardness(startHv);
  if (now === undefined || first === undefined) {
    return {
      state: 'not computed',
      reason: `hardness ${Math.round(hv)} HV is outside the table of tensile strengths`,
    };
  }
  return { state: 'tempered', percent: (100 * now) / first, hv, tensileMpa: now };
}
