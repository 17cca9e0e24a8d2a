import { describe, expect, test } from 'vitest';
import { bondedRail } from './faults-of-the-bonded-rail.ts';
import { wholeJob } from './faults-of-the-whole-job.ts';
import { judgeText } from './judge-text.ts';
import { measuredRing } from './measured-ring.ts';
import { changed, lineOf, rail, ring } from './one-change.ts';
import type { Change } from './one-change.ts';
import { releasedRing } from './released.ts';

// One slip of the pen is one sentence, on its line; nothing is claimed that only follows from it.

type Row = readonly [name: string, plan: string, change: Change, rule: string];

const everyNominal = (text: string, factor: number): string =>
  text.replaceAll(
    /nominal: \[(-?[\d.]+) mm, (-?[\d.]+) mm, (-?[\d.]+) mm\]/gu,
    (_whole, ...found: readonly string[]) =>
      `nominal: [${found
        .slice(0, 3)
        .map((value) => `${(Number(value) * factor).toFixed(3)} mm`)
        .join(', ')}]`,
  );

const worst = (text: string): ReturnType<typeof judgeText>['findings'] =>
  judgeText(text).findings.filter(
    ({ finding }) => finding.severity !== 'note' && !finding.rule.startsWith('signed-with'),
  );

describe('one slip, one sentence', () => {
  test.each<Row>([
    ['no joints', releasedRing, ['count: 56', 'count: 0'], 'entry-outside-the-range'],
    ['joints below nothing', releasedRing, ['count: 56', 'count: -56'], 'entry-outside-the-range'],
    [
      'joints of the factory below nothing',
      releasedRing,
      ['factory_count: 42', 'factory_count: -42'],
      'entry-outside-the-range',
    ],
    [
      'made joints below nothing',
      releasedRing,
      ['count_done: 56', 'count_done: -56'],
      'entry-outside-the-range',
    ],
    [
      'a sheet of no number',
      releasedRing,
      ['thickness: 1.4 mm', 'thickness: NaN mm'],
      'entry-unreadable-quantity',
    ],
    ['a pitch without end', releasedRing, ['pitch: 33 mm', 'pitch: 1e308 mm'], 'entry-unreadable-quantity'],
    [
      'a pitch wider than the flange',
      ring,
      ['pitch: 33 mm', 'pitch: 33 mm\n            length: 20 mm'],
      'pitch-wider-than-flange',
    ],
    [
      'a reading without end',
      measuredRing,
      ['after: [1680.5 mm', 'after: [1e308 mm'],
      'entry-unreadable-quantity',
    ],
    [
      'a nominal place without end',
      measuredRing,
      ['nominal: [1800 mm, 1120 mm', 'nominal: [1e308 mm, 1120 mm'],
      'entry-unreadable-quantity',
    ],
    [
      'measured on a day to come',
      measuredRing,
      ['  after: 2026-10-13', '  after: 2027-10-13'],
      'entry-dated-ahead',
    ],
    [
      'joined on a day to come',
      releasedRing,
      ['record: P-2207-1\n            done: 2026-10-09', 'record: P-2207-1\n            done: 2027-10-09'],
      'entry-dated-ahead',
    ],
    [
      'driven on a day to come',
      releasedRing,
      ['road_test: { done: 2026-10-16', 'road_test: { done: 2027-10-16'],
      'entry-dated-ahead',
    ],
    [
      'a coupon of a day to come',
      releasedRing,
      ['date: 2026-10-08, nugget', 'date: 2027-10-08, nugget'],
      'entry-dated-ahead',
    ],
    [
      'cured on a day to come',
      bondedRail,
      ['cured: 2026-09-08T10:00', 'cured: 2027-09-08T10:00'],
      'entry-dated-ahead',
    ],
    [
      'signed on a day to come',
      releasedRing,
      ['  date: 2026-10-17', '  date: 2027-10-17'],
      'signature-dated-ahead',
    ],
  ])('%s', (_name, plan, change, rule) => {
    const found = worst(changed(plan, [change]));
    expect(found.map(({ finding }) => finding.rule)).toEqual([rule]);
  });

  test('on the line of the slip', () => {
    const text = changed(releasedRing, [['count: 56', 'count: 0']]);
    expect(worst(text)[0]?.place.line).toBe(lineOf(text, 'count: 0'));
    expect(worst(text)[0]?.finding.why).toContain('fewer-joints-than-factory');
  });

  test('a data sheet in inches: one, not one for each measuring and one for the datum', () => {
    const found = worst(everyNominal(measuredRing, 1 / 25.4));
    expect(found.map(({ finding }) => finding.rule)).toEqual(['readings-misread-after']);
  });

  test('a name that a thousand points bear', () => {
    const same = '    - { name: S, on: floor, nominal: [5 mm, 6 mm, 7 mm] }\n'.repeat(1000);
    const found = worst(changed(measuredRing, [['  points:\n', `  points:\n${same}`]]));
    const repeated = found.filter(({ finding }) => finding.rule === 'entry-repeated-id');
    expect(repeated.map(({ finding }) => finding.message)).toEqual([
      expect.stringContaining(
        'borne by an earlier entry too; what points at it means the earlier one. So it is by 998 more',
      ),
    ]);
  });

  test('a permit says in what it departs from the finding', () => {
    const permit = (part: string): string =>
      changed(ring, [
        ['edge: 9 mm', 'edge: 10.5 mm'],
        [
          'finish:\n',
          `deviations:\n  - { rule: spot-far-edge-close,${part} by: { name: H. Roth, role: body engineer }, reason: turned by hand, date: 2026-10-20, expires: 2026-11-20 }\nfinish:\n`,
        ],
      ]);
    const told = (part: string): readonly string[] =>
      worst(permit(part)).flatMap(({ finding }) =>
        finding.rule === 'deviation-matches-nothing' ? [finding.message] : [],
      );
    expect(told('')).toEqual([expect.stringContaining('its findings stand on ring-l')]);
    expect(told(' part: sill-inner-l,')).toEqual([expect.stringContaining('its findings stand on ring-l')]);
    expect(told(' part: ring-l,')).toEqual([]);
  });
});

describe('near misses of rows and metals stay cleared', () => {
  test.each<readonly [string, string, readonly Change[]]>([
    [
      'a row that leaves two of the factory’s distances at either end',
      wholeJob,
      [['pitch: 32 mm', 'pitch: 32 mm\n            length: 1160 mm']],
    ],
    [
      'a row in two pieces about an access hole',
      wholeJob,
      [
        [
          'pitch: 32 mm',
          'pitch: 32 mm\n            length: 1130 mm\n            factory_pitch: 44 mm\n            widest_gap: 52 mm',
        ],
      ],
    ],
    [
      'a factory’s row of one in 118 mm',
      wholeJob,
      [
        ['factory_count: 24', 'factory_count: 8'],
        ['pitch: 32 mm', 'pitch: 32 mm\n            length: 1060 mm'],
      ],
    ],
    [
      'a rail that is heated, told by strength and class',
      rail,
      [['grade: HC340LA', 'strength: 410 MPa\n    class: high-strength']],
    ],
  ])('%s', (_name, plan, changes) => {
    expect(worst(changed(plan, changes))).toEqual([]);
  });
});
