import { forLast } from './for-last.ts';
import type { Range } from './node.ts';

export interface SourceText {
  /** The path as it is shown to the reader. */
  readonly path: string;
  readonly text: string;
}

/** 1-based; columns count UTF-16 code units; `endColumn` is the column just past the last character. */
export interface Place {
  readonly line: number;
  readonly column: number;
  readonly endLine: number;
  readonly endColumn: number;
}

/** Found when first asked for, because most plans that are read report nothing and need no lines counted. */
const lineStartsOf = forLast(({ text }: SourceText) => findLineStarts(text));

/** Where a stretch of the text stands. A range outside the text is drawn back to its nearest end. */
export function placeOf(source: SourceText, range: Range): Place {
  const starts = lineStartsOf(source);
  const start = Math.min(Math.max(range.start, 0), source.text.length);
  const end = Math.min(Math.max(range.end, start), source.text.length);
  const first = lineAt(starts, start);
  const last = lineAt(starts, end);
  return {
    line: first.line,
    column: start - first.offset + 1,
    endLine: last.line,
    endColumn: end - last.offset + 1,
  };
}

/** LF ends a line, alone or after CR. A lone CR does not: the parser does not see one either. */
function findLineStarts(text: string): readonly number[] {
  const starts = [0];
  for (let feed = text.indexOf('\n'); feed !== -1; feed = text.indexOf('\n', feed + 1)) starts.push(feed + 1);
  return starts;
}

function lineAt(
  starts: readonly number[],
  offset: number,
): { readonly line: number; readonly offset: number } {
  let low = 0;
  let high = starts.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((starts[middle] ?? 0) <= offset) low = middle;
    else high = middle - 1;
  }
  return { line: low + 1, offset: starts[low] ?? 0 };
}
