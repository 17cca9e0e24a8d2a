import { readFileSync } from 'node:fs';
import type { Fault } from './fault.ts';

/** A battery-electric car of which only the skin is brazed, isolated for it, from intake to release. */
export const weldedSkin = readFileSync('tests/quarter-of-an-electric-car.yaml', 'utf8');

const hold = { plan: weldedSkin, severity: 'hold' } as const;
const stop = { plan: weldedSkin, severity: 'stop' } as const;
const person =
  'person: { name: L. Brandt, role: high-voltage technician, qualification: high-voltage level 2 }';
const proof = /\n {4}proof_of_absence: .*/u.exec(weldedSkin)?.[0] ?? '';
const again = /\n {2}high_voltage:\n {4}done: 2026-09-28T10:00\n(?: {4}.*\n)+/u.exec(weldedSkin)?.[0] ?? '';
const assistCovers =
  'document: N-VEL-0300, revision: B, published: 2024-01-15, covers: { maker: Norrin, model: Vell,';

/** Found by a reader who knows the trade and not the code; what is a fault is common practice, and 29 CFR 1910.333 as a model. */
export const faultsOfTheWeldedSkin: readonly Fault[] = [
  {
    ...stop,
    name: 'isolated and proved two hours after the brazing',
    changes: [
      ['done: 2026-09-17T09:00, wait', 'done: 2026-09-22T12:00, wait'],
      ['done: 2026-09-17T09:20, meter', 'done: 2026-09-22T12:20, meter'],
    ],
    rule: 'high-voltage-step-out-of-order',
    on: 'isolation: {',
  },
  {
    ...stop,
    name: 'isolated and proved a day after the brazing',
    changes: [
      ['done: 2026-09-17T09:00, wait', 'done: 2026-09-23T09:00, wait'],
      ['done: 2026-09-17T09:20, meter', 'done: 2026-09-23T09:20, meter'],
    ],
    rule: 'high-voltage-step-out-of-order',
    on: 'proof_of_absence: {',
  },
  {
    ...stop,
    name: 'the meter was not proved again',
    changes: [['meter_proved_after: true', 'meter_proved_after: false']],
    rule: 'proof-of-absence-denied',
    on: 'proof_of_absence: {',
  },
  {
    ...hold,
    name: 'the meter is not said to be proved again',
    changes: [[', meter_proved_after: true', '']],
    rule: 'proof-of-absence-incomplete',
    on: 'proof_of_absence: {',
  },
  {
    ...hold,
    name: 'the service plug pulled, and no proof',
    changes: [[proof, '']],
    rule: 'absence-of-voltage-not-planned',
    on: 'high_voltage:\n    planned: true',
  },
  {
    ...hold,
    name: 'isolated on no day',
    changes: [['isolation: { planned: true, done: 2026-09-17T09:00, ', 'isolation: { planned: true, ']],
    rule: 'isolation-for-welding-undated',
    on: 'isolation: {',
  },
  {
    ...hold,
    name: 'isolated by somebody without a qualification',
    changes: [[person, 'person: { name: L. Brandt, role: high-voltage technician }']],
    rule: 'high-voltage-person-not-qualified',
    on: 'person: { name: L. Brandt, role: high-voltage technician }',
  },
  {
    ...hold,
    name: 'never re-commissioned',
    changes: [[again, '\n']],
    rule: 're-commissioning-missing',
    on: 'verify:',
  },
  {
    ...hold,
    name: 'written as a combustion car, the block and all that speaks of it left in',
    changes: [['drive: battery-electric', 'drive: combustion']],
    rule: 'drive-contradicted',
    on: 'drive: combustion',
  },
  {
    ...hold,
    name: 'written as a combustion car, and only the bake tells of a battery',
    changes: [
      ['drive: battery-electric', 'drive: combustion'],
      [again, '\n'],
      [/ {2}high_voltage:\n {4}planned(?:.*\n)+?(?= {2}fire)/u.exec(weldedSkin)?.[0] ?? '?', ''],
    ],
    rule: 'welded-without-isolation',
    on: 'drive: combustion',
  },
  {
    ...hold,
    name: 'a sensor calibrated by the book of another model',
    changes: [[assistCovers, assistCovers.replace('Vell', 'Pell')]],
    rule: 'check-cited-from-another-vehicle',
    on: 'sensor: rear corner radar left',
  },
  {
    ...hold,
    name: 'aligned to the data of the car before',
    changes: [
      [
        'make_safe:\n',
        '  - { id: axle, kind: maker procedure, document: N-VEA-4100, revision: B, covers: { maker: Norrin, model: Vell, bodies: [all], years: 2016-2019 }, looked_up: 2026-09-15, for_job: J-503 }\nmake_safe:\n',
      ],
      [
        'result: within range\n    cite: { reference: quarter, at: p. 20 }',
        'result: within range\n    cite: { reference: axle, at: p. 20 }',
      ],
    ],
    rule: 'check-cited-from-another-vehicle',
    on: 'cite: { reference: axle, at: p. 20 }',
  },
];
