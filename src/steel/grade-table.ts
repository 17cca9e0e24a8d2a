import { gradeLines, steelNumberLines } from '../generated/steel-table.ts';
import { designationKey } from './designation-key.ts';
import type { GradeRow } from './grade-row.ts';
import { gradeRow } from './grade-row.ts';

export interface GradeTable {
  /** Rows by comparison key; several where standards share a name or list a grade in two states. */
  readonly byKey: ReadonlyMap<string, readonly GradeRow[]>;
  /** Comparison keys of a steel number's grade, and of a stainless grade's number. */
  readonly numberToKey: ReadonlyMap<string, string>;
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
  const numberToKey = new Map<string, string>();
  for (const line of lines(steelNumberLines)) {
    const [number = '', name = ''] = line.split('|');
    const key = designationKey(name);
    if (byKey.has(key)) numberToKey.set(number, key);
    else if (byKey.has(number)) numberToKey.set(key, number);
  }
  return { byKey, numberToKey };
}

/** Other spellings of one name: ASTM without the MPa in brackets; aluminium without `EN AW`, `extrusion` or temper. */
function aliases(key: string): readonly string[] {
  const unbracketed = key.replace(/\[\d+\]/, '');
  const aluminium = /^(?:ENAW)?(\d{4}A?)([OHT]\w*?)(?:EXTRUSION)?$/.exec(key);
  if (aluminium !== null) {
    const [, alloy = '', temper = ''] = aluminium;
    // Bare figures are no designation, so the alloy alone stays behind its prefix.
    return [`${alloy}${temper}`, `ENAW${alloy}`];
  }
  return unbracketed === key ? [] : [unbracketed];
}

function lines(packed: string): readonly string[] {
  return packed.split('\n').filter((line) => line !== '');
}
