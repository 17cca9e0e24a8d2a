import { describe, expect, test } from 'vitest';
import { judgeText, ruleIds } from './judge-text.ts';
import { changed, electric, rail, ring, ringCite, skin } from './one-change.ts';
import type { Change } from './one-change.ts';

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
          'distance: 60 mm, path: same sheet }\n          - { item: structural adhesive, distance: 5 mm, path: same sheet, treatment: renewed }',
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
          '    damage: { kind: bend, found_by: seen }\n    operations: [{ do: replace, step: 20, extent: whole, cite: { reference: rail, at: p. 9 }, joints: [{ to: floor, method: resistance spot, form: flange, sheets: [a-pillar-r, floor], factory_count: 20, count: 20, coupon: planned }] }]\n',
        ],
        [
          'part: rail-r, planned: true',
          'part: a-pillar-r, planned: true, primer: Epoxy, wax: After heat }\n    - { part: rail-r, planned: true',
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
        ['factory_count: 42', 'factory_count: 0'],
      ],
    ],
    [
      'a rail straightened with heat by every figure that a heat needs',
      rail,
      [['- do: heat', '- do: straighten\n        method: with heat']],
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
