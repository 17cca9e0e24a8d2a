import type { Fact } from '../fact.ts';
import { computedOr } from '../make-fact.ts';
import type { MeasuredBody } from './measured-body.ts';
import type { MeasuredPoint } from './measured-points.ts';
import type { Survey } from '../survey.ts';

/** Nearer to the middle than this a point tells no side, mm. */
const leastOffMiddleMm = 30;
/** The same where the middle is only estimated: rails lie nearer to it than sills, and sheets choose as they like. */
const leastOffEstimateMm = 150;
/** Middles of pairs that differ by more are of no one plane, mm. */
const mostUnlikeMiddlesMm = 5;

interface Sided {
  readonly point: MeasuredPoint;
  readonly side: 'left' | 'right';
  readonly y: number;
}

/**
 * Points whose part says its side, and which lie among those of the other one. Which way y counts, and from where, every sheet says for
 * itself: the middle is that of the points that are each other's other side, or else between what is called left and right.
 */
export function wrongSideFact(survey: Survey, body: MeasuredBody): Fact {
  const at = '/measurements/points';
  const reason =
    'Every point lies on the side of its part, or where the middle of the vehicle lies cannot be told.';
  const sided = body.points.flatMap((point): readonly Sided[] => {
    const side = survey.partById.get(point.written.on ?? '')?.part.side;
    const y = point.nominal?.[1];
    return (side === 'left' || side === 'right') && y !== undefined ? [{ point, side, y }] : [];
  });
  if (sided.length < 2) return computedOr(undefined, at, reason);
  const paired = middleOfPairs(body);
  const middle = paired ?? middleBetween(sided);
  if (middle === undefined) return computedOr(undefined, at, reason);
  const least = paired === undefined ? leastOffEstimateMm : leastOffMiddleMm;
  const off = sided.filter(({ y }) => Math.abs(y - middle) > least);
  // By each of two ways of counting y, the points that contradict it; the way that most points follow is that of the sheet.
  const leftAbove = off.filter(({ side, y }) => (side === 'left') !== y > middle);
  const leftBelow = off.filter(({ side, y }) => (side === 'left') !== y < middle);
  const wrong = leftAbove.length < leftBelow.length ? leftAbove : leftBelow;
  const right = off.filter((one) => !wrong.includes(one));
  const text =
    wrong.length === 0
      ? undefined
      : `${listed(survey, wrong)}, across the middle from ${partsOf(survey, right)}`;
  return computedOr(text, `${wrong[0]?.point.at ?? at}/nominal`, reason);
}

/** Where the middle plane lies by the points that have their other side in the list; undefined where none has, or they disagree. */
function middleOfPairs({ otherSide }: MeasuredBody): number | undefined {
  const middles = [...otherSide].flatMap(([{ nominal: one }, { nominal: other }]) =>
    one === undefined || other === undefined ? [] : [(one[1] + other[1]) / 2],
  );
  const [lowest, highest] = [Math.min(...middles), Math.max(...middles)];
  return middles.length > 0 && highest - lowest <= mostUnlikeMiddlesMm ? (lowest + highest) / 2 : undefined;
}

function middleBetween(sided: readonly Sided[]): number | undefined {
  const [left, right] = (['left', 'right'] as const).map((side) =>
    median(sided.filter((one) => one.side === side).map(({ y }) => y)),
  );
  return left === undefined || right === undefined ? undefined : (left + right) / 2;
}

function median(values: readonly number[]): number | undefined {
  return values.toSorted((one, other) => one - other)[Math.floor(values.length / 2)];
}

function partsOf({ partById }: Survey, points: readonly Sided[]): string {
  const names = points.map(({ point }) => partById.get(point.written.on ?? '')?.name ?? 'a part');
  return `those on ${[...new Set(names)].join(' and ')}`;
}

function listed({ partById }: Survey, points: readonly Sided[]): string {
  return points
    .map(({ point, y }) => {
      const name = partById.get(point.written.on ?? '')?.name ?? 'a part';
      return `${point.called} on ${name} (y ${String(y)} mm)`;
    })
    .join(', ');
}
