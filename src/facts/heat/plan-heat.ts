import type { FactNames } from '../../generated/fact-names.ts';
import type { Plan } from '../../generated/plan-types.ts';
import type { TemperatureHistory } from '../../heat/point-history.ts';
import { bakeExposures } from './bake-exposure.ts';
import type { DerivationContext } from '../context.ts';
import type { Exposed } from './exposed-neighbour.ts';
import { exposureSheet, wholeHeat } from './exposure-sheets.ts';
import type { ExposureFacts } from './exposure-sheets.ts';
import { exposureVerdict } from './exposure-verdict.ts';
import type { ExposureVerdict } from './exposure-verdict.ts';
import { exposuresOf } from './exposures-of.ts';
import type { Fact } from '../fact.ts';
import { clearDistance } from './heat-limits.ts';
import type { ClearDistance, HeatBounds, KeepOff } from './heat-limits.ts';
import { runsOf, seamOf } from './heat-runs.ts';
import type { HeatRuns } from './heat-runs.ts';
import { operationNouns } from '../operation-noun.ts';
import { quantityOf } from '../quantity-of.ts';
import type { OperationSurvey, Survey } from '../survey.ts';
import { clearByLimit } from './stay-clear.ts';
import { strengthKind, strengthLeftOf } from '../part/strength-kind.ts';
import type { FactSheet } from '../sheet.ts';
import { surveyPlan } from '../survey-plan.ts';
import { vehicleFacts } from '../vehicle-facts.ts';

/** One source of heat in a plan, with what lies beside it. */
export interface PlannedHeat extends HeatRuns {
  /** JSON pointer of the operation, or of the bake. */
  readonly at: string;
  readonly part?: string;
  readonly what: string;
  readonly from: 'heat' | 'arc' | 'brazing' | 'bake';
  /** The source of a heat operation, in the plan's word. */
  readonly source?: string;
  readonly statedCelsius?: number;
  readonly neighbours: readonly HeatedNeighbour[];
}

export interface HeatedNeighbour {
  readonly at: string;
  readonly name: string;
  readonly victim?: string;
  /** What the temperature rests on. */
  readonly howSure?: string;
  readonly distanceMm?: number;
  readonly peakCelsius?: number;
  readonly peakAtSeconds?: number;
  readonly limitCelsius?: number;
  readonly stopLimitCelsius?: number;
  readonly secondsAboveLimit?: number;
  /** The safe end of what is left, and the other, %. */
  readonly tensileLeft?: number;
  readonly tensileLeftAtMost?: number;
  readonly history?: TemperatureHistory;
  readonly verdict: ExposureVerdict;
  readonly clear: ClearDistance;
  /** Why something of it is not known. */
  readonly reasons: readonly string[];
  readonly assumptions: readonly string[];
}

/** The heats of a plan, in its order; the numbers are those of the fact sheets that `check` judges. */
export function plannedHeats(
  plan: Plan,
  context: DerivationContext,
  bounds: HeatBounds,
): readonly PlannedHeat[] {
  const survey = surveyPlan(plan, context);
  const heats = survey.operations.flatMap((one) => operationHeats(survey, one, bounds));
  return [...heats, ...bakeHeats(survey, bounds)];
}

function operationHeats(survey: Survey, one: OperationSurvey, bounds: HeatBounds): readonly PlannedHeat[] {
  const exposed = exposuresOf(survey, one);
  return (['heat', 'arc', 'brazing'] as const).flatMap((from): readonly PlannedHeat[] => {
    const ofKind = exposed.filter(({ source }) => source.kind === from);
    // A heat beside which nothing is listed is shown all the same.
    if (ofKind.length === 0 && !(from === 'heat' && one.heats === true && one.heatOf === undefined))
      return [];
    const { source, temperature, do: word } = one.operation;
    const stated = quantityOf(temperature, 'temperature');
    return [
      {
        at: one.at,
        part: one.part.name,
        what: word === undefined ? 'work' : operationNouns[word],
        from,
        ...(from === 'heat' && source !== undefined ? { source } : {}),
        ...(from === 'heat' && stated !== undefined ? { statedCelsius: stated } : {}),
        neighbours: ofKind.map((each) => heatedNeighbour(survey, one, each, bounds)),
        ...(from === 'heat' ? runsOf(survey, one, ofKind) : seamOf(one, ofKind)),
      },
    ];
  });
}

function heatedNeighbour(
  survey: Survey,
  one: OperationSurvey,
  exposed: Exposed,
  bounds: HeatBounds,
): HeatedNeighbour {
  const { neighbour, source } = exposed;
  const { facts } = exposureSheet(survey, one, exposed);
  const keepOff = neighbour.victim && bounds.keepOff(neighbour.victim, source.kind);
  const least = strengthKind(neighbour) === undefined ? undefined : bounds.leastTensileLeft;
  return {
    ...described(facts, keepOff || undefined, least),
    at: neighbour.at,
    name: neighbour.name,
    clear: clearOf(survey, one, exposed, keepOff || undefined, least),
    ...historyOf(survey, one, exposed),
  };
}

/** What it goes through over time, and the better end of the strength that it keeps: shown, never judged. */
function historyOf(
  survey: Survey,
  one: OperationSurvey,
  exposed: Exposed,
): Pick<HeatedNeighbour, 'history' | 'tensileLeftAtMost'> {
  const heat = wholeHeat(survey, one, exposed);
  if (!heat.ok || heat.history === undefined) return {};
  const left = strengthLeftOf(exposed.neighbour, heat.history);
  return {
    history: heat.history,
    ...(left !== undefined && 'mostPercent' in left ? { tensileLeftAtMost: left.mostPercent } : {}),
  };
}

/** The part of a neighbour's record that the fact sheet holds. */
function described(
  facts: ExposureFacts,
  keepOff: KeepOff | undefined,
  leastTensileLeft: number | undefined,
): Omit<HeatedNeighbour, 'at' | 'name' | 'clear'> {
  const number = (name: FactNames['exposure']): number | undefined => numberOf(facts[name]);
  const optional = (key: string, name: FactNames['exposure']): Record<string, number> => {
    const value = number(name);
    return value === undefined || !Number.isFinite(value) ? {} : { [key]: value };
  };
  const { 'exposure.victim': victim, 'exposure.stays': stays, 'exposure.peak': peak } = facts;
  const howSure = facts['exposure.how_sure'];
  const verdict = exposureVerdict({
    stays: stays.known ? stays.value === true : undefined,
    distanceMm: number('exposure.distance'),
    keepOffMm: keepOff?.distanceMm,
    overLimit: number('exposure.over_limit'),
    overStopLimit: number('exposure.over_stop_limit'),
    overTime: number('exposure.over_time'),
    tensileLeft: number('exposure.tensile_left'),
    leastTensileLeft,
  });
  const open = [victim, stays, peak, facts['exposure.over_time']];
  return {
    ...(victim.known ? { victim: String(victim.value) } : {}),
    ...(peak.known && howSure.known ? { howSure: String(howSure.value) } : {}),
    ...optional('distanceMm', 'exposure.distance'),
    ...optional('peakCelsius', 'exposure.peak'),
    ...optional('peakAtSeconds', 'exposure.peak_at'),
    ...optional('limitCelsius', 'exposure.limit'),
    ...optional('stopLimitCelsius', 'exposure.stop_limit'),
    ...optional('secondsAboveLimit', 'exposure.time_above_limit'),
    ...optional('tensileLeft', 'exposure.tensile_left'),
    verdict,
    reasons: [...new Set(open.flatMap((fact) => (fact.known ? [] : [fact.reason])))],
    assumptions: [victim, peak].flatMap((fact) =>
      fact.known && fact.note !== undefined && fact.note !== '' ? [fact.note] : [],
    ),
  };
}

function clearOf(
  survey: Survey,
  one: OperationSurvey,
  exposed: Exposed,
  keepOff: KeepOff | undefined,
  least: number | undefined,
): ClearDistance {
  const sought = clearByLimit(survey, one, exposed, least);
  const noLimit = 'noLimit' in sought;
  return noLimit ? clearDistance(undefined, keepOff, sought.reason) : clearDistance(sought, keepOff, '');
}

function bakeHeats(survey: Survey, bounds: HeatBounds): readonly PlannedHeat[] {
  const facts = vehicleFacts(survey.plan);
  const voltage = facts['vehicle.high_voltage'];
  const sheets = bakeExposures(survey, voltage.known ? voltage.value === true : undefined, {
    kind: 'plan',
    at: '',
    facts: {},
    standsOn: [],
  });
  const byBake = new Map<string, FactSheet[]>();
  for (const sheet of sheets) {
    const at = sheet.operation ?? sheet.at;
    byBake.set(at, [...(byBake.get(at) ?? []), sheet]);
  }
  return [...byBake].map(([at, of]): PlannedHeat => ({
    at,
    what: 'baking',
    from: 'bake',
    neighbours: of.map((sheet) => bakedNeighbour(sheet, bounds)),
    runs: [],
    open: [],
  }));
}

function bakedNeighbour({ at, facts }: FactSheet, bounds: HeatBounds): HeatedNeighbour {
  const { 'exposure.victim': victim, 'exposure.name': name } = facts;
  const keepOff = victim?.known === true ? bounds.keepOff(String(victim.value), 'bake') : undefined;
  return {
    ...described(facts, keepOff, undefined),
    at,
    name: name?.known === true ? String(name.value) : 'a neighbour without a name',
    clear: { ok: false, reason: 'A bake heats the whole vehicle.' },
  };
}

function numberOf(fact: Fact): number | undefined {
  return fact.known && typeof fact.value === 'number' ? fact.value : undefined;
}
