// Packs the grade and steel-number tables into one string of source, so that the one-file bundle carries them and a
// start that looks nothing up pays only for a string. Run: npx tsx .build/steel-table.ts
import { readFileSync, writeFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { designationKey } from '../src/steel/designation-key.ts';
import { gradeKeys } from './grade-keys.ts';

const root = new URL('../', import.meta.url);

/** Rows of a CSV text with a header line, quoted cells allowed (RFC 4180). Throws on a row of another length. */
export function csvRows(text: string): readonly Readonly<Record<string, string>>[] {
  const [head = [], ...rest] = cells(text);
  return rest.map((row, index) => {
    if (row.length !== head.length)
      throw new Error(`row ${index + 2} has ${row.length} cells, not ${head.length}`);
    return Object.fromEntries(head.map((name, column) => [name, row[column] ?? '']));
  });
}

/** The source text of src/generated/steel-table.ts. Sources and remarks stay in the CSV; the mark goes along. */
export function steelTableSource(gradesCsv: string, numbersCsv: string): string {
  const grades = csvRows(gradesCsv).map((row) =>
    line([
      row['designation'],
      row['standard_year'] === 'n/k' ? row['standard'] : `${row['standard']}:${row['standard_year']}`,
      row['class'],
      row['rp02_min_mpa'],
      row['rp02_max_mpa'],
      row['rm_min_mpa'],
      row['rm_max_mpa'],
      row['as_delivered_or_hardened'],
      markOf(row),
      row['rp02_typical_mpa'],
      row['rm_typical_mpa'],
      row['rm_min_only_if'],
    ]),
  );
  const keys = new Map<string, number[]>();
  csvRows(gradesCsv).forEach((row, index) => {
    for (const key of gradeKeys(row['designation'] ?? '')) keys.set(key, [...(keys.get(key) ?? []), index]);
  });
  const numbers = csvRows(numbersCsv).flatMap((row): readonly string[] => {
    const number = row['steel_number'] ?? '';
    const key = designationKey(row['designation'] ?? '');
    if (keys.has(key)) return [line([number, key, markOf(row)])];
    return keys.has(number) ? [line([key, number, markOf(row)])] : [];
  });
  return [
    '// Made by .build/steel-table.ts from src/steel/data/*.csv; change the CSV, not this file.',
    '// A grade a line: designation|standard|class|yield min|max|tensile min|max (MPa)|state|mark|typical yield|typical tensile|when the tensile minimum holds.',
    `export const gradeLines = \`\n${grades.join('\n')}\n\`;`,
    '// A comparison key a line: key|the lines above that it names, from 0.',
    `export const gradeKeyLines = \`\n${[...keys].map(([key, at]) => line([key, at.join(',')])).join('\n')}\n\`;`,
    '// A steel number a line, or a stainless name that the table lists by its number: key|comparison key of its grade|mark.',
    `export const steelNumberLines = \`\n${numbers.join('\n')}\n\`;`,
    '',
  ].join('\n');
}

function markOf(row: Readonly<Record<string, string>>): string | undefined {
  return row['confidence']?.replaceAll(/[[\]]/g, '');
}

function line(fields: readonly (string | undefined)[]): string {
  for (const field of fields) {
    if (field === undefined || /[|`$\\\n]/.test(field))
      throw new Error(`a cell cannot be packed: ${String(field)}`);
  }
  return fields.join('|');
}

function cells(text: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  let cell = '';
  let quoted = false;
  for (let at = 0; at < text.length; at++) {
    const char = text.charAt(at);
    if (quoted) {
      if (char !== '"') cell += char;
      else if (text.charAt(at + 1) === '"') {
        cell += '"';
        at++;
      } else quoted = false;
    } else if (char === '"') quoted = true;
    else if (char === ',' || char === '\n') {
      row.push(cell);
      cell = '';
      if (char === '\n') {
        rows.push(row);
        row = [];
      }
    } else cell += char;
  }
  return rows;
}

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href) {
  const data = (name: string): string => readFileSync(new URL(`src/steel/data/${name}`, root), 'utf8');
  const source = steelTableSource(data('grades.csv'), data('steel-numbers.csv'));
  writeFileSync(new URL('src/generated/steel-table.ts', root), source);
}
