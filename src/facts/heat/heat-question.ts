import type { Near, Operation } from '../../generated/plan-types.ts';
import { heatCurve } from '../../heat/sheet/heat-curve.ts';
import type { HeatCurve } from '../../heat/sheet/heat-curve.ts';
import type { SheetHistory } from '../../heat/sheet/sheet-answer.ts';
import { softenedWidthMm } from '../../heat/strength/softened-width.ts';
import type { HistoryAt, SoftenedWidth } from '../../heat/strength/softened-width.ts';
import type { StrengthKind } from '../../heat/strength/strength-answer.ts';
import { stayClear, stayClearAtEnd } from '../../heat/sheet/stay-clear.ts';
import type { HeldHeat } from '../../heat/sheet/stay-clear.ts';
import type { HeatLimit } from '../context.ts';
import { curveAtEnd, historyAtEnd } from '../end-at-place.ts';
import { exposureAt, searches } from './heat-exposure.ts';
import type { HeatExposure } from './heat-exposure.ts';
import { clearDistance, keptLimit, limitOf } from './heat-limits.ts';
import { strengthKind } from '../part/strength-kind.ts';
import type { ClearDistance, HeatBounds, KeepOff } from './heat-limits.ts';
import { endAt, neighbourStrip } from './neighbour-strip.ts';
import { askedPlan } from './question-plan.ts';
import type { AskedSheet, QuestionContext } from './question-plan.ts';
import { quantityOf } from '../quantity-of.ts';

/** A heat without a plan, in the words and quantities of the plan, and what lies beside it. */
export interface HeatQuestion extends AskedSheet {
  /** `source`, `temperature`, `hold`, `times`, `measured_by` and `free_end` as a plan writes them. */
  readonly operation: Operation;
  /** What takes heat on the way, as a plan writes it under `near`. */
  readonly sink?: Near['sink'];
  /** Where the temperature is asked for; usual places when absent. */
  readonly distancesMm?: readonly number[];
  readonly shape?: 'strip' | 'disc';
  readonly radiusMm?: number;
  readonly convection?: number;
  readonly emissivity?: number;
  readonly ambientCelsius?: number;
}

export type HeatReply =
  | { readonly ok: true; readonly answer: HeatAnswer }
  /** Sentences, in the words of the engine, on what cannot be computed. */
  | { readonly ok: false; readonly reason: string };

export interface HeatAnswer {
  readonly question: HeatQuestion;
  /** All numbers that were computed with. */
  readonly heat: HeldHeat;
  readonly statedCelsius?: number;
  readonly victim: string;
  readonly limit: HeatLimit;
  readonly leastTensileLeft?: number;
  readonly keepOff?: KeepOff;
  readonly clear: ClearDistance;
  readonly exposures: readonly HeatExposure[];
  /** How far hardened steel is softened by more than the rules let it be; absent where no rule or no model is for it. */
  readonly softenedWidth?: SoftenedWidth;
  readonly assumptions: readonly string[];
  readonly curve: HeatCurve;
}

/** Shown where nobody asks for distances, mm. */
const usualDistancesMm = [10, 20, 40, 80, 120];

/** Answers with the same survey, assumptions, engine and limits as a plan that holds this heat. */
export function answerHeat(question: HeatQuestion, context: QuestionContext, bounds: HeatBounds): HeatReply {
  const { operation, neighbour } = askedPlan({ ...question, word: 'heat' }, context);
  if (neighbour === undefined) return { ok: false, reason: 'Nothing is named that lies near.' };
  const held = neighbourStrip({ ...context, stage: 'draft' }, operation, neighbour);
  if (!held.ok) return held;
  const heat = withSurroundings(held.strip, question);
  const solved = context.solveStrip(heat);
  if (!solved.ok) return solved;
  const limit = limitOf(context.limits, neighbour) ?? {};
  const kind = strengthKind(neighbour);
  const least = kind === undefined ? undefined : bounds.leastTensileLeft;
  const kept = keptLimit(
    limit,
    kind === undefined || least === undefined ? undefined : { kind, leastPercent: least },
  );
  const victim = neighbour.victim ?? neighbour.name;
  const keepOff = bounds.keepOff(victim, 'heat');
  const isAtEnd = held.endsAtNeighbour === true;
  const history = isAtEnd ? historyAtEnd(context.solveStrip, heat) : solved.history;
  const search = isAtEnd ? stayClearAtEnd : stayClear;
  const sought = kept === undefined ? undefined : search(context.solveStrip, heat, kept);
  const clear = clearDistance(sought, keepOff, `The rule packs set no limit for ${victim}.`);
  const reachMm = heat.freeEndMm ?? Infinity;
  const distancesMm = question.distancesMm ?? usualDistances(clear, reachMm);
  const stated = quantityOf(question.operation.temperature, 'temperature');
  const exposures = distancesMm.map((distanceMm): HeatExposure => {
    const place = history.at(distanceMm);
    const point = place.ok ? place.point : undefined;
    const exposure = exposureAt(distanceMm, point, limit, least, keepOff, neighbour);
    const unreached = place.ok ? [] : [sentence(place.reason)];
    const searched =
      question.distancesMm === undefined || kept === undefined || !place.ok
        ? {}
        : searches(
            context.solveStrip,
            isAtEnd ? endingAt(heat, distanceMm) : heat,
            distanceMm,
            kept,
            held.allowanceKelvin,
          );
    return { ...exposure, reasons: [...unreached, ...exposure.reasons], ...searched };
  });
  return {
    ok: true,
    answer: {
      question,
      heat,
      ...(stated === undefined ? {} : { statedCelsius: stated }),
      victim,
      limit,
      ...(least === undefined ? {} : { leastTensileLeft: least }),
      ...(keepOff === undefined ? {} : { keepOff }),
      clear,
      exposures,
      ...(kind === undefined || least === undefined
        ? {}
        : { softenedWidth: softenedBy(history, kind, 100 - least, heat.freeEndMm) }),
      assumptions: [...held.notes, ...surroundings(question)],
      curve: (isAtEnd ? curveAtEnd : heatCurve)(
        history,
        shownReachMm(clear, distancesMm, reachMm),
        heat.holdSeconds * heat.times,
      ),
    },
  };
}

function endingAt(heat: HeldHeat, distanceMm: number): HeldHeat {
  const end = endAt(distanceMm);
  return end === undefined ? heat : { ...heat, freeEndMm: end };
}

/** Farther than any body sheet carries a heat that harms, mm. */
const farthestSoftenedMm = 500;

function softenedBy(
  history: SheetHistory,
  kind: StrengthKind,
  lossPercent: number,
  freeEndMm: number | undefined,
): SoftenedWidth {
  const farthestMm = Math.min(freeEndMm ?? farthestSoftenedMm, farthestSoftenedMm);
  const historyAt: HistoryAt = (distanceMm) => {
    const place = history.at(distanceMm);
    return place.ok ? { ok: true, history: place.point } : place;
  };
  return softenedWidthMm(historyAt, kind, { lossPercent, farthestMm });
}

/** What a plan does not state of the surroundings. The one place where the shape of the heated zone goes to the engine. */
function withSurroundings(strip: HeldHeat, question: HeatQuestion): HeldHeat {
  const { shape, radiusMm, convection, emissivity, ambientCelsius } = question;
  return {
    ...strip,
    ...(shape === undefined ? {} : { shape }),
    ...(radiusMm === undefined ? {} : { radiusMm }),
    ...(convection === undefined ? {} : { convection }),
    ...(emissivity === undefined ? {} : { emissivity }),
    ...(ambientCelsius === undefined ? {} : { ambientCelsius }),
  };
}

function surroundings(question: HeatQuestion): readonly string[] {
  const { shape, convection, emissivity, ambientCelsius, operation } = question;
  const { source } = operation;
  const notes: (string | undefined)[] = [
    shape === undefined ? 'Shape strip: heat runs one way and spreads least.' : undefined,
    shape === 'disc'
      ? undefined
      : 'Heated zone 40 mm long (common practice); its heat goes on feeding the sheet.',
    emissivity === undefined ? 'Emissivity 0.3 (bright zinc).' : undefined,
    convection === undefined ? 'Convection 8 W/m²K on each face (still air).' : undefined,
    ambientCelsius === undefined ? 'Surroundings 20 °C.' : undefined,
    'The neighbour lies on the same sheet or is joined to it in full contact; the thickness is that of all layers that are heated together.',
    source === 'oven' || source === 'infra-red panel'
      ? 'Distances count from the edge of what is heated; what lies in the oven or under the panel itself takes the whole temperature.'
      : undefined,
  ];
  return notes.filter((note) => note !== undefined);
}

function usualDistances(clear: ClearDistance, reachMm: number): readonly number[] {
  const all = new Set([...usualDistancesMm, ...(clear.ok ? [clear.distanceMm] : [])]);
  const inReach = [...all].filter((one) => one <= reachMm).sort((a, b) => a - b);
  return inReach.length === 0 ? [reachMm] : inReach;
}

function shownReachMm(clear: ClearDistance, distancesMm: readonly number[], reachMm: number): number {
  // A distance that a rule sets is mostly far beyond where the curve has come down.
  const byLimit = clear.ok && clear.rule === undefined ? clear.distanceMm * 1.25 : 0;
  const wanted = Math.max(60, byLimit, Math.min(400, ...[Math.max(...distancesMm)]));
  return Math.min(Math.ceil(wanted / 20) * 20, reachMm);
}

function sentence(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}${text.endsWith('.') ? '' : '.'}`;
}
