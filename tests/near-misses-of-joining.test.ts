import { expect, test } from 'vitest';
import { bondedRail } from './faults-of-the-bonded-rail.ts';
import { seamedRail } from './faults-of-joining.ts';
import { wholeJob } from './faults-of-the-whole-job.ts';
import { judgeText, ruleIds } from './judge-text.ts';
import { changed } from './one-change.ts';
import type { Change } from './one-change.ts';

// Each of these is as a good shop does it, and is cleared. Common practice; gases by ISO 14175, from memory.

test.each<readonly [string, string, readonly Change[]]>([
  ['a rail cut and welded over an insert, as drawn', seamedRail, []],
  ['its gas written out', seamedRail, [['gas: M21', 'gas: "argon with 18 % carbon dioxide"']]],
  [
    'stainless wire, by a page that asks for it',
    seamedRail,
    [['filler: G3Si1', 'filler: G 19 9 L Si\n            filler_cite: { reference: rail, at: p. 12 }']],
  ],
  [
    'twice the heat, for a slow hand',
    seamedRail,
    [['current: 90 A, travel_speed: 8 mm/s', 'current: 110 A, travel_speed: 5 mm/s']],
  ],
  [
    'bright metal under the arc',
    seamedRail,
    [['            gap: 2.5 mm\n', '            gap: 2.5 mm\n            flange_coat: bare\n']],
  ],
  [
    'weldable sealer between the spots, by its page',
    wholeJob,
    [
      [
        'flange_coat: factory coat left whole',
        'flange_coat: sealer\n            flange_coat_cite: { reference: rail, at: p. 11 }',
      ],
    ],
  ],
  [
    'spots beside the old places',
    wholeJob,
    [['            edge: 9 mm\n', '            edge: 9 mm\n            old_holes: beside them\n']],
  ],
  ['a gap of 50 mm in the row', wholeJob, [['pitch: 32 mm', 'pitch: 32 mm\n            widest_gap: 50 mm']]],
  ['a bond that cures at 15 °C', bondedRail, [['cure: 24 h at 23 °C', 'cure: 24 h at 15 °C']]],
  [
    'rivets of 4.8 mm in sheet of 2.5 mm',
    bondedRail,
    [['6.5, kind: structural, diameter: 6.5 mm', '4.8, kind: structural, diameter: 4.8 mm']],
  ],
])('cleared: %s', (_name, plan, changes) => {
  expect(ruleIds(judgeText(changed(plan, changes)))).toEqual([]);
});
