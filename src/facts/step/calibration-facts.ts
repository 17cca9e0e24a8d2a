import type { FactNames } from '../../generated/fact-names.ts';
import type { Fact } from '../fact.ts';
import { computedOr } from '../make-fact.ts';
import { saysRefused } from '../../plan/names-nothing.ts';
import { saysNone, saysNotDone } from './step-draft.ts';
import type { Calibration, StepDraft } from './step-draft.ts';
import type { Survey } from '../survey.ts';
import { unfitConditions } from './unfit-conditions.ts';

type CalibrationFact = Extract<
  FactNames['step'],
  `step.${'calibration_short' | 'unfit_condition' | 'disturbed_after_all' | 'denied_and_made'}`
>;

/**
 * Sensors that look at nothing outside: how the vehicle stands is nothing to them. A name that holds one of these and none of the words of
 * those that look out. Common practice, no source.
 */
const looksInside =
  /\b(?:steering|seat|occupant|belt|yaw|acceleration|rain|light sensor|parking|ultrasonic|tyre|height|level)\b/i;
const looksOutside = /camera|radar|lidar|lamp|headl|night|vision|laser/i;

export function calibrationFacts(survey: Survey, draft: StepDraft): Readonly<Record<CalibrationFact, Fact>> {
  const { what, at, result, calibration: one, disturbedBecause } = draft;
  const isMade = what === 'sensor calibration' && result === 'passed' && one !== undefined;
  return {
    'step.calibration_short': computedOr(
      isMade ? shortOf(one).join(', ') || undefined : undefined,
      at,
      'The step is no calibration that was passed, or nothing is missing.',
    ),
    'step.unfit_condition': computedOr(
      isMade ? unfitConditions(one).join('; ') || undefined : undefined,
      `${at}/conditions`,
      'The step is no calibration that was passed, or no condition tells against it.',
    ),
    'step.disturbed_after_all': computedOr(
      one?.disturbed === 'not disturbed' ? disturbedBecause : undefined,
      `${at}/disturbed`,
      'The sensor is not said to be undisturbed, or nothing befell what it sits on or looks through.',
    ),
    'step.denied_and_made': computedOr(
      madeAllTheSame(survey, draft).join(', ') || undefined,
      `${at}/${what === 'wheel alignment' ? 'result' : 'kind'}`,
      'The check is not said to be not required, or nothing tells that it was made.',
    ),
  };
}

/** What stands beside a check that is said to be not required, or a sensor that is said not to be fitted, and tells that it was made. */
function madeAllTheSame({ plan }: Survey, { what, calibration: one }: StepDraft): readonly string[] {
  if (what === 'wheel alignment') {
    const { result, done, values = [] } = plan.verify?.alignment ?? {};
    return result === 'not required' ? named({ values: values.length > 0, 'a day': done !== undefined }) : [];
  }
  if (one?.kind !== 'not required' && one?.kind !== 'not fitted') return [];
  return named({
    'a result': one.result !== undefined,
    'a day': one.done !== undefined,
    'a result document': one.report !== undefined,
  });
}

function named(there: Readonly<Record<string, boolean>>): readonly string[] {
  return Object.keys(there).filter((name) => there[name] === true);
}

/** What belongs to a calibration that looks out of the vehicle, and is not written. */
function shortOf(one: Calibration): readonly string[] {
  const sensor = one.sensor ?? '';
  if (looksInside.test(sensor) && !looksOutside.test(sensor)) return [];
  const { load, tyre_pressures: pressures, floor } = one.conditions ?? {};
  return [
    ...(isKindTold(one) ? [] : ['static or dynamic']),
    ...(isTold(load) ? [] : ['tank and load']),
    ...(isTold(pressures) ? [] : ['tyre pressures']),
    // Whoever drives it in needs a road and no floor.
    ...(one.kind === 'dynamic' || isTold(floor) ? [] : ['the level floor']),
    ...(isTold(one.report) ? [] : ['the result document']),
  ];
}

/** A lamp is aimed at a wall, whatever that is called. */
function isKindTold({ kind, sensor = '' }: Calibration): boolean {
  return /lamp|headlight/i.test(sensor) || kind === 'static' || kind === 'dynamic' || kind === 'both';
}

function isTold(text: string | undefined): boolean {
  if (text === undefined || saysNone(text) || saysNotDone(text)) return false;
  // "Nobody inside" is how a load is told.
  return !saysRefused(text) || /^(?:nobody|no one|nothing) (?:in|on|aboard|loaded)/i.test(text);
}
