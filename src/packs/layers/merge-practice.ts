import type { HeatPractice } from '../../facts/context.ts';
import { placeKey } from '../pack.ts';
import type { Pack } from '../pack.ts';
import { refuse } from './choose-versions.ts';
import type { Refusal } from './choose-versions.ts';
import { mayShareVehicle } from './pack-covers.ts';

export type MergedPractice = { readonly ok: true; readonly practice: HeatPractice } | Refusal;

/** Of all layers the largest counts. A layer that states less than one under it is refused, as with limits. */
export function mergePractice(packs: readonly Pack[]): MergedPractice {
  const allowanceKelvin = new Map<string, number>();
  const reachMm = new Map<string, number>();
  for (const [index, pack] of packs.entries()) {
    const under = packs.slice(0, index).filter((other) => mayShareVehicle(pack, other));
    for (const { means, kelvin } of pack.allowances) {
      const before = under.flatMap(({ allowances }) => allowances.filter((one) => one.means === means));
      if (before.some((one) => one.kelvin > kelvin)) return loosened(pack, 'allowance', means);
      allowanceKelvin.set(means, Math.max(kelvin, allowanceKelvin.get(means) ?? 0));
    }
    for (const { from, mm } of pack.reaches) {
      const before = under.flatMap(({ reaches }) => reaches.filter((one) => one.from === from));
      if (before.some((one) => one.mm > mm)) return loosened(pack, 'reach', from);
      reachMm.set(from, Math.max(mm, reachMm.get(from) ?? 0));
    }
  }
  return { ok: true, practice: { allowanceKelvin, reachMm } };
}

function loosened({ name, places }: Pack, what: 'allowance' | 'reach', word: string): Refusal {
  const sentence = `The pack ${name} loosens the ${what} for \`${word}\`; a later pack may only tighten it.`;
  return refuse(sentence, places?.[placeKey(what, word)]);
}
