import { diagonalDifferenceMm } from '../../measure/left-right.ts';
import type { Place } from '../../measure/place.ts';
import type { DatumState } from './datum-state.ts';
import type { MeasuredBody } from './measured-body.ts';
import type { MeasuredPoint } from './measured-points.ts';

/**
 * The two diagonals across the body, between any two pairs of left and right points, that differ most from what the data sheet has: no
 * datum enters. Undefined when fewer than two pairs are measured after the repair.
 */
export function worstDiagonal({
  points,
  otherSide,
  after,
}: MeasuredBody): { readonly mm: number; readonly between: string } | undefined {
  if (after === undefined || after.misread !== undefined) return undefined;
  const { reading } = after;
  const sides = points.flatMap((one) => {
    const other = otherSide.get(one);
    return other === undefined || other.index < one.index ? [] : readPair(one, other, reading);
  });
  let worst: { readonly mm: number; readonly between: string } | undefined;
  for (const [index, near] of sides.entries()) {
    for (const far of sides.slice(index + 1)) {
      // Left of the one pair is left of the other where both lie so in the data sheet.
      const [farOne, farOther] = isSameSide(near, far) ? [far.one, far.other] : [far.other, far.one];
      const crossed = (which: 'nominal' | 'after'): number =>
        diagonalDifferenceMm({
          one: near.one[which],
          other: near.other[which],
          farOne: farOne[which],
          farOther: farOther[which],
        });
      const mm = Math.abs(crossed('after') - crossed('nominal'));
      if (worst === undefined || mm > worst.mm) {
        worst = {
          mm,
          between: `${near.one.called}–${farOther.called} and ${near.other.called}–${farOne.called}`,
        };
      }
    }
  }
  return worst;
}

interface ReadEnd {
  readonly called: string;
  readonly nominal: Place;
  readonly after: Place;
}

interface ReadPair {
  readonly one: ReadEnd;
  readonly other: ReadEnd;
}

function readPair(
  one: MeasuredPoint,
  other: MeasuredPoint,
  reading: DatumState['reading'],
): readonly ReadPair[] {
  const [left, right] = [readEnd(one, reading(one)), readEnd(other, reading(other))];
  return left === undefined || right === undefined ? [] : [{ one: left, other: right }];
}

function readEnd({ called, nominal }: MeasuredPoint, after: Place | undefined): ReadEnd | undefined {
  return nominal === undefined || after === undefined ? undefined : { called, nominal, after };
}

function isSameSide(near: ReadPair, far: ReadPair): boolean {
  return near.one.nominal[1] < near.other.nominal[1] === far.one.nominal[1] < far.other.nominal[1];
}
