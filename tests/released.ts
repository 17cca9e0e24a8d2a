import { changed, electric, ring } from './one-change.ts';

// The plans that are cleared for the start of the work, as they stand when the work is done. Each is cleared for release.

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
    '        earth_clamp: On the side panel',
    '        done: 2026-10-12\n        earth_clamp: On the side panel',
  ],
  [
    'factory_adhesive: false\n            coupon: planned\n',
    'factory_adhesive: false\n            coupon: { result: passed, date: 2026-10-08, nugget: 6.3 mm }\n            count_done: 56\n            record: P-2207-1\n            done: 2026-10-09\n',
  ],
  ['        earth_clamp: On the sill,', '        done: 2026-10-09\n        earth_clamp: On the sill,'],
  ['before: [0 mm, 0 mm, 0 mm] }', 'before: [0 mm, 0 mm, 0 mm], after: [0 mm, 0 mm, 0 mm] }'],
  [
    'before: [1800.4 mm, 0 mm, 0.2 mm] }',
    'before: [1800.4 mm, 0 mm, 0.2 mm], after: [1800 mm, 0 mm, 0 mm] }',
  ],
  [
    'before: [0.1 mm, 1120.3 mm, 0 mm] }',
    'before: [0.1 mm, 1120.3 mm, 0 mm], after: [0 mm, 1120 mm, 0 mm] }',
  ],
  ['tolerance: 3 mm }', 'tolerance: 3 mm, after: [1412 mm, -702 mm, 611 mm] }'],
  ['  before: 2026-10-06\n', '  before: 2026-10-06\n  before_welding: 2026-10-08\n  after: 2026-10-13\n'],
  ['part: ring-l, planned: true', 'part: ring-l, planned: true, done: 2026-10-14'],
  ['part: sill-inner-l, planned: true', 'part: sill-inner-l, planned: true, done: 2026-10-14'],
  [
    'finish:\n',
    `verify:
  scan_before: { done: 2026-10-06, codes: [] }
  scan_after: { done: 2026-10-16, tool: shop tool 4.2, codes: [] }
  restraints: { done: 2026-10-16, result: complete }
  road_test: { done: 2026-10-16, result: passed }
sign_off:
  by: { name: B. Ohm, role: workshop lead, qualification: body structure level 3 }
  date: 2026-10-17
record:
  kept: [procedures with their revision, measurements, weld coupons, fault codes, photographs before closing]
  where: job folder
  until: 2037-01-01
finish:
`,
  ],
]);

export const releasedElectric = changed(electric, [
  ['point: flange before closing, by', 'point: flange before closing, done: 2026-10-20T12:00, by'],
  [
    'point: structure before the last weld, by',
    'point: structure before the last weld, done: 2026-10-20T11:00, by',
  ],
  ['stage: start', 'stage: release'],
  [
    'fasteners: { one_time: renewed, cite: { reference: hv, at: p. 21 } }',
    `fasteners: { one_time: renewed, cite: { reference: hv, at: p. 21 }, tightened: 2026-10-21T09:00 }
        by: { name: L. Brandt, qualification: high-voltage level 2 }
        done: 2026-10-21T09:00`,
  ],
  [
    'verify:\n  scan_before: { planned: true }\n  high_voltage: { planned: true }\n  scan_after: { planned: true }\n\n',
    '',
  ],
  ['sealer: { planned: true,', 'sealer: { planned: true, done: 2026-10-20,'],
  ['primer: { planned: true, product', 'primer: { planned: true, done: 2026-10-20, product'],
  ['fitted: [12 V], key', 'fitted: [12 V], done: 2026-10-20T08:00, key'],
  [
    '  high_voltage:\n',
    '  fire: { planned: true, done: 2026-10-20, extinguisher: Two of 6 kg beside the bay, watch: 40 min }\n  high_voltage:\n',
  ],
  ['units: [] }', 'units: [], done: 2026-10-20T08:20, belts_checked: in order }'],
  [
    'isolation: { planned: true, ',
    'isolation: { planned: true, done: 2026-10-20T09:00, lock: Padlock K-7 and tag, ',
  ],
  [
    'proof_of_absence: { planned: true }',
    'proof_of_absence: { planned: true, done: 2026-10-20T09:30, meter_proved_before: true, reading: 0.2 V, meter_proved_after: true }',
  ],
  [
    'coupon: planned',
    'coupon: { result: passed, date: 2026-10-20, nugget: 6 mm }\n            count_done: 38\n            record: P-2219-1\n            done: 2026-10-20T13:00',
  ],
  ['        clear_within: 300 mm\n', '        clear_within: 300 mm\n        done: 2026-10-20T13:00\n'],
  ['before: [0 mm, 0 mm, 0 mm] }', 'before: [0 mm, 0 mm, 0 mm], after: [0 mm, 0 mm, 0 mm] }'],
  [
    'before: [1900.2 mm, 0 mm, 0.1 mm] }',
    'before: [1900.2 mm, 0 mm, 0.1 mm], after: [1900 mm, 0 mm, 0 mm] }',
  ],
  [
    'before: [0.1 mm, 1180.1 mm, 0 mm] }',
    `before: [0.1 mm, 1180.1 mm, 0 mm], after: [0 mm, 1180 mm, 0 mm] }
    - { name: S1, on: sill-l, nominal: [950 mm, -60 mm, 40 mm], before: [951 mm, -48 mm, 43 mm], after: [950.2 mm, -59.4 mm, 40.3 mm], tolerance: 3 mm }`,
  ],
  ['  before: 2026-10-20\n', '  before: 2026-10-20\n  before_welding: 2026-10-20\n  after: 2026-10-20\n'],
  ['part: sill-l, planned: true', 'part: sill-l, planned: true, done: 2026-10-20'],
  [
    'finish:\n',
    `verify:
  high_voltage:
    done: 2026-10-21T10:00
    by: { name: L. Brandt, qualification: high-voltage level 2 }
    insulation: 900 Ω/V
    checked: [connectors, enclosure, mounting, coolant]
    faults: none
  scan_before: { done: 2026-10-19, codes: [] }
  scan_after: { done: 2026-10-21, codes: [] }
sign_off:
  by: { name: B. Ohm, role: workshop lead, qualification: body structure level 3 }
  date: 2026-10-21
record:
  kept: [procedures with their revision, measurements, weld coupons, fault codes, photographs before closing]
  where: job folder
  until: 2037-01-01
finish:
`,
  ],
]);
