import type { Part } from '../../generated/plan-types.ts';
import type { HeldSheet } from '../../heat/sheet/held-sheet.ts';
import type { DerivationContext } from '../context.ts';
import type { Neighbour } from './exposed-neighbour.ts';
import type { Fact } from '../fact.ts';
import { endAtNeighbour, freeEndOf } from './free-end.ts';
import { heatedShape } from './heated-shape.ts';
import { readSink } from './heat-sink.ts';
import type { CountedSink } from './heat-sink.ts';
import { heatsWithoutPause, timesIfUnstated } from './heats-of-place.ts';
import { listOf, quantityOf } from '../quantity-of.ts';
import { sourcePeak } from './source-peak.ts';
import type { OperationSurvey, PartSurvey } from '../survey.ts';

/** Two layers of a body together, mm, where the thickness of one is not stated: the thicker, the further heat runs. */
const thickestStackMm = 4;

/** The strip that a neighbour lies on and the heat at its end, wherever on it the neighbour lies. `notes` are what was assumed. */
export type NeighbourStrip =
  | {
      readonly ok: true;
      readonly strip: HeldSheet;
      readonly assumed: boolean;
      readonly notes: readonly string[];
      /** Nobody says where the sheet ends: whatever place is asked about, it ends there. */
      readonly endsAtNeighbour?: true;
      /** The neighbour lies on the heated sheet as a layer and is heated with it. */
      readonly sharesHeat?: true;
      /** The measure that takes heat out on the way, where one is counted; `strip` holds it. */
      readonly sink?: CountedSink;
      /** What was added to the stated temperature, K; absent where the source is not made from it. */
      readonly allowanceKelvin?: number;
    }
  /** `at` is the entry of the plan that is missing or cannot be used, by which all that ask for it are asked once. */
  | { readonly ok: false; readonly reason: string; readonly at: string };

export function neighbourStrip(
  { practice, stage }: Pick<DerivationContext, 'practice' | 'stage'>,
  one: OperationSurvey,
  neighbour: Neighbour,
): NeighbourStrip {
  const { operation, part } = one;
  const { peak, allowanceKelvin, holdSeconds, times, others, withoutHold } = heldTogether(one, practice);
  const thicknessMm = quantityOf(part.part.thickness, 'length');
  if (!peak.known) return { ok: false, reason: peak.reason, at: peak.at ?? one.at };
  if (holdSeconds === undefined)
    return {
      ok: false,
      reason: 'How long the place is held hot is not stated.',
      at: `${withoutHold ?? one.at}/hold`,
    };
  if (thicknessMm === undefined)
    return {
      ok: false,
      reason: `The sheet thickness of ${part.name} is not stated.`,
      at: `${part.at}/thickness`,
    };
  const { class: strengthClass, provenance } = part.material;
  // A strength alone does not tell the alloy. Were it to choose the curve, a stronger steel would pass where a weaker one does not.
  const byStrengthAlone = strengthClass !== undefined && provenance === 'computed';
  const metal = metalOf(byStrengthAlone ? undefined : strengthClass);
  if (metal === undefined)
    return { ok: false, reason: `Heat in ${strengthClass ?? 'this'} parts is not computed.`, at: one.at };

  const notes: string[] = [];
  let assumed = peak.from === 'assumed';
  if (peak.note !== undefined) notes.push(peak.note);
  if (operation.times === undefined) {
    assumed = true;
    notes.push('The number of heatings is not stated: two are taken.');
  }
  if (others > 0) {
    notes.push(
      `${String(others + 1)} heats of this place are taken as one without a pause; \`starts_below\` says how far it cools before each.`,
    );
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
  const end = freeEndOf(operation);
  const lapEndMm = endOfLapMm(neighbour);
  const endsAtNeighbour = end === undefined && lapEndMm === undefined;
  if (endsAtNeighbour) {
    assumed = true;
    notes.push(endAtNeighbour);
  }
  const freeEndMm = end === 'runs on' ? undefined : (end ?? lapEndMm ?? endAt(neighbour.distanceMm));
  const oneFace = isOneFaceCooled(one);
  notes.push(
    oneFace === undefined
      ? 'Both faces are taken to lose heat; say `cooled_faces: one` if one lies on foam, a sound pad or another hot sheet.'
      : oneFace
        ? 'One face loses heat, the other is covered.'
        : 'Both faces lose heat, as stated.',
  );
  const reading = neighbour.near?.sink === undefined ? undefined : readSink(neighbour.near.sink, stage);
  const sink = reading?.counts === true ? reading.sink : undefined;
  notes.push(...(sink?.notes ?? (reading?.counts === false ? [reading.note] : [])));
  const shape = heatedShape(one);
  const isDisc = shape.shape === 'disc' && sink === undefined;
  if (shape.shape === 'disc')
    notes.push(
      isDisc
        ? `A heated disc of ${String(shape.radiusMm)} mm radius, from which heat runs all round, as stated.`
        : 'The heated disc is computed as a strip: with a heat sink only strips are.',
    );
  else if (shape.note !== undefined) notes.push(shape.note);
  const strip: HeldSheet = {
    sourceCelsius: typeof peak.value === 'number' ? peak.value : Number.NaN,
    holdSeconds,
    times,
    thicknessMm: sum,
    metal,
    ...(freeEndMm === undefined ? {} : { freeEndMm }),
    ...(oneFace === true ? { cooledFaces: 1 as const } : {}),
    ...(isDisc ? { shape: 'disc' as const, radiusMm: shape.radiusMm } : {}),
    ...sink?.sheet,
  };
  return {
    ok: true,
    strip,
    assumed,
    notes,
    ...(endsAtNeighbour ? { endsAtNeighbour } : {}),
    ...(sum === thicknessMm ? {} : { sharesHeat: true as const }),
    ...(sink === undefined ? {} : { sink }),
    ...(allowanceKelvin === undefined ? {} : { allowanceKelvin }),
  };
}

/** The engine computes no sheet shorter than 1 mm, and beyond 2 m nothing that an end could change. */
export function endAt(distanceMm: number | undefined): number | undefined {
  if (distanceMm === undefined || distanceMm > 2000) return undefined;
  return Math.max(distanceMm, 1);
}

interface Held {
  readonly peak: Fact;
  readonly allowanceKelvin?: number;
  readonly holdSeconds: number | undefined;
  readonly times: number;
  /** How many other heats of the place are in it. */
  readonly others: number;
  /** The first of the heats whose hold is not known. */
  readonly withoutHold?: string;
}

/** All heats of a place that no pause parts as one: the hottest of them for the time of all. */
function heldTogether(one: OperationSurvey, practice: DerivationContext['practice']): Held {
  const heats = heatsWithoutPause(one);
  const peaks = heats.map(({ operation, at }) => sourcePeak(operation, at, practice));
  const hottest = peaks.reduce((top, next) => (celsiusOf(next.fact) > celsiusOf(top.fact) ? next : top));
  const times = heats.reduce((sum, { operation }) => sum + (operation.times ?? timesIfUnstated), 0);
  let seconds: number | undefined = 0;
  let withoutHold: string | undefined;
  for (const { operation, at } of heats) {
    const hold = quantityOf(operation.hold, 'time');
    if (hold === undefined) withoutHold ??= at;
    seconds =
      hold === undefined || seconds === undefined
        ? undefined
        : seconds + hold * (operation.times ?? timesIfUnstated);
  }
  return {
    peak: hottest.fact,
    ...(hottest.allowanceKelvin === undefined ? {} : { allowanceKelvin: hottest.allowanceKelvin }),
    holdSeconds: seconds === undefined ? undefined : seconds / times,
    times,
    others: heats.length - 1,
    ...(withoutHold === undefined ? {} : { withoutHold }),
  };
}

/** What is not known is the answer of all. */
function celsiusOf(peak: Fact): number {
  return peak.known && typeof peak.value === 'number' ? peak.value : Infinity;
}

/** Undefined where nothing says so. What a part holds against its sheet says it too. */
function isOneFaceCooled({ operation, part }: OperationSurvey): boolean | undefined {
  const { cooled_faces: stated } = operation;
  if (stated !== undefined) return stated === 'one';
  const isCovered = (part.part.holds ?? []).some((item) => item === 'foam' || item === 'sound pad');
  return isCovered ? true : undefined;
}

/** With a lap stated and no free end, the heated sheet ends with the lap: heat that cannot run on errs high. */
function endOfLapMm({ near, distanceMm }: Neighbour): number | undefined {
  const lapMm = quantityOf(near?.lap?.length, 'length');
  return lapMm === undefined || distanceMm === undefined ? undefined : distanceMm + lapMm;
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

/** The curves of a class; undefined where none is computed. Of unknown steel the best conductor. */
export function metalOf(strengthClass: string | undefined): HeldSheet['metal'] | undefined {
  switch (strengthClass) {
    case undefined:
    case 'mild':
      return 'mild steel';
    case 'aluminium':
      return 'aluminium';
    case 'stainless':
      return 'stainless';
    case 'plastic':
      // It conducts a hundredth of what the worst conductor among the metals does: that one errs high.
      return 'stainless';
    case 'magnesium':
    case 'composite':
      return undefined;
    default:
      return 'steel';
  }
}
