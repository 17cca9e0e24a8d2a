import { categories } from './category.ts';
import type { Mark, PlanMarks } from './mark.ts';
import type { MarkReport } from './mark-report.ts';

/** The marks as JSON: a student's feedback in words, and each mark with its points. */
export function markJson(report: MarkReport): string {
  const { statistics, passed, notMarked, mistakes, identical } = report.class;
  const written = {
    marking: 1,
    planish: report.planish,
    packs: report.packs,
    scenario: report.scenario,
    as_of: report.asOf,
    stage: report.stage,
    pass_share: report.passShare,
    of: report.of,
    students: report.students.map(({ marks, feedback }) => ({
      name: marks.name,
      file: marks.file,
      marked: marks.judged,
      points: marks.points,
      of: marks.of,
      passed: marks.passed,
      unsafe: marks.unsafe,
      categories: byCategory(marks),
      feedback,
      marks: marks.marks.map(markAsJson),
      not_found: marks.notFound,
      not_recognised: marks.unrecognised,
    })),
    class: {
      students: report.students.length,
      not_marked: notMarked,
      passed,
      ...(statistics === undefined
        ? {}
        : {
            mean: statistics.mean,
            lowest: statistics.lowest,
            lower_quartile: statistics.lowerQuartile,
            median: statistics.median,
            upper_quartile: statistics.upperQuartile,
            highest: statistics.highest,
            tenths: statistics.tenths,
          }),
      mistakes,
      identical,
    },
    left_out: report.leftOut,
  };
  return `${JSON.stringify(written, null, 2)}\n`;
}

/** Points of each category that the key gives points for. */
export function byCategory({ marks }: PlanMarks): Readonly<Record<string, { points: number; of: number }>> {
  return Object.fromEntries(
    categories.flatMap((category) => {
      const own = marks.filter((one) => one.category === category);
      if (own.length === 0) return [];
      const points = own.reduce((total, one) => total + one.points, 0);
      return [[category, { points, of: own.reduce((total, one) => total + one.of, 0) }]];
    }),
  );
}

/** Without the answer: it is in the feedback, where it was asked for. */
function markAsJson({ category, part, points, of, mistake }: Mark): object {
  return {
    category,
    ...(part === undefined ? {} : { part }),
    points,
    of,
    ...(mistake === undefined ? {} : { mistake }),
  };
}
