import type { FactNames } from '../../generated/fact-names.ts';
import { tooLateFor } from './hold-points.ts';
import { secondsBetween } from './day-order.ts';
import type { Fact } from '../fact.ts';
import { computed, computedOr, contradicted, statedOr, unknown } from '../make-fact.ts';
import { quantityOf, whenOf } from '../quantity-of.ts';
import type { StepDraft } from './step-draft.ts';
import type { Survey } from '../survey.ts';

type OrderFact = Extract<FactNames['step'], `step.${'wait' | 'wait_left' | 'wait_stated' | 'too_late_for'}`>;

/** Steps against each other: the wait after the current was cut off, and hold points against what they guard. */
export function stepOrderFacts(survey: Survey, draft: StepDraft): Readonly<Record<OrderFact, Fact>> {
  const place = `${draft.at}/done`;
  const guarded = tooLateFor(survey, draft);
  return {
    'step.wait': statedOr(
      waitOf(survey, draft.what),
      `${draft.at}/wait`,
      'No wait is stated, or the step is another.',
    ),
    'step.wait_left': waitLeft(survey, draft, place),
    'step.wait_stated': computed(isWaitStated(survey, draft), `${draft.at}/wait`),
    'step.too_late_for':
      guarded === undefined
        ? unknown('It comes before nothing that is dated earlier, or days and times are not written.', place)
        : contradicted(guarded.name, place, [guarded.at]),
  };
}

/** Whether the isolation says how long is waited, or how long the page asks, before its proof. */
function isWaitStated({ plan }: Survey, { what }: StepDraft): boolean {
  const { isolation } = plan.make_safe?.high_voltage ?? {};
  return what === 'high-voltage isolation' && (isolation?.wait ?? isolation?.wait_asked) !== undefined;
}

/** What the page is said to ask counts for more than what somebody means to wait, s. */
function waitOf({ plan }: Survey, what: StepDraft['what']): number | undefined {
  const { restraints, high_voltage: high } = plan.make_safe ?? {};
  const block =
    what === 'restraints made safe'
      ? restraints
      : what === 'high-voltage isolation'
        ? high?.isolation
        : undefined;
  return quantityOf(block?.wait_asked, 'time') ?? quantityOf(block?.wait, 'time');
}

interface Wait {
  /** When the current was cut off. */
  readonly from: string | undefined;
  readonly seconds: number | undefined;
}

/** A day alone tells nothing of minutes; a whole day between is longer than any wait. */
function waitLeft(survey: Survey, { what, step }: StepDraft, place: string): Fact {
  const wait = waitBefore(survey, what);
  if (wait === undefined) return unknown('The step waits for nothing.', place);
  const gone = secondsBetween(whenOf(wait.from), whenOf(step?.done));
  return computedOr(
    gone === undefined || wait.seconds === undefined ? undefined : wait.seconds - gone,
    place,
    'The wait, or the days and times that would tell it, are not written.',
  );
}

function waitBefore({ plan }: Survey, what: StepDraft['what']): Wait | undefined {
  const { low_voltage: low, restraints, high_voltage: high } = plan.make_safe ?? {};
  if (what === 'restraints made safe') {
    const asked = quantityOf(restraints?.wait_asked, 'time') ?? quantityOf(restraints?.wait, 'time');
    return { from: low?.done, seconds: asked };
  }
  if (what === 'absence of voltage proved') {
    const { isolation } = high ?? {};
    const asked = quantityOf(isolation?.wait_asked, 'time') ?? quantityOf(isolation?.wait, 'time');
    return { from: isolation?.done, seconds: asked };
  }
  return undefined;
}
