import { describe, expect, test } from 'vitest';
import { bondedQuarter, hemmedDoor, sectionedPost } from './faults-of-seams.ts';
import { judgeText, ruleIds } from './judge-text.ts';
import { changed } from './one-change.ts';
import type { Change } from './one-change.ts';

const insert = 'grade: HC420LA, thickness: 1.5 mm }\n            gap';
const braze = 'done: 2026-09-22T10:00';

// Each is a plan that a fault of faults-of-seams.ts lies close to; it stays cleared.
describe('near misses of seams stay cleared', () => {
  test.each<readonly [string, string, readonly Change[]]>([
    [
      'a thinner insert by a page of its own',
      sectionedPost,
      [[insert, 'grade: HC420LA, thickness: 1.2 mm, cite: { reference: post, at: p. 9 } }\n            gap']],
    ],
    [
      'an insert of stronger steel',
      sectionedPost,
      [[insert, 'grade: HC460LA, thickness: 1.5 mm }\n            gap']],
    ],
    [
      'an insert of the sheet in inches',
      sectionedPost,
      [[insert, 'grade: HC420LA, thickness: 0.059 in }\n            gap']],
    ],
    ['the place of the seam left out', sectionedPost, [['            place: K1\n', '']]],
    [
      'the mark of the seam with a word on where it is',
      sectionedPost,
      [['at: K1', 'at: K1, 120 mm over the sill']],
    ],
    ['a root gap of 2 t', sectionedPost, [['gap: 2 mm', 'gap: 3 mm']]],
    [
      'a root gap of 4 mm by a page of its own',
      sectionedPost,
      [['gap: 2 mm', 'gap: 4 mm\n            gap_cite: { reference: post, at: p. 9 }']],
    ],
    ['an arc on bright metal', sectionedPost, [['gap: 2 mm', 'gap: 2 mm\n            flange_coat: bare']]],
    [
      'weld-through primer under the arc by a page that asks for it there',
      sectionedPost,
      [
        [
          'gap: 2 mm',
          'gap: 2 mm\n            flange_coat: weld-through primer\n            flange_coat_cite: { reference: post, at: p. 9 }',
        ],
      ],
    ],
    [
      'closed in the last minute of the open time',
      bondedQuarter,
      [['closed_after: 30 min', 'closed_after: 60 min']],
    ],
    ['cured to the hour', bondedQuarter, [['cured: 2026-09-23T14:00', 'cured: 2026-09-23T14:30']]],
    ['brazed in the minute before the bond', bondedQuarter, [[braze, 'done: 2026-09-22T13:59']]],
    [
      'brazed after the bond that lies far off and is listed with its distance',
      bondedQuarter,
      [
        [braze, 'done: 2026-09-22T14:30'],
        [
          '        near:\n',
          '        near:\n          - { item: structural adhesive, distance: 400 mm, path: same sheet, watched_by: { means: temperature crayon, place: Beside the flange }, reading: 40 °C }\n',
        ],
      ],
    ],
    [
      'a hem that never held adhesive',
      hemmedDoor,
      [
        [
          /factory_adhesive: true[\s\S]*?(?=record: B)/u.exec(hemmedDoor)?.[0] ?? '',
          'factory_adhesive: false\n            ',
        ],
      ],
    ],
  ])('%s', (_name, plan, changes) => {
    expect(ruleIds(judgeText(changed(plan, changes)))).toEqual([]);
  });
});
