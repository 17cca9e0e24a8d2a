import { textWidth } from './text-width.ts';
import { wrapText } from './wrap-text.ts';

/** The lines of a cell that is `columns` wide. Unlike running text a cell cuts the word that is wider than itself. */
export function fitCell(text: string, columns: number): readonly string[] {
  return wrapText(text, columns, '').flatMap((line) => cut(line, columns));
}

function cut(line: string, columns: number): readonly string[] {
  if (textWidth(line) <= columns) return [line];
  const pieces: string[] = [];
  let piece = '';
  let width = 0;
  for (const character of line) {
    const wide = textWidth(character);
    if (width + wide > columns && piece !== '') {
      pieces.push(piece);
      piece = '';
      width = 0;
    }
    piece += character;
    width += wide;
  }
  return [...pieces, piece];
}
