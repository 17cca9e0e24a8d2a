import { expect, test } from 'vitest';
import { wholeJob } from './faults-of-the-whole-job.ts';
import { judgeText, ruleIds } from './judge-text.ts';
import { changed } from './one-change.ts';
import type { Change } from './one-change.ts';

// What may come after a check without undoing it. Common practice.

const trim = (done: string): string => `  - id: trim
    name: Sill trim, left
    kind: trim
    structural: false
    damage: { kind: none, found_by: seen }
    operations:
      - { do: remove and refit, done: ${done} }

measurements:
`;

test.each<readonly [string, readonly Change[]]>([
  [
    'the cover goes on an hour before its radar is calibrated',
    [['replace, extent: whole, done: 2026-10-09 }', 'replace, extent: whole, done: 2026-10-12T08:00 }']],
  ],
  [
    'the cover goes on on the day of the calibration, hours not written',
    [['replace, extent: whole, done: 2026-10-09 }', 'replace, extent: whole, done: 2026-10-12 }']],
  ],
  ['a trim goes on after alignment and calibration', [['measurements:\n', trim('2026-10-12T12:00')]]],
  [
    'the link is bolted on after the traction voltage and before the wheels are set',
    [
      [
        'tightened: 2026-10-06 }\n        done: 2026-10-06',
        'tightened: 2026-10-10T13:00 }\n        done: 2026-10-10T13:00',
      ],
    ],
  ],
])('cleared: %s', (_name, changes) => {
  expect(ruleIds(judgeText(changed(wholeJob, changes)))).toEqual([]);
});
