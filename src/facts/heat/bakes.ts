import { quantityOf } from '../quantity-of.ts';
import { canBeWorkedOffVehicle, carriesCrashLoad, isClosingSkin } from '../part/part-kinds.ts';
import type { OperationSurvey, PartSurvey, Survey } from '../survey.ts';

/** One bake of the whole vehicle, °C and s; what is not stated is left out. */
export interface Bake {
  readonly at: string;
  readonly temperatureAt: string;
  readonly timeAt: string;
  readonly celsius?: number;
  readonly seconds?: number;
  /** The part whose operation it is; none for the bake of the finish. */
  readonly part?: PartSurvey;
  readonly by?: OperationSurvey;
  /** Said of the paint that is laid on, and perhaps once more of the bake itself. */
  readonly ofPaint?: boolean;
}

/** Every bake of the whole vehicle: that of the finish, and what operations bake or dry with heat on the vehicle. */
export function bakesOf({ plan, operations }: Survey): readonly Bake[] {
  const bake = plan.finish?.bake;
  // One that is refused and has its figures is judged by them.
  const isRefused =
    bake?.planned === false && [bake.done, bake.temperature, bake.time].every((said) => said === undefined);
  const at = '/finish/bake';
  const ofFinish =
    bake === undefined || isRefused
      ? []
      : [
          {
            at,
            temperatureAt: `${at}/temperature`,
            timeAt: `${at}/time`,
            ...figures(bake.temperature, bake.time),
          },
        ];
  return [...ofFinish, ...operations.filter(bakesTheVehicle).map(bakeOf)];
}

function bakesTheVehicle(one: OperationSurvey): boolean {
  const { do: word } = one.operation;
  // Paint that is dried with heat is baked too, also where the heat is not stated.
  return (word === 'bake' || (word === 'refinish' && saysHeat(one))) && !isOff(one);
}

function saysHeat({ operation: { temperature, hold, source } }: OperationSurvey): boolean {
  return [temperature, hold, source].some((said) => said !== undefined);
}

/** What is dried or cured with heat at one place, whatever the word: an adhesive under a lamp, filler under hot air. */
export function warmthsOf({ operations }: Survey): readonly Bake[] {
  return operations
    .filter(
      (one) =>
        one.operation.do !== 'bake' &&
        one.operation.do !== 'refinish' &&
        one.heats === false &&
        saysHeat(one) &&
        !isOff(one),
    )
    .map(bakeOf);
}

function bakeOf(one: OperationSurvey): Bake {
  const { operation, at, part } = one;
  return {
    at,
    temperatureAt: `${at}/temperature`,
    timeAt: `${at}/hold`,
    part,
    by: one,
    ofPaint: operation.do === 'refinish',
    ...figures(operation.temperature, operation.hold),
  };
}

/** The warmest and the coldest bake on the vehicle, °C; undefined where the temperature of one is not stated, and of none. */
export function bakeRange(
  survey: Survey,
): { readonly hottest: number; readonly coldest: number } | undefined {
  const temperatures = bakesOf(survey).map(({ celsius }) => celsius);
  const known = temperatures.filter((celsius) => celsius !== undefined);
  if (known.length === 0 || known.length < temperatures.length) return undefined;
  return { hottest: Math.max(...known), coldest: Math.min(...known) };
}

/** What is welded into the body goes into the booth with the whole of it, whatever the plan says. */
function isOff({ operation, part: { part } }: OperationSurvey): boolean {
  const { kind } = part;
  const isWeldedIn =
    (carriesCrashLoad(kind) || isClosingSkin(kind) || kind === 'back panel') && !canBeWorkedOffVehicle(kind);
  return operation.off_vehicle === true && !isWeldedIn;
}

function figures(
  temperature: string | undefined,
  time: string | undefined,
): Pick<Bake, 'celsius' | 'seconds'> {
  const celsius = quantityOf(temperature, 'temperature');
  const seconds = quantityOf(time, 'time');
  if (celsius === undefined) return seconds === undefined ? {} : { seconds };
  return seconds === undefined ? { celsius } : { celsius, seconds };
}

/**
 * How long the vehicle is baked in all, s, at `celsius` and above; undefined where there are no several bakes or a time is not stated.
 * Parts that are painted together are baked together: what counts is the part that is baked longest. A bake of the finish with the
 * figures of an operation is that operation's.
 */
export function secondsTogether(survey: Survey, celsius: number): number | undefined {
  const warm = bakesOf(survey).filter((bake) => (bake.celsius ?? Infinity) >= celsius);
  const ofFinish = warm.filter(({ part }) => part === undefined);
  const byPart = new Map<PartSurvey, Bake[]>();
  for (const bake of warm) {
    if (bake.part === undefined) continue;
    byPart.set(bake.part, [...(byPart.get(bake.part) ?? []), bake]);
  }
  const sums = [...byPart.values()].map((told) => {
    const own = told.filter(
      (one) => one.ofPaint !== true || !told.some((bake) => bake.ofPaint === false && isSame(bake, one)),
    );
    const others = ofFinish.filter((one) => !own.some((bake) => isSame(bake, one)));
    const all = [...own, ...others];
    return all.length < 2 ? undefined : sum(all.map(({ seconds }) => seconds));
  });
  const known = sums.filter((seconds) => seconds !== undefined);
  return known.length === 0 ? undefined : Math.max(...known);
}

function isSame(one: Bake, other: Bake): boolean {
  return one.celsius === other.celsius && one.seconds === other.seconds;
}

function sum(values: readonly (number | undefined)[]): number | undefined {
  let total = 0;
  for (const value of values) {
    if (value === undefined) return undefined;
    total += value;
  }
  return total;
}

/** A booth that is no warmer harms no battery, °C. Makers' limits seen begin near 50 °C. */
const coolBakeCelsius = 45;

/** Whether the refinish is baked with the vehicle in the booth. */
export function isBaked(survey: Survey): boolean {
  return bakesOf(survey).length > 0;
}

export function isBakedWarm(survey: Survey): boolean {
  return bakesOf(survey).some(({ celsius }) => (celsius ?? Infinity) > coolBakeCelsius);
}

/** Paint on the vehicle of which nobody says how it dries. */
export function cureIsOpen(survey: Survey): boolean {
  const { finish } = survey.plan;
  if (finish?.bake !== undefined || isBaked(survey)) return false;
  return survey.operations.some(
    (one) =>
      one.operation.do === 'refinish' &&
      !isOff(one) &&
      // Baked off the vehicle, it is painted there.
      !one.part.operations.some(({ operation }) => operation.do === 'bake'),
  );
}

type FinishBake = NonNullable<NonNullable<Survey['plan']['finish']>['bake']>;

/** Whether the traction battery is in the vehicle while it is baked; undefined where the plan says both. */
export function batteryStays({ plan }: Survey): boolean | undefined {
  const place: FinishBake['traction_battery'] = plan.finish?.bake?.traction_battery;
  const isTakenOut = plan.make_safe?.high_voltage?.battery_removed;
  if (place === 'removed') return isTakenOut === false ? undefined : false;
  // Taken out for the work, it may be in again when the paint is baked: the bake's own word counts.
  return place === 'in the vehicle' || isTakenOut !== true;
}
