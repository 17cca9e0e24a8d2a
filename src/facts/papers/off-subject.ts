import type { FactNames } from '../../generated/fact-names.ts';
import type { Fact } from '../fact.ts';
import { computedOr } from '../make-fact.ts';
import { isWeldedIn } from '../part/part-kinds.ts';
import { sideOfWords } from '../part/side-named.ts';
import type { CitationSurvey, OperationSurvey } from '../survey.ts';

/** Words of titles. English alone is read; a title that says neither is for a person to read. */
const otherSubjects =
  /restraint|airbag|seat ?belt|high.?voltage|traction battery|driver assist|radar|camera|calibrat|alignment|suspension|\bbrakes?\b|air.?condition|paint|refinish|diagnos|tail ?gate|boot lid|bonnet|bumper cover|windscreen|\bglass|\blamps?\b|\btrim\b/iu;
const bodyWork =
  /rail|sill|rocker|pillar|\bposts?\b|\bring\b|roof|floor|tunnel|panel|quarter|apron|wheel ?(?:house|arch)|tower|bulkhead|cross ?member|beam|body|structur|frame|weld|join|sectioning|bond|rivet|skin|side|shell|straighten|corro/iu;

/**
 * The document on which work at the body rests, where its title names another trade's subject and none of the body's, or the other side of
 * the vehicle. One citation that may be right is enough.
 */
export function citedOffSubject({
  operation,
  citations,
  part,
  works,
  at,
}: OperationSurvey): Readonly<Record<Extract<FactNames['operation'], 'operation.cited_off_subject'>, Fact>> {
  const isAsked = works === true && isWeldedIn(part.part.kind) && operation.do !== 'remove and refit';
  const off =
    isAsked && citations.every((citation) => isOff(citation, part.part.side)) ? citations[0] : undefined;
  return {
    'operation.cited_off_subject': computedOr(
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
  if (said !== undefined && (side === 'left' || side === 'right') && said !== side) return true;
  return otherSubjects.test(title) && !bodyWork.test(title);
}
