import type { Person } from '../../generated/plan-types.ts';
import { samePerson } from '../papers/same-person.ts';
import { ranOutOn, unqualifiedWords } from '../papers/qualified-for.ts';
import { formatDay } from '../../quantity/format-day.ts';
import type { StepDraft } from './step-draft.ts';
import type { Survey } from '../survey.ts';

const steps: ReadonlySet<string> = new Set([
  'high-voltage isolation',
  'absence of voltage proved',
  'high-voltage re-commissioning',
]);

/** Whether a step is work on the traction voltage, for which a qualification must name it. */
export function isHighVoltageStep({ what }: StepDraft): boolean {
  return steps.has(what);
}

/** Who does such a step and is not shown to be qualified for it, in words. Who isolates is told there, and not again at the proof. */
export function unqualifiedAtVoltage(survey: Survey, draft: StepDraft): string | undefined {
  const person = askedHere(survey, draft);
  return person === undefined ? undefined : unqualifiedAt(survey, person, draft.step?.done);
}

/** Whose qualification for such a step had run out by the day of the work, since when, and that day; undefined where it holds. */
export function expiredAtVoltage(survey: Survey, draft: StepDraft): string | undefined {
  const person = askedHere(survey, draft);
  if (person === undefined) return undefined;
  const day = draft.step?.done?.slice(0, 10) ?? formatDay(survey.context.asOfDay);
  const until = ranOutOn(completed(survey, person), day);
  const when = draft.step?.done === undefined ? 'the plan is judged as of' : 'the work is of';
  return until === undefined ? undefined : `${person.name ?? ''}, since ${until}; ${when} ${day}`;
}

function askedHere(survey: Survey, draft: StepDraft): Person | undefined {
  const person = draft.person ?? draft.step?.by;
  if (person?.name === undefined || !isHighVoltageStep(draft)) return undefined;
  const high = survey.plan.make_safe?.high_voltage;
  const isolates = high?.isolation?.by ?? high?.person;
  if (draft.what === 'absence of voltage proved' && samePerson(person.name, isolates?.name ?? '')) {
    return undefined;
  }
  return person;
}

/** The same of anybody at the traction battery. By the day of the work, or the day that the plan is judged as of. */
export function unqualifiedAt(survey: Survey, person: Person, done: string | undefined): string | undefined {
  const day = done ?? formatDay(survey.context.asOfDay);
  return unqualifiedWords('high voltage', completed(survey, person), day);
}

/** Named by name alone, a person has the qualification that the plan states once for all work on the voltage. */
function completed({ plan }: Survey, person: Person): Person {
  const named = plan.make_safe?.high_voltage?.person;
  const isSame = named !== undefined && samePerson(named.name ?? '', person.name ?? '');
  return isSame ? { ...named, ...person } : person;
}
