import type { Plan } from '../generated/plan-types.ts';
import type { KeyEntry, KeyTopic } from '../generated/key-types.ts';
import type { Finding } from '../judge/finding.ts';
import type { Mark } from './mark.ts';
import type { Submission } from './submission.ts';

/** Entries that the plan is to hold, whatever they say. */
export function markEntries(entries: readonly KeyEntry[], plan: Plan): readonly Mark[] {
  return entries.map(({ entry, called, points: of, why, look_at: lookAt }): Mark => {
    if (holds(plan, entry.split('.'))) return { category: 'completeness', points: of, of };
    return {
      category: 'completeness',
      points: 0,
      of,
      mistake: `${called ?? entry}: not in the plan`,
      said: `The plan says nothing of ${called ?? `\`${entry}\``}.`,
      ...(why === undefined ? {} : { why }),
      ...(lookAt === undefined ? {} : { lookAt }),
      answer: `It stands under \`${entry}\`.`,
    };
  });
}

function holds(plan: Plan, steps: readonly string[]): boolean {
  let value: unknown = plan;
  for (const step of steps) {
    if (typeof value !== 'object' || value === null) return false;
    value = new Map<string, unknown>(Object.entries(value)).get(step);
  }
  if (Array.isArray(value)) return value.length > 0;
  return typeof value === 'object' && value !== null ? Object.keys(value).length > 0 : value !== undefined;
}

/** Topics of the rules of which nothing is to be left open. */
export function markTopics(topics: readonly KeyTopic[], submission: Submission): readonly Mark[] {
  return topics.map(({ topic, points: of, each = of, look_at: lookAt }): Mark => {
    const open = submission.findings.filter(
      (one) => isOpen(one) && submission.topics.get(one.rule) === topic,
    );
    const [first] = open;
    if (first === undefined) return { category: 'completeness', points: of, of };
    const more = open.length === 1 ? '' : ` and ${String(open.length - 1)} more`;
    return {
      category: 'completeness',
      points: Math.max(0, of - each * open.length),
      of,
      mistake: `${topic}: something open`,
      said: `Of ${topic} something is open: ${first.message}${more === '' ? '' : ` (${more.trim()})`}`,
      why: first.why,
      ...(lookAt === undefined ? {} : { lookAt }),
      answer: open.map(({ instead }) => instead).join(' '),
    };
  });
}

function isOpen({ severity, deviation }: Finding): boolean {
  return severity !== 'note' && deviation === undefined;
}
