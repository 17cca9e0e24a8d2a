import { describe, expect, test } from 'vitest';
import { factsOf } from './facts-of.ts';

type Point = readonly [part: 'left' | 'right' | 'centre' | 'untold', y: number];

/** The points that lie on the wrong side, of points of parts of such sides at such y of the sheet; `?` when none does. */
function wrongSide(...points: readonly Point[]): string {
  const parts = ['left', 'right', 'centre', 'untold'].map(
    (side) =>
      `  - { id: ${side}, name: ${side} part, kind: floor${side === 'untold' ? '' : `, side: ${side}`} }\n`,
  );
  const listed = points.map(
    ([on, y], index) =>
      `{ name: P${String(index + 1)}, on: ${on}, nominal: [${String(index * 100)} mm, ${String(y)} mm, 0 mm] }`,
  );
  const fact = factsOf(`parts:\n${parts.join('')}measurements: { points: [${listed.join(', ')}] }`).fact(
    'measurement.wrong_side',
  );
  return fact.known ? String(fact.value) : '?';
}

describe('points on the other side than their parts', () => {
  test('with no pair of points, the middle lies between what is called left and right', () => {
    expect(
      wrongSide(['left', -700], ['left', -430], ['left', 430], ['right', 700], ['right', 650]),
    ).toContain('P3 on left part (y 430 mm)');
    expect(wrongSide(['left', -700], ['left', -430], ['right', 300], ['right', 700])).toBe('?');
    expect(wrongSide(['left', 100], ['left', 300], ['right', 900], ['right', 1500])).toBe('?');
    expect(wrongSide(['left', 700], ['right', -700])).toBe('?');
  });

  test('one side alone, the centre, and parts that tell no side say nothing', () => {
    expect(wrongSide(['left', -700], ['left', 430])).toBe('?');
    expect(wrongSide(['left', -700], ['centre', 700], ['untold', 650], ['centre', -600])).toBe('?');
    expect(wrongSide(['right', 650])).toBe('?');
  });
});
