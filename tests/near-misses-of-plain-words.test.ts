import { describe, expect, test } from 'vitest';
import {
  beltsOfJob,
  lastWatch,
  linkBolts,
  linkNote,
  railPage,
  scanAfter,
  sillNote,
} from './faults-of-plain-words.ts';
import { batteryOut } from './faults-of-the-battery-out.ts';
import { wholeJob } from './faults-of-the-whole-job.ts';
import { judgeText, ruleIds } from './judge-text.ts';
import { changed } from './one-change.ts';
import type { Change } from './one-change.ts';
import { releasedRing } from './released-ring.ts';

// Words that look like an admission and are none. Common practice of the trade.

type NearMiss = readonly [name: string, plan: string, changes: readonly Change[]];

const nearMisses: readonly NearMiss[] = [
  ...[
    'Front left belt and buckle replaced by the list; the other belts were kept, all lock and roll',
    'Front left belt and buckle replaced by the list, the others not replaced, in order',
    'Front left belt replaced, rear belts kept, front right still locks',
    'Front left belt replaced, the old belt kept for the insurer, the others in order',
    'Front left belt replaced with its reel, buckle kept by the list, the others in order',
  ].map((text): NearMiss => [`belts: ${text}`, wholeJob, [[beltsOfJob, `"${text}"`]]]),
  [
    'no unit fired, all belts stay',
    batteryOut,
    [
      [
        'All five looked at and pulled through by the maker’s list, in order',
        'All five belts kept, pulled through, in order',
      ],
    ],
  ],
  [
    'a bolt that was drilled out cold',
    wholeJob,
    [linkNote('Rear bolt was seized; drilled out cold, no heat used, new bolt and nut.')],
  ],
  [
    'no crack was found',
    wholeJob,
    [linkNote('Looked for cracks: none. Old bolt replaced by a new one in its place.')],
  ],
  ...[
    'Runs straight, does not wander, no pull to the left or right.',
    'Pulls up straight, steering wheel centred.',
    'Drifts no longer.',
  ].map((text): NearMiss => [
    `on the road: ${text}`,
    wholeJob,
    [['result: passed }\n  warning_lamps', `result: passed, note: "${text}" }\n  warning_lamps`]],
  ]),
  ...[
    'New bolts in place of the old ones.',
    'The torch was not used; pressed out cold.',
    'Moved the harness aside to fit the gun.',
    'Dented heat shield replaced.',
    'Blind rivets instead of spots by p. 12.',
  ].map((text): NearMiss => [`a note: ${text}`, wholeJob, [linkNote(text)]]),
  [
    'nothing supersedes it',
    batteryOut,
    [sillNote('Looked again on 2026-09-22: B is still the newest, nothing supersedes it.')],
  ],
  ['no newer revision', batteryOut, [sillNote('No newer revision in the portal.')]],
  [
    'the pull of the intake is gone',
    wholeJob,
    [
      [
        'result: passed }\n  warning_lamps',
        "result: passed, note: 'The pull to the left of the intake is gone, wheel straight, no noise.' }\n  warning_lamps",
      ],
    ],
  ],
  [
    'a lamp that goes out',
    wholeJob,
    [['lit: [] }', 'lit: [], note: Airbag lamp comes on with the ignition and goes out }']],
  ],
  [
    'a unit that answered in the end',
    wholeJob,
    [
      [
        scanAfter,
        scanAfter.replace(
          ' codes: [] }',
          ' codes: [], note: "Gateway did not answer at first, then all units read" }',
        ),
      ],
    ],
  ],
  [
    'a tool that reads all control units',
    wholeJob,
    [
      [
        scanAfter,
        scanAfter.replace('shop tool 4.2', '"shop reader 4.2, reads all control units, engine included"'),
      ],
    ],
  ],
  [
    'the torque from a page that is said to tell it',
    wholeJob,
    [
      [linkBolts, linkBolts.replace('link, at: p. 7', 'rail, at: p. 18')],
      [
        "title: 'Front rail, replacement',",
        "title: 'Front rail, replacement', about: [body structure, running gear],",
      ],
    ],
  ],
  [
    'the torque from a general manual',
    wholeJob,
    [
      [linkBolts, linkBolts.replace('link, at: p. 7', 'rail, at: p. 18')],
      ["title: 'Front rail, replacement',", "title: 'Front rail and suspension',"],
    ],
  ],
  [
    'a later revision for later cars',
    wholeJob,
    [
      [
        railPage,
        `${railPage}\n  - { id: rail-d, kind: maker procedure, ${railPage
          .replace('revision: C, published: 2023-05-09', 'revision: D, published: 2025-11-03')
          .replace('years: 2022-2024', 'years: 2025-2026')}`,
      ],
    ],
  ],
  [
    'a cable that was laid aside',
    wholeJob,
    [
      [
        '    person: { name: L. Brandt',
        '    cables_in_zone: The one in the tunnel was unplugged at both ends and laid aside\n    person: { name: L. Brandt',
      ],
    ],
  ],
  ...[
    'gap of the left front door 2 mm tight at the top, by the same push; even again when the rail was measured on 2026-10-07',
    'none; the left front door gap was 1 mm tight and is even again',
    'none found; sealer at the left seam is old and cracked, no bare metal',
  ].map((text): NearMiss => [`found: ${text}`, wholeJob, [['found: none found }', `found: "${text}" }`]]]),
  [
    'a fuel line that lies far off, in both lists',
    releasedRing,
    [
      [
        lastWatch,
        lastWatch.replace(
          ' }',
          ', fluids: [{ item: fuel line, treatment: stays, place: "Right side of the tunnel, 1.1 m away" }] }',
        ),
      ],
      ['near: []', 'near: [{ item: fuel line, distance: 1100 mm, path: through air, treatment: stays }]'],
    ],
  ],
  [
    'a fuel line close by that is emptied by a page',
    releasedRing,
    [
      [
        lastWatch,
        lastWatch.replace(
          ' }',
          ', fluids: [{ item: fuel line, treatment: removed, place: "Along the left inner sill, 60 mm from the flange" }] }',
        ),
      ],
    ],
  ],
  ...[
    'None. Nothing is open',
    'no hold is open',
    'none; the three of the first check were answered on 2026-10-12',
    'none open, all holds answered',
  ].map((text): NearMiss => [`holds: ${text}`, wholeJob, [['open_holds: none', `open_holds: "${text}"`]]]),
];

describe('words that admit nothing stay cleared', () => {
  test.each(nearMisses)('%s', (_name, plan, changes) => {
    expect(ruleIds(judgeText(changed(plan, changes)))).toEqual([]);
  });
});
