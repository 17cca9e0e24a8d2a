import { changed, ring } from './one-change.ts';

/** The ring plan after the work: every step bears its day, and the vehicle may go. */
export const releasedRing = changed(ring, [
  ['point: flange before closing, by', 'point: flange before closing, done: 2026-10-08T16:00, by'],
  [
    'point: structure before the last weld, by',
    'point: structure before the last weld, done: 2026-10-08T15:00, by',
  ],
  ['point: cavity before the skin, by', 'point: cavity before the skin, done: 2026-10-11T10:00, by'],
  ['stage: start', 'stage: release'],
  [
    'fasteners: { one_time: renewed, cite: { reference: safe, at: section 7 } }',
    'fasteners: { one_time: renewed, cite: { reference: safe, at: section 7 }, tightened: 2026-10-15 }',
  ],
  [
    'verify:\n  scan_before: { planned: true }\n  restraints: { planned: true }\n  scan_after: { planned: true }\n\n',
    '',
  ],
  ['sealer: { planned: true,', 'sealer: { planned: true, done: 2026-10-13,'],
  ['primer: { planned: true, product', 'primer: { planned: true, done: 2026-10-13, product'],
  ['    fitted: [12 V]\n', '    fitted: [12 V]\n    done: 2026-10-07T08:00\n'],
  [
    '    deployed: false\n',
    '    deployed: false\n    done: 2026-10-07T08:20\n    belts_checked: Left front belt and buckle replaced, seats in order\n  fire: { planned: true, done: 2026-10-09, extinguisher: Two of 6 kg beside the bay, watch: 40 min }\n  lifting: { planned: true, done: 2026-10-07, points: [floor] }\n',
  ],
  [
    'coupon: planned\n            settings',
    'coupon: passed\n            done: 2026-10-12\n            settings',
  ],
  [
    '        control_units: None within 300 mm of the current path.\n',
    '        control_units: None within 300 mm of the current path.\n        done: 2026-10-12\n',
  ],
  [
    '            coupon: planned\n',
    '            coupon: { result: passed, date: 2026-10-08, nugget: 6.3 mm }\n            count_done: 56\n            record: P-2207-1\n',
  ],
  [
    '        control_units: Unplugged under both front seats.\n',
    '        control_units: Unplugged under both front seats.\n        done: 2026-10-09\n',
  ],
  ['  before: 2026-10-06\n', '  before: 2026-10-06\n  before_welding: 2026-10-08\n  after: 2026-10-13\n'],
  ['before: [0 mm, 0 mm, 0 mm] }', 'before: [0 mm, 0 mm, 0 mm], after: [0 mm, 0 mm, 0 mm] }'],
  ['0.2 mm] }', '0.2 mm], after: [1800 mm, 0 mm, 0 mm] }'],
  ['1120.3 mm, 0 mm] }', '1120.3 mm, 0 mm], after: [0 mm, 1120 mm, 0 mm] }'],
  ['tolerance: 3 mm }', 'tolerance: 3 mm, after: [1412.2 mm, -701.6 mm, 611 mm] }'],
  ['- { part: ring-l, planned: true,', '- { part: ring-l, planned: true, done: 2026-10-14,'],
  ['- { part: sill-inner-l, planned: true,', '- { part: sill-inner-l, planned: true, done: 2026-10-14,'],
]).concat(`  bake: { planned: true, done: 2026-10-14, temperature: 60 °C, time: 30 min }
verify:
  scan_before: { done: 2026-10-06, codes: [] }
  scan_after: { done: 2026-10-16, tool: shop tool 4.2, codes: [] }
  restraints: { done: 2026-10-16, result: complete }
  road_test: { done: 2026-10-16, result: passed }
sign_off: { by: { name: B. Ohm, role: workshop lead, qualification: body structure level 3 }, date: 2026-10-17, open_holds: none }
record:
  kept: [procedures with their revision, measurements, weld coupons, fault codes, photographs before closing]
  where: job folder
  until: 2037-01-01
`);

/** The line on which the work on the ring is dated. */
export const ringDone: readonly [string, string] = [
  'control_units: Unplugged under both front seats.\n        done: 2026-10-09\n',
  'control_units: Unplugged under both front seats.\n',
];
