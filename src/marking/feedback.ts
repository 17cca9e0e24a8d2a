import type { Mark, PlanMarks } from './mark.ts';

/**
 * What is said to a student, a line each: what, why, where to look; the key's answer only with `reveal`. In plain words, and kind:
 * of the plan, never of the person.
 */
export function feedbackOf(marks: PlanMarks, reveal: boolean): readonly string[] {
  if (!marks.judged)
    return [`Your plan could not be marked yet: ${marks.reasons.join(' ')} Mend that, and hand it in again.`];
  const told = marks.marks.flatMap((mark) => line(mark, reveal));
  const unseen =
    marks.unrecognised.length === 0
      ? []
      : [
          `Not recognised as parts of this exercise, and without marks: ${marks.unrecognised.map((name) => `“${name}”`).join(', ')}. That is no mistake in itself.`,
        ];
  if (told.length === 0) return ['Nothing to add: everything that was asked is there.', ...unseen];
  return [...told, ...unseen];
}

function line({ said, why, lookAt, answer }: Mark, reveal: boolean): readonly string[] {
  if (said === undefined) return [];
  const parts = [
    said,
    ...(why === undefined ? [] : [`Why: ${why}`]),
    ...(lookAt === undefined ? [] : [`Where to look: ${lookAt}`]),
    ...(reveal && answer !== undefined ? [`Answer: ${answer}`] : []),
  ];
  return [parts.join(' ')];
}
