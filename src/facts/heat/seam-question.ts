import type { Joint } from '../../generated/plan-types.ts';
import type { HeatCurve } from '../../heat/sheet/heat-curve.ts';
import { boronSteelZones } from '../../heat/weld/seam-zones.ts';
import type { SeamZones } from '../../heat/weld/seam-zones.ts';
import { weldSoftening } from '../../heat/strength/weld-softening.ts';
import type { WeldSoftening } from '../../heat/strength/weld-softening.ts';
import type { HeatLimit } from '../context.ts';
import { exposureVerdict } from './exposure-verdict.ts';
import type { ExposureVerdict } from './exposure-verdict.ts';
import type { Fact } from '../fact.ts';
import { freeEndOf } from './free-end.ts';
import { heatSources } from './heat-sources.ts';
import { clearDistance, limitOf } from './heat-limits.ts';
import type { ClearDistance, HeatBounds, KeepOff } from './heat-limits.ts';
import { askedPlan } from './question-plan.ts';
import type { AskedSheet, QuestionContext } from './question-plan.ts';
import { quantityOf } from '../quantity-of.ts';
import { movingSourcePeak, seamCurve } from './seam-curve.ts';
import { seamHeat, weldMetalOf } from './seam-heat.ts';
import type { SeamSource } from './seam-heat.ts';
import { clearByLimit } from './stay-clear.ts';
import { strengthKind } from '../part/strength-kind.ts';
import type { OperationSurvey } from '../survey.ts';
import { weldFacts } from '../joint/weld-facts.ts';

/** A seam without a plan, in the words and quantities of the plan. */
export interface SeamQuestion extends AskedSheet {
  /** `method`, `settings` and `count` as a plan writes them. */
  readonly joint: Joint;
  /** Way from the edge of the fused metal to the free end of the sheet. */
  readonly freeEnd?: string;
  readonly distancesMm?: readonly number[];
}

/** A figure of the seam, or why there is none. */
export type SeamFigure =
  | { readonly ok: true; readonly value: number; readonly note?: string }
  | { readonly ok: false; readonly reason: string };

export interface SeamExposure {
  readonly distanceMm: number;
  readonly peakCelsius?: number;
  /** By the moving source, for steel of stated travel speed alone: a cross-check. */
  readonly movingCelsius?: number;
  readonly verdict: ExposureVerdict;
  readonly reasons: readonly string[];
}

export interface SeamAnswer {
  readonly question: SeamQuestion;
  readonly kind: 'arc' | 'brazing';
  /** kJ/mm, s, mm. */
  readonly heatInput: SeamFigure;
  readonly coolingTime: SeamFigure;
  readonly zoneWidth: SeamFigure;
  /** Of press-hardened sheet alone. */
  readonly zones?: SeamZones;
  /** What the softest place beside the weld keeps; absent where the family of the sheet is not known. */
  readonly softening?: WeldSoftening;
  readonly victim: string;
  readonly limit: HeatLimit;
  readonly keepOff?: KeepOff;
  readonly clear: ClearDistance;
  readonly exposures: readonly SeamExposure[];
  readonly assumptions: readonly string[];
  readonly curve: HeatCurve;
}

export type SeamReply =
  { readonly ok: true; readonly answer: SeamAnswer } | { readonly ok: false; readonly reason: string };

/** Shown where nobody asks for distances, mm. */
const usualDistancesMm = [2, 5, 10, 20, 40, 80];

/** Answers with the same sources, assumptions and formulas as a plan that holds this seam. */
export function answerSeam(question: SeamQuestion, context: QuestionContext, bounds: HeatBounds): SeamReply {
  const { joint, freeEnd } = question;
  const { survey, operation, neighbour } = askedPlan(
    {
      ...question,
      word: 'weld',
      // The thickness that is asked about is that of the joint's thinnest sheet.
      operation: {
        joints: [{ ...joint, form: 'open butt' }],
        ...(freeEnd === undefined ? {} : { free_end: freeEnd }),
      },
    },
    context,
  );
  const [source] = heatSources(operation).flatMap((one) =>
    one.kind === 'arc' || one.kind === 'brazing' ? [one] : [],
  );
  if (source === undefined || neighbour === undefined)
    return { ok: false, reason: 'This joint is no seam of an arc or a laser.' };
  const first = seamHeat(operation, source, 0);
  if (!first.ok) return first;
  const limit = limitOf(context.limits, neighbour) ?? {};
  const victim = neighbour.victim ?? neighbour.name;
  const keepOff = bounds.keepOff(victim, source.kind);
  const sought = clearByLimit(survey, operation, { source, neighbour });
  const clear =
    'noLimit' in sought
      ? clearDistance(undefined, keepOff, `The rule packs set no limit for ${victim}.`)
      : clearDistance(sought, keepOff, '');
  const endMm = quantityOf(freeEnd, 'length') ?? Infinity;
  const distancesMm = question.distancesMm ?? usualDistances(clear, endMm);
  const facts = weldFacts(operation);
  const softening = softeningOf(operation);
  const thicknessMm = quantityOf(question.thickness, 'length') ?? Number.NaN;
  const pass = {
    heatInputJPerMm: source.joulePerMm2 * thicknessMm,
    thicknessMm,
    ...(Number.isFinite(endMm) ? { freeEndMm: endMm } : {}),
  };
  return {
    ok: true,
    answer: {
      question,
      kind: source.kind,
      heatInput: figure(facts['operation.heat_input']),
      coolingTime: figure(facts['operation.t85']),
      zoneWidth: figure(facts['operation.haz_width']),
      ...(operation.part.material.class === 'press-hardened' ? { zones: boronSteelZones(pass) } : {}),
      ...(softening === undefined ? {} : { softening }),
      victim,
      limit,
      ...(keepOff === undefined ? {} : { keepOff }),
      clear,
      exposures: distancesMm.map((distanceMm) =>
        exposureAt(distanceMm, { operation, source, limit, keepOff, question }),
      ),
      assumptions: [
        ...first.notes,
        'Distances count from the edge of the fused metal. Sheet at 20 °C before the first pass.',
      ],
      curve: seamCurve(operation, source, shownReachMm(clear, distancesMm, endMm)),
    },
  };
}

interface Asked {
  readonly operation: OperationSurvey;
  readonly source: SeamSource;
  readonly limit: HeatLimit;
  readonly keepOff: KeepOff | undefined;
  readonly question: SeamQuestion;
}

function exposureAt(
  distanceMm: number,
  { operation, source, limit, keepOff, question }: Asked,
): SeamExposure {
  const heat = seamHeat(operation, source, distanceMm);
  const over = (celsius: number | undefined): number | undefined =>
    celsius === undefined ? Number.NEGATIVE_INFINITY : heat.ok ? heat.peakCelsius - celsius : undefined;
  const verdict = exposureVerdict({
    stays: true,
    distanceMm,
    keepOffMm: keepOff?.distanceMm,
    overLimit: over(limit.holdAboveCelsius),
    overStopLimit: over(limit.stopAboveCelsius),
    // One pass is over within minutes; no pack limits so short a time.
    overTime: Number.NEGATIVE_INFINITY,
    tensileLeft: undefined,
    leastTensileLeft: undefined,
  });
  const movingCelsius = movingPeak(operation, source, question, distanceMm);
  return {
    distanceMm,
    ...(heat.ok ? { peakCelsius: heat.peakCelsius } : {}),
    ...(movingCelsius === undefined ? {} : { movingCelsius }),
    verdict,
    reasons: heat.ok ? [] : [heat.reason],
  };
}

function runsOn(freeEnd: string | undefined): boolean {
  return freeEndOf(freeEnd === undefined ? {} : { free_end: freeEnd }) === 'runs on';
}

/** Only where the plan's own speed is counted: one pass, in steel, with nothing assumed, and no edge that mirrors the heat. */
function movingPeak(
  { part }: OperationSurvey,
  { joulePerMm2, assumption, beads }: SeamSource,
  { joint, thickness, freeEnd }: SeamQuestion,
  distanceMm: number,
): number | undefined {
  const speedMmPerSecond = quantityOf(joint.settings?.travel_speed, 'speed');
  const thicknessMm = quantityOf(thickness, 'length');
  const isOne = beads.every(({ passes, stitch }) => passes === 1 && stitch === undefined);
  const isSteel = weldMetalOf(part.material.class) === 'steel';
  if (!isOne || !isSteel || assumption !== undefined || !runsOn(freeEnd)) return undefined;
  if (speedMmPerSecond === undefined || thicknessMm === undefined) return undefined;
  return movingSourcePeak(
    { joulePerMm: joulePerMm2 * thicknessMm, thicknessMm, speedMmPerSecond },
    distanceMm,
  );
}

function softeningOf({ part }: OperationSurvey): WeldSoftening | undefined {
  if (part.material.class === 'mild') return weldSoftening('mild');
  const kind = strengthKind({ part, victim: 'hardened or multi-phase steel' });
  return kind === undefined ? undefined : weldSoftening(kind);
}

function figure(fact: Fact): SeamFigure {
  if (!fact.known) return { ok: false, reason: fact.reason };
  return typeof fact.value === 'number'
    ? { ok: true, value: fact.value, ...(fact.note === undefined ? {} : { note: fact.note }) }
    : { ok: false, reason: 'It is no number.' };
}

function usualDistances(clear: ClearDistance, reachMm: number): readonly number[] {
  const all = new Set([...usualDistancesMm, ...(clear.ok ? [clear.distanceMm] : [])]);
  const inReach = [...all].filter((one) => one <= reachMm).sort((a, b) => a - b);
  return inReach.length === 0 ? [reachMm] : inReach;
}

function shownReachMm(clear: ClearDistance, distancesMm: readonly number[], reachMm: number): number {
  const byLimit = clear.ok && clear.rule === undefined ? clear.distanceMm * 1.25 : 0;
  const wanted = Math.max(40, Math.min(400, Math.max(byLimit, ...distancesMm)));
  return Math.min(Math.ceil(wanted / 20) * 20, reachMm);
}
