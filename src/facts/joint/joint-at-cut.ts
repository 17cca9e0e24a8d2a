import { sameName } from '../../vehicle/same-name.ts';
import type { Fact } from '../fact.ts';
import { computed, computedOr } from '../make-fact.ts';
import { isPieceOfRing } from '../part/called-kind.ts';
import { isOnePiece } from '../part/part-kinds.ts';
import type { JointSurvey, OperationSurvey, PartSurvey, Survey } from '../survey.ts';
import { wordsIn } from '../words-in.ts';

type Joint = JointSurvey['joint'];
type AtCutFact = 'joint.at_cut' | 'joint.elsewhere_than_cut';

/** The parts that a joint names, its own first. Undefined for an id that no part bears. */
export function partsJoined(
  survey: Survey,
  own: PartSurvey,
  { sheets = [], to }: Joint,
): readonly (PartSurvey | undefined)[] {
  // The part itself as the operation sees it: of the zone that is cut.
  const named = [...sheets, ...(to === undefined ? [] : [to])].map((id) =>
    id === own.part.id ? own : survey.partById.get(id),
  );
  return [...new Set([own, ...named])];
}

/** The new piece to the rest of the same part. It has to be said: a joint that names nothing may join anything. */
export function isToRestOfItself({ form, to, sheets }: Joint, operation: OperationSurvey): boolean {
  const own = operation.part.part.id;
  if (own === undefined) return false;
  const isButt = form === 'open butt' || form === 'butt with insert';
  if (isButt && sheets?.includes(own) === true) return true;
  return to === own && (isButt || operation.cutsPartWay === true);
}

/** Another part of the same kind and side, or another piece of a ring, of which one is made in one piece. */
export function isRestOfOnePiece(own: PartSurvey, sheet: PartSurvey | undefined): boolean {
  return isLikePiece(own, sheet) && (isOnePiece(own.part) || (sheet !== undefined && isOnePiece(sheet.part)));
}

/** Another part of the same kind and side, or another piece of the same ring. */
export function isLikePiece(own: PartSurvey, sheet: PartSurvey | undefined): boolean {
  if (sheet === undefined || sheet.at === own.at) return false;
  const [one, other] = [own.part, sheet.part];
  const isLike = one.kind !== undefined && one.kind === other.kind && one.side === other.side;
  const sidesFit = one.side === undefined || other.side === undefined || one.side === other.side;
  const isRing = sidesFit && isPieceOfRing(one) && isPieceOfRing(other);
  return isLike || isRing;
}

/** Whether a joint lies at the cut of its operation, and where the seam of the cut is drawn if it is somewhere else. */
export function atCutFacts(
  { joint, at }: JointSurvey,
  operation: OperationSurvey,
  stack: readonly (PartSurvey | undefined)[],
): Readonly<Record<AtCutFact, Fact>> {
  const isSeam = isSeamOfCut(joint, operation, stack);
  const isHere = isAtPlace(joint, operation);
  return {
    'joint.at_cut': computed(isHere ?? isSeam, `${at}/place`),
    'joint.elsewhere_than_cut': computedOr(
      operation.cutsPartWay === true && isSeam && isHere === false ? joint.place : undefined,
      `${at}/place`,
      'The joint is no seam of the cut, a place is left out, or they are the same.',
    ),
  };
}

/**
 * Whether a piece is cut out at a stated place and no joint of its operation lies there or is a seam of the cut. A piece that ends at a
 * seam of the factory is not cut.
 */
export function isCutUnjoined(survey: Survey, one: OperationSurvey): boolean {
  const { operation, joints, part, cutsPartWay } = one;
  if (cutsPartWay !== true || operation.at === undefined || joints.length === 0) return false;
  if (/\bfactory\b|\bseam\b/i.test(operation.at)) return false;
  return !joints.some(
    ({ joint }) =>
      isAtPlace(joint, one) === true || isSeamOfCut(joint, one, partsJoined(survey, part, joint)),
  );
}

/** By the places alone; undefined where one of them is left out. */
function isAtPlace({ place }: Joint, { operation: { at } }: OperationSurvey): boolean | undefined {
  if (place === undefined || at === undefined) return undefined;
  return sameName(place, at) || namesWhole(at, place) || namesWhole(place, at);
}

/** `K1` in "K1, below the belt" or "K1 and K2"; not in "K12". */
function namesWhole(text: string, name: string): boolean {
  const words = (one: string): string => ` ${wordsIn(one).join(' ')} `;
  return words(name).trim() !== '' && words(text).includes(words(name));
}

/** The seam of the cut; the flanges that the piece has besides are no part of it. */
function isSeamOfCut(
  joint: Joint,
  operation: OperationSurvey,
  stack: readonly (PartSurvey | undefined)[],
): boolean {
  const { form } = joint;
  if (form === 'open butt' || form === 'butt with insert') return true;
  const isToItself = isToRestOfItself(joint, operation);
  return form === 'lap' && (isToItself || stack.some((sheet) => isLikePiece(operation.part, sheet)));
}
