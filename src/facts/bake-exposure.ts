import type { DerivationContext } from './context.ts';
import { coversVehicle } from './maker-evidence.ts';
import { limitFacts } from './exposure-sheets.ts';
import type { ExposureFacts } from './exposure-sheets.ts';
import { assumed, computed, computedOr, known, stated, unknown } from './make-fact.ts';
import type { NeighbourHeat } from './neighbour-heat.ts';
import { listOf, quantityOf } from './quantity-of.ts';
import type { FactSheet } from './sheet.ts';
import type { Survey } from './survey.ts';

interface Bake {
  readonly celsius?: number;
  readonly seconds?: number;
}

/** Whether the refinish is baked with the vehicle in the booth. */
export function isBaked(survey: Survey): boolean {
  return bakes(survey).length > 0;
}

/** A booth that is no warmer harms no battery, °C. Makers' limits seen begin near 50 °C. */
const coolBakeCelsius = 45;

export function isBakedWarm(survey: Survey): boolean {
  return bakes(survey).length > 0 && (hottest(survey) ?? Infinity) > coolBakeCelsius;
}

/** Every bake of the whole vehicle: that of the finish, and what operations bake or dry with heat on the vehicle. */
function bakes({ plan, operations }: Survey): readonly Bake[] {
  const stated = [
    ...(plan.finish?.bake === undefined
      ? []
      : [[plan.finish.bake.temperature, plan.finish.bake.time] as const]),
    ...operations
      .filter(({ offVehicle }) => !offVehicle)
      .filter(
        ({ operation: { do: word, temperature } }) =>
          word === 'bake' || (word === 'refinish' && temperature !== undefined),
      )
      .map(({ operation }) => [operation.temperature, operation.hold] as const),
  ];
  return stated.map(([temperature, time]) => {
    const celsius = quantityOf(temperature, 'temperature');
    const seconds = quantityOf(time, 'time');
    return { ...(celsius === undefined ? {} : { celsius }), ...(seconds === undefined ? {} : { seconds }) };
  });
}

function hottest(survey: Survey): number | undefined {
  return most(bakes(survey).map(({ celsius }) => celsius));
}

/** Of the bakes that say so; undefined when none does. */
function most(values: readonly (number | undefined)[]): number | undefined {
  const known = values.filter((value) => value !== undefined);
  return known.length === 0 ? undefined : Math.max(...known);
}

/** What the traction battery sees in the booth; none where nothing is baked or there is no such battery. */
export function bakeExposure(
  survey: Survey,
  highVoltage: boolean | undefined,
  planSheet: FactSheet,
): FactSheet | undefined {
  if (!isBaked(survey) || highVoltage === false) return undefined;
  const bake = survey.plan.finish?.bake;
  const at = bake === undefined ? '/finish' : '/finish/bake';
  const celsius = hottest(survey);
  const seconds = most(bakes(survey).map((one) => one.seconds));
  const heat: NeighbourHeat =
    celsius === undefined
      ? { ok: false, reason: 'The bake temperature is not stated.' }
      : {
          ok: true,
          peakCelsius: celsius,
          assumed: false,
          notes: ['The whole vehicle takes the temperature of the bake.'],
        };
  const removed =
    bake?.traction_battery === 'removed' || survey.plan.make_safe?.high_voltage?.battery_removed === true;
  const facts: ExposureFacts = {
    'exposure.victim': computed('traction battery', at),
    'exposure.name': computed('the traction battery', at),
    'exposure.listed': computed(true, at),
    'exposure.stays':
      removed || highVoltage === true
        ? computed(!removed, `${at}/traction_battery`)
        : unknown('Whether the vehicle has a traction battery is not stated.', '/vehicle/drive'),
    'exposure.treatment': removed
      ? stated('removed', `${at}/traction_battery`)
      : bake?.traction_battery === undefined
        ? assumed('stays', 'The battery counts as staying in the vehicle.', at)
        : stated('stays', `${at}/traction_battery`),
    'exposure.treatment_cited': computed(
      listOf(bake?.battery_limit?.cite).some((cite) => coversVehicle(survey, cite.reference)),
      `${at}/battery_limit/cite`,
    ),
    'exposure.from': computed('bake', at),
    'exposure.distance': unknown('A bake heats the whole vehicle.', at),
    'exposure.path': unknown('A bake heats the whole vehicle.', at),
    'exposure.peak': heat.ok
      ? known(heat.peakCelsius, 'stated', `${at}/temperature`)
      : unknown(heat.reason, at),
    'exposure.peak_at': unknown('A bake has no such time here.', at),
    ...limitFacts(limitOf(survey.context, bake), heat, at),
    'exposure.over_time': overTime(survey.context, bake, celsius, seconds, at),
    'exposure.tensile_left': unknown('The curve is for hardened steel only.', at),
  };
  return { kind: 'exposure', at, facts, standsOn: [planSheet] };
}

type FinishBake = NonNullable<NonNullable<Survey['plan']['finish']>['bake']>;

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

function overTime(
  context: DerivationContext,
  bake: FinishBake | undefined,
  celsius: number | undefined,
  seconds: number | undefined,
  at: string,
): ExposureFacts['exposure.over_time'] {
  const limit = context.limits.get('traction battery')?.timeAbove;
  const own = quantityOf(bake?.battery_limit?.time, 'time');
  const allowed = Math.min(own ?? Infinity, limit?.atMostSeconds ?? Infinity);
  if (!Number.isFinite(allowed))
    return computed(Number.NEGATIVE_INFINITY, at, 'The packs set no such limit for it.');
  // A bake at shop temperature counts for nothing, however long it takes.
  if (celsius !== undefined && limit !== undefined && celsius < limit.celsius) {
    return computed(-allowed, `${at}/time`);
  }
  return computedOr(
    seconds === undefined ? undefined : seconds - allowed,
    `${at}/time`,
    'The bake time is not stated.',
  );
}
