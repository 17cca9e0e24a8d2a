import { alignmentBecause, calibrationBecause, completionBecause, scanBecause } from './checks-needed.ts';
import { coversVehicle } from './maker-evidence.ts';
import { listOf } from './quantity-of.ts';
import type { CheckResult, StatedStep, StepDraft } from './step-draft.ts';
import type { Survey } from './survey.ts';

type Verify = NonNullable<Survey['plan']['verify']>;

/** The checks after the repair. Each has its draft whether the plan states it or not; every calibration has its own. */
export function checkSteps(survey: Survey): readonly StepDraft[] {
  const { scan_after: scan, alignment, restraints, road_test: road, calibrations } = survey.plan.verify ?? {};
  const at = '/verify';
  const neededCalibration = calibrationBecause(survey);
  return [
    check(survey, {
      what: 'scan after the repair',
      at: `${at}/scan_after`,
      step: scan,
      // Codes that are listed are what a scan gives.
      result: scan?.codes === undefined ? undefined : 'passed',
      neededBecause: scanBecause(survey),
    }),
    check(survey, {
      what: 'wheel alignment',
      at: `${at}/alignment`,
      step: alignment,
      result: alignment?.result === undefined ? undefined : alignmentResults[alignment.result],
      neededBecause: alignmentBecause(survey),
    }),
    check(survey, {
      what: 'restraint completion',
      name: 'completion of the restraint system',
      at: `${at}/restraints`,
      step: restraints,
      result: restraints?.result === undefined ? undefined : completionResults[restraints.result],
      neededBecause: completionBecause(survey),
    }),
    check(survey, {
      what: 'road test',
      at: `${at}/road_test`,
      step: road,
      result: road?.result,
      neededBecause: undefined,
    }),
    ...((calibrations ?? []).length === 0
      ? [
          check(survey, {
            what: 'sensor calibration',
            at: `${at}/calibrations`,
            step: undefined,
            result: undefined,
            neededBecause: neededCalibration,
          }),
        ]
      : (calibrations ?? []).map((one, index) =>
          check(survey, {
            what: 'sensor calibration',
            ...(one.sensor === undefined ? {} : { name: `calibration of ${one.sensor}` }),
            at: `${at}/calibrations/${String(index)}`,
            step: one,
            result: isNoneFitted(one) ? 'not required' : calibrationResult(one),
            neededBecause: isNoneFitted(one) ? undefined : neededCalibration,
          }),
        )),
  ];
}

const alignmentResults = {
  'within range': 'passed',
  'out of range': 'failed',
  'not required': 'not required',
} as const;
const completionResults = { complete: 'passed', open: 'unfinished' } as const;

/** `sensor: none fitted` answers for a vehicle without such sensors; no page of the maker says that. */
function isNoneFitted({ sensor, result }: NonNullable<Verify['calibrations']>[number]): boolean {
  return (
    result === undefined &&
    /^(?:none|no sensors?)(?: (?:is |are )?(?:fitted|there))?\p{P}?$/iu.test((sensor ?? '').trim())
  );
}

function calibrationResult({
  kind,
  result,
}: NonNullable<Verify['calibrations']>[number]): CheckResult | undefined {
  if (result === undefined) return kind === 'not required' ? 'not required' : undefined;
  return result === 'not finished' ? 'unfinished' : result;
}

function check(survey: Survey, draft: StepDraft): StepDraft {
  const { step, result, neededBecause } = draft;
  if (step === undefined) return draft;
  return {
    ...draft,
    order: 'after the work',
    missing: checkMissing(survey, step, result, neededBecause !== undefined),
  };
}

function checkMissing(
  survey: Survey,
  step: StatedStep,
  result: CheckResult | undefined,
  isNeeded: boolean,
): readonly string[] {
  if (result === 'not required') {
    const isCited = listOf(step.cite).some((cite) => coversVehicle(survey, cite.reference));
    return isNeeded && !isCited ? ['the maker’s page by which it is not required'] : [];
  }
  return [
    ...(step.done === undefined ? ['the day'] : []),
    ...(result === undefined ? ['what came out'] : []),
  ];
}
