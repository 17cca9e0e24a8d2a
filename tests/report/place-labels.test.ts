import fc from 'fast-check';
import { expect, test } from 'vitest';
import { placeLabels } from '../../src/report/measuring/place-labels.ts';

const bounds = { left: 0, right: 400, top: 0, bottom: 300 };

test('a label alone stands right of its mark; at the right edge left of it', () => {
  const at = (x: number) => placeLabels([{ x, y: 100, words: 'A1', isFirst: false }], bounds)[0];
  expect(at(100)).toEqual({ x: 109, y: 104, words: 'A1', anchor: 'start' });
  expect(at(395)).toEqual({ x: 386, y: 104, words: 'A1', anchor: 'end' });
});

test('what must be read is placed first, whatever stands before it', () => {
  const crowd = Array.from({ length: 30 }, (_one, index) => ({
    x: 100,
    y: 100,
    words: `P${String(index)}`,
    isFirst: index === 29,
  }));
  const labels = placeLabels(crowd, bounds);
  expect(labels[0]?.words).toBe('P29');
  // No more places than there are sides of a mark: the others are left out.
  expect(labels.length).toBeLessThan(9);
});

test('labels never hide each other and never leave the picture', () => {
  const wanted = fc.record({
    x: fc.integer({ min: 0, max: 400 }),
    y: fc.integer({ min: 0, max: 300 }),
    words: fc.stringMatching(/^[A-Z0-9]{1,12}$/u),
    isFirst: fc.boolean(),
  });
  fc.assert(
    fc.property(fc.array(wanted, { maxLength: 25 }), (marks) => {
      const boxes = placeLabels(marks, bounds).map(({ x, y, words, anchor }) => {
        // A letter is taken to be 7.5 wide, 11 above its line and 4 below it.
        const length = words.length * 7.5;
        const from = anchor === 'end' ? x - length : x;
        return [from, y - 11, from + length, y + 4] as const;
      });
      for (const [index, [x1, y1, x2, y2]] of boxes.entries()) {
        expect(x1 >= 0 && x2 <= 400 && y1 >= 0 && y2 <= 300).toBe(true);
        for (const other of boxes.slice(index + 1))
          expect(x1 < other[2] && other[0] < x2 && y1 < other[3] && other[1] < y2).toBe(false);
      }
    }),
  );
});
