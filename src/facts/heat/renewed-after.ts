import { isNotAfter } from '../step/day-order.ts';
import { isArc } from '../joint/joint-methods.ts';
import { goesOnWithoutWelding } from '../part/part-kinds.ts';
import { listOf } from '../quantity-of.ts';
import type { OperationSurvey, PartSurvey } from '../survey.ts';

/**
 * Why a part that one operation replaces is in place again when the heat of another comes, whatever their steps say; undefined where it
 * is not. The step of a section is that of its cut, and its seam may be laid days later. The days decide where they tell it: the part is
 * there for a seam that is made after one of its joints. Where they do not, a skin is closed over a new layer and not before it. Common
 * practice.
 *
 * @param renewal the operation that replaces the neighbour.
 */
export function inAgainBecause(
  { operation, part, joints }: OperationSurvey,
  neighbour: PartSurvey,
  renewal: OperationSurvey['operation'],
): string | undefined {
  const seams = joints.filter(({ joint: { method } }) => method === undefined || isArc(method));
  const heated =
    seams.length === 0 ? [operation.done] : seams.map(({ joint }) => joint.done ?? operation.done);
  const fitted = [renewal.done, ...(renewal.joints ?? []).map(({ done }) => done)].filter(
    (day) => day !== undefined,
  );
  const order = heated.flatMap((day) =>
    (fitted.length === 0 ? [undefined] : fitted).map((other) => ({
      day,
      other,
      isBefore: isNotAfter(day, other),
    })),
  );
  const after = order.find(({ isBefore }) => isBefore === false);
  if (after !== undefined) return `put in ${String(after.other)}, the heat ${String(after.day)}`;
  // What is bolted on goes on after the seam over it, too.
  const closesOver =
    seams.length > 0 && !goesOnWithoutWelding(neighbour.part.kind) && liesOver(part, neighbour);
  const isTold = order.every(({ isBefore }) => isBefore === true);
  return closesOver && !isTold ? `${part.name} is closed over the new part` : undefined;
}

function liesOver({ part }: PartSurvey, { part: under }: PartSurvey): boolean {
  const names = (list: string | readonly string[] | undefined, id: string | undefined): boolean =>
    id !== undefined && listOf(list).includes(id);
  return names(part.over, under.id) || names(under.under, part.id);
}
