import type { Deriving } from './facts-of.ts';

/** A plan that states whatever a plan can state, so that every fact is known on one of its sheets. It is no good plan. */
export const fullPlan = `format: 1
stage: release
job: { number: K-1, opened: 2026-10-05, first_estimate: 2026-10-01, written_by: { name: R. Amsel, role: estimator }, joined_by: [{ name: T. Holm, qualification: in training, methods: [resistance spot] }, { name: S. Vey, qualification: ISO 9606-2, methods: [plug weld], valid_until: 2026-01-01 }] }
vehicle:
  maker: Corvane
  model: Tarn
  body: wagon
  model_year: 2021
  model_year_from: maker look-up
  build_date: 2020-09-01
  vin: 0CVBABAT6M0002207
  confirmed_at: door label
  market: united-states
  weight_class: light
  drive: [plug-in-hybrid, mild-hybrid]
  earlier_repairs: [{ part: Door ring, what: foot cut }]
references:
  - { id: own, kind: maker procedure, title: Ring, document: BRM-1, revision: D, published: 2021-02-01, looked_up: 2026-10-06, calls: [own], covers: { maker: Corvane, model: Tarn, bodies: [wagon], years: 2020-2022 } }
  - { id: own, kind: training }
make_safe:
  low_voltage: { planned: true, done: 2026-10-07T08:00, batteries: [12 V, 48 V], memory_supply: true, by: { name: A, qualification: q }, cite: { reference: own, at: p. 1 } }
  restraints: { planned: true, done: 2026-10-07T08:00, wait: 10 min, wait_asked: 5 min, wait_cite: { reference: own, at: p. 2 }, units: [{ unit: belt pretensioner, at: sill, state: undeployed, treatment: removed, step: 1 }, { unit: airbag, at: ring, state: undeployed, treatment: removed, step: 1 }, { unit: knee airbag, state: deployed, treatment: stays }, { unit: other, state: not yet seen, treatment: removed }], deployed: true, wiring: untouched, control_unit: replaced, belts_checked: one jams, replacement_list: { reference: own, at: p. 3 } }
  high_voltage:
    planned: true
    battery_condition: sound
    person: { name: L, qualification: "high voltage, level 2" }
    cables_in_zone: unplugged and laid aside
    isolation: { planned: true, done: 2026-10-07T08:30, lock: K-7, wait: 5 min }
    quarantine: { place: yard, distance: 20 m, watch: 48 h }
    proof_of_absence: { planned: true, done: 2026-10-07T08:40, meter_proved_before: true, reading: 0.2 V }
  fire: { fluids: [{ item: fuel line, treatment: stays }, { item: fuel tank, treatment: stays }] }
  lifting: { points: [sill] }
damage: { direct: [ring], indirect: { looked_at: [roof gap], found: 'none, roof not checked' } }
parts:
  - id: skin
    name: Side panel
    kind: side panel
    structural: false
    over: ring
    class: mild
    strength: 300 MPa
    thickness: 0.7 mm
    coating: zinc
    radar_behind: false
    damage: { kind: tear, found_by: seen, short_radius: false, line_left: false, tolerable_by: { reference: own, at: p. 1 } }
    operations:
      - { id: cut, do: section, step: 5, at: B, zone: foot, extent: part, reason: To reach the ring., cite: { reference: own, at: p. 4 }, fire_watch: 30 min, earth_clamp: here, control_units: none, near: [{ item: traction battery, treatment: removed }] }
      - { do: refinish, film: 0.15 mm, film_limit: 0.2 mm, added_metal: plate, fasteners: { one_time: renewed } }
      - { do: bake, step: 90, temperature: 70 °C, hold: 30 min }
  - id: ring
    name: Door ring
    kind: door ring
    side: left
    one_piece: true
    under: skin
    grade: 22MnB5+AS150
    strength: 420 MPa
    grade_from: { reference: own, at: p. 4 }
    thickness: 1.4 mm
    zones: [{ name: foot, strength: 600 MPa }]
    condition: recycled
    donor: { taken_off: unbolted, flooded: false, vin: 0CVBAB2BZM0009999, maker: Corvane, model: Tarn, body: wagon, model_year: 2021, damage: none, cite: { reference: own, at: p. 5 } }
    damage: { kind: kink, found_by: outer panel cut back }
    operations:
      - do: section
        at: C
        done: 2026-10-08
        cite: { reference: own, at: p. 14 }
        joints:
          - { to: sill, method: resistance spot, form: flange, flange_coat: sealer, done: 2026-10-01, sheets: [ring, sill], factory_count: 42, count: 56, count_done: 56, coupon: passed, factory_adhesive: true, insulation: tape, drawn: true }
          - { to: sill, method: resistance spot, form: flange, sheets: [ring, sill], factory_count: 42, factory_method: resistance spot, count: 56, nugget: 6 mm, pitch: 30 mm, widest_gap: 32 mm, factory_pitch: 33 mm, length: 1600 mm, overlap: 18 mm, edge: 9 mm, access: both sides, pattern: { count: 57, cite: { reference: own, at: p. 15 } }, coupon: { result: passed, date: 2026-10-07, nugget: 6.1 mm, failure: button, at_job_pitch: true, same_setup: true, sheets: [{ grade: 22MnB5, thickness: 1.4 mm }, { grade: HC340LA, thickness: 1.2 mm }] }, settings: { machine: M, program: P, force: 1.2 kN, current: 9 kA, weld_time: 240 ms, tip: 6 mm, most_force: 5 kN, most_current: 14 kA } }
          - { to: sill, method: plug weld, form: lap, sheets: [ring, sill], count: 3, hole: 8 mm, edge: 15 mm, filler: G3Si1, gas: M21 }
          - { to: sill, method: arc seam, form: butt with insert, place: D, done: 2026-10-09, sheets: [ring, sill], gap: 2 mm, insert: { length_each_side: 30 mm, grade: HC340LA, thickness: 1.4 mm } }
          - { to: sill, method: adhesive and rivet, sheets: [ring, sill], pitch: 30 mm, edge: 10 mm, done: 2026-10-11, adhesive: { cure: 72 h at 20 °C, lot: L1, expires: 2026-12-01, open_time: 60 min, closed_after: 30 min, cured: 2026-10-12 }, fastener: { product: R-48, kind: structural, diameter: 4.8 mm, head: raised, grip_from: 2 mm, grip_to: 4 mm, coating: zinc flake }, old_holes: beside them, edges_sealed: true, own_tools: true }
          - { to: sill, method: adhesive, sheets: [skin, ring, sill], done: 2026-10-08T08:00, adhesive: { cure: 24 h, cured: 2026-10-08T10:00 } }
        near: [{ item: wiring, distance: 20 mm, path: joined }]
      - { do: weld, earth_clamp_on: same part, earth_clamp_distance: 200 mm, control_units_state: unplugged, joints: [{ method: arc seam, form: open butt, done: 2026-10-08T09:00, settings: { voltage: 17 V, current: 90 A, travel_speed: 8 mm/s } }] }
      - { do: section, at: B, cut_with: saw, conditions_met: [coupon before the weld], cite: { reference: own, at: p. 14 } }
  - id: sill
    kind: sill
    grade: HC340LA
    grade_from: { reference: own, at: p. 4 }
    thickness: 1.2 mm
    joined_to: [ring]
    operations:
      - do: heat
        source: induction
        temperature: 600 °C
        hold: 60 s
        times: 1
        measured_by: { means: contact probe, place: middle of the zone, calibration_due: 2027-01-01 }
        cooling: still air
        shape: disc
        radius: 20 mm
        near: [{ part: ring, distance: 40 mm, path: joined, treatment: stays, cite: { reference: own, at: p. 6 }, sink: { kind: wet cloth, distance: 10 mm, width: 20 mm, length: 300 mm, water: 200 g, across: true, done: 2026-10-08 }, watched_by: { means: contact probe }, reading: 90 °C }, { item: fuel line, distance: 400 mm, path: through air, treatment: removed }]
        limit: { temperature: 650 °C, time: 90 s, times: 2, cite: { reference: own } }
        clear_within: 300 mm
  - { id: tunnel, kind: tunnel, grade: DC01+C390, damage: { kind: none, found_by: measured }, operations: [{ do: leave, cite: { reference: own, at: p. 1 } }] }
  - { id: ring-r, name: Door ring, kind: door ring, side: right, grade: CR290Y490T-GI50/50, coating: aluminium-silicon, thickness: 1.4 mm }
  - { id: pack, kind: traction battery, operations: [{ do: remove and refit, step: 1, refit_step: 2 }] }
  - { id: cap, name: Sill skin, kind: sill skin, over: core, joined_to: [sill], operations: [{ do: replace, step: 10, extent: whole, done: 2026-10-09, joints: [{ to: core, method: resistance spot, count: 30 }] }] }
  - { id: core, name: Sill core, kind: sill reinforcement, under: lid, operations: [{ do: replace, step: 20, extent: whole, done: 2026-10-08 }] }
  - { id: lid, name: Outer panel, kind: side panel }
  - { id: rail, name: Rail, kind: front rail, damage: { kind: bend }, grade: HC340LA, strength: 550 MPa, operations: [{ do: straighten, method: cold }] }
measurements:
  system: optical
  calibration_due: 2027-01-01
  data_sheet: { maker: Corvane, model: Tarn, body: wagon, years: 2020-2022 }
  tolerance: 3 mm
  before: 2026-10-06
  before_welding: 2026-10-07
  after: 2026-10-09
  zero_points: [Z1, Z2, Z3]
  uncertainty: 0.5 mm
  points:
    - { name: Z1, on: tunnel, nominal: [0 mm, 0 mm, 0 mm], before: [0 mm, 0 mm, 0 mm], after: [0 mm, 0 mm, 0 mm] }
    - { name: Z2, on: ring, nominal: [0 mm, 0 mm, 0 mm], before: [1 mm, 0 mm, 0 mm] }
    - { name: Z3, on: tunnel, nominal: [1800 mm, 0 mm, 0 mm] }
  openings: [{ name: door, diagonals_before: [1200 mm, 1202 mm], diagonals_after: [1200 mm, 1201 mm] }]
hold_points: [{ point: flange before closing, part: ring, done: 2026-10-09, by: { name: R. Amsel } }]
finish:
  cavities: [{ part: ring, primer: epoxy, wax: yes, drains_open: true, done: 2026-10-10 }]
  sealer: { done: 2026-09-01 }
  bake: { done: 2026-10-09, temperature: 60 °C, time: 30 min, battery_limit: { temperature: 60 °C, cite: { reference: own, at: p. 9 } } }
verify:
  alignment: { done: 2026-10-12, result: within range, cite: { reference: own, at: p. 7 }, values: [{ of: camber, at: front left, specified: 0°10', tolerance: 0°10', after: 1°00' }, { of: camber, at: front right }] }
  calibrations:
    - { sensor: front camera, kind: static, result: passed, done: 2026-10-12, conditions: { floor: 'Bay, levelled 2025-01-10' }, report: R-1 }
    - { sensor: front radar, kind: static, result: passed, done: 2026-10-12, report: R-1 }
  warning_lamps: { lit: [{ lamp: airbag }, { lamp: washer fluid }] }
  road_test: { done: 2026-10-11, result: passed }
  high_voltage: { done: 2026-10-09, insulation: 900 Ω/V, limit: 500 Ω/V, coolant: tight, state_of_charge: 40 % }
  scan_after: { done: 2026-10-09, not_possible: takes no current, codes: [{ code: B1, system: restraint, state: active }, { code: C1, system: brake }, { code: C2, system: driver assistance }] }
deviations: [{ rule: revision-missing, by: { name: L. Brandt, role: master }, date: 2026-10-10, expires: 2026-10-30 }]
record: { kept: [all], until: 2036-10-20 }
sign_off: { by: { name: R. Amsel }, date: 2026-10-20, plan_revision: A, open_holds: two, digests: { plan: "sha256:0", packs: [{ pack: general, version: 1.0.0 }, { pack: mine, version: 1.0.0 }] } }
typo: 1
`;

/** A claim that no operation bears out. */
export const batteryOutByNobody = 'make_safe: { high_voltage: { battery_removed: true } }';

/** It comes out when the weld beside it is done. */
export const batteryOutTooLate = `parts:
  - { id: sill, kind: sill, operations: [{ do: weld, step: 1, near: [{ item: traction battery, treatment: removed }] }] }
  - { id: pack, kind: traction battery, operations: [{ do: remove and refit, step: 9 }] }
`;

/** The measuring in full: the datum disagrees, a point is misread, and an opening is named by its corners. */
export const fullMeasuring = `measurements:
  zero_points: [Z1, Z2, Z3, Z4]
  points:
    - { name: Z1, nominal: [0 mm, -560 mm, 0 mm], before: [0 mm, -555 mm, 0 mm], after: [0 mm, -555 mm, 0 mm] }
    - { name: Z2, nominal: [1800 mm, -560 mm, 0 mm], before: [1800 mm, -560 mm, 0 mm], after: [1800 mm, -560 mm, 0 mm] }
    - { name: Z3, nominal: [0 mm, 560 mm, 0 mm], before: [0 mm, 560 mm, 0 mm], after: [0 mm, 560 mm, 0 mm] }
    - { name: Z4, nominal: [1800 mm, 560 mm, 0 mm], before: [1800 mm, 560 mm, 0 mm], after: [1800 mm, 560 mm, 0 mm] }
    - { name: A1, nominal: [900 mm, 300 mm, 700 mm], before: [900 mm, -300 mm, 700 mm], after: [900 mm, -300 mm, 700 mm] }
  openings: [{ name: floor, corners: [Z1, Z2, Z4, Z3] }]
`;

/** Left for right in both measurings. */
export const mirroredMeasuring = fullMeasuring
  .replaceAll('900 mm, -300 mm', '900 mm, 300 mm')
  .replaceAll(
    /(before|after): \[(\d+) mm, (-?)(\d+) mm/gu,
    (_whole, occasion: string, x: string, sign: string, y: string) =>
      `${occasion}: [${x} mm, ${sign === '-' ? '' : '-'}${y} mm`,
  );

/** Left for right before the repair alone. */
export const mirroredBefore = fullMeasuring
  .replaceAll('900 mm, -300 mm', '900 mm, 300 mm')
  .replaceAll(
    /before: \[(\d+) mm, (-?)(\d+) mm/gu,
    (_whole, x: string, sign: string, y: string) => `before: [${x} mm, ${sign === '-' ? '' : '-'}${y} mm`,
  );

/** Points in each other’s rows: two before the repair, two others after it. */
export const exchangedMeasuring = fullMeasuring
  .replace('before: [0 mm, -555 mm', 'before: [1801 mm, -560 mm')
  .replace('before: [1800 mm, -560 mm', 'before: [0 mm, -560 mm')
  .replace('after: [0 mm, 560 mm', 'after: [1801 mm, 560 mm')
  .replace('after: [1800 mm, 560 mm', 'after: [0 mm, 560 mm');

/** What a plan can say against itself, and pages of another vehicle wherever one may be cited. */
export const fullOfSlips = `vehicle: { maker: Corvane, model: Tarn, body: wagon, model_year: 2021, drive: battery-electric, read_from: plate in the windscreen, confirmed_at: registration papers }
references: [{ id: other, kind: maker procedure, document: BRM-9, covers: { maker: Corvane, model: Ilex, bodies: [all], years: 2021 } }]
make_safe:
  low_voltage: { done: 2026-10-07 }
  restraints: { wait: 5 min, wait_cite: { reference: other }, replacement_list: { reference: other }, belts_checked: One buckle is cracked }
  high_voltage: { battery_condition: hit, proof_of_absence: { done: 2026-10-08, meter_proved_after: false } }
  fire: { watch: 10 min }
parts:
  - { id: cover, name: Cover, kind: bumper cover, radar_behind: true, operations: [{ do: replace, fasteners: { cite: { reference: other } } }] }
  - { id: rail, name: Rail, kind: front rail, structural: true, operations: [{ do: replace, by: { name: T. Holm }, done: 2026-10-08, joints: [{ method: arc seam }] }] }
measurements: { before_welding: 2026-10-06 }
verify:
  scan_before: { not_possible: no time }
  scan_after: { codes: [{ code: U1, system: driver assistance, state: active }, { code: B9, system: body }] }
  structural_release: { done: 2026-10-09, by: { name: T. Holm } }
  calibrations: [{ sensor: front radar, kind: not fitted, cite: { reference: other } }]
sign_off: { by: { name: T. Holm, qualification: high-voltage level 2 }, date: 2026-10-10 }
`;

/** Parts of the same pack: what is stated otherwise, and what the plan does not list. */
export const fullPlanParts: NonNullable<Deriving['parts']> = [
  {
    part: 'door ring',
    years: { from: 2020, to: 2022 },
    document: 'BRM-5',
    revision: 'A',
    grade: '22MnB5+AS150',
    thicknessMm: 1.7,
    onePiece: true,
    under: ['side panel'],
  },
  {
    part: 'c-pillar',
    years: { from: 2020, to: 2022 },
    document: 'BRM-5',
    revision: 'A',
    under: ['side panel'],
  },
];

export const fullPlanPack: NonNullable<Deriving['statements']> = [
  {
    part: 'door ring',
    years: { from: 2020, to: 2022 },
    document: 'BRM-1',
    revision: 'D',
    published: '2021-02-01',
    page: 'p. 14',
    shall: [{ do: 'replace', extent: 'whole' }],
    shallNot: [],
    may: [{ do: 'section', at: 'B' }],
    conditions: ['coupon before the weld'],
  },
  {
    part: 'side panel',
    years: { from: 2020, to: 2022 },
    document: 'BRM-2',
    revision: 'A',
    shall: [],
    shallNot: [{ do: 'section' }],
    may: [],
    conditions: [],
  },
];
