import { checksNeeded } from './checks-needed.ts';
import type { CheckNeeded } from './checks-needed.ts';
import { coversVehicle } from '../papers/maker-evidence.ts';
import { listOf } from '../quantity-of.ts';
import { neverReads } from './scan-excuse.ts';
import { saysNone } from './step-draft.ts';
import { endNamed } from './vehicle-end.ts';
import type { Calibration, CheckResult, StatedStep, StepDraft } from './step-draft.ts';
import { holdPointSteps } from './hold-points.ts';
import { otherSideOpen } from './other-side-open.ts';
import { releaseSteps } from './release-steps.ts';
import type { Survey } from '../survey.ts';
import { unreadAt } from '../unread.ts';

/** The checks after the repair. Each has its draft whether the plan states it or not; every calibration has its own. */
export function checkSteps(survey: Survey): readonly StepDraft[] {
  const { alignment, restraints, road_test: road } = survey.plan.verify ?? {};
  const at = '/verify';
  const needed = checksNeeded(survey);
  const becauseOf = (asksFor: CheckNeeded['asksFor']): string | undefined =>
    needed.find((one) => one.asksFor === asksFor)?.because;
  return [
    scanBefore(survey, becauseOf('scan after the repair')),
    scanAfter(survey, becauseOf('scan after the repair')),
    check(survey, {
      what: 'wheel alignment',
      at: `${at}/alignment`,
      step: alignment,
      result: alignment?.result === undefined ? undefined : alignmentResults[alignment.result],
      neededBecause: becauseOf('wheel alignment'),
    }),
    check(survey, {
      what: 'restraint completion',
      name: 'completion of the restraint system',
      at: `${at}/restraints`,
      step: restraints,
      result: restraints?.result === undefined ? undefined : completionResults[restraints.result],
      neededBecause: becauseOf('restraint completion'),
    }),
    check(survey, {
      what: 'road test',
      at: `${at}/road_test`,
      step: road,
      result: road?.result,
      neededBecause: becauseOf('road test'),
    }),
    ...calibrationSteps(
      survey,
      needed.filter(({ asksFor }) => asksFor === 'sensor calibration'),
    ),
    ...holdPointSteps(
      survey,
      needed.filter(({ asksFor }) => asksFor === 'hold point'),
    ),
    ...releaseSteps(survey, becauseOf('structural release')),
  ];
}

/** What is asked for afterwards can only be compared with what was there before. A vehicle that takes no current cannot be asked. */
function scanBefore(survey: Survey, neededBecause: string | undefined): StepDraft {
  const step = survey.plan.verify?.scan_before;
  const isPossible = saysNone(step?.not_possible);
  const draft = check(survey, {
    what: 'scan before the repair',
    at: '/verify/scan_before',
    step,
    result: isPossible ? codesRead(step) : 'not required',
    neededBecause,
  });
  return { ...draft, order: 'before the work', ...(isPossible ? {} : { missing: [] }) };
}

/** A vehicle without a way to its diagnosis has none after the repair. */
function scanAfter(survey: Survey, neededBecause: string | undefined): StepDraft {
  const step = survey.plan.verify?.scan_after;
  const isNever = neverReads(survey.plan);
  const draft = check(survey, {
    what: 'scan after the repair',
    at: '/verify/scan_after',
    step,
    result: isNever ? 'not required' : codesRead(step),
    neededBecause,
  });
  return isNever ? { ...draft, missing: [] } : draft;
}

/** Codes that are listed are what a scan gives. */
function codesRead(scan: { readonly codes?: readonly unknown[] } | undefined): CheckResult | undefined {
  return scan?.codes === undefined ? undefined : 'passed';
}

const alignmentResults = {
  'within range': 'passed',
  'out of range': 'failed',
  'not required': 'not required',
} as const;
const completionResults = { complete: 'passed', open: 'unfinished' } as const;

/** Each calibration of the plan, and one more for the sensors that none of them answers for. */
function calibrationSteps(survey: Survey, needed: readonly CheckNeeded[]): readonly StepDraft[] {
  const at = '/verify/calibrations';
  const calibrations = survey.plan.verify?.calibrations ?? [];
  const open = needed.filter((need) => !calibrations.some((one) => answersFor(one, need)));
  const stated = calibrations.map((one, index) =>
    check(survey, {
      what: 'sensor calibration',
      ...(one.sensor === undefined ? {} : { name: `calibration of ${one.sensor}` }),
      at: `${at}/${String(index)}`,
      step: one,
      calibration: one,
      ...disturbedBecause(survey, one, needed),
      otherSideOpen: isNotFitted(one) ? undefined : otherSideOpen(one, calibrations, needed),
      result: isNotFitted(one) ? 'not required' : calibrationResult(one),
      neededBecause: isNotFitted(one)
        ? undefined
        : (needed.find((need) => answersFor(one, need))?.because ?? disturbedBy(one)),
    }),
  );
  if (stated.length > 0 && open.length === 0) return stated;
  const missing: StepDraft = {
    what: 'sensor calibration',
    at,
    step: undefined,
    result: undefined,
    neededBecause:
      open.length === 0
        ? undefined
        : open
            .map(({ sensor: [name], because }) => (name === undefined ? because : `${name}: ${because}`))
            .join('; '),
  };
  return [...stated, check(survey, missing)];
}

/** What of the parts asks for it; of a radar also what was painted or came off before it, whether it asks for a calibration or not. */
function disturbedBecause(
  { parts }: Survey,
  one: Calibration,
  needed: readonly CheckNeeded[],
): Pick<StepDraft, 'disturbedBecause'> {
  const asked = needed.find(
    (need) => need.ofPart === true && need.sensor.length > 0 && answersFor(one, need),
  );
  if (asked !== undefined) return { disturbedBecause: asked.because };
  if (!/\bradar/i.test(one.sensor ?? '')) return {};
  const end = endNamed(one.sensor ?? '');
  const before = parts.find(
    ({ part, name, operations }) =>
      part.radar_behind === true &&
      (end === undefined || (endNamed(name) ?? end) === end) &&
      operations.some(({ operation }) => operation.do === 'refinish' || operation.do === 'fill'),
  );
  return before === undefined ? {} : { disturbedBecause: `${before.name} was painted` };
}

/** What the plan itself says of the sensor asks for its calibration as much as what it says of the parts. */
function disturbedBy({ disturbed }: Calibration): string | undefined {
  return disturbed === undefined || disturbed === 'not disturbed'
    ? undefined
    : `it was disturbed: ${disturbed}`;
}

/** A calibration that does not name its sensor answers for none in particular. */
function answersFor(one: Calibration, { sensor, end }: CheckNeeded): boolean {
  if (sensor.length === 0 || isNoneFitted(one)) return true;
  const name = (one.sensor ?? '').toLowerCase();
  const named = endNamed(name);
  if (end !== undefined && named !== undefined && named !== end) return false;
  return sensor.some((word) => name.includes(word.toLowerCase()));
}

/** What is not fitted cannot be calibrated; no page of the maker says that. */
function isNotFitted(one: Calibration): boolean {
  return one.result === undefined && (one.kind === 'not fitted' || isNoneFitted(one));
}

/** `sensor: none fitted` answers for a vehicle without such sensors; no page of the maker says that. */
function isNoneFitted({ sensor, result }: Calibration): boolean {
  return (
    result === undefined &&
    /^(?:none|no sensors?)(?: (?:is |are )?(?:fitted|there))?\p{P}?$/iu.test((sensor ?? '').trim())
  );
}

function calibrationResult({ kind, result }: Calibration): CheckResult | undefined {
  if (result === undefined) return kind === 'not required' ? 'not required' : undefined;
  return result === 'not finished' ? 'unfinished' : result;
}

function check(survey: Survey, draft: Omit<StepDraft, 'order' | 'missing'>): StepDraft {
  const { step, neededBecause } = draft;
  if (step === undefined) return draft;
  return {
    order: 'after the work',
    missing: checkMissing(survey, draft, step, neededBecause !== undefined),
    ...draft,
  };
}

function checkMissing(
  survey: Survey,
  { at, result }: StepDraft,
  step: StatedStep,
  isNeeded: boolean,
): readonly string[] {
  if (result === 'not required') {
    const isCited = listOf(step.cite).some((cite) => coversVehicle(survey, cite.reference));
    return isNeeded && !isCited ? ['the maker’s page by which it is not required'] : [];
  }
  return [
    ...(step.done === undefined && unreadAt(survey, `${at}/done`) === undefined ? ['the day'] : []),
    ...(result === undefined ? ['what came out'] : []),
  ];
}
