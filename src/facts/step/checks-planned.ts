import type { Fact } from '../fact.ts';
import { computedOr } from '../make-fact.ts';
import { checkSteps } from './check-steps.ts';
import type { StepDraft } from './step-draft.ts';
import type { Survey } from '../survey.ts';

const asked: ReadonlySet<string> = new Set([
  ...['scan after the repair', 'wheel alignment', 'sensor calibration', 'restraint completion', 'road test'],
]);

/** The checks that the work of a plan asks for afterwards and for which it has no step, in one sentence, as long as work may begin. */
export function checksPlannedFacts(survey: Survey): Readonly<Record<'plan.checks_not_planned', Fact>> {
  return {
    'plan.checks_not_planned': computedOr(
      survey.context.stage === 'start' ? notPlanned(survey) : undefined,
      '/verify',
      'Every check that is asked for has its step, or the plan does not ask whether work may begin.',
    ),
  };
}

function notPlanned(survey: Survey): string | undefined {
  const checks = checkSteps(survey)
    .filter((draft) => draft.neededBecause !== undefined && asked.has(draft.what) && isLeftOut(draft))
    .map(({ name, what, neededBecause = '' }) => `${name ?? what} (${neededBecause})`);
  const { isolation } = survey.plan.make_safe?.high_voltage ?? {};
  const isIsolated = isolation !== undefined && isolation.planned !== false;
  const again = isIsolated && isRefused(survey.plan.verify?.high_voltage);
  return (
    [...checks, ...(again ? ['high-voltage re-commissioning (the traction voltage is isolated)'] : [])].join(
      '; ',
    ) || undefined
  );
}

/**
 * A step that is said not to be planned. A page beside it tells how the check is made; only "not required" and "not fitted", which are
 * results, say that it need not be.
 */
function isLeftOut({ step, result }: StepDraft): boolean {
  return result === undefined && isRefused(step);
}

function isRefused(step: StepDraft['step']): boolean {
  return step === undefined || (step.planned === false && step.done === undefined);
}
