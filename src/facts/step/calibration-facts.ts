import type { FactNames } from '../../generated/fact-names.ts';
import type { Fact } from '../fact.ts';
import { computedOr } from '../make-fact.ts';
import { saysRefused } from '../../plan/names-nothing.ts';
import { saysNone, saysNotDone } from './step-draft.ts';
import type { Calibration, StepDraft } from './step-draft.ts';
import type { Survey } from '../survey.ts';
import { floorChecked } from './floor-checked.ts';
import { unclearLoad } from './unclear-load.ts';
import { unfitConditions } from './unfit-conditions.ts';

type CalibrationFact = Extract<
  FactNames['step'],
  `step.${'calibration_short' | 'unfit_condition' | 'disturbed_after_all' | 'other_side_open' | 'denied_and_made' | 'load_unclear' | 'floor_checked_after' | 'floor_checked_long_ago' | 'report_shared'}`
>;

/**
 * Sensors that look at nothing outside: how the vehicle stands is nothing to them. A name that holds one of these and none of the words of
 * those that look out. Common practice, no source.
 */
const looksInside =
  /\b(?:steering|seat|occupant|belt|yaw|acceleration|rain|light sensor|parking|ultrasonic|tyre|height|level)\b/i;
const looksOutside = /camera|radar|lidar|lamp|headl|night|vision|laser/i;

const dayInYear = 366;
const noFloorDay =
  'The step is no calibration that was passed, or the day of the floor’s last check stands to it as it should or is not written.';

export function calibrationFacts(survey: Survey, draft: StepDraft): Readonly<Record<CalibrationFact, Fact>> {
  const { what, at, result, calibration: one, disturbedBecause } = draft;
  const isMade = what === 'sensor calibration' && result === 'passed' && one !== undefined;
  const floor = isMade ? floorChecked(one) : undefined;
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
    'step.load_unclear': computedOr(
      isMade ? unclearLoad(one) : undefined,
      `${at}/conditions/load`,
      'The step is no calibration that was passed, or its load says that nothing is there or what the page asks.',
    ),
    'step.floor_checked_after': computedOr(
      floor !== undefined && floor.daysBefore < 0 ? floor.day : undefined,
      `${at}/conditions/floor`,
      noFloorDay,
    ),
    'step.floor_checked_long_ago': computedOr(
      floor !== undefined && floor.daysBefore > dayInYear ? floor.day : undefined,
      `${at}/conditions/floor`,
      noFloorDay,
    ),
    'step.report_shared': computedOr(
      isMade ? sharingReport(survey, one).join(', ') || undefined : undefined,
      `${at}/report`,
      'No other calibration bears the same result document.',
    ),
    'step.disturbed_after_all': computedOr(
      one?.disturbed === 'not disturbed' ? disturbedBecause : undefined,
      `${at}/disturbed`,
      'The sensor is not said to be undisturbed, or nothing befell what it sits on or looks through.',
    ),
    'step.other_side_open': computedOr(
      draft.otherSideOpen,
      `${at}/sensor`,
      'The sensor is no radar of one side, nothing that reaches across the vehicle was disturbed, or the other side is answered for.',
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
    ...(one.sensor === undefined ? ['which sensor'] : []),
    ...(isKindTold(one) ? [] : ['static or dynamic']),
    ...lacking('tank and load', load),
    ...lacking('tyre pressures', pressures),
    // Whoever drives it in needs a road and no floor.
    ...(one.kind === 'dynamic' ? [] : lacking('the level floor', floor)),
    ...(isTold(one.report) ? [] : ['the result document']),
  ];
}

/** A text that is there and tells nothing is told with it. */
function lacking(what: string, text: string | undefined): readonly string[] {
  if (isTold(text)) return [];
  return [text === undefined ? what : `${what} ("${text}" does not say how)`];
}

/** Other sensors of the plan whose calibration bears the same result document. */
function sharingReport({ plan }: Survey, one: Calibration): readonly string[] {
  const { report } = one;
  if (report === undefined) return [];
  return (plan.verify?.calibrations ?? [])
    .filter((other) => other !== one && other.report === report && other.sensor !== one.sensor)
    .map(({ sensor }) => sensor ?? 'another sensor');
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
