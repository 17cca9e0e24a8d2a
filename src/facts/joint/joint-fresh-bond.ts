import type { Fact } from '../fact.ts';
import { computedOr } from '../make-fact.ts';
import { quantityOf, whenOf } from '../quantity-of.ts';
import { isNotAfter } from '../step/day-order.ts';
import type { JointSurvey, OperationSurvey, Survey } from '../survey.ts';
import { hasSet } from './joint-cure.ts';
import { hasAdhesive, isArc } from './joint-methods.ts';

/**
 * An arc struck on a part after a bond of it was closed and before that had cured. Where the operation lists the adhesive with its
 * distance, the heat that reaches it is judged instead.
 */
export function freshBondFact(survey: Survey, operation: OperationSurvey, one: JointSurvey): Fact {
  const { joint, at } = one;
  const isStruck = joint.method !== undefined && isArc(joint.method);
  return computedOr(
    isStruck && !isListed(operation) ? freshBond(survey, operation, one) : undefined,
    joint.done === undefined ? at : `${at}/done`,
    'No bond of the part is known to be fresh when the arc is struck, or it is listed under `near` with its distance.',
  );
}

function isListed({ operation }: OperationSurvey): boolean {
  return (operation.near ?? []).some(
    ({ item, distance }) => item === 'structural adhesive' && quantityOf(distance, 'length') !== undefined,
  );
}

function freshBond(
  survey: Survey,
  { operation, part }: OperationSurvey,
  { joint }: JointSurvey,
): string | undefined {
  const struck = joint.done ?? operation.done;
  const moment = whenOf(struck);
  if (moment === undefined) return undefined;
  for (const other of part.operations) {
    for (const bond of other.joints) {
      const { adhesive, method, to } = bond.joint;
      const closed = bond.joint.done ?? other.operation.done;
      const isBond = adhesive !== undefined || (method !== undefined && hasAdhesive(method));
      if (!isBond || isNotAfter(struck, closed) !== false) continue;
      if (hasSet(bond.joint, closed, moment) === false) {
        const cured = adhesive?.cured === undefined ? '' : `, cured ${adhesive.cured}`;
        const name = to === undefined ? '' : ` to ${survey.partById.get(to)?.name ?? to}`;
        return `bond${name} closed ${closed ?? ''}${cured}; arc ${struck ?? ''}`;
      }
    }
  }
  return undefined;
}
