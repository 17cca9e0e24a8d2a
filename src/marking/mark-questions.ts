import type { FactSheet } from '../facts/sheet.ts';
import { askedOf } from './asked-names.ts';
import type { KeyPart, KeyQuestion } from './key.ts';
import type { Mark } from './mark.ts';
import { nameOf } from './mark-decision.ts';
import type { PartMatch } from './match-parts.ts';
import { statedValues } from './stated-values.ts';

/** Numbers and words that the key asks for. Of several (two rows of joints) the best counts. */
export function markQuestions(
  key: KeyPart,
  match: PartMatch | undefined,
  sheets: readonly FactSheet[],
): readonly Mark[] {
  return key.asked.map((question) => markQuestion(key, question, match, sheets));
}

function markQuestion(
  key: KeyPart,
  question: KeyQuestion,
  match: PartMatch | undefined,
  sheets: readonly FactSheet[],
): Mark {
  const { category, called: what } = askedOf(question.of);
  const called = match === undefined ? key.name : nameOf(match);
  const values = match === undefined ? [] : statedValues(question.of, match, sheets);
  const points = Math.max(0, ...values.map((value) => worth(question, value)));
  const base = { category, part: called, points, of: question.points };
  if (points >= question.points) return base;
  const lacks = values.length === 0 ? 'not stated' : points > 0 ? 'nearly right' : 'not right';
  return {
    ...base,
    mistake: `${key.name}: ${what}, ${lacks}`,
    said: said(question, called, lacks),
    ...(question.why === undefined ? {} : { why: question.why }),
    ...(question.lookAt === undefined ? {} : { lookAt: question.lookAt }),
    answer:
      'words' in question.right
        ? `Right is ${question.right.words.join(' or ')}.`
        : `Right is ${question.right.text}.`,
  };
}

/** Numbers come from figures with a few decimals; what they lose in binary is not a student's mistake. */
const roundingShare = 1e-9;

function worth({ right, points }: KeyQuestion, value: number | string): number {
  if ('words' in right) return typeof value === 'string' && right.words.includes(value) ? points : 0;
  if (typeof value !== 'number') return 0;
  const off = Math.abs(value - right.value);
  const rounding = roundingShare * Math.max(1, Math.abs(right.value));
  if (off <= right.within + rounding) return points;
  return right.nearly !== undefined && off <= right.nearly.within + rounding ? right.nearly.points : 0;
}

function said({ of }: KeyQuestion, part: string, lacks: 'not stated' | 'nearly right' | 'not right'): string {
  switch (lacks) {
    case 'not stated':
      return `For ${part} the plan does not state the ${askedOf(of).called}, or not so that it can be read.`;
    case 'nearly right':
      return `For ${part} the ${askedOf(of).called} is nearly right.`;
    case 'not right':
      return `For ${part} the ${askedOf(of).called} is not right.`;
  }
}
