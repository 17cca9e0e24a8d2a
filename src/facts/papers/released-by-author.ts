import type { Fact } from '../fact.ts';
import { computed, unknown } from '../make-fact.ts';
import { holdPointSteps } from '../step/hold-points.ts';
import { releaseSteps } from '../step/release-steps.ts';
import type { Survey } from '../survey.ts';
import { samePerson } from './same-person.ts';

/** The hold points and the release of the structure that the author of the plan releases, in one sentence: a shop of one man has many. */
export function releasedByAuthorFacts(survey: Survey): Readonly<Record<'plan.released_by_author', Fact>> {
  const author = survey.plan.job?.written_by?.name;
  const own =
    author === undefined
      ? []
      : [...holdPointSteps(survey, []), ...releaseSteps(survey, undefined)].filter(
          ({ what, step }) =>
            (what === 'hold point' || what === 'structural release') &&
            step?.by?.name !== undefined &&
            samePerson(step.by.name, author),
        );
  const [first] = own;
  return {
    'plan.released_by_author':
      first === undefined
        ? unknown('Its author releases nothing of it, or is not named.')
        : computed(own.map(({ name }) => name ?? '').join('; '), `${first.at}/by`),
  };
}
