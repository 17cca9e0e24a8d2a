import { classMarks } from './class-marks.ts';
import type { ClassMarks } from './class-marks.ts';
import { feedbackOf } from './feedback.ts';
import type { Key } from './key.ts';
import type { PlanMarks } from './mark.ts';
import { markPlan, mostPoints, unmarked } from './mark-plan.ts';
import type { StudentReport } from './mark-report.ts';
import { planContent } from './plan-content.ts';
import { otherScenario } from './same-scenario.ts';
import { studentNumbers } from './student-numbers.ts';
import type { StudentNumber } from './student-numbers.ts';
import type { Submission, UnreadSubmission } from './submission.ts';

export interface MarkingOptions {
  readonly reveal: boolean;
  /** Names and files of students are replaced by numbers. */
  readonly withNumbers: boolean;
}

export interface MarkedClass {
  readonly of: number;
  /** In the order of their names, or numbers. */
  readonly students: readonly StudentReport[];
  readonly class: ClassMarks;
  /** Which number is whose; empty where names stay. */
  readonly numbers: readonly StudentNumber[];
}

/** Marks every plan of a class, each on its own: what one student wrote changes nothing for another. */
export function markSubmissions(
  key: Key,
  plans: readonly (Submission | UnreadSubmission)[],
  { reveal, withNumbers }: MarkingOptions,
): MarkedClass {
  const numbers = withNumbers
    ? studentNumbers(
        plans.map(({ name }) => name),
        key.scenario.id,
      )
    : [];
  const calledBy = new Map(numbers.map(({ name, called }) => [name, called]));
  const contents = new Map<PlanMarks, string>();
  const marks = plans
    .map((plan): PlanMarks => {
      const called = calledBy.get(plan.name);
      const shown = called === undefined ? plan : { ...plan, name: called, file: called };
      const marked = markOne(key, shown);
      if ('plan' in plan && marked.judged) contents.set(marked, planContent(plan.plan));
      return marked;
    })
    .sort((a, b) => (a.name < b.name ? -1 : 1));
  return {
    of: mostPoints(key),
    students: marks.map((one) => ({ marks: one, feedback: feedbackOf(one, reveal) })),
    class: classMarks(marks, contents),
    numbers,
  };
}

function markOne(key: Key, plan: Submission | UnreadSubmission): PlanMarks {
  if (!('plan' in plan)) return unmarked(key, plan);
  const other = otherScenario(key.scenario, plan.plan);
  return other === undefined
    ? markPlan(key, plan)
    : unmarked(key, { name: plan.name, file: plan.file, reasons: [other] });
}
