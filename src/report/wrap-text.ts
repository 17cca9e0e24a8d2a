import { eastAsianWidth } from 'get-east-asian-width';

/** Every character of plain English is one column wide; only other text needs the table of widths. */
const plain = /^[\x20-\x7e]*$/u;

/** Marks that sit on the letter before them. */
const combining = /^\p{M}$/u;

function widthOf(text: string): number {
  if (plain.test(text)) return text.length;
  let width = 0;
  for (const character of text) {
    if (!combining.test(character)) width += eastAsianWidth(character.codePointAt(0) ?? 0);
  }
  return width;
}

/**
 * Breaks a text at blanks so that no line is wider than `columns`, each line beginning with `indent` (the first with
 * `firstIndent`). A word that is wider than a line stands alone and is not cut: a document number must stay searchable.
 */
export function wrapText(
  text: string,
  columns: number,
  indent: string,
  firstIndent = indent,
): readonly string[] {
  const lines: string[] = [];
  let line = firstIndent;
  let width = firstIndent.length;
  let empty = true;
  for (const word of text.split(/ +/u)) {
    if (word === '') continue;
    const wide = widthOf(word);
    if (!empty && width + 1 + wide > columns) {
      lines.push(line);
      line = indent;
      width = indent.length;
      empty = true;
    }
    line += empty ? word : ` ${word}`;
    width += (empty ? 0 : 1) + wide;
    empty = false;
  }
  lines.push(line);
  return lines;
}
