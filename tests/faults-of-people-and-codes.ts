import type { Fault } from './fault.ts';
import { wholeJob } from './faults-of-the-whole-job.ts';

const hold = { plan: wholeJob, severity: 'hold' } as const;
const noCodes = 'scan_after: { done: 2026-10-12T11:00, tool: shop tool 4.2, codes: [] }';

/** What the codes say against their own list, and who signs with which paper. Ranges of numbers by SAE J2012, from memory. */
export const faultsOfPeopleAndCodes: readonly Fault[] = [
  {
    ...hold,
    name: 'codes: one of the traction battery is booked under the engine',
    changes: [
      [
        noCodes,
        noCodes.replace(
          '[]',
          '[{ code: P0AA6, system: engine, state: stored, explanation: from the time without voltage }]',
        ),
      ],
    ],
    rule: 'code-under-another-system',
    on: 'scan_after: {',
  },
  {
    ...hold,
    name: 'codes: a control unit does not answer',
    changes: [
      [
        noCodes,
        noCodes.replace(
          '[]',
          '[{ code: U0121, system: other, state: active, explanation: no message received }]',
        ),
      ],
    ],
    rule: 'control-unit-not-answering',
    on: 'scan_after: {',
  },
  {
    ...hold,
    name: 'the number of the vehicle was read off a paper',
    changes: [
      ['read_from: plate in the windscreen', 'read_from: claim form'],
      ['confirmed_at: stamp in the right sill', 'confirmed_at: registration papers'],
    ],
    rule: 'vehicle-number-not-read-on-the-vehicle',
    on: 'read_from: claim form',
  },
  {
    ...hold,
    name: 'signed by somebody who is qualified for something else',
    changes: [
      ['qualification: body structure level 3 }\n  date', 'qualification: high-voltage level 2 }\n  date'],
    ],
    rule: 'signed-with-another-qualification',
    on: 'role: workshop lead, qualification: high-voltage level 2',
  },
];
