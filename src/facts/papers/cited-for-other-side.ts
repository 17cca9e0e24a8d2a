import type { FactNames } from '../../generated/fact-names.ts';
import type { Fact } from '../fact.ts';
import { isWeldedIn } from '../part/part-kinds.ts';
import { sideOfWords } from '../part/side-named.ts';
import type { OperationSurvey, ReferenceSurvey } from '../survey.ts';
import { titleThatIsOff } from './title-that-is-off.ts';

/** The document on which work at the body rests, where its title names the other side of the vehicle. */
export function citedForOtherSide(
  one: OperationSurvey,
): Readonly<Record<Extract<FactNames['operation'], 'operation.cited_for_other_side'>, Fact>> {
  const { operation, part, works } = one;
  const isAsked = works === true && isWeldedIn(part.part.kind) && operation.do !== 'remove and refit';
  return {
    'operation.cited_for_other_side': titleThatIsOff(
      one,
      (reference) => isAsked && isTitledForOtherSide(reference, part.part.side),
    ),
  };
}

function isTitledForOtherSide(
  { reference: { title } }: ReferenceSurvey,
  side: OperationSurvey['part']['part']['side'],
): boolean {
  if (title === undefined) return false;
  const said = sideOfWords(title);
  return said !== undefined && (side === 'left' || side === 'right') && said !== side;
}
