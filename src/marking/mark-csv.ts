import { csv } from '../report/csv.ts';
import { categories } from './category.ts';
import { byCategory } from './mark-json.ts';
import { pointsText } from './mark-report.ts';
import type { MarkReport } from './mark-report.ts';

/** The class as a table, RFC 4180: a row a student. */
export function markCsv({ students }: MarkReport): string {
  const head = ['name', 'file', 'marked', 'passed', 'unsafe', 'points', 'of', ...categories];
  const rows = students.map(({ marks }) => {
    const own = byCategory(marks);
    return [
      ...[marks.name, marks.file, yesNo(marks.judged), yesNo(marks.passed), yesNo(marks.unsafe)],
      ...[pointsText(marks.points), pointsText(marks.of)],
      ...categories.map((category) => {
        const got = own[category];
        return got === undefined ? '' : pointsText(got.points);
      }),
    ];
  });
  return csv([head, ...rows]);
}

function yesNo(value: boolean): string {
  return value ? 'yes' : 'no';
}
