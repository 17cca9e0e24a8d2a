import { describe, expect, test } from 'vitest';
import { batteryOut } from './faults-of-the-battery-out.ts';
import { weldedSkin } from './faults-of-the-welded-skin.ts';
import { wholeJob } from './faults-of-the-whole-job.ts';
import { judgeText, ruleIds } from './judge-text.ts';
import { changed, skin } from './one-change.ts';
import type { Change } from './one-change.ts';
import { releasedRing } from './released.ts';

const belts = (text: string): Change => [
  'belts_checked: Left front belt and buckle replaced, seats in order',
  `belts_checked: "${text}"`,
];
const scan = 'tool: shop tool 4.2, codes: []';
const quarantine = 'quarantine: { place: Open yard, distance: 18 m, watch: 48 h }';

/** A second-hand or new door is bolted on; nothing of the body is worked on. */
const door = `format: 1
stage: release
job: { number: J-612, opened: 2026-09-21, written_by: { name: P. Aldous, role: estimator }, revision: A }
vehicle:
  maker: Norrin
  model: Pell
  body: saloon
  model_year: 2022
  model_year_from: maker look-up
  vin: 0NRZZZ4PZN0000600
  confirmed_at: stamp in the boot floor
  market: european-union
  drive: combustion
  earlier_repairs: none known
references:
  - { id: page, kind: maker procedure, title: Body, document: N-PEL-5120, revision: B, published: 2022-01-20, covers: { maker: Norrin, model: Pell, bodies: [all], years: 2021-2024 }, looked_up: 2026-09-22, for_job: J-612 }
make_safe:
  low_voltage: { planned: true, done: 2026-09-23T08:00, batteries: [12 V], fitted: [12 V], key: In the office }
  restraints: { planned: true, done: 2026-09-23T09:00, wait: 15 min, wait_asked: 10 min, wait_cite: { reference: page, at: p. 3 }, deployed: false, belts_checked: All in order, units: [] }
damage: { impact: Left front door, direct: [door], indirect: { looked_at: [hinges, pillars, sill], found: none found } }
parts:
  - id: door
    name: Door, front left, with its beam
    kind: door
    side: left
    condition: new
    damage: { kind: tear, found_by: seen }
    operations:
      - { do: refinish, off_vehicle: true, done: 2026-09-24 }
      - { do: replace, extent: whole, cite: { reference: page, at: p. 7 }, fasteners: { one_time: renewed, cite: { reference: page, at: p. 7 }, tightened: 2026-09-25 }, done: 2026-09-25 }
verify:
  scan_before: { done: 2026-09-22, codes: [] }
  restraints: { done: 2026-09-25T12:00, result: complete }
  scan_after: { done: 2026-09-26, codes: [] }
record: { kept: [plan, procedures with their revision, fault codes, photographs], where: Job folder, until: 2036-12-31 }
sign_off: { by: { name: M. Dorn, role: workshop lead, qualification: body structure level 3 }, date: 2026-09-30, plan_revision: A, open_holds: none }
`;

const hail = door
  .replace(/make_safe:\n(?: .*\n)+/u, '')
  .replace(/verify:\n(?: .*\n)+/u, '')
  .replace(
    'impact: Left front door, direct: [door], indirect: { looked_at: [hinges, pillars, sill]',
    'impact: Hail, direct: [roof], indirect: { looked_at: [glass]',
  )
  .replace(
    /parts:\n(?: .*\n)+/u,
    `parts:
  - id: roof
    name: Roof skin
    kind: roof skin
    structural: false
    over_nothing: true
    grade: DX56D+Z
    grade_from: { reference: page, at: p. 2 }
    thickness: 0.7 mm
    damage: { kind: dent, found_by: seen, extent: forty dents }
    operations: [{ do: straighten, method: cold, done: 2026-09-24 }]
`,
  );

const old = (number: string): readonly Change[] => [
  ['vin: 0NRZZZ4PZN0000600', number],
  ['model_year: 2022', 'model_year: 1968'],
  ['years: 2021-2024', 'years: 1966-1970'],
];

// Beside each fault of the welded skin and of hours and days, a good plan that lies close to it. Common practice of the trade.
describe('near misses stay cleared', () => {
  test.each<readonly [string, string, readonly Change[]]>([
    [
      'a skin welded the minute after the proof',
      weldedSkin,
      [
        ['done: 2026-09-17T09:00, wait', 'done: 2026-09-22T09:30, wait'],
        ['done: 2026-09-17T09:20, meter', 'done: 2026-09-22T10:00, meter'],
      ],
    ],
    [
      'a radar of the other end is not fitted',
      wholeJob,
      [
        [
          '    - { sensor: front radar,',
          '    - { sensor: rear corner radar, kind: not fitted }\n    - { sensor: front radar,',
        ],
      ],
    ],
    [
      'bolts tightened on the day on which the link was fitted',
      wholeJob,
      [['tightened: 2026-10-06', 'tightened: 2026-10-06T08:00']],
    ],
    [
      'a hit battery, and a new one is fitted',
      batteryOut,
      [
        ['battery_condition: sound', `battery_condition: hit\n    ${quarantine}`],
        ['do: remove and refit\n        step: 4\n        refit_step: 50', 'do: replace\n        step: 50'],
        ['kind: traction battery\n', 'kind: traction battery\n    condition: new\n'],
        ['restraints: { done: 2026-09-22T09:00', 'restraints: { done: 2026-09-22T12:00'],
      ],
    ],
    [
      'a hit battery that was found fit by the maker’s page',
      batteryOut,
      [
        [
          'battery_condition: sound',
          `battery_condition: hit\n    battery_fit_cite: { reference: hv, at: p. 40 }\n    ${quarantine}`,
        ],
      ],
    ],
    [
      'a fired pretensioner is taken off, and a new one is a part of its own',
      wholeJob,
      [
        [
          'name: Front belt left, state: deployed, treatment: replaced',
          'name: Front belt left, state: deployed, treatment: removed',
        ],
        [
          'parts:\n',
          'parts:\n  - { id: belt-fl, name: Front belt left, kind: restraint unit, condition: new, damage: { kind: none, found_by: seen }, operations: [{ do: replace, extent: whole, cite: { reference: safe, at: p. 12 }, fasteners: { one_time: renewed, cite: { reference: safe, at: p. 13 }, tightened: 2026-10-09 }, done: 2026-10-09 }] }\n',
        ],
      ],
    ],
    ['belts looked at, none renewed', releasedRing, [belts('All looked at, none renewed')]],
    [
      'a bad belt that was renewed',
      releasedRing,
      [belts('Rear left buckle cracked and renewed, the others in order')],
    ],
    [
      'a brake code that was cleared',
      releasedRing,
      [
        [
          scan,
          'tool: shop tool 4.2, codes: [{ code: C0035, system: brake, state: cleared, explanation: Plug was off }]',
        ],
      ],
    ],
    [
      'a sensor of tyre pressure that stays as it was',
      releasedRing,
      [
        [
          scan,
          'tool: shop tool 4.2, codes: [{ code: C0750, system: other, state: active, explanation: Its cell is empty; the owner orders no new one }]',
        ],
      ],
    ],
    [
      'no first scan of a vehicle without current',
      releasedRing,
      [
        [
          'scan_before: { done: 2026-10-06, codes: [] }',
          'scan_before: { not_possible: The 12 V battery was crushed and the vehicle takes no current }',
        ],
      ],
    ],
    [
      'a fuel line under a blanket 300 mm off',
      wholeJob,
      [
        [
          '        near:\n',
          '        near:\n          - { item: fuel line, distance: 300 mm, path: through air, treatment: shielded }\n',
        ],
      ],
    ],
    [
      'the clamped parts measured on the day on which the vehicle was made safe',
      releasedRing,
      [['before_welding: 2026-10-08', 'before_welding: 2026-10-07']],
    ],
    [
      'the traction battery 300 mm off through air',
      weldedSkin,
      [
        [
          '        near:\n',
          '        near:\n          - { item: traction battery, distance: 300 mm, path: through air, treatment: stays }\n',
        ],
      ],
    ],
    [
      'a combustion car whose block says that there is nothing to isolate',
      skin,
      [['parts:\n', 'make_safe: { high_voltage: { planned: false } }\nparts:\n']],
    ],
    ['a new door bolted on', door, []],
    ['hail on a roof skin', hail, []],
    ['a number of 1968 under vin', hail, old('vin: "41207719"')],
    ['a number of 1968 under frame_number', hail, old('frame_number: "41207719"')],
  ])('%s', (_name, plan, changes) => {
    const report = judgeText(changed(plan, changes));
    expect(ruleIds(report)).toEqual([]);
  });

  test('a permit that names the part of a short fire watch accepts it, and one that names none says where it stands', () => {
    const permit = (part: string): readonly Change[] => [
      ['fire_watch: 45 min', 'fire_watch: 10 min'],
      [
        'sign_off:\n',
        `deviations:\n  - { rule: fire-watch-too-short, ${part}by: { name: M. Dorn, role: workshop lead }, reason: The bay camera with smoke alarm watched for two hours, date: 2026-09-15, expires: 2026-12-31 }\nsign_off:\n`,
      ],
    ];
    expect(judgeText(changed(weldedSkin, permit('part: quarter-l, '))).verdict).toBe('cleared');
    const loose = judgeText(changed(weldedSkin, permit('')));
    expect(loose.verdict).toBe('held');
    expect(loose.findings.map(({ finding }) => finding.message)).toContain(
      'The deviation permit for fire-watch-too-short matches no finding of this plan: its findings stand on quarter-l, section.',
    );
  });

  test.each([
    ['a dent of a blow is no hail', hail, [['impact: Hail', 'impact: A branch']], 'hidden-layer-not-stated'],
    ['hail does not crease', hail, [['kind: dent,', 'kind: crease,']], 'hidden-layer-not-stated'],
    [
      'a number of 1981 is due in full',
      hail,
      [
        ['vin: 0NRZZZ4PZN0000600', 'vin: "41207719"'],
        ['model_year: 2022', 'model_year: 1981'],
        ['years: 2021-2024', 'years: 1981'],
      ],
      'vin-wrong-form',
    ],
    [
      'a door that is straightened may be structural',
      door,
      [
        [
          '- { do: refinish, off',
          '- { do: straighten, method: cold, cite: { reference: page, at: p. 8 }, done: 2026-09-24 }\n      - { do: refinish, off',
        ],
      ],
      'line-left-after-straightening',
    ],
  ] satisfies readonly (readonly [string, string, readonly Change[], string])[])(
    '%s',
    (_name, plan, changes, rule) => {
      expect(ruleIds(judgeText(changed(plan, changes)))).toContain(rule);
    },
  );
});
