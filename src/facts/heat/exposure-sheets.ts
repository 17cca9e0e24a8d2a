import type { FactNames } from '../../generated/fact-names.ts';
import { coversVehicle } from '../papers/maker-evidence.ts';
import type { HeatLimit } from '../context.ts';
import type { Exposed, Neighbour } from './exposed-neighbour.ts';
import { calledWith } from '../called-with.ts';
import { exposuresOf } from './exposures-of.ts';
import type { Fact } from '../fact.ts';
import { freeEndOf } from './free-end.ts';
import { withOtherHeats } from './heats-together.ts';
import { watchFacts } from './exposure-watch-facts.ts';
import type { WatchFact } from './exposure-watch-facts.ts';
import { factGroups } from '../fact-groups.ts';
import type { FactGroups } from '../fact-groups.ts';
import { lazySheet } from '../lazy-sheet.ts';
import { limitOf } from './heat-limits.ts';
import { assumed, computed, computedOr, known, stated, statedOr, unknown } from '../make-fact.ts';
import { isSaidOff } from './neighbour-presence.ts';
import { neighbourHeat } from './neighbour-heat.ts';
import type { NeighbourHeat } from './neighbour-heat.ts';
import { listOf } from '../quantity-of.ts';
import { settledHeat } from './settled-heat.ts';
import type { FactSheet } from '../sheet.ts';
import { clearByLimit } from './stay-clear.ts';
import { strengthKind, strengthLeftOf } from '../part/strength-kind.ts';
import type { OperationSurvey, Survey } from '../survey.ts';

export type ExposureFacts = Readonly<Record<FactNames['exposure'], Fact>>;

/** One sheet for each neighbour of each heat source of an operation. */
export function exposureSheets(
  survey: Survey,
  one: OperationSurvey,
  operationSheet: FactSheet,
): readonly FactSheet[] {
  return exposuresOf(survey, one).map((exposed) => exposureSheet(survey, one, exposed, operationSheet));
}

export function exposureSheet(
  survey: Survey,
  one: OperationSurvey,
  exposed: Exposed,
  operationSheet?: FactSheet,
): FactSheet {
  return lazySheet(exposureFacts, [new Exposure(survey, one, exposed)], {
    kind: 'exposure',
    at: exposed.neighbour.at,
    standsOn: operationSheet === undefined ? [] : [operationSheet],
    ...(operationSheet?.part === undefined ? {} : { part: operationSheet.part }),
    operation: one.at,
  });
}

/** One neighbour beside one heat; what it goes through is computed when it is first asked for. */
class Exposure implements Exposed {
  readonly survey: Survey;
  readonly one: OperationSurvey;
  readonly source: Exposed['source'];
  readonly neighbour: Neighbour;
  readonly limit: HeatLimit | undefined;
  #heat: NeighbourHeat | undefined;

  constructor(survey: Survey, one: OperationSurvey, { source, neighbour }: Exposed) {
    this.survey = survey;
    this.one = one;
    this.source = source;
    this.neighbour = neighbour;
    this.limit = limitOf(survey.context.limits, neighbour);
  }

  get heat(): NeighbourHeat {
    return (this.#heat ??= settledHeat(wholeHeat(this.survey, this.one, this), this.limit));
  }
}

const exposureFacts: FactGroups<[Exposure], FactNames['exposure']> = factGroups(
  ['exposure.'],
  neighbourFacts,
  ({ heat, neighbour }: Exposure) => heatFacts(heat, neighbour.at),
  ({ limit, heat, neighbour }: Exposure) => limitFacts(limit, heat, neighbour.at),
  ({ neighbour, limit, heat }: Exposure) => watchFacts(neighbour, limit, heat),
  ({ neighbour, heat }: Exposure) => strengthFacts(neighbour, heat, neighbour.at),
  clearFacts,
);

type OfOtherGroups =
  LimitFact | WatchFact | StrengthFact | `exposure.${'peak' | 'peak_at' | 'stay_clear' | 'how_sure'}`;

function neighbourFacts({ survey, source, neighbour }: Exposure): Omit<ExposureFacts, OfOtherGroups> {
  const { near, at } = neighbour;
  return {
    'exposure.victim':
      neighbour.victim === undefined
        ? unknown('Neither a listed part nor an item is named.', at)
        : neighbour.assumption === undefined
          ? computed(neighbour.victim, at)
          : assumed(neighbour.victim, neighbour.assumption, at),
    'exposure.name': computed(neighbour.name, at),
    'exposure.called':
      neighbour.victim === undefined
        ? unknown('Neither a listed part nor an item is named.', at)
        : computed(calledWith(neighbour.name, neighbour.victim), at),
    'exposure.listed': computed(neighbour.listed, at),
    'exposure.stays': computedOr(neighbour.stays, at, neighbour.open ?? 'Whether it stays is not stated.'),
    'exposure.in_again': computedOr(
      neighbour.inAgain,
      at,
      'It is not said to be off, or it is off by its own operations.',
    ),
    'exposure.said_off': computed(isSaidOff(neighbour), at),
    'exposure.treatment':
      near?.treatment === undefined
        ? computed(neighbour.treatment, at)
        : stated(near.treatment, `${at}/treatment`),
    'exposure.treatment_cited': computed(
      listOf(near?.cite).some((cite) => coversVehicle(survey, cite.reference)),
      `${at}/cite`,
    ),
    'exposure.from': computed(source.kind, at),
    'exposure.distance': statedOr(neighbour.distanceMm, `${at}/distance`, 'No distance is stated.'),
    'exposure.path': statedOr(neighbour.path, `${at}/path`, 'How the heat gets there is not stated.'),
  };
}

/** What the neighbour goes through by this heat and the others that reach it without a pause. */
export function wholeHeat(
  survey: Survey,
  one: OperationSurvey,
  { source, neighbour }: Exposed,
): NeighbourHeat {
  const heat: NeighbourHeat = neighbour.listed
    ? neighbourHeat(survey.context, one, source, neighbour)
    : { ok: false, reason: `${neighbour.name} is not listed under \`near\` with its distance.` };
  return withOtherHeats(survey, one, { source, neighbour }, heat);
}

/** From where on the limits of temperature, time and strength are kept, and how sure the computation is. */
function clearFacts(exposure: Exposure): Pick<ExposureFacts, 'exposure.stay_clear' | 'exposure.how_sure'> {
  const { survey, one, neighbour } = exposure;
  const { at } = neighbour;
  const heat = exposure.heat;
  const clear = isAskedFor(survey, one, exposure, heat)
    ? clearByLimit(survey, one, exposure, survey.context.leastTensileLeft)
    : ({ ok: false, reason: 'It keeps its limit at its place, or its distance is not stated.' } as const);
  return {
    'exposure.stay_clear': clear.ok
      ? computed(
          clear.rounded,
          at,
          'From the edge of the heated zone along the metal, in whole millimetres upwards.',
        )
      : unknown(clear.reason, at),
    'exposure.how_sure': computed(
      !heat.ok ? 'not computed' : heat.assumed ? 'computed from assumptions' : 'computed from what is stated',
      at,
    ),
  };
}

/**
 * Where nobody says where the sheet ends, each place that is tried costs a solve: the distance is then told only of what is over its
 * limit. `planish heat` tells it of all.
 */
function isAskedFor(
  survey: Survey,
  { operation }: OperationSurvey,
  exposed: Exposed,
  heat: NeighbourHeat,
): boolean {
  const { neighbour, source } = exposed;
  if (source.kind !== 'heat' || freeEndOf(operation) !== undefined) return true;
  const hold = limitOf(survey.context.limits, neighbour)?.holdAboveCelsius;
  return neighbour.distanceMm !== undefined && !(heat.ok && hold !== undefined && heat.peakCelsius <= hold);
}

function heatFacts(
  heat: NeighbourHeat,
  at: string,
): Pick<ExposureFacts, 'exposure.peak' | 'exposure.peak_at'> {
  if (!heat.ok)
    return {
      'exposure.peak': unknown(heat.reason, heat.at ?? at),
      'exposure.peak_at': unknown(heat.reason, heat.at ?? at),
    };
  return {
    'exposure.peak': known(heat.peakCelsius, heat.assumed ? 'assumed' : 'computed', at, heat.notes.join(' ')),
    'exposure.peak_at': computedOr(
      heat.history?.peakAtSeconds,
      at,
      'One pass of an arc has no such time here.',
    ),
  };
}

type LimitFact =
  | 'exposure.limit'
  | 'exposure.stop_limit'
  | 'exposure.over_limit'
  | 'exposure.over_stop_limit'
  | 'exposure.time_above_limit'
  | 'exposure.over_time';

/**
 * The facts about limits; also for heat that is not conducted, as in the booth. Without a limit nothing can be over it, which
 * is an answer and no open question: the margin is then minus infinity. `limit` is undefined when it is not known what
 * the neighbour is.
 */
export function limitFacts(
  limit: HeatLimit | undefined,
  heat: NeighbourHeat,
  at: string,
): Pick<ExposureFacts, LimitFact> {
  const { holdAboveCelsius: hold, stopAboveCelsius: stop, timeAbove } = limit ?? {};
  const none = unknown('The packs set no such limit for it.', at);
  const margin = (celsius: number | undefined, over: (limitCelsius: number) => Fact): Fact => {
    if (limit === undefined) return unknown('What the neighbour is, is not known.', at);
    return celsius === undefined ? noMargin(at) : over(celsius);
  };
  const over = (celsius: number): Fact =>
    heat.ok ? computed(heat.peakCelsius - celsius, at) : unknown(heat.reason, heat.at ?? at);
  return {
    'exposure.limit': hold === undefined ? none : known(hold, 'table', at, 'Limit of the rule pack.'),
    'exposure.stop_limit': stop === undefined ? none : known(stop, 'table', at, 'Limit of the rule pack.'),
    'exposure.over_limit': margin(hold, over),
    'exposure.over_stop_limit': margin(stop, over),
    'exposure.time_above_limit': hold === undefined ? none : timeFact(heat, hold, at),
    'exposure.over_time': margin(timeAbove?.celsius, (celsius) => {
      const seconds = secondsAbove(heat, celsius);
      const allowed = timeAbove?.atMostSeconds ?? 0;
      return computedOr(
        seconds === undefined ? undefined : seconds - allowed,
        heat.ok ? at : (heat.at ?? at),
        reasonOf(heat),
      );
    }),
  };
}

function noMargin(at: string): Fact {
  return computed(Number.NEGATIVE_INFINITY, at, 'The packs set no such limit for it.');
}

/** The time of a seam is taken, not computed. */
function timeFact(heat: NeighbourHeat, celsius: number, at: string): Fact {
  const seconds = secondsAbove(heat, celsius);
  return heat.ok && heat.history === undefined && seconds !== undefined && seconds > 0
    ? assumed(seconds, 'The heat of a seam is taken to go by within 300 s for each pass.', at)
    : computedOr(seconds, heat.ok ? at : (heat.at ?? at), reasonOf(heat));
}

function secondsAbove(heat: NeighbourHeat, celsius: number): number | undefined {
  return heat.ok ? heat.secondsAbove(celsius) : undefined;
}

function reasonOf(heat: NeighbourHeat): string {
  return heat.ok ? 'The time is not known.' : heat.reason;
}

type StrengthFact = 'exposure.tensile_left' | 'exposure.strength_open';

/** The safe end of what is left, and what that costs. */
function strengthFacts(
  neighbour: Neighbour,
  heat: NeighbourHeat,
  at: string,
): Pick<ExposureFacts, StrengthFact> {
  const none = (reason: string, isOpen = false): Pick<ExposureFacts, StrengthFact> => ({
    'exposure.strength_open': computed(isOpen, at),
    'exposure.tensile_left': unknown(reason, at),
  });
  if (strengthKind(neighbour) === undefined) return none('No model tells what such a part keeps.');
  if (!heat.ok) return none(heat.reason);
  if (heat.history === undefined) return none('No history is computed for a seam.');
  const left = strengthLeftOf(neighbour, heat.history);
  if (left === undefined || !('leastPercent' in left)) {
    return left === undefined
      ? none('No model tells what such a part keeps.')
      : none(sentence(left.reason), true);
  }
  const note = `At least; ${String(Math.round(left.mostPercent))} % at most. ${left.note}`;
  return {
    'exposure.strength_open': computed(false, at),
    'exposure.tensile_left': computed(left.leastPercent, at, note),
  };
}

function sentence(reason: string): string {
  return `${reason.charAt(0).toUpperCase()}${reason.slice(1)}.`;
}
