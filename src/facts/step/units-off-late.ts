import type { OperationSurvey, Survey } from '../survey.ts';

/**
 * A live unit that comes off only after the first hot work on the vehicle, and of which nobody says at which part it sits: as
 * `Side airbag at step 25, after the heat on Sill at step 20`. One with its place is judged there.
 */
export function comesOffAfter(survey: Survey): { readonly text: string; readonly at: string } | undefined {
  const units = (survey.plan.make_safe?.restraints?.units ?? []).map((unit, index) => ({ unit, index }));
  const late = units.filter(
    ({ unit: { at, state, step, treatment } }) =>
      at === undefined && state !== 'deployed' && step !== undefined && isTakenOff(treatment),
  );
  if (late.length === 0) return undefined;
  const hot = firstHot(survey);
  const found = late.find(({ unit }) => hot !== undefined && (unit.step ?? 0) > hot.step);
  if (found === undefined || hot === undefined) return undefined;
  const { unit, index } = found;
  const name = unit.name ?? unit.unit ?? 'A unit without a name';
  return {
    text: `${name} at step ${String(unit.step)}, after the hot work on ${hot.one.part.name} at step ${String(hot.step)}`,
    at: `/make_safe/restraints/units/${String(index)}`,
  };
}

function isTakenOff(treatment: string | undefined): boolean {
  return treatment === 'removed' || treatment === 'replaced';
}

function firstHot({
  operations,
}: Survey): { readonly one: OperationSurvey; readonly step: number } | undefined {
  const hot = operations.flatMap((one) =>
    one.hot === true && !one.offVehicle && one.operation.step !== undefined
      ? [{ one, step: one.operation.step }]
      : [],
  );
  return hot.toSorted((a, b) => a.step - b.step)[0];
}
