import { propertiesOf } from '../../heat/metal/sheet-metals.ts';
import type { HeldSheet } from '../../heat/sheet/held-sheet.ts';
import type { HeldLap } from '../../heat/sheet/held-lap.ts';
import type { Neighbour } from './exposed-neighbour.ts';
import type { NeighbourStrip } from './neighbour-strip.ts';
import { metalOf } from './neighbour-strip.ts';
import { quantityOf } from '../quantity-of.ts';
import { thinnestSheetMm } from './seam-beyond.ts';

type Strip = Extract<NeighbourStrip, { readonly ok: true }>;

/** The least overlap that the engine computes, mm: next to none, so that the heat goes over into the neighbour alone. */
const overlapMm = 5;

/**
 * Heat that runs on into a joined part which carries less of it: that part is hotter where it begins than if the heated sheet went
 * on. `free_end: runs on` does not tell which sheet it is that runs on, so without a stated lap the thinner one is taken.
 *
 * @param distanceMm from the edge of the heated zone to the neighbour's nearest edge.
 * @returns undefined where the neighbour carries as much heat as the heated sheet, where the end of the heated sheet is
 * known or is already taken at the neighbour, and where no sheet of its own is computed.
 */
export function thinnerBeyond(
  { part: itself, carrier, path, name: ownName }: Neighbour,
  { strip, sink, sharesHeat }: Strip,
  distanceMm: number,
): { readonly lap: HeldLap; readonly notes: readonly string[] } | undefined {
  const { thicknessMm: heatedMm, metal: heatedMetal, freeEndMm, sourceCelsius, holdSeconds, times } = strip;
  // An item is as hot as the part that it sits at.
  const part = itself ?? carrier;
  const name = itself === undefined ? (carrier?.name ?? ownName) : ownName;
  if (path !== 'joined' || part === undefined || freeEndMm !== undefined) return undefined;
  if (sink !== undefined || sharesHeat === true) return undefined;
  const metal = metalBeyond(part.material.class, heatedMetal);
  if (metal === undefined) return undefined;
  const statedMm = quantityOf(part.part.thickness, 'length');
  const thicknessMm = statedMm ?? Math.min(thinnestSheetMm, heatedMm);
  if (carries(metal, thicknessMm) >= carries(heatedMetal, heatedMm)) return undefined;
  const what =
    statedMm === undefined
      ? `The thickness of ${name} is not stated: ${String(thicknessMm)} mm is taken.`
      : `${name} carries less heat than the heated sheet.`;
  return {
    lap: {
      ...{ sourceCelsius, holdSeconds, times },
      ...(strip.cooledFaces === undefined ? {} : { cooledFaces: strip.cooledFaces }),
      heated: { metal: heatedMetal, thicknessMm: heatedMm, freeEndMm: distanceMm + overlapMm },
      other: { metal, thicknessMm, fromMm: distanceMm },
    },
    notes: [
      `${what} From ${String(distanceMm)} mm on heat is taken to run in it alone; state its \`lap\` where the heated sheet goes on below it.`,
    ],
  };
}

/** Plain steels differ by a margin of safety, not by a measured figure: the heated one's is taken for both. */
function metalBeyond(
  strengthClass: string | undefined,
  heated: HeldSheet['metal'],
): HeldSheet['metal'] | undefined {
  const metal = metalOf(strengthClass);
  if (metal === undefined) return undefined;
  const isPlain = (one: HeldSheet['metal']): boolean => one === 'steel' || one === 'mild steel';
  return isPlain(metal) && isPlain(heated) ? heated : metal;
}

/** Conductivity at 200 °C, where the limits of most neighbours lie, by thickness: W/K along a strip one mm wide per mm, in mW. */
function carries(metal: HeldSheet['metal'], thicknessMm: number): number {
  return propertiesOf[metal].conductivity(200) * thicknessMm;
}
