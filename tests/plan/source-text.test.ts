import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { placeOf } from '../../src/plan/source-text.ts';

const place = (text: string, start: number, end: number) =>
  placeOf({ path: 'plan.yaml', text }, { start, end });

describe('placeOf', () => {
  it('counts lines and columns from one, and ends just past the last character', () => {
    expect(place('format: 1\nstage: start\n', 17, 22)).toEqual({
      line: 2,
      column: 8,
      endLine: 2,
      endColumn: 13,
    });
  });

  it('puts a range over a line end on both lines', () => {
    expect(place('ab\ncd\n', 1, 4)).toEqual({ line: 1, column: 2, endLine: 2, endColumn: 2 });
  });

  it('counts a character outside the basic plane as two columns', () => {
    expect(place('🚗 b', 3, 4)).toEqual({ line: 1, column: 4, endLine: 1, endColumn: 5 });
  });

  it('takes CR LF for one line end', () => {
    expect(place('ab\r\ncd', 4, 6)).toEqual({ line: 2, column: 1, endLine: 2, endColumn: 3 });
  });

  it('takes a lone CR for no line end', () => {
    expect(place('ab\rcd', 3, 5)).toEqual({ line: 1, column: 4, endLine: 1, endColumn: 6 });
  });

  it('places the end of a text, with and without a last line end', () => {
    expect(place('a\nb', 3, 3)).toEqual({ line: 2, column: 2, endLine: 2, endColumn: 2 });
    expect(place('a\nb\n', 4, 4)).toEqual({ line: 3, column: 1, endLine: 3, endColumn: 1 });
    expect(place('', 0, 0)).toEqual({ line: 1, column: 1, endLine: 1, endColumn: 1 });
  });

  it('draws a range outside the text back to its end', () => {
    expect(place('ab\n', 7, 9)).toEqual({ line: 2, column: 1, endLine: 2, endColumn: 1 });
  });

  it('agrees with splitting the text at line feeds', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom('a', '\n', '\r\n', '🚗', '\r')), fc.nat(), (pieces, anywhere) => {
        const text = pieces.join('');
        const at = anywhere % (text.length + 1);
        const before = text.slice(0, at).split('\n');
        const { line, column } = place(text, at, at);
        expect([line, column]).toEqual([before.length, (before.at(-1) ?? '').length + 1]);
      }),
    );
  });
});
