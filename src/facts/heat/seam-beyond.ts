import { propertiesOf } from '../../heat/metal/sheet-metals.ts';
import type { WeldMetalName } from '../../heat/weld/weld-metal.ts';
import type { Neighbour } from './exposed-neighbour.ts';
import { metalOf } from './neighbour-strip.ts';
import { quantityOf } from '../quantity-of.ts';

/** What a neighbour that carries less heat throws back of what a seam sends to it. */
export interface SeamBeyond {
  /** Share of the rise that is added where the neighbour begins, 0 to 1. */
  readonly thrownBack: number;
  readonly note: string;
  /** What is not stated and was taken at its worst, in a sentence. */
  readonly silent?: string;
}

/** The thinnest sheet that bodies are made of, mm [common practice]: taken where nobody states it. */
export const thinnestSheetMm = 0.5;

/**
 * A wave of heat that comes to where one sheet ends and another begins rises there by the share (Z1 − Z2)/(Z1 + Z2), with
 * Z = thickness · √(k·ρc): the plane wave at the border of two bodies (Carslaw and Jaeger, Conduction of Heat in Solids,
 * 2nd ed., chapter 12; from memory). It holds for an endless sheet beyond; of one that ends, `adamsPeakCelsius` adds the mirror
 * image in full, which errs high.
 *
 * @param heatedMm the thinnest sheet of the joint, in which all of its heat is taken to run; undefined where it is not known, and then
 * nothing is taken to run on.
 * @returns undefined where the neighbour carries as much heat as the sheet that it is joined to.
 */
export function seamBeyond(
  { part, carrier, path, name }: Neighbour,
  heatedMetal: WeldMetalName,
  heatedMm: number | undefined,
): SeamBeyond | undefined {
  const beyond = part ?? carrier;
  if (beyond === undefined) return undefined;
  const thicknessMm = quantityOf(beyond.part.thickness, 'length');
  const isStatedThinner = thicknessMm !== undefined && heatedMm !== undefined && thicknessMm < heatedMm;
  // One sheet has one thickness, unless the plan says of the two parts that they differ.
  if (path !== 'joined' && !(path === 'same sheet' && isStatedThinner)) return undefined;
  const { class: strengthClass, provenance } = beyond.material;
  const called = part === undefined ? beyond.name : name;
  if (heatedMm === undefined)
    return { thrownBack: 1, note: `No heat is taken to run on into ${called}: the joint is not known.` };
  const takenMm = thicknessMm ?? Math.min(thinnestSheetMm, heatedMm);
  const isKnown = strengthClass !== undefined && provenance !== 'computed';
  const thrownBack = isKnown ? share(heatedMetal, heatedMm, strengthClass, takenMm) : 1;
  if (thrownBack <= 0) return undefined;
  if (!isKnown) {
    const silent = `What ${called} is made of is not known.`;
    return { thrownBack, silent, note: `${silent} No heat is taken to run on into it.` };
  }
  if (thicknessMm === undefined) {
    const silent = `The thickness of ${called} is not stated.`;
    return { thrownBack, silent, note: `${silent} ${String(takenMm)} mm is taken.` };
  }
  return {
    thrownBack,
    note: `${called} carries less heat than the sheet of the joint: ${String(Math.round(thrownBack * 100))} % more is taken where it begins.`,
  };
}

/** In metal for which there are no curves, as composite, nothing is taken to run on. */
function share(
  heatedMetal: WeldMetalName,
  heatedMm: number,
  strengthClass: string,
  beyondMm: number,
): number {
  const metal = metalOf(strengthClass);
  if (metal === undefined || heatedMetal === 'magnesium') return 1;
  const beyond = metal === 'mild steel' ? 'steel' : metal;
  const [one, other] = [heatedMm * effusivity(heatedMetal), beyondMm * effusivity(beyond)];
  return (one - other) / (one + other);
}

/** √(k·ρc) at 200 °C, where the limits of most neighbours lie; plain steels count as one, as beside a held heat. */
function effusivity(metal: Exclude<WeldMetalName, 'magnesium'>): number {
  const { conductivity, heatCapacity, density } = propertiesOf[metal];
  return Math.sqrt(conductivity(200) * heatCapacity(200) * density);
}
