import type { Operation } from '../../generated/plan-types.ts';
import type { OperationSurvey } from '../survey.ts';

/** Heatings that are taken where the plan does not say how many: seldom is a place heated once (common practice). */
export const timesIfUnstated = 2;

/** Heats of one place count together, also where each stands as an operation of its own. */
export function heatsOfPlace(one: OperationSurvey): readonly OperationSurvey[] {
  const { operation, part, heats } = one.heatOf ?? one;
  if (heats === false) return [one];
  return part.operations.filter(
    (other) =>
      other.heats !== false &&
      other.heatOf === undefined &&
      mayBeOnePlace(other.operation.at, operation.at) &&
      mayBeOnePlace(other.operation.zone, operation.zone),
  );
}

/**
 * The heats of a place that follow each other without a pause, as far as the plan says: those of its order between two that are
 * stated to begin on cooled sheet. The operation itself is one of them.
 */
export function heatsWithoutPause(one: OperationSurvey): readonly OperationSurvey[] {
  const certain = heatsOfPlace(one).filter((other) => other.heats === true || other.at === one.at);
  const inOrder = certain.toSorted((a, b) => (a.operation.step ?? 0) - (b.operation.step ?? 0));
  const isOrdered = certain.every(({ operation: { step } }) => step !== undefined) || certain.length === 1;
  const runs: OperationSurvey[][] = [];
  for (const heat of isOrdered ? inOrder : certain) {
    const last = runs.at(-1);
    if (last === undefined || heat.operation.starts_below !== undefined) runs.push([heat]);
    else last.push(heat);
  }
  return runs.find((run) => run.some(({ at }) => at === one.at)) ?? [one];
}

/** A place that is not stated may be any. */
export function mayBeOnePlace(one: Operation['at'], other: Operation['at']): boolean {
  const plain = (name: string): string => name.trim().toLowerCase().replace(/\s+/gu, ' ');
  return one === undefined || other === undefined || plain(one) === plain(other);
}
