import { describe, expect, test } from 'vitest';
import { bondedRail } from './faults-of-the-bonded-rail.ts';
import { batteryOut } from './faults-of-the-battery-out.ts';
import { packStaysIn } from './faults-of-claims.ts';
import { wholeJob } from './faults-of-the-whole-job.ts';
import { judgeText, ruleIds } from './judge-text.ts';
import { changed, electric, ring } from './one-change.ts';
import type { Change } from './one-change.ts';
import { releasedRing } from './released.ts';

// What looks like an empty claim and is none. Common practice of the trade; ISO 9606 and ISO 14732 from memory.

const joinedBy = / {2}joined_by: .*\n/u.exec(releasedRing)?.[0] ?? '';
const holm = "by: { name: T. Holm, role: body technician, qualification: 'resistance spot, steel' }";
const cable =
  '        near:\n          - { item: high-voltage cable, distance: 400 mm, path: through air, treatment: removed }\n';

const nearMisses: readonly (readonly [name: string, plan: string, changes: readonly Change[]])[] = [
  [
    'two people, each for what they are tested in',
    releasedRing,
    [
      [
        joinedBy,
        '  joined_by:\n    - { name: T. Holm, qualification: ISO 14732, methods: [resistance spot] }\n    - { name: S. Vey, qualification: ISO 9606-1 135, methods: [arc seam], valid_until: 2026-10-12 }\n',
      ],
    ],
  ],
  [
    'the approval ends on the day of the weld',
    releasedRing,
    [["26-04' }]", "26-04', valid_until: 2026-10-09 }]"]],
  ],
  [
    'a qualification that names no kind of joint',
    wholeJob,
    [["'resistance spot, steel'", 'body structure level 3']],
  ],
  [
    'the name alone at the operation, the test once for the job',
    wholeJob,
    [
      [holm, 'by: { name: Holm T. }'],
      [
        '  written_by: { name: R. Amsel, role: estimator }\n',
        "  written_by: { name: R. Amsel, role: estimator }\n  joined_by: [{ name: T. Holm, qualification: 'shop test 26-11: peel of ten spots' }]\n",
      ],
    ],
  ],
  [
    'a skin that carries no crash load, welded by nobody named',
    ring,
    [
      [
        joinedBy,
        '  joined_by: [{ name: T. Holm, qualification: spot test 26-04, methods: [resistance spot] }]\n',
      ],
    ],
  ],
  [
    'a rail welded by a bonder who was tested in both',
    bondedRail,
    [["'bonding and riveting, aluminium'", "'ISO 9606-2 131, bonding course 26-03'"]],
  ],
  ['the battery said to be out by its operation alone', electric, [['    battery_removed: true\n', '']]],
  [
    'the battery stays in, at its distance and by its page',
    electric,
    packStaysIn.map(([from, to]) => [from, to]),
  ],
  [
    'nothing beside the weld by the page that shows where the battery ends',
    electric,
    [
      ...packStaysIn.slice(0, 2),
      [cable, '        near: []\n        clear_cite: { reference: sill, at: p. 3 }\n'],
    ],
  ],
  ['nothing beside the weld, the battery out', electric, [[cable, '        near: []\n']]],
  ['the battery out at the step before the weld', batteryOut, [['        step: 4\n', '        step: 19\n']]],
  [
    'none found after cutting back',
    wholeJob,
    [['found: none found }', 'found: none found after cutting back }']],
  ],
  [
    'none found, by boroscope',
    wholeJob,
    [['found: none found }', "found: 'none found, boroscope, both cavities; not by eye alone' }"]],
  ],
  [
    'a belt that jammed and was replaced',
    bondedRail,
    [['belts_checked: "All looked', 'belts_checked: "Rear left belt jams, replaced; all others looked']],
  ],
  [
    'belts without bolts that are used once',
    wholeJob,
    [['one_time: renewed, cite: { reference: safe', 'one_time: none, cite: { reference: safe']],
  ],
  [
    'a curtain airbag off and no belt',
    ring,
    [
      ['    fasteners: { one_time: renewed, cite: { reference: safe, at: section 7 } }\n', ''],
      [
        '      - { unit: belt pretensioner, name: Front belt left, at: ring-l, state: undeployed, treatment: removed, step: 2 }\n',
        '',
      ],
    ],
  ],
  [
    'an engine code with its reason',
    releasedRing,
    [
      [
        'shop tool 4.2, codes: []',
        'shop tool 4.2, codes: [{ code: P0300, system: engine, state: active, explanation: known to the owner before the crash }]',
      ],
    ],
  ],
];

describe('near misses of empty claims stay cleared', () => {
  test.each(nearMisses)('%s', (_name, plan, changes) => {
    expect(ruleIds(judgeText(changed(plan, changes)))).toEqual([]);
  });
});

describe('the number of the vehicle read twice', () => {
  const note = (from: string, at: string): boolean =>
    ruleIds(
      judgeText(
        changed(ring, [
          ['read_from: plate in the windscreen', `read_from: ${from}`],
          ['confirmed_at: stamp in the right sill', `confirmed_at: ${at}`],
        ]),
      ),
      ['note'],
    ).includes('vehicle-number-read-at-one-place');

  test.each([
    ['windscreen', 'windscreen'],
    ['plate in the windscreen', 'windscreen'],
    ['Windscreen plate', 'windshield, read again'],
    ['door pillar, left', 'sticker on the left door pillar'],
    ['stamp in the right sill', 'same'],
  ])('%s and %s are one place', (from, at) => {
    expect(note(from, at)).toBe(true);
  });

  test.each([
    ['plate in the windscreen', 'stamp in the right sill'],
    ['left door pillar', 'right door pillar'],
    ['windscreen', 'control unit of the engine'],
    ['plate on the dashboard', 'stamp on the strut tower'],
  ])('%s and %s are two', (from, at) => {
    expect(note(from, at)).toBe(false);
  });
});
