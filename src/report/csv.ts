export type CsvCell = string | number | undefined;

/** Rows as RFC 4180 has them: a comma between cells, CRLF after each row, quotes where needed. Undefined is an empty cell. */
export function csv(rows: readonly (readonly CsvCell[])[]): string {
  return rows.map((row) => `${row.map(cell).join(',')}\r\n`).join('');
}

/**
 * A spreadsheet runs a text that begins like a formula, also after blanks that it trims and in the wide forms of East Asian
 * keyboards. An apostrophe before it makes it text; it is the one change that is made to a value.
 */
const formula = /^[\s\u00a0\u200b\ufeff]*[=+\-@\uff1d\uff0b\uff0d\uff20]|^[\t\r\n]/u;

function cell(value: CsvCell): string {
  if (typeof value !== 'string') return value === undefined ? '' : String(value);
  const text = formula.test(value) ? `'${value}` : value;
  return /[",\r\n]/u.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
