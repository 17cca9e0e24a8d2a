import { categories } from './category.ts';
import type { Key } from './key.ts';
import type { Mark, PlanMarks } from './mark.ts';
import { markCitation } from './mark-citation.ts';
import { markEntries, markTopics } from './mark-completeness.ts';
import { forbiddenIn, markDecision, nameOf } from './mark-decision.ts';
import { markQuestions } from './mark-questions.ts';
import { markSafety } from './mark-safety.ts';
import { matchParts } from './match-parts.ts';
import type { Submission, UnreadSubmission } from './submission.ts';

/**
 * The marks of one plan by the key. Depends on the plan, the key and the findings alone. A plan that something stops, or that plans
 * what the key forbids, does not pass.
 */
export function markPlan(key: Key, submission: Submission): PlanMarks {
  const { plan, sheets, findings } = submission;
  const { matched, missing, extra } = matchParts(key.parts, plan.parts);
  const plansForbidden = matched.some((one) => forbiddenIn(one.key, one.part.operations ?? []).length > 0);
  const marks = [
    ...key.parts.flatMap((part) => {
      const match = matched.find((one) => one.key === part);
      return [
        ...markDecision(part, match),
        ...markCitation(part, match, plan),
        ...markQuestions(part, match, sheets),
      ];
    }),
    ...markEntries(key.completeness, plan),
    ...markTopics(key.topics, submission),
    ...markSafety(key.safety, findings, plansForbidden),
  ];
  const points = sum(marks, ({ points: got }) => got);
  const of = sum(marks, ({ of: most }) => most);
  const unsafe = plansForbidden || findings.some(({ severity }) => severity === 'stop');
  const judged = submission.verdict !== 'not judged';
  return {
    name: submission.name,
    file: submission.file,
    judged,
    points,
    of,
    passed: judged && !unsafe && points >= key.passShare * of - rounding,
    unsafe,
    marks: inOrder(marks),
    unrecognised: extra.map(nameOf),
    notFound: missing.map(({ name }) => name),
    reasons: judged ? [] : ['planish could not judge all of this plan; your trainer will see why.'],
  };
}

/** The marks of a plan that could not be read: none, and why. */
export function unmarked(key: Key, { name, file, reasons }: UnreadSubmission): PlanMarks {
  return {
    name,
    file,
    judged: false,
    points: 0,
    of: mostPoints(key),
    passed: false,
    unsafe: false,
    marks: [],
    unrecognised: [],
    notFound: [],
    reasons,
  };
}

/** All the points that a key gives. */
export function mostPoints({ parts, completeness, topics, safety }: Key): number {
  return (
    sum(
      parts,
      ({ decisions, citation, asked }) =>
        (decisions[0]?.points ?? 0) + (citation?.points ?? 0) + sum(asked, ({ points }) => points),
    ) +
    sum(completeness, ({ points }) => points) +
    sum(topics, ({ points }) => points) +
    (safety?.points ?? 0)
  );
}

/** Points are quarters and halves at worst; a share of them is not lost to binary fractions. */
const rounding = 1e-9;

function sum<T>(list: readonly T[], of: (one: T) => number): number {
  return list.reduce((total, one) => total + of(one), 0);
}

function inOrder(marks: readonly Mark[]): readonly Mark[] {
  return marks.toSorted((a, b) => categories.indexOf(a.category) - categories.indexOf(b.category));
}
