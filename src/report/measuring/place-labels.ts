import { textWidth } from '../text-width.ts';

/** A name that stands beside a mark. */
export interface WantedLabel {
  readonly x: number;
  readonly y: number;
  readonly words: string;
  /** Placed before the others: what must be read. */
  readonly isFirst: boolean;
}

export interface PlacedLabel {
  readonly x: number;
  readonly y: number;
  readonly words: string;
  readonly anchor: 'start' | 'end';
}

export interface LabelBounds {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Left, top, right, bottom. */
export type Box = readonly [x1: number, y1: number, x2: number, y2: number];

const letterWidth = 7.5;
const [above, below] = [11, 4];
/** Between two names in one line. */
const gap = 3;

/** Where a label may stand beside its mark: right, left, above and below, then farther off. */
const offsets = [
  [9, 4],
  [-9, 4],
  [9, -10],
  [-9, -10],
  [9, 18],
  [-9, 18],
  [9, -24],
  [-9, -24],
] as const;

/** Names that hide neither each other nor a mark, nor what else is `drawn`. One for which no place is left is left out: it stands in the table beside the picture. */
export function placeLabels(
  wanted: readonly WantedLabel[],
  bounds: LabelBounds,
  drawn: readonly Box[] = [],
): readonly PlacedLabel[] {
  const taken: Box[] = [...wanted.map(({ x, y }): Box => [x - 6, y - 6, x + 6, y + 6]), ...drawn];
  const ordered = [...wanted.filter((one) => one.isFirst), ...wanted.filter((one) => !one.isFirst)];
  // Every label is held against every other; beyond this many none would be read.
  return ordered.slice(0, 200).flatMap((one): readonly PlacedLabel[] => {
    const length = textWidth(one.words) * letterWidth;
    for (const [dx, dy] of offsets) {
      const [x, y] = [one.x + dx, one.y + dy];
      const from = dx > 0 ? x : x - length;
      const box: Box = [from - gap, y - above, from + length + gap, y + below];
      const [x1, y1, x2, y2] = box;
      const isInside = x1 >= bounds.left && x2 <= bounds.right && y1 >= bounds.top && y2 <= bounds.bottom;
      if (!isInside || taken.some((other) => overlap(box, other))) continue;
      taken.push(box);
      return [{ x, y, words: one.words, anchor: dx > 0 ? 'start' : 'end' }];
    }
    return [];
  });
}

function overlap(a: Box, b: Box): boolean {
  return a[0] < b[2] && b[0] < a[2] && a[1] < b[3] && b[1] < a[3];
}
