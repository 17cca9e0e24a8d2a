import { gradeKeyLines, gradeLines, steelNumberLines } from '../../generated/steel-table.ts';
import type { GradeMark, GradeRow } from './grade-row.ts';
import { gradeMark, gradeRow } from './grade-row.ts';

/** What a steel number stands for, and how sure that is. */
export interface NumberedGrade {
  readonly key: string;
  readonly mark: GradeMark;
}

export interface GradeTable {
  /** Every comparison key that has rows. */
  readonly keys: () => Iterable<string>;
  /** Rows of a comparison key; several where standards share a name or list a grade in two states. Undefined where there is none. */
  readonly rowsOf: (key: string) => readonly GradeRow[] | undefined;
  /** The grade of a steel number, and the number of a stainless grade. */
  readonly numbered: (key: string) => NumberedGrade | undefined;
  readonly allRows: () => readonly GradeRow[];
}

let table: GradeTable | undefined;

/** The table, unpacked at the first look-up: a run that states no grade pays nothing for it. */
export function gradeTable(): GradeTable {
  table ??= unpack();
  return table;
}

/** Keys are made ahead (.build/steel-table.ts), and a row is read when it is first asked for: most runs ask for a few. */
function unpack(): GradeTable {
  const packed = lines(gradeLines);
  const linesOfKey = new Map(lines(gradeKeyLines).map(cut));
  const numbers = new Map(lines(steelNumberLines).map(cut));
  const read = new Map<string, GradeRow>();
  const rowAt = (index: string): GradeRow => {
    const known = read.get(index);
    if (known !== undefined) return known;
    const row = gradeRow(packed[Number(index)] ?? '');
    read.set(index, row);
    return row;
  };
  const found = new Map<string, readonly GradeRow[] | undefined>();
  return {
    keys: () => linesOfKey.keys(),
    rowsOf: (key) => {
      const indexes = linesOfKey.get(key);
      if (indexes === undefined) return undefined;
      const known = found.get(key);
      if (known !== undefined) return known;
      const rows = indexes.split(',').map(rowAt);
      found.set(key, rows);
      return rows;
    },
    numbered: (key) => {
      const [grade, mark] = numbers.get(key)?.split('|') ?? [];
      return grade === undefined ? undefined : { key: grade, mark: gradeMark(mark) };
    },
    allRows: () => packed.map((_line, index) => rowAt(String(index))),
  };
}

function lines(packed: string): readonly string[] {
  return packed.slice(1, -1).split('\n');
}

/** What stands before the first bar, and what behind it. */
function cut(line: string): readonly [string, string] {
  const bar = line.indexOf('|');
  return [line.slice(0, bar), line.slice(bar + 1)];
}
