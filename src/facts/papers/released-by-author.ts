import type { Fact } from '../fact.ts';
import { computed, unknown } from '../make-fact.ts';
import { holdPointSteps } from '../step/hold-points.ts';
import { releaseSteps } from '../step/release-steps.ts';
import type { StepDraft } from '../step/step-draft.ts';
import type { Survey } from '../survey.ts';
import { ownWorkReleased } from './by-who-did-it.ts';
import { otherReleaser } from './other-releaser.ts';
import { samePerson } from './same-person.ts';

type ReleaseFact = 'plan.released_by_author' | 'plan.own_work_released';

/** The hold points and the release of the structure that the author of the plan or who did the work releases, each in one sentence: a shop of one man has many. */
export function releasedByAuthorFacts(survey: Survey): Readonly<Record<ReleaseFact, Fact>> {
  const author = survey.plan.job?.written_by?.name;
  const releases = [...holdPointSteps(survey, []), ...releaseSteps(survey, undefined)].filter(
    ({ what, step }) =>
      (what === 'hold point' || what === 'structural release') && step?.by?.name !== undefined,
  );
  const byAuthor = releases.filter(
    ({ step }) => author !== undefined && samePerson(step?.by?.name ?? '', author),
  );
  const byDoer = releases.filter(({ step, holdPoint }) => isOwnWork(survey, step?.by?.name, holdPoint?.part));
  return {
    'plan.released_by_author': told(byAuthor, 'Its author releases nothing of it, or is not named.'),
    'plan.own_work_released': told(
      byDoer,
      'Nobody releases what they made, or somebody else releases as well.',
    ),
  };
}

/** Beside a second person who releases, each is told for itself. */
function isOwnWork(survey: Survey, name: string | undefined, part: string | undefined): boolean {
  return ownWorkReleased(survey, name, part) !== undefined && otherReleaser(survey, name, part) === undefined;
}

function told(steps: readonly StepDraft[], reason: string): Fact {
  const [first] = steps;
  return first === undefined
    ? unknown(reason)
    : computed(steps.map(({ name }) => name ?? '').join('; '), `${first.at}/by`);
}
