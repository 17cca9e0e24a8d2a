import { eastAsianWidth } from 'get-east-asian-width';

/** Every character of plain English is one column wide; only other text needs the table of widths. */
const plain = /^[\x20-\x7e]*$/u;

/** Marks that sit on the letter before them. */
const combining = /^\p{M}$/u;

/** Columns that a text takes on a terminal. */
export function textWidth(text: string): number {
  if (plain.test(text)) return text.length;
  let width = 0;
  for (const character of text) {
    if (!combining.test(character)) width += eastAsianWidth(character.codePointAt(0) ?? 0);
  }
  return width;
}
