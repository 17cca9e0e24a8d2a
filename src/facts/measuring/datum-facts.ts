import type { FactNames } from '../../generated/fact-names.ts';
import { heldAgainst } from '../../measure/decision.ts';
import { leverAt } from '../../measure/point-base.ts';
import { worstDiagonal } from './body-diagonals.ts';
import { inOnePlace, isCopied, isFromSheet } from './datum-state.ts';
import type { DatumState, Occasion } from './datum-state.ts';
import type { Fact } from '../fact.ts';
import { computed, computedOr, stated, unknown } from '../make-fact.ts';
import type { MeasuredBody } from './measured-body.ts';
import type { MeasuredPoint } from './measured-points.ts';
import { misreadSetWords } from '../misread-words.ts';

type DatumFact = Extract<
  FactNames['measurement'],
  | `measurement.datum_${string}`
  | `measurement.misread_${string}`
  | `measurement.diagonal_${string}`
  | 'measurement.uncertainty'
  | 'measurement.before_from_sheet'
  | 'measurement.after_from_sheet'
  | 'measurement.after_copied'
  | 'measurement.same_place'
>;

const pointsAt = '/measurements/points';
const zeroAt = '/measurements/zero_points';

/** What the readings as a whole say of the datum and of themselves. */
export function datumFacts(body: MeasuredBody, isReleased: boolean): Readonly<Record<DatumFact, Fact>> {
  const [before, after] = [occasionFacts(body, 'before'), occasionFacts(body, 'after')];
  const misread = misreadFacts(before.misread, after.misread, isReleased);
  const lever = farthestThrown(body);
  const diagonal = worstDiagonal(body);
  const notThrown = 'The nominal places of the zero points are not stated, or lie on one line.';
  const noPairs = 'No two pairs of left and right points are measured after the repair.';
  return {
    'measurement.datum_fault_before': before.fault,
    'measurement.datum_fault_after': after.fault,
    'measurement.datum_error_before': before.error,
    'measurement.datum_error_after': after.error,
    'measurement.datum_over_before': before.over,
    'measurement.datum_over_after': after.over,
    'measurement.datum_suspect_before': before.suspect,
    'measurement.datum_suspect_after': after.suspect,
    'measurement.misread_before': misread.before,
    'measurement.misread_after': misread.after,
    'measurement.datum_lever': computedOr(lever?.times, zeroAt, notThrown),
    'measurement.datum_lever_at': computedOr(lever?.at, zeroAt, notThrown),
    'measurement.uncertainty':
      body.uncertaintyMm === undefined
        ? unknown('The measuring uncertainty is not stated.', '/measurements/uncertainty')
        : stated(body.uncertaintyMm, '/measurements/uncertainty'),
    'measurement.before_from_sheet': computed(isFromSheet(body.points, 'before'), pointsAt),
    'measurement.after_from_sheet': computed(isFromSheet(body.points, 'after'), pointsAt),
    'measurement.after_copied': computed(isCopied(body.points), pointsAt),
    'measurement.same_place': computedOr(
      inOnePlace(body.points).slice(0, mostShown).map(namesOf).join('; ') || undefined,
      pointsAt,
      'No two points have one nominal place.',
    ),
    'measurement.diagonal_after': computedOr(diagonal?.mm, pointsAt, noPairs),
    'measurement.diagonal_between': computedOr(diagonal?.between, pointsAt, noPairs),
  };
}

/** What is so before and after the repair is so of the data sheet or of the system; at the release that is told once. */
function misreadFacts(
  before: Fact,
  after: Fact,
  isReleased: boolean,
): { readonly before: Fact; readonly after: Fact } {
  if (!isReleased || !before.known || !after.known || before.value !== after.value) return { before, after };
  return {
    before: unknown('The readings after the repair are so too, and that is told.', pointsAt),
    after: computed(`${String(after.value)}, and so are those before it`, pointsAt),
  };
}

interface OccasionFacts {
  readonly fault: Fact;
  readonly error: Fact;
  readonly over: Fact;
  readonly suspect: Fact;
  readonly misread: Fact;
}

function occasionFacts(body: MeasuredBody, occasion: Occasion): OccasionFacts {
  const state = body[occasion];
  const noFit = `No reading ${occasion} the repair can be fitted to zero points.`;
  const errorMm = state?.check?.errorMm;
  const overMm =
    errorMm === undefined || body.datumMm === undefined
      ? undefined
      : heldAgainst(errorMm, body.datumMm, undefined).overMm;
  return {
    fault: computedOr(state?.fault, zeroAt, `The zero points ${occasion} the repair can be fitted.`),
    error: computedOr(errorMm, zeroAt, noFit),
    over: computedOr(overMm, zeroAt, noFit),
    suspect: computedOr(
      overMm === undefined || overMm <= 0 ? undefined : suspectWords(state),
      zeroAt,
      `The zero points agree ${occasion} the repair, or cannot be fitted.`,
    ),
    misread: computedOr(
      state?.misread === undefined ? undefined : misreadSetWords(state.misread),
      pointsAt,
      `The readings ${occasion} the repair have the shape of a body.`,
    ),
  };
}

function suspectWords(state: DatumState | undefined): string {
  const names = state?.check?.names ?? [];
  const [only] = names;
  if (only === undefined) return 'more than one';
  return names.length === 1 ? only : `one of ${names.join(', ')}`;
}

/** Of what is many, as many are named as a sentence bears. */
const mostShown = 5;

/** The names of a group; of a long one the first few. */
function namesOf(points: readonly MeasuredPoint[]): string {
  const shown = points.slice(0, mostShown).map(({ called }) => called);
  const more = points.length - shown.length;
  return more > 0 ? `${shown.join(', ')} and ${String(more)} more` : shown.join(', ');
}

function farthestThrown({
  points,
}: MeasuredBody): { readonly times: number; readonly at: string } | undefined {
  const zero = points.filter(({ isZero }) => isZero);
  const base = zero.map(({ nominal }) => nominal).filter((place) => place !== undefined);
  if (base.length < zero.length) return undefined;
  const lever = leverAt(base);
  if (lever === undefined) return undefined;
  let farthest: { readonly times: number; readonly at: string } | undefined;
  for (const { nominal, before, after, called } of points) {
    if (nominal === undefined || (before ?? after) === undefined) continue;
    const times = lever(nominal);
    if (farthest === undefined || times > farthest.times) farthest = { times, at: called };
  }
  return farthest;
}
