import { bondedRail } from './faults-of-the-bonded-rail.ts';
import { batteryOut } from './faults-of-the-battery-out.ts';
import { wholeJob } from './faults-of-the-whole-job.ts';
import type { Fault } from './fault.ts';
import { electric } from './one-change.ts';
import { releasedRing } from './released.ts';

/** By whom the battery-out job was welded, at each of its two operations. */
const welder =
  "        by: { name: T. Holm, role: body technician, qualification: 'resistance spot, steel' }\n";
const battery = / {2}- id: battery\n[\s\S]*?(?=\nmeasurements:)/u;
const pack = battery.exec(batteryOut)?.[0] ?? '';
const electricPack = battery.exec(electric)?.[0] ?? '';
const joinedBy = / {2}joined_by: .*\n/u.exec(releasedRing)?.[0] ?? '';

/** The battery stays in, beside the work at its distance, by a page that says that it may. */
export const packStaysIn: readonly (readonly [string, string])[] = [
  ['    battery_removed: true\n', ''],
  [electricPack, ''],
  [
    'treatment: removed }\n',
    'treatment: removed }\n          - { item: traction battery, distance: 400 mm, path: joined, treatment: stays, cite: { reference: sill, at: p. 11 } }\n',
  ],
];

/**
 * Whole jobs of which one thing is claimed and not so: somebody welds, the battery is out, nothing was found, all is tight. Written by a
 * reader who knows the trade. What is a fault is common practice; ISO 9606 and ISO 14732 are from memory.
 */
export const faultsOfClaims: readonly Fault[] = [
  {
    plan: wholeJob,
    severity: 'hold',
    name: 'joints: nobody is named who made them',
    changes: [
      ["        by: { name: T. Holm, role: body technician, qualification: 'resistance spot, steel' }\n", ''],
    ],
    rule: 'joints-made-by-nobody',
    on: '- to: apron-l',
  },
  {
    plan: releasedRing,
    severity: 'hold',
    name: 'joints: who makes them is named for adhesive alone',
    changes: [
      [joinedBy, '  joined_by: [{ name: S. Vey, qualification: bonding test 26-01, methods: [adhesive] }]\n'],
    ],
    rule: 'joints-made-by-nobody',
    on: '- to: sill-inner-l',
  },
  {
    plan: batteryOut,
    severity: 'hold',
    name: 'joints: twenty years at the work in the place of a test',
    changes: [
      [
        `${welder}        done: 2026-09-15T15:00`,
        `${welder.replace("'resistance spot, steel'", '20 years of experience')}        done: 2026-09-15T15:00`,
      ],
    ],
    rule: 'joints-made-without-qualification',
    on: 'qualification: 20 years',
  },
  {
    plan: bondedRail,
    severity: 'hold',
    name: 'joints: bonded by a welder of steel',
    changes: [["qualification: 'bonding and riveting, aluminium'", 'qualification: ISO 9606-1 135']],
    rule: 'joints-made-by-other-test',
    on: 'qualification: ISO 9606-1',
  },
  {
    plan: releasedRing,
    severity: 'hold',
    name: 'joints: the approval ended a week before the weld',
    changes: [["shop test 26-04' }]", "shop test 26-04', valid_until: 2026-10-02 }]"]],
    rule: 'approval-of-joiner-lapsed',
    on: 'valid_until: 2026-10-02',
  },
  {
    plan: batteryOut,
    severity: 'hold',
    name: 'battery: it is out by the steps and by no operation',
    changes: [[pack, '']],
    rule: 'battery-removed-by-no-operation',
    on: 'battery_removed: true',
  },
  {
    plan: wholeJob,
    severity: 'hold',
    name: 'battery: out for the bake alone, by no operation',
    changes: [['traction_battery: in the vehicle', 'traction_battery: removed']],
    rule: 'battery-removed-by-no-operation',
    on: 'traction_battery: removed',
  },
  {
    plan: batteryOut,
    severity: 'stop',
    name: 'battery: taken out when the sill is welded',
    changes: [['        step: 4\n        refit_step: 50\n', '        step: 25\n        refit_step: 50\n']],
    rule: 'battery-taken-out-after-the-work',
    on: 'step: 25',
  },
  {
    plan: electric,
    severity: 'hold',
    name: 'battery: nothing beside a weld on the sill of an electric car',
    changes: [
      ...packStaysIn.slice(0, 2),
      [
        '        near:\n          - { item: high-voltage cable, distance: 400 mm, path: through air, treatment: removed }\n',
        '        near: []\n',
      ],
    ],
    rule: 'battery-not-placed-beside-the-work',
    on: 'near: []',
  },
  {
    plan: wholeJob,
    severity: 'hold',
    name: 'damage: none looked at, where nothing found should stand',
    changes: [['found: none found }', 'found: none looked at }']],
    rule: 'indirect-damage-not-stated',
    on: 'indirect: {',
  },
  {
    plan: batteryOut,
    severity: 'hold',
    name: 'damage: one side of it not looked at',
    changes: [['found: none found }', "found: 'none found on the right, left sill not looked at' }"]],
    rule: 'indirect-damage-not-looked-for',
    on: 'left sill not looked at',
  },
  {
    plan: wholeJob,
    severity: 'stop',
    name: 'belts: n/a, did not check',
    changes: [
      [
        'belts_checked: Front left belt and buckle replaced by the list, the others in order',
        'belts_checked: n/a - did not check',
      ],
    ],
    rule: 'belts-not-checked-after-deployment',
    on: 'belts_checked: n/a',
  },
];
