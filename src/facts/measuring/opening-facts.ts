import type { FactNames } from '../../generated/fact-names.ts';
import type { Opening } from '../../generated/plan-types.ts';
import { heldAgainst } from '../../measure/decision.ts';
import { openingShape } from '../../measure/opening.ts';
import type { Corners, OpeningShape } from '../../measure/opening.ts';
import type { PointPair } from '../../measure/rigid-fit.ts';
import { noMotion } from '../../measure/rigid-motion.ts';
import { bodyTolerance } from './body-tolerance.ts';
import type { Occasion } from './datum-state.ts';
import type { Fact } from '../fact.ts';
import { computed, computedOr, stated, unknown } from '../make-fact.ts';
import type { MeasuredBody } from './measured-body.ts';
import { misreadSetWords } from '../misread-words.ts';
import { quantityOf } from '../quantity-of.ts';
import type { Survey } from '../survey.ts';
import { unreadAt } from '../unread.ts';

type Diagonals = readonly [number, number];

/** One opening: its diagonals against the data sheet or the other side, and its shape apart from where it stands. */
export function openingFacts(
  survey: Survey,
  body: MeasuredBody,
  opening: Opening,
  at: string,
): Readonly<Record<FactNames['opening'], Fact>> {
  const openings = survey.plan.measurements?.openings ?? [];
  const other =
    opening.other_side === undefined
      ? undefined
      : openings.find((one) => one !== opening && one.name === opening.other_side);
  const tolerance = bodyTolerance(body.tolerance, 'opening', opening.tolerance, at);
  const shape = shapeOf(body, opening, 'after');
  const differenceMm = differenceOf(opening, other, 'after', shape);
  const beforeMm = differenceOf(opening, other, 'before', shapeOf(body, opening, 'before'));
  const margins =
    differenceMm === undefined || tolerance.mm === undefined
      ? undefined
      : heldAgainst(differenceMm, tolerance.mm, body.uncertaintyMm);
  const misread = body.after?.misread;
  const isMisread = misread !== undefined && differenceMm === undefined && opening.corners !== undefined;
  const reason = isMisread
    ? `The readings after the repair ${misreadSetWords(misread)}.`
    : `The two diagonals of ${opening.name ?? 'an opening'} after the repair are not both stated.`;
  const unread = unreadCorner(survey, body, opening);
  const place = unread ?? at;
  const noShape = 'Its four corners are not named, or not all measured after the repair.';
  const isAfter = body.after !== undefined || openings.some((one) => one.diagonals_after !== undefined);
  const inDatum = body.after?.fit === undefined ? undefined : shape;
  return {
    'opening.name':
      opening.name === undefined
        ? computed(`opening ${String(openings.indexOf(opening) + 1)} of the list`, at)
        : stated(opening.name, at),
    'opening.difference_before': computedOr(
      beforeMm,
      `${at}/diagonals_before`,
      'Both diagonals before the repair are not stated.',
    ),
    'opening.difference_after': computedOr(differenceMm, place, reason),
    'opening.change': computedOr(
      beforeMm === undefined || differenceMm === undefined ? undefined : differenceMm - beforeMm,
      place,
      'The diagonals before or after the repair are not stated.',
    ),
    'opening.dropped': computed(
      isAfter && !isMisread && unread === undefined && beforeMm !== undefined && differenceMm === undefined,
      at,
    ),
    'opening.tolerance': tolerance.fact,
    'opening.tolerance_own_word': computed(tolerance.isOwnWord, `${at}/tolerance`),
    'opening.over_tolerance': computedOr(margins?.overMm, place, reason),
    'opening.over_with_uncertainty':
      body.uncertaintyMm === undefined
        ? unknown('The measuring uncertainty is not stated.', '/measurements/uncertainty')
        : computedOr(margins?.overWithUncertaintyMm, place, reason),
    'opening.over_usual': computedOr(
      differenceMm === undefined || tolerance.usualMm === undefined
        ? undefined
        : heldAgainst(differenceMm, tolerance.usualMm, undefined).overMm,
      place,
      reason,
    ),
    'opening.corner_twice': computed(
      opening.corners !== undefined && new Set(opening.corners).size < opening.corners.length,
      `${at}/corners`,
    ),
    'opening.deformation_after': computedOr(shape?.deformationMm, `${at}/corners`, noShape),
    'opening.over_deformation': computedOr(
      shape === undefined || tolerance.mm === undefined
        ? undefined
        : heldAgainst(shape.deformationMm, tolerance.mm, undefined).overMm,
      `${at}/corners`,
      noShape,
    ),
    'opening.turned_after': computedOr(inDatum?.turnedDegrees, `${at}/corners`, noShape),
    'opening.carried_after': computedOr(inDatum?.carriedMm, `${at}/corners`, noShape),
  };
}

/** Where a corner that was read after the repair cannot be reckoned with. */
function unreadCorner(survey: Survey, body: MeasuredBody, { corners }: Opening): string | undefined {
  const places = (corners ?? []).flatMap((name) => {
    const point = body.points.find(({ written }) => written.name === name);
    return point === undefined ? [] : [`${point.at}/nominal`, `${point.at}/after`];
  });
  return places.map((one) => unreadAt(survey, one)).find((one) => one !== undefined);
}

function shapeOf(body: MeasuredBody, { corners }: Opening, occasion: Occasion): OpeningShape | undefined {
  const state = body[occasion];
  if (corners?.length !== 4 || state === undefined || state.misread !== undefined) return undefined;
  const [a, b, c, d] = corners.map((name): PointPair | undefined => {
    const point = body.points.find(({ written }) => written.name === name);
    const nominal = point?.nominal;
    const measured = point === undefined ? undefined : state.reading(point);
    return nominal === undefined || measured === undefined ? undefined : { nominal, measured };
  });
  if (a === undefined || b === undefined || c === undefined || d === undefined) return undefined;
  const pairs: Corners = [a, b, c, d];
  return openingShape(pairs, state.fit?.motion ?? noMotion);
}

/** Of stated diagonals and of corners whose places were read, what is farther off: a tape that says less does not lift the points. */
function differenceOf(
  opening: Opening,
  other: Opening | undefined,
  occasion: Occasion,
  shape: OpeningShape | undefined,
): number | undefined {
  const read = diagonals(occasion === 'before' ? opening.diagonals_before : opening.diagonals_after);
  const by = [
    ...(read === undefined ? [] : [statedDifference(read, opening, other, occasion)]),
    ...(shape === undefined ? [] : [Math.max(...shape.diagonalsMm.map(Math.abs))]),
  ].filter((mm) => mm !== undefined);
  return by.length === 0 ? undefined : Math.max(...by);
}

function statedDifference(
  read: Diagonals,
  { nominal, other_side: otherSide }: Opening,
  other: Opening | undefined,
  occasion: Occasion,
): number | undefined {
  const against =
    diagonals(nominal) ??
    (other === undefined
      ? undefined
      : (diagonals(other.nominal) ??
        diagonals(occasion === 'before' ? other.diagonals_before : other.diagonals_after)));
  // Of an opening that is named as one of two sides its own diagonals are not alike.
  if (against === undefined) return otherSide === undefined ? Math.abs(read[0] - read[1]) : undefined;
  return Math.max(Math.abs(read[0] - against[0]), Math.abs(read[1] - against[1]));
}

function diagonals(written: readonly string[] | undefined): Diagonals | undefined {
  const [first, second] = (written ?? []).map((text) => quantityOf(text, 'length'));
  return first === undefined || second === undefined ? undefined : [first, second];
}
