import { gradeLines, steelNumberLines } from '../generated/steel-table.ts';
import { designationKey } from './designation-key.ts';
import type { GradeMark, GradeRow } from './grade-row.ts';
import { gradeMark, gradeRow } from './grade-row.ts';

/** What a steel number stands for, and how sure that is. */
export interface NumberedGrade {
  readonly key: string;
  readonly mark: GradeMark;
}

export interface GradeTable {
  /** Rows by comparison key; several where standards share a name or list a grade in two states. */
  readonly byKey: ReadonlyMap<string, readonly GradeRow[]>;
  /** Comparison keys of a steel number's grade, and of a stainless grade's number. */
  readonly numberToKey: ReadonlyMap<string, NumberedGrade>;
}

let table: GradeTable | undefined;

/** The table, unpacked at the first look-up: a run that states no grade pays nothing for it. */
export function gradeTable(): GradeTable {
  table ??= unpack();
  return table;
}

function unpack(): GradeTable {
  const byKey = new Map<string, GradeRow[]>();
  const add = (key: string, row: GradeRow): void => {
    const rows = byKey.get(key);
    if (rows === undefined) byKey.set(key, [row]);
    else if (!rows.includes(row)) rows.push(row);
  };
  for (const line of lines(gradeLines)) {
    const row = gradeRow(line);
    const key = designationKey(row.designation);
    for (const alias of [key, ...aliases(key)]) add(alias, row);
  }
  const numberToKey = new Map<string, NumberedGrade>();
  for (const line of lines(steelNumberLines)) {
    const [number = '', name = '', marked] = line.split('|');
    const key = designationKey(name);
    const mark = gradeMark(marked);
    if (byKey.has(key)) numberToKey.set(number, { key, mark });
    else if (byKey.has(number)) numberToKey.set(key, { key: number, mark });
  }
  return { byKey, numberToKey };
}

/**
 * Other spellings of one name: ASTM without the MPa in brackets or by them alone, and without class or type (then several grades answer);
 * aluminium without `EN AW`, `extrusion` or temper.
 */
function aliases(key: string): readonly string[] {
  const aluminium = /^(?:ENAW)?(\d{4}A?)([OHT]\w*?)(?:EXTRUSION)?$/.exec(key);
  if (aluminium !== null) {
    const [, alloy = '', temper = ''] = aluminium;
    // Bare figures are no designation, so the alloy alone stays behind its prefix.
    return [`${alloy}${temper}`, `ENAW${alloy}`];
  }
  const american = /^(.+GRADE)(\d{2,3})\[(\d+)\]((?:CLASS|TYPE)\d)?$/.exec(key);
  if (american === null) return [];
  const [, word = '', ksi = '', mpa = '', kind = ''] = american;
  return [ksi, `${ksi}[${mpa}]`, mpa].flatMap((figures) => [`${word}${figures}${kind}`, `${word}${figures}`]);
}

function lines(packed: string): readonly string[] {
  return packed.split('\n').filter((line) => line !== '');
}
