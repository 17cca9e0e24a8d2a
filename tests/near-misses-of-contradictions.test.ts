import { describe, expect, test } from 'vitest';
import { batteryOut } from './faults-of-the-battery-out.ts';
import { bondedRail } from './faults-of-the-bonded-rail.ts';
import { wholeJob } from './faults-of-the-whole-job.ts';
import { judgeText, ruleIds } from './judge-text.ts';
import { changed } from './one-change.ts';
import type { Change } from './one-change.ts';

const emptyLoad = `load: 'Nobody inside, nothing loaded'`;
const floor = `floor: 'Bay 4, last levelled 2026-08-17'`;
const plate = 'tyre_pressures: Set to the plate';
const camberLeft = `at: front left, specified: -0°30', tolerance: 0°30', before: -1°50', after: -0°35'`;
const camberRight = `at: front right, specified: -0°30', tolerance: 0°30', before: -0°40', after: -0°40'`;
const thrust = `      - { of: thrust angle, specified: 0°00', tolerance: 0°10', before: 0°02', after: 0°02' }\n`;
const rearToe = (side: string, toe: string): string =>
  `      - { of: toe, at: rear ${side}, specified: 0°08', tolerance: 0°12', before: ${toe}, after: ${toe} }\n`;

/** Every y of the points, as a sheet has them that counts from another plane or the other way. */
const withY = (plan: string, of: (y: number) => number): string =>
  plan.replaceAll(
    /(nominal|before|after): \[(-?[\d.]+ mm), (-?[\d.]+) mm, /gu,
    (_whole, key: string, x: string, y: string) => `${key}: [${x}, ${of(Number(y)).toFixed(1)} mm, `,
  );

const loads = [
  'Tank full, luggage cover in place',
  'Tank n/a, tool chest and child seat taken out, nobody on the seats',
  'Nothing in the boot and on the seats',
  'Empty with a full tank',
  'Ballast of 75 kg on the driver’s seat',
  '75 kg on the driver’s seat, as the page says',
  'Boot emptied, doors shut, ignition on',
  'Kerb weight. Fuel at 3/4.',
];
const floors = [
  'Bay 4, last levelled 2026-10-12',
  'Bay 4, last levelled 2026-08-17, next 2027-08-17',
  'Bay 4, level by laser, valid until 2027-03-01',
];

// Beside each plan that contradicts itself, a good one that lies close to it.
describe('near misses of contradictions stay cleared', () => {
  test.each<readonly [string, string, readonly Change[]]>([
    ...loads.map((load) => [`load: ${load}`, wholeJob, [[emptyLoad, `load: "${load}"`]]] as const),
    ...floors.map((text) => [`floor: ${text}`, wholeJob, [[floor, `floor: '${text}'`]]] as const),
    [
      'pressures that were low and no longer are',
      wholeJob,
      [[plate, `tyre_pressures: 'Were low by 0.3 bar, brought to the plate'`]],
    ],
    [
      'camber of two front wheels 45 minutes apart',
      wholeJob,
      [
        [camberLeft, camberLeft.replace("after: -0°35'", "after: -0°10'")],
        [camberRight, camberRight.replace("after: -0°40'", "after: -0°55'")],
      ],
    ],
    [
      'camber 53 minutes apart, by the page that each row cites',
      wholeJob,
      [
        [
          camberLeft,
          `${camberLeft.replace("after: -0°35'", "after: -0°03'")}, cite: { reference: link, at: p. 12 }`,
        ],
        [
          camberRight,
          `${camberRight.replace("after: -0°40'", "after: -0°56'")}, cite: { reference: link, at: p. 12 }`,
        ],
      ],
    ],
    [
      'a rear wheel that stood a little out and was set right',
      wholeJob,
      [["before: -1°30', after: -1°30'", "before: -2°25', after: -1°30'"]],
    ],
    [
      'camber of two sides specified half a degree apart',
      wholeJob,
      [[camberLeft, `at: front left, specified: -1°00', tolerance: 0°30', before: -1°50', after: -1°05'`]],
    ],
    [
      'camber of two sides a whole degree apart, by the page that each row cites',
      wholeJob,
      [
        [
          camberLeft,
          `at: front left, specified: -1°30', tolerance: 0°30', before: -1°50', after: -1°35', cite: { reference: link, at: p. 12 }`,
        ],
        [camberRight, `${camberRight}, cite: { reference: link, at: p. 12 }`],
      ],
    ],
    [
      'the thrust angle as a range that is about nothing',
      wholeJob,
      [[`thrust angle, specified: 0°00', tolerance: 0°10'`, `thrust angle, from: -0°10', to: 0°10'`]],
    ],
    [
      'the thrust angle as a size that is at most 10′',
      wholeJob,
      [[`thrust angle, specified: 0°00', tolerance: 0°10'`, `thrust angle, from: 0°00', to: 0°10'`]],
    ],
    [
      'total toe that is the sum of its wheels to a minute',
      wholeJob,
      [
        [
          thrust,
          `      - { of: total toe, at: front axle, specified: 0°10', tolerance: 0°10', before: -0°18', after: 0°10' }\n${thrust}`,
        ],
      ],
    ],
    [
      'rear toes that agree with the thrust angle, counted the other way',
      wholeJob,
      [[thrust, `${rearToe('left', `0°05'`)}${rearToe('right', `0°09'`)}${thrust}`]],
    ],
    [
      'a record book with its page for both joints',
      batteryOut,
      [
        ['record: W-2231-1', 'record: Weld book 4, page 12'],
        ['record: W-2231-2', 'record: Weld book 4, page 12'],
      ],
    ],
    [
      'what was found in the floor is old sealer',
      wholeJob,
      [
        [
          'battery tray], found: none found',
          'battery tray], found: "none found; sealer of the floor cracked by age"',
        ],
      ],
    ],
    [
      'a row that is just as long as its flange',
      wholeJob,
      [['pitch: 32 mm', 'pitch: 32 mm\n            length: 992 mm']],
    ],
    [
      'a row that is one pitch longer than its flange',
      wholeJob,
      [['pitch: 32 mm', 'pitch: 32 mm\n            length: 960 mm']],
    ],
  ])('%s', (_name, plan, changes) => {
    expect(ruleIds(judgeText(changed(plan, changes)))).toEqual([]);
  });

  test.each([
    ['right counted up', (y: number) => -y],
    ['counted from the right sill', (y: number) => y - 700],
    ['counted from a wall, the other way', (y: number) => 2000 - y],
  ])('a data sheet with y %s', (_name, of) => {
    expect(ruleIds(judgeText(withY(bondedRail, of)))).toEqual([]);
    expect(ruleIds(judgeText(withY(batteryOut, of)))).toEqual([]);
  });

  test.each<readonly [string, Change, string]>([
    [
      'a floor levelled more than a year before',
      [floor, `floor: 'Bay 4, last levelled 2025-10-10'`],
      'floor-levelled-long-ago',
    ],
    [
      'one result document of two sensors',
      ['report: R-2224-3', 'report: R-2224-2'],
      'calibration-report-shared',
    ],
  ])('%s is a note', (_name, change, rule) => {
    const report = judgeText(changed(wholeJob, [change]));
    expect(ruleIds(report)).toEqual([]);
    expect(ruleIds(report, ['note'])).toContain(rule);
  });
});
