import { describe, expect, test } from 'vitest';
import { judgeText, ruleIds } from './judge-text.ts';
import { changed } from './one-change.ts';
import type { Change } from './one-change.ts';

// A knuckle that a kerb bent comes off and goes on by its bolts: the alignment tells of it, no measuring bench. Common practice.

const knuckle = `format: 1
stage: release
job: { number: K-9, opened: 2026-10-12, written_by: { name: P. Dunlin, role: estimator }, as_received: { mileage: 71000 km, warning_lamps: none, works: "rolls and steers, pulls right" }, revision: A }
vehicle: { maker: Norrin, model: Pell, body: hatchback, model_year: 2018, model_year_from: plate, vin: 0NRZZZ4PZJ0000600, read_from: plate in the windscreen, confirmed_at: stamp at the right strut tower, market: european-union, drive: combustion, earlier_repairs: none known }
references:
  - { id: sus, kind: maker procedure, title: Front suspension and steering, document: N-PEL-30, revision: C, published: 2018-09-01, covers: { maker: Norrin, model: Pell, bodies: [all], years: 2017-2020 }, looked_up: 2026-10-12, for_job: K-9 }
damage:
  impact: Right front wheel against a kerb in a turn.
  direct: [wheel-fr, knuckle-fr]
  indirect: { looked_at: [lower arm, tie rod and rack, strut, subframe and its bolts, rail, wheel bearing, drive shaft, strut tower], found: none found }
parts:
  - { id: wheel-fr, name: "Wheel, front right", kind: wheel, side: right, condition: new, damage: { kind: bend, found_by: measured, extent: 4 mm run-out }, operations: [{ do: replace, extent: whole, cite: { reference: sus, at: p. 2 }, fasteners: { one_time: none, cite: { reference: sus, at: p. 2 }, tightened: 2026-10-14 }, done: 2026-10-14 }] }
  - { id: knuckle-fr, name: "Steering knuckle, front right", kind: suspension part, side: right, condition: new, damage: { kind: bend, found_by: measured, extent: camber 1°20 off }, operations: [{ do: replace, extent: whole, cite: { reference: sus, at: p. 10-15 }, fasteners: { one_time: renewed, cite: { reference: sus, at: p. 15 }, tightened: 2026-10-14 }, done: 2026-10-14, by: { name: M. Rail, role: mechanic } }] }
verify:
  scan_before: { done: 2026-10-12, tool: shop tool 9.1, codes: [] }
  alignment:
    done: 2026-10-15
    result: within range
    cite: { reference: sus, at: p. 40 }
    values:
      - { of: camber, at: front left, specified: -0°30', tolerance: 0°30', before: -0°35', after: -0°35' }
      - { of: camber, at: front right, specified: -0°30', tolerance: 0°30', before: -1°50', after: -0°30' }
      - { of: caster, at: front left, specified: 4°00', tolerance: 0°30', before: 4°05', after: 4°05' }
      - { of: caster, at: front right, specified: 4°00', tolerance: 0°30', before: 3°20', after: 4°00' }
      - { of: toe, at: front left, specified: 0°05', tolerance: 0°05', before: 0°20', after: 0°05' }
      - { of: toe, at: front right, specified: 0°05', tolerance: 0°05', before: 0°25', after: 0°06' }
      - { of: camber, at: rear left, specified: -1°30', tolerance: 0°30', before: -1°28', after: -1°28' }
      - { of: camber, at: rear right, specified: -1°30', tolerance: 0°30', before: -1°25', after: -1°25' }
      - { of: total toe, at: rear axle, specified: 0°20', tolerance: 0°15', before: 0°18', after: 0°18' }
      - { of: thrust angle, specified: 0°00', tolerance: 0°10', before: 0°03', after: 0°03' }
  calibrations:
    - { sensor: steering angle sensor, disturbed: alignment, kind: static, result: passed, done: 2026-10-15, cite: { reference: sus, at: p. 42 } }
  scan_after: { done: 2026-10-15, tool: shop tool 9.1, codes: [] }
  road_test: { done: 2026-10-15, result: passed }
  warning_lamps: { done: 2026-10-15, lit: [] }
record: { kept: [plan, procedures with their revision, fault codes, alignment print-out, calibration report], where: job folder, until: 2037-01-01, owner_gets: [work order, alignment print-out] }
sign_off: { by: { name: G. Ruff, role: workshop lead, qualification: master }, date: 2026-10-16, plan_revision: A, open_holds: none }
`;

const ids = (...changes: readonly Change[]): readonly string[] => [
  ...ruleIds(judgeText(changed(knuckle, changes))),
];
const body = ['structure-not-measured-before', 'belts-not-checked'];

describe('running gear that is bolted on', () => {
  test.each<readonly [string, readonly Change[]]>([
    ['a knuckle', []],
    ['a tie rod', [['kind: suspension part', 'kind: steering part']]],
    [
      'bolts written as a joint',
      [
        [
          'one_time: renewed, cite: { reference: sus, at: p. 15 }, tightened: 2026-10-14 }, done: 2026-10-14, by',
          'one_time: renewed, cite: { reference: sus, at: p. 15 }, tightened: 2026-10-14 }, joints: [{ method: bolt }], done: 2026-10-14, by',
        ],
      ],
    ],
  ])('is no work on the body: %s', (_name, changes) => {
    expect(ids(...changes)).not.toEqual(expect.arrayContaining(body));
    expect(ids(...changes).filter((id) => body.includes(id))).toEqual([]);
  });

  test('the whole job of a knuckle is cleared', () => {
    expect(ids()).toEqual([]);
  });

  test.each<readonly [string, readonly Change[]]>([
    ['a subframe', [['kind: suspension part', 'kind: subframe']]],
    ['a bumper beam', [['kind: suspension part', 'kind: bumper beam']]],
    [
      'a knuckle that is straightened',
      [
        [
          'do: replace, extent: whole, cite: { reference: sus, at: p. 10-15 }',
          'do: straighten, method: cold, cite: { reference: sus, at: p. 10-15 }',
        ],
      ],
    ],
    [
      'a rail that was hit as well',
      [
        [
          'verify:\n',
          '  - { id: rail, name: "Rail, front right", kind: front rail, damage: { kind: bend, found_by: measured } }\nverify:\n',
        ],
      ],
    ],
    ['a rail of which words tell', [['found: none found', 'found: rail bent at the subframe']]],
    [
      'a tower that nobody saw',
      [
        [
          'verify:\n',
          '  - { id: tower, name: Strut tower right, kind: strut tower, damage: { kind: not yet seen } }\nverify:\n',
        ],
      ],
    ],
  ])('but the body is measured with %s', (_name, changes) => {
    expect(ids(...changes)).toEqual(expect.arrayContaining(body));
  });

  test('alignment, road test and the page of the bolts stay asked for', () => {
    expect(ids(['  road_test: { done: 2026-10-15, result: passed }\n', ''])).toContain('road-test-missing');
    expect(ids([/ {2}alignment:\n(?: {4}.*\n)+/u.exec(knuckle)?.[0] ?? 'none', ''])).toContain(
      'alignment-missing',
    );
  });

  test('of the record neither coupons nor measurements of the body are missed, and what is missing still is', () => {
    const missed = (...changes: readonly Change[]): string | undefined =>
      judgeText(changed(knuckle, changes)).findings.find(
        ({ finding }) => finding.rule === 'record-incomplete',
      )?.finding.message;
    expect(missed()).toBeUndefined();
    expect(missed(['fault codes, alignment print-out, calibration report]', 'calibration report]'])).toBe(
      'Of the record this is not said to be kept: codes, wheel alignment.',
    );
    expect(missed(['kind: suspension part', 'kind: bumper beam'])).toBe(
      'Of the record this is not said to be kept: measurements, photographs.',
    );
  });

  test('who releases it is qualified', () => {
    const report = judgeText(changed(knuckle, [[', qualification: master }, date', ' }, date']]));
    const found = report.findings.filter(({ finding }) => finding.rule === 'signer-without-qualification');
    expect(found.map(({ finding }) => finding.message)).toEqual([
      'Work on structure or running gear is released by somebody whose qualification is not stated.',
    ]);
  });
});
