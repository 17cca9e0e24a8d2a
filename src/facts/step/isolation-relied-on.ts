import type { Survey } from '../survey.ts';
import type { TriState } from '../tri-state.ts';
import { anyYes } from '../tri-state.ts';

/**
 * Whether something is welded electrically on the vehicle and the plan isolates the traction voltage for it, even where nothing that
 * carries crash load is worked on. An isolation that is stated is relied on, and judged as one.
 */
export function isIsolatedForWelding({ plan, operations }: Survey): TriState {
  const { isolation, planned } = plan.make_safe?.high_voltage ?? {};
  if (isolation === undefined || planned === false) return false;
  if (isolation.planned === false && isolation.done === undefined) return false;
  return anyYes(operations.map(({ electricWelding }) => electricWelding));
}

/** What the proof of absence itself says was not done, as a phrase. What is only left out is missing, not denied. */
export function proofDenied({ plan }: Survey): string | undefined {
  const { meter_proved_before: before, meter_proved_after: after } =
    plan.make_safe?.high_voltage?.proof_of_absence ?? {};
  const denied = [
    ...(before === false ? ['the meter was not proved before it'] : []),
    ...(after === false ? ['the meter was not proved after it'] : []),
  ];
  return denied.join(', and ') || undefined;
}
