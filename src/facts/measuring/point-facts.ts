import type { FactNames } from '../../generated/fact-names.ts';
import { heldAgainst } from '../../measure/decision.ts';
import { asymmetry } from '../../measure/left-right.ts';
import { largestAxisMm } from '../../measure/place.ts';
import type { Place } from '../../measure/place.ts';
import type { DatumState, Occasion } from './datum-state.ts';
import { isExcuse, isExcusedAlthoughOff } from './dropped-point.ts';
import type { Fact } from '../fact.ts';
import { computed, computedOr, stated, statedOr, unknown } from '../make-fact.ts';
import type { MeasuredBody } from './measured-body.ts';
import type { MeasuredPoint } from './measured-points.ts';
import { misreadPointWords, misreadSetWords } from '../misread-words.ts';
import { damageKinds } from '../part/part-damage-facts.ts';
import type { Survey } from '../survey.ts';
import { unreadAt } from '../unread.ts';

/** One point: how far it is off before and after the repair, by axis, against its tolerance and against its other side. */
export function pointFacts(
  survey: Survey,
  body: MeasuredBody,
  point: MeasuredPoint,
): Readonly<Record<FactNames['point'], Fact>> {
  const { written, at, isZero } = point;
  const [before, after] = [deviated(body, point, 'before'), deviated(body, point, 'after')];
  const tolerance = body.toleranceOf(point);
  const part = written.on === undefined ? undefined : survey.partById.get(written.on)?.part;
  const other = body.otherSide.get(point);
  const margins = (mm: number): ReturnType<typeof heldAgainst> | undefined =>
    tolerance.mm === undefined ? undefined : heldAgainst(mm, tolerance.mm, body.uncertaintyMm);
  return {
    'point.name': written.name === undefined ? computed(point.called, at) : stated(written.name, at),
    'point.zero': computed(isZero, at),
    'point.deviation_before': before.fact((way) => largestAxisMm(way)),
    'point.axes_before': before.fact(axisWords),
    'point.over_before': before.fact((way) =>
      tolerance.provenMm === undefined
        ? undefined
        : heldAgainst(largestAxisMm(way), tolerance.provenMm, undefined).overMm,
    ),
    'point.misread_before': misreadFact(body.before, point, `${at}/before`),
    'point.deviation_after': after.fact((way) => largestAxisMm(way)),
    'point.axes_after': after.fact(axisWords),
    'point.tolerance': tolerance.fact,
    'point.tolerance_stated': computed(tolerance.isStated, `${at}/tolerance`),
    'point.tolerance_own_word': computed(tolerance.isOwnWord, `${at}/tolerance`),
    'point.over_tolerance': after.fact((way) => margins(largestAxisMm(way))?.overMm),
    'point.over_with_uncertainty':
      body.uncertaintyMm === undefined
        ? unknown('The measuring uncertainty is not stated.', '/measurements/uncertainty')
        : after.fact((way) => margins(largestAxisMm(way))?.overWithUncertaintyMm),
    'point.over_usual': after.fact((way) =>
      tolerance.usualMm === undefined
        ? undefined
        : heldAgainst(largestAxisMm(way), tolerance.usualMm, undefined).overMm,
    ),
    'point.misread_after': misreadFact(body.after, point, `${at}/after`),
    'point.change': computedOr(
      before.way === undefined || after.way === undefined
        ? undefined
        : largestAxisMm(after.way) - largestAxisMm(before.way),
      `${at}/after`,
      'Its deviation before or after the repair is not known.',
    ),
    'point.excused': computed(
      isExcused(survey, body, point, before.way === undefined ? undefined : largestAxisMm(before.way)),
      `${at}/dropped_because`,
    ),
    'point.dropped': computed(isDropped(survey, body, point), at),
    'point.part_sound': computed(isSaidSound(survey, written.on), `${at}/on`),
    'point.part_name': computedOr(
      survey.partById.get(written.on ?? '')?.name,
      `${at}/on`,
      'On which part it lies is not stated.',
    ),
    'point.part_kind': statedOr(part?.kind, `${at}/on`, 'On what kind of part it lies is not stated.'),
    'point.other_side': computedOr(other?.called, `${at}/other_side`, 'It has no other side.'),
    'point.asymmetry_after': computedOr(
      isLaterSide(point, other) ? asymmetryMm(after.way, body.after?.deviation(other)) : undefined,
      `${at}/after`,
      'It has no other side, the other stands later in the plan, or a deviation after the repair is not known.',
    ),
  };
}

/** The one that was off is the one that must be measured again: of it more is asked than of one that kept its tolerance. */
function isExcused(
  survey: Survey,
  body: MeasuredBody,
  point: MeasuredPoint,
  offMm: number | undefined,
): boolean {
  const { dropped_because: because, after } = point.written;
  const { provenMm } = body.toleranceOf(point);
  if (because === undefined || after !== undefined || offMm === undefined || provenMm === undefined)
    return false;
  return offMm <= provenMm
    ? isExcuse(because, point, body.points)
    : isExcusedAlthoughOff(survey, because, point, body.points);
}

/** Measured before the repair and not after it, while others were, and nobody says why. */
function isDropped(survey: Survey, { after }: MeasuredBody, { written, at }: MeasuredPoint): boolean {
  return (
    after !== undefined &&
    written.before !== undefined &&
    written.after === undefined &&
    written.dropped_because === undefined &&
    unreadAt(survey, `${at}/after`) === undefined
  );
}

/** The part has no damage by its own statement, and nothing is done to it that could bring it back. */
function isSaidSound({ partById }: Survey, on: string | undefined): boolean {
  const part = partById.get(on ?? '');
  if (part === undefined) return false;
  const kinds = damageKinds(part.part);
  const isWorked = part.operations.some(
    ({ works, operation }) => works !== false && operation.do !== 'leave',
  );
  return kinds.length > 0 && kinds.every((kind) => kind === 'none') && !isWorked;
}

interface Deviated {
  readonly way: Place | undefined;
  /** A fact made of the deviation, unknown with it. */
  readonly fact: (make: (way: Place) => number | string | undefined) => Fact;
}

function deviated(body: MeasuredBody, point: MeasuredPoint, occasion: Occasion): Deviated {
  const state = body[occasion];
  const way = state?.deviation(point);
  const at = `${point.at}/${occasion}`;
  const why =
    state?.misread === undefined
      ? notMeasured(body, point, occasion)
      : `The readings ${occasion} the repair ${misreadSetWords(state.misread)}.`;
  const missing = point.nominal === undefined ? `${point.at}/nominal` : at;
  const placeOfWhy = state?.misread === undefined ? missing : '/measurements/points';
  const note = state?.fit === undefined ? asWritten : fittedTo(state);
  return {
    way,
    fact: (make) => {
      const value = way === undefined ? undefined : make(way);
      return value === undefined ? unknown(why, placeOfWhy) : computed(value, at, note);
    },
  };
}

function notMeasured(body: MeasuredBody, point: MeasuredPoint, occasion: Occasion): string {
  const { called, nominal, written } = point;
  if (nominal === undefined) return `The nominal value of point ${called} is not stated.`;
  const text = `Point ${called} has no value ${occasion} the repair`;
  if (occasion !== 'after' || written.dropped_because === undefined) return `${text}.`;
  const way = body.before?.deviation(point);
  const { provenMm } = body.toleranceOf(point);
  if (way === undefined)
    return `${text}. It is dropped with a reason, and that it was right before cannot be told.`;
  return provenMm !== undefined && largestAxisMm(way) <= provenMm
    ? `${text}. Its reason, “${written.dropped_because}”, names neither a point that was measured in its place nor what hides it.`
    : `${text}. It is dropped with a reason, and was out of tolerance before: such a point is measured again, before a skin hides it, or one on the same part in its place.`;
}

const asWritten = 'As written: the zero points carry no fit.';

function fittedTo({ zero }: DatumState): string {
  return `After the least-squares fit of the readings to the data sheet on ${zero.map(({ called }) => called).join(', ')}.`;
}

/** `x +0.8, y +13.8, z 0.0 mm`, to a tenth, as workshops read it. */
function axisWords([x, y, z]: Place): string {
  const signed = (mm: number): string => {
    const text = mm.toFixed(1);
    return Number(text) === 0 ? '0.0' : mm > 0 ? `+${text}` : text;
  };
  return `x ${signed(x)}, y ${signed(y)}, z ${signed(z)} mm`;
}

function misreadFact(state: DatumState | undefined, point: MeasuredPoint, at: string): Fact {
  const slip = state?.misreadPoints.get(point);
  return computedOr(
    slip === undefined ? undefined : misreadPointWords(slip),
    at,
    'No common slip explains the reading.',
  );
}

/** What differs between two sides is told once, at the later one. */
function isLaterSide(point: MeasuredPoint, other: MeasuredPoint | undefined): other is MeasuredPoint {
  return other !== undefined && other.index < point.index;
}

function asymmetryMm(one: Place | undefined, other: Place | undefined): number | undefined {
  return one === undefined || other === undefined ? undefined : largestAxisMm(asymmetry(one, other));
}
