import type { FactNames } from '../../generated/fact-names.ts';
import type { Fact } from '../fact.ts';
import { computedOr, unknown } from '../make-fact.ts';
import { coversVehicle } from '../papers/maker-evidence.ts';
import { listOf } from '../quantity-of.ts';
import { saysRefused } from '../../plan/names-nothing.ts';
import { saysNone, saysNotDone } from './step-draft.ts';
import type { Calibration, StepDraft } from './step-draft.ts';
import type { Survey } from '../survey.ts';

type CalibrationFact = Extract<FactNames['step'], 'step.calibration_short'>;

/**
 * Sensors that look at nothing outside: how the vehicle stands is nothing to them. A name that holds one of these and none of the words of
 * those that look out. Common practice, no source.
 */
const looksInside =
  /\b(?:steering|seat|occupant|belt|yaw|acceleration|rain|light sensor|parking|ultrasonic|tyre|height|level)\b/iu;
const looksOutside = /camera|radar|lidar|lamp|headl|night|vision|laser/iu;

const ofAnotherStep: Readonly<Record<CalibrationFact, Fact>> = {
  'step.calibration_short': unknown('The step is no calibration that was passed.'),
};

export function calibrationFacts(
  survey: Survey,
  { what, at, result, calibration: one }: StepDraft,
): Readonly<Record<CalibrationFact, Fact>> {
  const isMade = what === 'sensor calibration' && result === 'passed' && one !== undefined;
  if (!isMade) return ofAnotherStep;
  return {
    'step.calibration_short': computedOr(
      shortOf(survey, one).join(', ') || undefined,
      at,
      'Nothing is missing.',
    ),
  };
}

/** What belongs to a calibration that looks out of the vehicle, and is not written. */
function shortOf(survey: Survey, one: Calibration): readonly string[] {
  const sensor = one.sensor ?? '';
  if (looksInside.test(sensor) && !looksOutside.test(sensor)) return [];
  const { load, tyre_pressures: pressures, floor } = one.conditions ?? {};
  const isCited = listOf(one.cite).some((cite) => coversVehicle(survey, cite.reference));
  return [
    ...(isKindTold(one) ? [] : ['static or dynamic']),
    ...(isCited ? [] : ['the maker’s page']),
    ...(isTold(load) ? [] : ['tank and load']),
    ...(isTold(pressures) ? [] : ['tyre pressures']),
    // Whoever drives it in needs a road and no floor.
    ...(one.kind === 'dynamic' || isTold(floor) ? [] : ['the level floor']),
    ...(isTold(one.report) ? [] : ['the result document']),
  ];
}

/** A lamp is aimed at a wall, whatever that is called. */
function isKindTold({ kind, sensor = '' }: Calibration): boolean {
  return /lamp|headlight/iu.test(sensor) || kind === 'static' || kind === 'dynamic' || kind === 'both';
}

function isTold(text: string | undefined): boolean {
  if (text === undefined || saysNone(text) || saysNotDone(text)) return false;
  // "Nobody inside" is how a load is told.
  return !saysRefused(text) || /^(?:nobody|no one|nothing) (?:in|on|aboard|loaded)/iu.test(text);
}
