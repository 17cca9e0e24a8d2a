import type { Part } from '../generated/plan-types.ts';
import { adamsPeakCelsius } from '../heat/adams.ts';
import type { HeldSheet } from '../heat/held-sheet.ts';
import type { PointHistory } from '../heat/point-history.ts';
import type { DerivationContext } from './context.ts';
import type { Neighbour } from './exposed-neighbour.ts';
import { sourcePeak } from './heat-facts.ts';
import type { HeatSource } from './heat-sources.ts';
import { listOf, quantityOf } from './quantity-of.ts';
import type { OperationSurvey, PartSurvey } from './survey.ts';

/** What the neighbour goes through, or why it cannot be computed. `notes` are the method and what was assumed. */
export type NeighbourHeat =
  | {
      readonly ok: true;
      readonly peakCelsius: number;
      readonly history?: PointHistory;
      readonly assumed: boolean;
      readonly notes: readonly string[];
    }
  | { readonly ok: false; readonly reason: string };

/** Computes the heat at one neighbour. Whatever the plan leaves open is taken so that the answer errs high, or refused. */
export function neighbourHeat(
  context: DerivationContext,
  operation: OperationSurvey,
  source: HeatSource,
  neighbour: Neighbour,
): NeighbourHeat {
  if (neighbour.distanceMm === undefined) {
    return { ok: false, reason: `The distance from the heat to ${neighbour.name} is not stated.` };
  }
  if (neighbour.path === undefined) {
    return {
      ok: false,
      reason: `How the heat reaches ${neighbour.name} (same sheet, joined, through air) is not stated.`,
    };
  }
  if (neighbour.path === 'through air') {
    return { ok: false, reason: 'Heat through air is not computed; state what is removed or shielded.' };
  }
  switch (source.kind) {
    case 'heat':
      return heldHeat(context, operation, neighbour, neighbour.distanceMm);
    case 'arc':
    case 'brazing':
      return seamHeat(operation, source, neighbour.distanceMm);
    case 'resistance spot':
      return { ok: false, reason: 'Heat of a resistance spot so near is not computed.' };
    case 'cutting or grinding':
      return { ok: false, reason: 'Sparks and heat of cutting, drilling and grinding are not computed.' };
  }
}

/** Two layers of a body together, mm, where the thickness of one is not stated: the thicker, the further heat runs. */
const thickestStackMm = 4;

function heldHeat(
  context: DerivationContext,
  operation: OperationSurvey,
  neighbour: Neighbour,
  distanceMm: number,
): NeighbourHeat {
  const held = neighbourStrip(operation, neighbour);
  if (!held.ok) return held;
  const answer = context.solveStrip(held.strip);
  if (!answer.ok) return answer;
  const point = answer.history.at(distanceMm);
  if (!point.ok) return point;
  const { assumed, notes } = held;
  const method = 'Conduction along a strip with its cool-down, bright surface in still air.';
  return {
    ok: true,
    peakCelsius: point.point.peakCelsius,
    history: point.point,
    assumed,
    notes: [...notes, method],
  };
}

/** The strip that a neighbour lies on and the heat at its end, wherever on it the neighbour lies. `notes` are what was assumed. */
export type NeighbourStrip =
  | {
      readonly ok: true;
      readonly strip: HeldSheet;
      readonly assumed: boolean;
      readonly notes: readonly string[];
    }
  | { readonly ok: false; readonly reason: string };

export function neighbourStrip(
  { operation, part, at }: OperationSurvey,
  neighbour: Neighbour,
): NeighbourStrip {
  const peak = sourcePeak(operation, at);
  const holdSeconds = quantityOf(operation.hold, 'time');
  const thicknessMm = quantityOf(part.part.thickness, 'length');
  if (!peak.known) return { ok: false, reason: peak.reason };
  if (holdSeconds === undefined) return { ok: false, reason: 'How long the heat is held is not stated.' };
  if (thicknessMm === undefined)
    return { ok: false, reason: `The sheet thickness of ${part.name} is not stated.` };
  const { class: strengthClass, provenance } = part.material;
  // A strength alone does not tell the alloy. Were it to choose the curve, a stronger steel would pass where a weaker one does not.
  const byStrengthAlone = strengthClass !== undefined && provenance === 'computed';
  const metal = metalOf(byStrengthAlone ? undefined : strengthClass);
  if (metal === undefined)
    return { ok: false, reason: `Heat in ${strengthClass ?? 'this'} parts is not computed.` };

  const notes: string[] = [];
  let assumed = peak.from === 'assumed';
  if (peak.note !== undefined) notes.push(peak.note);
  if (operation.times === undefined) {
    assumed = true;
    notes.push('The number of heatings is not stated: two are taken.');
  }
  if (strengthClass === undefined || byStrengthAlone) {
    assumed = true;
    notes.push('The heated metal is not known: mild steel, the best conductor among steels, is taken.');
  }
  const { sum, note } = stack(thicknessMm, part, neighbour);
  if (note !== undefined) {
    assumed = true;
    notes.push(note);
  }
  const freeEndMm = quantityOf(operation.free_end, 'length');
  if (freeEndMm === undefined) notes.push('No free end is stated: a long sheet is taken.');
  const strip: HeldSheet = {
    sourceCelsius: typeof peak.value === 'number' ? peak.value : Number.NaN,
    holdSeconds,
    times: operation.times ?? 2,
    thicknessMm: sum,
    metal,
    ...(freeEndMm === undefined ? {} : { freeEndMm }),
  };
  return { ok: true, strip, assumed, notes };
}

/**
 * The sheets that the heat runs in on its way. The distance ends at the neighbour's nearest edge, so up to there it runs in the
 * heated sheet alone; the second sheet beyond it only takes heat away. A layer that lies on the heated part shares its
 * heat from the start: both in full contact.
 */
function stack(
  thicknessMm: number,
  heated: PartSurvey,
  neighbour: Neighbour,
): { readonly sum: number; readonly note?: string } {
  const other = neighbour.part;
  if (other === undefined || !isLayered(heated, other)) return { sum: thicknessMm };
  const otherMm = quantityOf(other.part.thickness, 'length');
  if (otherMm !== undefined) return { sum: thicknessMm + otherMm };
  const sum = Math.max(thicknessMm + 1, thickestStackMm);
  return {
    sum,
    note: `The thickness of ${neighbour.name} is not stated: ${String(sum)} mm for both layers is taken.`,
  };
}

function isLayered({ part: one }: PartSurvey, { part: other }: PartSurvey): boolean {
  const names = (from: Part, to: Part): boolean =>
    to.id !== undefined && (listOf(from.under).includes(to.id) || listOf(from.over).includes(to.id));
  return names(one, other) || names(other, one);
}

/** The peak beside one pass of a seam, at any distance from it. */
export function seamHeat(
  { operation, part }: OperationSurvey,
  source: Extract<HeatSource, { readonly kind: 'arc' | 'brazing' }>,
  distanceMm: number,
): NeighbourHeat {
  const metal = metalOf(part.material.class);
  if (metal === undefined)
    return { ok: false, reason: `Heat in ${part.material.class ?? 'this'} parts is not computed.` };
  const freeEndMm = quantityOf(operation.free_end, 'length');
  // The formula knows only heat input by thickness; one millimetre stands for any sheet.
  const peak = adamsPeakCelsius({
    heatInputJPerMm: source.joulePerMm2,
    thicknessMm: 1,
    distanceMm,
    metal: metal === 'aluminium' ? 'aluminium' : 'steel',
    ...(freeEndMm === undefined ? {} : { freeEndMm }),
  });
  if (!peak.ok) return { ok: false, reason: sentence(peak.reason) };
  return {
    ok: true,
    peakCelsius: peak.peakCelsius,
    assumed: source.assumption !== undefined,
    notes: [
      ...(source.assumption === undefined ? [] : [source.assumption]),
      'Peak beside one pass in thin sheet (Adams), no loss to air.',
    ],
  };
}

function metalOf(strengthClass: string | undefined): HeldSheet['metal'] | undefined {
  switch (strengthClass) {
    case undefined:
    case 'mild':
      return 'mild steel';
    case 'aluminium':
      return 'aluminium';
    case 'stainless':
      return 'stainless';
    case 'magnesium':
    case 'composite':
      return undefined;
    default:
      return 'steel';
  }
}

function sentence(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}${text.endsWith('.') ? '' : '.'}`;
}
