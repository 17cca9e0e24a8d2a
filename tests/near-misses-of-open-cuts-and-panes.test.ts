import { describe, expect, test } from 'vitest';
import {
  bonnetCracked,
  calibratedAt,
  earlier,
  facesMade,
  framePulled,
  hailOnBonnet,
  primer,
  program,
  quarterAndWindow,
  quarterInPart,
  railCutAt,
  railEnd,
  railFolded,
  railJoinedTo,
  readAt,
  wax,
  windscreenAlone,
} from './faults-of-open-cuts-and-panes.ts';
import { judgeText, ruleIds } from './judge-text.ts';
import { changed } from './one-change.ts';
import type { Change } from './one-change.ts';

// Beside each fault of faults-of-open-cuts-and-panes.ts a good plan that lies close to it.
describe('near misses of open cuts and panes stay cleared', () => {
  test.each<readonly [string, string, readonly Change[]]>([
    ['the end of a rail and the back panel', railEnd, []],
    ['a quarter panel with its window', quarterAndWindow, []],
    ['a windscreen alone', windscreenAlone, []],
    ['a frame pulled with heat', framePulled, []],
    ['hail on a bonnet', hailOnBonnet, []],
    [
      'a quarter panel in part as far as the seam of the factory',
      quarterAndWindow,
      [quarterInPart('        at: factory seam on the C-pillar\n')],
    ],
    ...[
      'none known',
      'right rear rail looked at, never replaced in part',
      'left rear rail end replaced 2022',
    ].map((words): [string, string, readonly Change[]] => [`earlier: ${words}`, railEnd, [earlier(words)]]),
    ['calibrated two hours after the windscreen', windscreenAlone, [calibratedAt('12:00')]],
    ...['Two-part epoxy, zinc spray ground off first', 'Two-pack etch primer'].map(
      (words): [string, string, readonly Change[]] => [`primed: ${words}`, railEnd, [primer(words)]],
    ),
    ...['Cavity wax, not underseal, through the drawn holes', 'Until it came out of the drains'].map(
      (words): [string, string, readonly Change[]] => [`waxed: ${words}`, railEnd, [wax(words)]],
    ),
    ...['Scuffed on Monday and bonded the same hour', 'Ground Friday, ground again and bonded Monday'].map(
      (words): [string, string, readonly Change[]] => [
        `faces: ${words}`,
        quarterAndWindow,
        [facesMade(words)],
      ],
    ),
    [
      'dents in a bonnet filled',
      hailOnBonnet,
      [
        [
          '      - { do: straighten, method: cold, done: 2026-08-05 }\n      - { do: refinish',
          '      - { do: fill, done: 2026-08-05 }\n      - { do: refinish',
        ],
      ],
    ],
    ...['In the middle of the strip, beside the weld', 'Centre of the heated zone, not beside the strip'].map(
      (words): [string, string, readonly Change[]] => [`read: ${words}`, framePulled, [readAt(words)]],
    ),
    ['a program of steel by another name', railEnd, [program('steel zinc 1')]],
    ...['cut line A, 60 mm ahead of the spring seat as drawn', 'cut line A, 240 mm from the end'].map(
      (words): [string, string, readonly Change[]] => [`cut at: ${words}`, railEnd, [railCutAt(words)]],
    ),
    ...['last 150 mm folded, 80 mm behind cut line A', 'folded, nothing beyond the cut line'].map(
      (words): [string, string, readonly Change[]] => [`damage: ${words}`, railEnd, [railFolded(words)]],
    ),
  ])('%s', (_name, plan, changes) => {
    expect(ruleIds(judgeText(changed(plan, changes)))).toEqual([]);
  });

  test('a rail end whose back panel is joined to it holds one of its neighbours', () => {
    const joined = changed(railEnd, [
      railJoinedTo('floor, back'),
      ['          - to: floor\n', '          - to: rail-r\n'],
      ['sheets: [back, floor]', 'sheets: [back, rail-r, floor]'],
    ]);
    expect(ruleIds(judgeText(joined))).not.toContain('neighbour-not-joined');
  });

  test('a crack that is bonded before it is filled is closed', () => {
    const bonded = changed(hailOnBonnet, [
      ...bonnetCracked,
      [
        '{ do: straighten, method: cold, done: 2026-08-05 }',
        '{ do: bond, done: 2026-08-05 }\n      - { do: fill, done: 2026-08-05 }',
      ],
    ]);
    expect(ruleIds(judgeText(bonded))).not.toContain('crack-filled-over');
  });
});
