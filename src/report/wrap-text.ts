import { textWidth } from './text-width.ts';

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
    const wide = textWidth(word);
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
