import type { Fact } from '../fact.ts';
import { computedOr } from '../make-fact.ts';
import type { OperationSurvey, ReferenceSurvey } from '../survey.ts';

/** The first document on which an operation rests, where the title of each is off. One that may be right is enough. */
export function titleThatIsOff(
  { citations, at }: OperationSurvey,
  isOff: (reference: ReferenceSurvey) => boolean,
): Fact {
  const areOff = citations.every(({ reference }) => reference !== undefined && isOff(reference));
  const first = areOff ? citations[0] : undefined;
  return computedOr(
    first?.reference === undefined
      ? undefined
      : `${first.reference.name}, "${first.reference.reference.title ?? ''}"`,
    first?.at ?? `${at}/cite`,
    'Nothing is cited, or a title that may be right.',
  );
}
