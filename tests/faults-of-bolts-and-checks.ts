import { bondedRail } from './faults-of-the-bonded-rail.ts';
import { wholeJob } from './faults-of-the-whole-job.ts';
import type { Fault } from './fault.ts';
import { releasedRing } from './released.ts';

const belts = / {4}fasteners: .*\n/u.exec(wholeJob)?.[0] ?? '';

/** Whole jobs in which a bolt is tightened by no page, or a check that nobody asked for failed. Common practice of the trade. */
export const faultsOfBoltsAndChecks: readonly Fault[] = [
  {
    plan: wholeJob,
    severity: 'hold',
    name: 'bolts: a belt comes off, and no page says how tight it goes on',
    changes: [[belts, '']],
    rule: 'belt-bolts-not-stated',
    on: 'restraints:\n',
  },
  {
    plan: wholeJob,
    severity: 'stop',
    name: 'bolts: those of the belt are used again',
    changes: [
      ['one_time: renewed, cite: { reference: safe', 'one_time: used again, cite: { reference: safe'],
    ],
    rule: 'belt-bolts-used-again',
    on: 'one_time: used again',
  },
  {
    plan: bondedRail,
    severity: 'hold',
    name: 'bolts: the beam is bolted on, and no page is cited for its torque',
    changes: [
      [
        '        fasteners: { one_time: renewed, cite: { reference: rail, at: p. 21 }, tightened: 2026-09-11 }',
        '        fasteners: { one_time: renewed, tightened: 2026-09-11 }',
      ],
    ],
    rule: 'torque-not-cited',
    on: 'one_time: renewed, tightened',
  },
  {
    plan: bondedRail,
    severity: 'hold',
    name: 'bolts: the torque stands on a page of no revision',
    changes: [
      [
        'fasteners: { one_time: renewed, cite: { reference: rail, at: p. 21 }',
        'fasteners: { one_time: renewed, cite: { reference: torque, at: p. 2 }',
      ],
      [
        '  - { id: wheels,',
        '  - { id: torque, kind: maker manual, title: Torque, document: T-LAN-0900, covers: { maker: Tessaro, model: Lanner, bodies: [all], years: 2021-2023 }, looked_up: 2026-09-01, for_job: K-2240 }\n  - { id: wheels,',
      ],
    ],
    rule: 'revision-missing',
    on: '- { id: torque',
  },
  {
    plan: bondedRail,
    severity: 'hold',
    name: 'bolts: the page for their torque was never looked up for this job',
    changes: [
      [
        'fasteners: { one_time: renewed, cite: { reference: rail, at: p. 21 }',
        'fasteners: { one_time: renewed, cite: { reference: torque, at: p. 2 }',
      ],
      [
        '  - { id: wheels,',
        '  - { id: torque, kind: maker manual, title: Torque, document: T-LAN-0900, revision: B, covers: { maker: Tessaro, model: Lanner, bodies: [all], years: 2021-2023 } }\n  - { id: wheels,',
      ],
    ],
    rule: 'look-up-not-dated',
    on: '- { id: torque',
  },
  {
    plan: releasedRing,
    severity: 'stop',
    name: 'checks: a camera that nothing asked for failed',
    changes: [
      [
        '  road_test: { done: 2026-10-16',
        '  calibrations: [{ sensor: rear camera, kind: static, result: failed, done: 2026-10-16 }]\n  road_test: { done: 2026-10-16',
      ],
    ],
    rule: 'check-failed',
    on: 'sensor: rear camera',
  },
  {
    plan: releasedRing,
    severity: 'stop',
    name: 'checks: an alignment that nothing asked for, not planned, and out of range',
    changes: [
      [
        '  road_test: { done: 2026-10-16',
        '  alignment: { planned: false, done: 2026-10-15, result: out of range }\n  road_test: { done: 2026-10-16',
      ],
    ],
    rule: 'check-failed',
    on: 'alignment: {',
  },
  {
    plan: releasedRing,
    severity: 'hold',
    name: 'checks: the engine reports a fault, and nobody says why',
    changes: [
      ['shop tool 4.2, codes: []', 'shop tool 4.2, codes: [{ code: P0300, system: engine, state: active }]'],
    ],
    rule: 'code-not-explained',
    on: 'code: P0300',
  },
];
