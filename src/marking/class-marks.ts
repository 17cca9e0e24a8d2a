import type { Category } from './category.ts';
import { classStatistics } from './class-statistics.ts';
import type { ClassStatistics } from './class-statistics.ts';
import type { PlanMarks } from './mark.ts';

export interface MistakeCount {
  readonly mistake: string;
  readonly category: Category;
  readonly students: number;
}

export interface ClassMarks {
  readonly statistics?: ClassStatistics;
  readonly passed: number;
  readonly notMarked: number;
  /** Most common first, of equal ones in the order of their words. */
  readonly mistakes: readonly MistakeCount[];
  /** Names of students whose plans say the same, word for word, but for who wrote them. A matter to look at, and no more. */
  readonly identical: readonly (readonly string[])[];
}

/** What a class has in common. `contents` gives for each plan a text that is the same for plans that say the same. */
export function classMarks(
  marks: readonly PlanMarks[],
  contents: ReadonlyMap<PlanMarks, string>,
): ClassMarks {
  const judged = marks.filter((one) => one.judged);
  const statistics = classStatistics(judged.map(({ points, of }) => (of === 0 ? 0 : points / of)));
  return {
    ...(statistics === undefined ? {} : { statistics }),
    passed: judged.filter(({ passed }) => passed).length,
    notMarked: marks.length - judged.length,
    mistakes: countMistakes(judged),
    identical: identicalGroups(judged, contents),
  };
}

function countMistakes(marks: readonly PlanMarks[]): readonly MistakeCount[] {
  const counts = new Map<string, { readonly category: Category; students: number }>();
  for (const plan of marks) {
    const met = new Set<string>();
    for (const { mistake, category } of plan.marks) {
      if (mistake === undefined || met.has(mistake)) continue;
      met.add(mistake);
      const count = counts.get(mistake) ?? { category, students: 0 };
      count.students += 1;
      counts.set(mistake, count);
    }
  }
  return [...counts]
    .map(([mistake, count]) => ({ mistake, ...count }))
    .sort((a, b) => b.students - a.students || (a.mistake < b.mistake ? -1 : 1));
}

function identicalGroups(
  marks: readonly PlanMarks[],
  contents: ReadonlyMap<PlanMarks, string>,
): readonly (readonly string[])[] {
  const groups = new Map<string, string[]>();
  for (const one of marks) {
    const content = contents.get(one);
    if (content === undefined) continue;
    const group = groups.get(content);
    if (group === undefined) groups.set(content, [one.name]);
    else group.push(one.name);
  }
  return [...groups.values()].filter((group) => group.length > 1);
}
