import type { Fact } from './fact.ts';
import { computedOr } from './make-fact.ts';
import type { OperationSurvey } from './survey.ts';

/** Words that move a cut away from the mark that is named. A mark itself may lie above or below something. */
const moves = /\b(?:nearer|closer|(?<!no )(?:further|farther)|plus|minus|instead of)\b|[+−]\s*\d/i;
/** A measure from the line itself; a line that lies so far from a feature of the body is the mark. */
const offLine =
  /\d\s*(?:mm|cm|in(?:ch(?:es)?)?|["”″])\s+(?:ahead of|in front of|forward of|behind|rearward of|above|below|beyond|past|short of|inboard of|outboard of|beside|before|after|off|from) (?:the )?(?:cut(?:ting)?|saw|drawn|section) (?:line|mark)\b/iu;
/** A name of a zone has no size. */
const measures = /\d\s*(?:mm|cm|in(?:ch(?:es)?)?|["”″])(?![\p{L}\d])/iu;

/**
 * Where a cut is stated to lie off the mark that the page draws, in words. What is drawn is drawn for one place; a `zone` that is no zone
 * of the part and tells a place by its measure is read as one.
 */
export function cutShifted({
  operation,
  at,
  part,
  cutsPartWay,
}: OperationSurvey): Readonly<Record<'operation.cut_shifted', Fact>> {
  const { zone } = operation;
  const isListed = part.part.zones?.some(({ name }) => name === zone) === true;
  const inZone =
    zone !== undefined && !isListed && (moves.test(zone) || measures.test(zone)) ? zone : undefined;
  const { at: place } = operation;
  const inPlace = place !== undefined && (moves.test(place) || offLine.test(place)) ? place : undefined;
  return {
    'operation.cut_shifted': computedOr(
      cutsPartWay === true ? (inPlace ?? inZone) : undefined,
      inPlace === undefined ? `${at}/zone` : `${at}/at`,
      'Nothing is cut part-way, or nothing says that the cut lies beside its mark.',
    ),
  };
}
