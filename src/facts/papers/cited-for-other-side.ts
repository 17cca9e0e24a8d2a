import type { FactNames } from '../../generated/fact-names.ts';
import type { Fact } from '../fact.ts';
import { computedOr } from '../make-fact.ts';
import { isWeldedIn } from '../part/part-kinds.ts';
import { sideOfWords } from '../part/side-named.ts';
import type { CitationSurvey, OperationSurvey } from '../survey.ts';

/** The document on which work at the body rests, where its title names the other side of the vehicle. One that may be right is enough. */
export function citedForOtherSide({
  operation,
  citations,
  part,
  works,
  at,
}: OperationSurvey): Readonly<
  Record<Extract<FactNames['operation'], 'operation.cited_for_other_side'>, Fact>
> {
  const isAsked = works === true && isWeldedIn(part.part.kind) && operation.do !== 'remove and refit';
  const off =
    isAsked && citations.every((citation) => isOff(citation, part.part.side)) ? citations[0] : undefined;
  return {
    'operation.cited_for_other_side': computedOr(
      off?.reference === undefined
        ? undefined
        : `${off.reference.name}, "${off.reference.reference.title ?? ''}"`,
      off?.at ?? `${at}/cite`,
      'Nothing is cited, or a title that may be right.',
    ),
  };
}

function isOff({ reference }: CitationSurvey, side: OperationSurvey['part']['part']['side']): boolean {
  const title = reference?.reference.title;
  if (title === undefined) return false;
  const said = sideOfWords(title);
  return said !== undefined && (side === 'left' || side === 'right') && said !== side;
}
