import { expect, test } from 'vitest';
import { bondedRail } from './faults-of-the-bonded-rail.ts';
import { wholeJob } from './faults-of-the-whole-job.ts';
import { judgeText, ruleIds } from './judge-text.ts';
import { changed } from './one-change.ts';
import type { Change } from './one-change.ts';

// Each of these is as a good shop does it, and is cleared. Common practice.

const beam = 'tightened: 2026-09-11 }\n        done: 2026-09-11';
const coupon = 'coupon: { result: passed, date: 2026-09-04 }';

test.each<readonly [string, readonly Change[]]>([
  [
    'the beam goes on when the bond has cured',
    [[beam, 'tightened: 2026-09-08T10:30 }\n        done: 2026-09-08T10:30']],
  ],
  [
    'the beam goes on when the bond bears handling',
    [
      [beam, 'tightened: 2026-09-07T16:30 }\n        done: 2026-09-07T16:30'],
      ['cured: 2026-09-08T10:00, ', 'cured: 2026-09-08T10:00, handling_time: 6 h, '],
    ],
  ],
  [
    'a beam of the other end goes on meanwhile',
    [
      [beam, 'tightened: 2026-09-07T15:00 }\n        done: 2026-09-07T15:00'],
      ['name: Bumper beam\n', 'name: Rear bumper beam\n'],
      [
        '    - { sensor: front radar,',
        '    - { sensor: rear radar, kind: not fitted, cite: { reference: wheels, at: p. 1 } }\n    - { sensor: front radar,',
      ],
    ],
  ],
  [
    'the coupon was bonded the week before and torn on the day of the joint',
    [[coupon, 'coupon: { result: passed, bonded: 2026-09-02, date: 2026-09-07 }']],
  ],
  [
    'a coupon of the day that only shows how the rivets set',
    [[coupon, 'coupon: { result: passed, date: 2026-09-07, shows: rivets only }']],
  ],
  ['rivets of stainless steel', [['coating: zinc flake', 'coating: bare stainless A4']]],
  ['rivets of aluminium', [['coating: zinc flake', 'coating: aluminium 5056']]],
  ['rivets plated as another language writes it', [['coating: zinc flake', 'coating: verzinkt 8 µm']]],
])('bonded rail, cleared: %s', (_name, changes) => {
  expect(ruleIds(judgeText(changed(bondedRail, changes)))).toEqual([]);
});

test.each([
  ['another corner', "'right apron spliced in 2024 after a hit from the side'"],
  ['a cover', "[{ part: Front bumper cover, what: repainted, when: '2024' }]"],
  [
    'the apron, looked at',
    "[{ part: apron-l, what: flange welded, when: '2024', state: sound, found_by: 'spots counted, 24 by the page' }]",
  ],
  ['the rail that is replaced whole', "[{ part: rail-l, what: pulled, when: '2024' }]"],
])('whole job, cleared: an earlier repair of %s', (_name, repairs) => {
  const text = changed(wholeJob, [['earlier_repairs: none known', `earlier_repairs: ${repairs}`]]);
  expect(ruleIds(judgeText(text))).toEqual([]);
});
