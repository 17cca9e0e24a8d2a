import { calledWith } from '../called-with.ts';
import { bakesOf, batteryStays, secondsTogether } from './bakes.ts';
import type { Bake } from './bakes.ts';
import { bakedNeighbours } from './bake-neighbours.ts';
import type { BakedNeighbour } from './bake-neighbours.ts';
import type { DerivationContext, HeatLimit } from '../context.ts';
import { limitFacts } from './exposure-sheets.ts';
import { watchFacts } from './exposure-watch-facts.ts';
import type { WatchFact } from './exposure-watch-facts.ts';
import { limitOf as limitOfNeighbour } from './heat-limits.ts';
import type { ExposureFacts } from './exposure-sheets.ts';
import type { Fact } from '../fact.ts';
import { coversVehicle } from '../papers/maker-evidence.ts';
import { assumed, computed, computedOr, known, stated, unknown } from '../make-fact.ts';
import type { NeighbourHeat } from './neighbour-heat.ts';
import { listOf, quantityOf } from '../quantity-of.ts';
import type { FactSheet } from '../sheet.ts';
import type { Survey } from '../survey.ts';

type FinishBake = NonNullable<NonNullable<Survey['plan']['finish']>['bake']>;

/** What the traction battery and all else that a bake warms goes through, bake by bake. */
export function bakeExposures(
  survey: Survey,
  highVoltage: boolean | undefined,
  vehicleSheet: FactSheet,
): readonly FactSheet[] {
  const sheet = (bake: Bake, at: string, facts: ExposureFacts): FactSheet => ({
    kind: 'exposure',
    at,
    facts,
    standsOn: [vehicleSheet],
    ...(bake.part === undefined ? {} : { operation: bake.at }),
    ...(bake.part?.part.id === undefined ? {} : { part: bake.part.part.id }),
  });
  const ofBattery = highVoltage === false ? [] : bakesOf(survey);
  return [
    ...ofBattery.map((bake) => sheet(bake, bake.at, factsOf(survey, bake, highVoltage))),
    ...bakedNeighbours(survey).map((one) => sheet(one.bake, one.at, factsOfNeighbour(survey, one))),
  ];
}

/** What else a bake warms: it takes the temperature of the bake, however far from it. */
function factsOfNeighbour(survey: Survey, one: BakedNeighbour): ExposureFacts {
  const { bake, at, near } = one;
  const heat = bakeHeat(bake);
  const known = survey.context.limits.get(one.victim) ?? {};
  const limit = near === undefined ? known : (limitOfNeighbour(survey.context.limits, near) ?? known);
  const treatment = near?.treatment ?? 'stays';
  return {
    'exposure.victim': computed(one.victim, at),
    ...commonFacts(bake, heat, limit),
    'exposure.name': computed(one.name, at),
    'exposure.called': computed(calledWith(one.name, one.victim), at),
    'exposure.stays': computedOr(one.stays, at, one.open ?? 'Whether it stays is not stated.'),
    'exposure.treatment': computed(treatment, at),
    'exposure.treatment_cited': computed(
      listOf(near?.near?.cite).some((cite) => coversVehicle(survey, cite.reference)),
      at,
    ),
    ...watchFacts(near ?? { at }, limit, heat),
  };
}

const noTemperature = 'The bake temperature is not stated.';

function bakeHeat({ celsius, seconds }: Bake): NeighbourHeat {
  return celsius === undefined
    ? { ok: false, reason: noTemperature }
    : {
        ok: true,
        peakCelsius: celsius,
        // Without its time a bake has no end.
        secondsAbove: (limit) => (celsius <= limit ? 0 : (seconds ?? Infinity)),
        assumed: false,
        notes: ['What is baked takes the temperature of the bake.'],
      };
}

type CommonFact = Exclude<
  keyof ExposureFacts,
  | 'exposure.victim'
  | 'exposure.name'
  | 'exposure.called'
  | 'exposure.stays'
  | 'exposure.treatment'
  | 'exposure.treatment_cited'
  | WatchFact
>;

function commonFacts(one: Bake, heat: NeighbourHeat, limit: HeatLimit): Pick<ExposureFacts, CommonFact> {
  const { at, celsius, seconds } = one;
  return {
    'exposure.listed': computed(true, at),
    // Whether it comes off is asked once, where it is listed.
    'exposure.said_off': computed(false, at),
    'exposure.in_again': unknown('Whether it comes off is asked once, where it is listed.', at),
    'exposure.from': computed('bake', at),
    'exposure.distance': unknown('A bake heats the whole vehicle.', at),
    'exposure.path': unknown('A bake heats the whole vehicle.', at),
    'exposure.peak':
      celsius === undefined
        ? unknown(noTemperature, one.temperatureAt)
        : known(celsius, 'stated', one.temperatureAt),
    'exposure.peak_at': unknown('A bake has no such time here.', at),
    ...limitFacts(limit, heat, one.temperatureAt),
    'exposure.time_above_limit':
      seconds === undefined || !heat.ok || limit.holdAboveCelsius === undefined
        ? unknown('The bake time is not stated, or no limit is set.', at)
        : computed(heat.secondsAbove(limit.holdAboveCelsius), at),
    'exposure.tensile_left': unknown('No model tells what such a part keeps.', at),
    'exposure.strength_open': computed(false, at),
    'exposure.stay_clear': unknown('A bake heats the whole vehicle.', at),
    'exposure.how_sure': computed(
      celsius === undefined ? 'not computed' : 'computed from what is stated',
      at,
    ),
  };
}

function factsOf(survey: Survey, one: Bake, highVoltage: boolean | undefined): ExposureFacts {
  const bake = survey.plan.finish?.bake;
  const { at } = one;
  const heat = bakeHeat(one);
  const limit = limitOf(survey.context, bake);
  return {
    'exposure.victim': computed('traction battery', at),
    ...commonFacts(one, heat, limit),
    'exposure.name': computed('the traction battery', at),
    'exposure.called': computed('the traction battery', at),
    ...presence(survey, highVoltage, at),
    'exposure.treatment_cited': computed(
      listOf(bake?.battery_limit?.cite).some((cite) => coversVehicle(survey, cite.reference)),
      '/finish/bake/battery_limit/cite',
    ),
    'exposure.over_time': overTime(survey.context, bake, one),
    ...watchFacts({ at }, limit, heat),
  };
}

function presence(
  survey: Survey,
  highVoltage: boolean | undefined,
  at: string,
): Pick<ExposureFacts, 'exposure.stays' | 'exposure.treatment'> {
  const stays = batteryStays(survey);
  const place = '/finish/bake/traction_battery';
  const noDrive = unknown('Whether the vehicle has a traction battery is not stated.', '/vehicle/drive');
  const both =
    'The bake says that the traction battery is removed, and `make_safe` says that it is not: which of the two is meant?';
  return {
    'exposure.stays':
      stays === undefined
        ? unknown(both, place)
        : !stays || highVoltage === true
          ? computed(stays, place)
          : noDrive,
    'exposure.treatment':
      stays === undefined
        ? unknown(both, place)
        : !stays
          ? stated('removed', place)
          : survey.plan.finish?.bake?.traction_battery === undefined
            ? assumed('stays', 'The battery counts as staying in the vehicle.', at)
            : stated('stays', place),
  };
}

/** The stricter of the pack's limit and the maker's figure in the plan. */
function limitOf(
  context: DerivationContext,
  bake: FinishBake | undefined,
): NonNullable<ReturnType<DerivationContext['limits']['get']>> {
  const limit = context.limits.get('traction battery') ?? {};
  const own = quantityOf(bake?.battery_limit?.temperature, 'temperature');
  return own === undefined
    ? limit
    : {
        ...limit,
        holdAboveCelsius: Math.min(own, limit.holdAboveCelsius ?? own),
        stopAboveCelsius: Math.min(own, limit.stopAboveCelsius ?? own),
      };
}

/** How long the battery may be baked, s; infinite where nothing limits it. */
function allowedSeconds(context: DerivationContext, bake: FinishBake | undefined): number {
  const own = quantityOf(bake?.battery_limit?.time, 'time');
  const limit = context.limits.get('traction battery')?.timeAbove?.atMostSeconds;
  return Math.min(own ?? Infinity, limit ?? Infinity);
}

function overTime(context: DerivationContext, bake: FinishBake | undefined, one: Bake): Fact {
  const limit = context.limits.get('traction battery')?.timeAbove;
  const allowed = allowedSeconds(context, bake);
  if (!Number.isFinite(allowed))
    return computed(Number.NEGATIVE_INFINITY, one.at, 'The packs set no such limit for it.');
  // A bake at shop temperature counts for nothing, however long it takes.
  if (one.celsius !== undefined && limit !== undefined && one.celsius < limit.celsius) {
    return computed(-allowed, one.timeAt);
  }
  return computedOr(
    one.seconds === undefined ? undefined : one.seconds - allowed,
    one.timeAt,
    'The bake time is not stated.',
  );
}

/** By how much several bakes of one part are longer together than the battery in the vehicle may see, s. Below zero: they are not. */
export function bakesTogetherOver(survey: Survey): number | undefined {
  if (batteryStays(survey) === false) return undefined;
  const { context, plan } = survey;
  const together = secondsTogether(survey, context.limits.get('traction battery')?.timeAbove?.celsius ?? 0);
  const allowed = allowedSeconds(context, plan.finish?.bake);
  return together === undefined || !Number.isFinite(allowed) ? undefined : together - allowed;
}
