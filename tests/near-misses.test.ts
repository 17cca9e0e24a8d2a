import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { judgeText, ruleIds } from './judge-text.ts';
import { changed, electric, rail, ring, ringCite, skin } from './one-change.ts';
import type { Change } from './one-change.ts';
import { secondHand } from './faults-of-records.ts';
import { releasedRing, ringDone } from './released-ring.ts';

const accepted = `deviations:
  - { rule: look-up-not-dated, by: { name: P. Falk, role: shop manager }, reason: seen on the day, date: 2026-10-10, expires: 2026-10-21 }
`;
const undated: Change = ['    looked_up: 2026-10-06\n    looked_up_by', '    looked_up_by'];

describe('deviation permits', () => {
  test('a hold that a named person accepts for a time no longer holds, and stays visible', () => {
    const report = judgeText(changed(`${ring}${accepted}`, [undated]));
    expect(report.verdict).toBe('cleared');
    expect(
      report.findings.find(({ finding }) => finding.rule === 'look-up-not-dated')?.finding.deviation?.by,
    ).toBe('P. Falk');
    expect(report.counts.accepted).toBe(1);
  });

  test.each([
    ['expired the day before', 'expires: 2026-10-21', 'expires: 2026-10-20', 'deviation-expired'],
    ['without a name', 'name: P. Falk, ', '', 'deviation-incomplete'],
    ['without a reason', 'reason: seen on the day, ', '', 'deviation-incomplete'],
    ['without a last day', ', expires: 2026-10-21', '', 'deviation-incomplete'],
    ['given by the author of the plan', 'P. Falk', 'R. Amsel', 'deviation-by-the-author'],
    [
      'dated ahead',
      'date: 2026-10-10, expires: 2026-10-21',
      'date: 2026-10-22, expires: 2026-12-21',
      'deviation-dated-ahead',
    ],
  ])('%s: the hold stands', (_name, from, to, rule) => {
    const report = judgeText(changed(`${ring}${accepted}`, [undated, [from, to]]));
    expect(report.verdict).toBe('held');
    expect(ruleIds(report)).toEqual(expect.arrayContaining(['look-up-not-dated', rule]));
  });
});

describe('near misses stay cleared', () => {
  test.each<readonly [string, string, readonly Change[]]>([
    ['only the skin over the ring is cut', ring, []],
    [
      'the year is the last of the document’s range',
      ring,
      [['bodies: [wagon], years: 2020-2022', 'bodies: [wagon], years: 2018-2021']],
    ],
    [
      'the year is the first of the document’s range',
      ring,
      [['bodies: [wagon], years: 2020-2022', 'bodies: [wagon], years: 2021-2024']],
    ],
    [
      'looked up on the day the job was opened',
      ring,
      [['    looked_up: 2026-10-06\n    looked_up_by', '    looked_up: 2026-10-05\n    looked_up_by']],
    ],
    [
      'looked up for an estimate before the job was opened',
      ring,
      [
        ['  opened: 2026-10-05\n', '  opened: 2026-10-05\n  first_estimate: 2026-10-01\n'],
        ['    looked_up: 2026-10-06\n    looked_up_by', '    looked_up: 2026-10-02\n    looked_up_by'],
      ],
    ],
    [
      'a training text is cited beside the procedure',
      ring,
      [
        [ringCite, 'cite: [{ reference: ring, at: p. 12-19 }, { reference: course }]'],
        ['references:\n', 'references:\n  - { id: course, kind: training, title: Course on rings }\n'],
      ],
    ],
    [
      'looked up on the day of the measurement that follows the work, and the ring dated by its joint',
      releasedRing,
      [ringDone, ['count_done: 56\n', 'count_done: 56\n            done: 2026-10-09\n']],
    ],
    [
      'measured before on the day of the fit, and after on that of the welding',
      releasedRing,
      [
        ['  before: 2026-10-06\n', '  before: 2026-10-08\n'],
        ['  after: 2026-10-13\n', '  after: 2026-10-09\n'],
      ],
    ],
    [
      'a point on the sill that the ring is welded to, and the diagonals of the opening that the ring frames',
      releasedRing,
      [
        ['name: A1, on: ring-l', 'name: A1, on: sill-inner-l'],
        [
          'finish:\n',
          '  openings:\n    - { name: Front door left, nominal: [1402 mm, 1296 mm], diagonals_before: [1394 mm, 1301 mm], diagonals_after: [1402.4 mm, 1295.6 mm], tolerance: 3 mm }\nfinish:\n',
        ],
      ],
    ],
    [
      'a point 4 mm off whose tolerance of 5 mm stands on a page',
      releasedRing,
      [
        ['tolerance: 3 mm, after: [1412.2 mm', 'tolerance: 5 mm, after: [1416 mm'],
        ['  after: 2026-10-13\n', '  after: 2026-10-13\n  tolerance_cite: { reference: ring, at: p. 21 }\n'],
      ],
    ],
    ['a zero point 3 mm off', ring, [['before: [0 mm, 0 mm, 0 mm]', 'before: [3 mm, 0 mm, 0 mm]']]],
    [
      'cavity wax on the day of the last weld',
      releasedRing,
      [
        ['ring-l, planned: true, done: 2026-10-14', 'ring-l, planned: true, done: 2026-10-12'],
        ['done: 2026-10-14, temperature', 'done: 2026-10-12, temperature'],
        ['sealer: { planned: true, done: 2026-10-13', 'sealer: { planned: true, done: 2026-10-12'],
        ['primer: { planned: true, done: 2026-10-13', 'primer: { planned: true, done: 2026-10-12'],
      ],
    ],
    [
      'the revision that was signed, in small letters',
      releasedRing,
      [
        ['  number: K-2207\n', '  number: K-2207\n  revision: C\n'],
        ['open_holds: none', 'open_holds: none, plan_revision: c'],
      ],
    ],
    [
      'built in the autumn before its model year',
      ring,
      [['  model_year: 2021\n', '  model_year: 2021\n  build_date: 2020-09-30\n']],
    ],
    ['looked up on the day of publication', ring, [['published: 2021-02-01', 'published: 2026-10-06']]],
    [
      'a document of one sheet, without the page',
      ring,
      [
        ['wait_cite: { reference: safe, at: section 3 }', 'wait_cite: { reference: safe }'],
        ['    document: SRM-TRN-0100\n', '    document: SRM-TRN-0100\n    single_sheet: true\n'],
      ],
    ],
    [
      'a grade read from its page and tried with a magnet',
      ring,
      [
        [
          'grade_from: { reference: ring, at: p. 4 }',
          'grade_from: { by: magnet, reference: ring, at: p. 4 }',
        ],
      ],
    ],
    [
      'a donor sound at this part, told by the key',
      ring,
      [secondHand('damage: Front hit, at_this_part: sound, taken_off: drilled out at the factory joints')],
    ],
    [
      'a donor sound at this part, told in plain words',
      ring,
      [secondHand('damage: none at this part; front hit, taken_off: drilled out at the factory joints')],
    ],
    [
      'strength stated in ksi',
      ring,
      [['    grade: 22MnB5+AS150\n', '    grade: 22MnB5+AS150\n    strength: 217 ksi\n']],
    ],
    [
      'heat exactly at the limit',
      rail,
      [
        ['temperature: 600 °C', 'temperature: 650 °C'],
        ['distance: 60 mm', 'distance: 80 mm'],
      ],
    ],
    ['the pillar 40 mm from 600 °C held for a minute', rail, [['distance: 60 mm', 'distance: 40 mm']]],
    ['heat held for 90 s', rail, [['hold: 60 s', 'hold: 90 s']]],
    [
      'the wiring near by comes off first',
      rail,
      [
        [
          'distance: 60 mm, path: same sheet }',
          'distance: 60 mm, path: same sheet }\n          - { item: wiring, distance: 5 mm, path: same sheet, treatment: removed }',
        ],
      ],
    ],
    [
      'the adhesive near by is renewed',
      rail,
      [
        [
          'distance: 60 mm, path: same sheet }',
          'distance: 60 mm, path: same sheet }\n          - { item: structural adhesive, distance: 5 mm, path: same sheet, treatment: renewed, cite: { reference: rail, at: p. 9 } }',
        ],
      ],
    ],
    [
      'the pillar near by is replaced whole after the heat',
      rail,
      [
        ['distance: 60 mm, path: same sheet }', 'distance: 5 mm, path: same sheet, treatment: renewed }'],
        [
          '    damage: { kind: none, found_by: seen }\n',
          '    damage: { kind: bend, found_by: seen }\n    operations: [{ do: replace, step: 20, extent: whole, cite: { reference: rail, at: p. 9 }, joints: [{ to: floor, method: resistance spot, form: flange, flange_coat: factory coat left whole, sheets: [a-pillar-r, floor], factory_count: 20, count: 26, nugget: 4.8 mm, pitch: 30 mm, edge: 8 mm, settings: { machine: Gun, program: steel 3, most_force: 5 kN, most_current: 14 kA }, factory_adhesive: false, coupon: planned }], near: [], clear_within: 300 mm, by: { name: T. Holm, qualification: resistance spot 26-04 } }]\n',
        ],
        [
          'part: rail-r, planned: true',
          'part: a-pillar-r, planned: true, primer: Epoxy, wax: After heat }\n    - { part: rail-r, planned: true',
        ],
        [
          'finish:\n',
          'hold_points: [{ point: flange before closing, by: { name: B. Ohm } }, { point: structure before the last weld, by: { name: B. Ohm } }]\nfinish:\n  sealer: { planned: true }\n  primer: { planned: true }\n',
        ],
      ],
    ],
    [
      'an airbag that stays far from the heat',
      rail,
      [
        [
          'distance: 60 mm, path: same sheet }',
          'distance: 60 mm, path: same sheet }\n          - { item: airbag, distance: 1500 mm, path: joined }',
        ],
      ],
    ],
    [
      'a seam on a structural flange where the factory made no row of joints',
      ring,
      [
        ['grade: 22MnB5+AS150', 'grade: HC340LA'],
        ['method: resistance spot', 'method: arc seam'],
        [
          'flange_coat: factory coat left whole\n            sheets: [ring-l',
          'flange_coat: bare\n            sheets: [ring-l',
        ],
        ['factory_count: 42', 'factory_count: 0'],
      ],
    ],
    [
      'a rail straightened with heat by every figure that a heat needs',
      rail,
      [
        ['- do: heat', '- do: straighten\n        method: with heat'],
        ['kind: bend, found_by', 'kind: bend, short_radius: false, found_by'],
      ],
    ],
    ['a crease in a cosmetic skin', skin, []],
    ['a cosmetic skin of aluminium', skin, [['class: mild', 'class: aluminium']]],
    [
      'an electric car whose door skin is painted and dries without heat',
      skin,
      [
        ['drive: combustion', 'drive: battery-electric'],
        ['job:', 'finish: { bake: { temperature: 20 °C } }\njob:'],
      ],
    ],
    [
      'an electric car of which a door is painted off the car',
      skin,
      [
        ['drive: combustion', 'drive: battery-electric'],
        ['do: refinish', 'do: refinish\n        off_vehicle: true'],
      ],
    ],
    [
      'bake at the limit of the battery, cited',
      electric,
      [
        ['    battery_removed: true\n', ''],
        [
          'finish:\n',
          'finish:\n  bake: { temperature: 60 °C, time: 45 min, traction_battery: in the vehicle, battery_limit: { temperature: 60 °C, time: 45 min, cite: { reference: hv, at: p. 9 } } }\n',
        ],
      ],
    ],
    [
      'a 80 °C bake with the battery out',
      electric,
      [['finish:\n', 'finish:\n  bake: { temperature: 80 °C, time: 60 min, traction_battery: removed }\n']],
    ],
  ])('%s', (_name, plan, changes) => {
    expect(ruleIds(judgeText(changed(plan, changes)))).toEqual([]);
  });
});

describe('a drawn cut by the maker’s permission', () => {
  const endPiece = readFileSync('examples/plans/ring-end-piece-by-drawn-cut.yaml', 'utf8');
  const pack = 'examples/rules/corvane-tarn';

  test.each<readonly [string, string, readonly Change[]]>([
    ['the insert as long as asked', 'cleared', []],
    ['a longer insert', 'cleared', [['length_each_side: 30 mm', 'length_each_side: 32 mm']]],
    ['too short an insert', 'stopped', [['length_each_side: 30 mm', 'length_each_side: 10 mm']]],
    // The page draws the cut; it lets nobody make it with a plasma torch.
    [
      'the same cut by plasma',
      'stopped',
      [['        at: B\n        cite', '        at: B\n        cut_with: plasma\n        cite']],
    ],
    [
      'a lap in place of the insert',
      'stopped',
      [
        [
          '            insert: { length_each_side: 30 mm, grade: 22MnB5+AS150, thickness: 1.2 mm, cite: { reference: ring, at: p. 23 } }\n',
          '',
        ],
        ['form: butt with insert', 'form: lap'],
      ],
    ],
    ['a coupon still to come', 'held', [['coupon: passed', 'coupon: planned']]],
    ['a coupon that failed', 'stopped', [['coupon: passed', 'coupon: failed']]],
    [
      'a joint at the mark of the cut',
      'cleared',
      [
        [
          'drawn: true\n            coupon: passed',
          'drawn: true\n            place: B\n            coupon: passed',
        ],
      ],
    ],
    [
      'a joint at another mark',
      'stopped',
      [
        [
          'drawn: true\n            coupon: passed',
          'drawn: true\n            place: D\n            coupon: passed',
        ],
      ],
    ],
  ])('%s: %s', (_name, verdict, changes) => {
    expect(judgeText(changed(endPiece, changes), pack).verdict).toBe(verdict);
  });
});
