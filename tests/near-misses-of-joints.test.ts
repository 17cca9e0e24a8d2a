import { describe, expect, test } from 'vitest';
import { pluggedRing, rivetedSill, softRing } from './faults-of-joints.ts';
import { judgeText, ruleIds } from './judge-text.ts';
import { changed, electric, lineOf, ring } from './one-change.ts';
import type { Change } from './one-change.ts';
import { releasedRing } from './released.ts';

// Each is a plan that a fault of faults-of-joints.ts lies close to; it stays cleared.
describe('near misses of joints stay cleared', () => {
  test.each<readonly [string, string, readonly Change[]]>([
    ['1.3 spots for each of the factory’s, rounded up: 55 for 42', ring, [['count: 56', 'count: 55']]],
    [
      '37 for 28, as the handbook works out',
      ring,
      [
        ['factory_count: 42', 'factory_count: 28'],
        ['count: 56', 'count: 37'],
      ],
    ],
    [
      'as many as the factory by the page that states so',
      ring,
      [['count: 56', 'count: 42\n            pattern: { count: 42, cite: { reference: ring, at: p. 14 } }']],
    ],
    [
      'fewer than the factory by the page that states so',
      ring,
      [['count: 56', 'count: 40\n            pattern: { count: 40, cite: { reference: ring, at: p. 14 } }']],
    ],
    [
      'a button of five roots to the hundredth',
      ring,
      [
        ['nugget: 6.2 mm', 'nugget: 5.48 mm'],
        ['edge: 9 mm', 'edge: 6.9 mm'],
      ],
    ],
    ['a pitch at the least of the table', ring, [['pitch: 33 mm', 'pitch: 21.9 mm']]],
    [
      'a pitch below the table, proved on the second spot of a coupon',
      releasedRing,
      [
        ['pitch: 33 mm', 'pitch: 20 mm'],
        ['nugget: 6.3 mm }', 'nugget: 6.3 mm, at_job_pitch: true }'],
      ],
    ],
    [
      '1.2 times the factory’s pitch',
      ring,
      [['pitch: 33 mm', 'pitch: 33 mm\n            factory_pitch: 27.5 mm']],
    ],
    [
      'a narrow edge that the page draws',
      ring,
      [
        [
          'edge: 9 mm',
          'edge: 7 mm\n            pattern: { edge: 7 mm, cite: { reference: ring, at: p. 14 } }',
        ],
      ],
    ],
    [
      'a coupon of the very sheets, in the other order',
      releasedRing,
      [
        [
          'nugget: 6.3 mm }',
          'nugget: 6.3 mm, failure: button, same_setup: true, sheets: [{ grade: HC340LA, thickness: 1.2 mm }, { grade: 22MnB5+AS150, thickness: 1.4 mm }] }',
        ],
      ],
    ],
    [
      'a coupon of the evening before',
      releasedRing,
      [['date: 2026-10-08, nugget', 'date: 2026-10-08, record: Bench drawer, nugget']],
    ],
    [
      'the button and the edge of the page, to the tenth',
      ring,
      [
        [
          'count: 56',
          'count: 56\n            pattern: { count: 42, nugget: 6.2 mm, edge: 9 mm, cite: { reference: ring, at: p. 14 } }',
        ],
      ],
    ],
    ['1.25 diameters from the bend', ring, [['edge: 9 mm', 'edge: 10.2 mm']]],
    ['2 mm of sheet beside a plug hole', pluggedRing, [['edge: 9 mm', 'edge: 6 mm']]],
    [
      'a row that reaches to within a pitch of the ends of its flange',
      ring,
      [['pitch: 33 mm', 'pitch: 33 mm\n            factory_pitch: 33 mm\n            length: 1881 mm']],
    ],
    [
      'spots from one side by a page that draws them',
      ring,
      [
        [
          'edge: 9 mm',
          'edge: 9 mm\n            access: one side\n            access_cite: { reference: ring, at: p. 14 }',
        ],
      ],
    ],
    [
      'settings in numbers',
      electric,
      [['program: steel 2', 'force: 2.6 kN, current: 10 kA, weld_time: 200 ms']],
    ],
    ['one plug for each spot', pluggedRing, [['count: 56', 'count: 42']]],
    [
      'plugs by a page where a gun would reach',
      pluggedRing,
      [['access: one side', 'access: both sides\n            cite: { reference: ring, at: p. 15 }']],
    ],
    ['the next drill', pluggedRing, [['hole: 8 mm', 'hole: 8.5 mm']]],
    ['steel wire', pluggedRing, [['hole: 8 mm', 'hole: 8 mm\n            filler: G3Si1']]],
    ['rivets at twice their diameter', rivetedSill, [['edge: 10 mm', 'edge: 9.6 mm']]],
    [
      'adhesive on its last day',
      rivetedSill,
      [['adhesive: { product', 'adhesive: { expires: 2026-10-21, product']],
    ],
    ['a stack at the end of what the rivet holds', rivetedSill, [['grip_to: 3.5 mm', 'grip_to: 2.3 mm']]],
    [
      'high-strength steel by spots of four and a half roots, and more of them',
      softRing,
      [
        ['nugget: 6.2 mm', 'nugget: 5 mm'],
        ['count: 56', 'count: 60'],
      ],
    ],
  ])('%s', (_name, plan, changes) => {
    expect(ruleIds(judgeText(changed(plan, changes)))).toEqual([]);
  });
});

describe('what no joint can have is told in one sentence, on its line', () => {
  test.each<readonly [string, Change, RegExp]>([
    ['a negative number of spots', ['count: 56', 'count: -56'], /-56|least|count/u],
    ['no spots', ['count: 56', 'count: 0'], /least|count|0/u],
    ['half a spot', ['count: 56', 'count: 55.5'], /whole|number/u],
    ['a negative number of the factory', ['factory_count: 42', 'factory_count: -1'], /-1|least/u],
    ['a length that is no number', ['pitch: 33 mm', 'pitch: NaN'], /NaN|length/u],
    ['a length beyond all sheets', ['pitch: 33 mm', 'pitch: 1e308 mm'], /1e308|length/u],
    ['a length below nothing', ['edge: 9 mm', 'edge: -9 mm'], /-9 mm|length/u],
    ['a bare number', ['nugget: 6.2 mm', 'nugget: 6.2'], /unit/u],
    ['a method that nobody knows', ['method: resistance spot', 'method: spot weldd'], /spot/u],
    [
      'a way of breaking that nobody knows',
      ['coupon: planned\n        near', 'coupon: { failure: buton }\n        near'],
      /button/u,
    ],
  ])('%s', (_name, change, sentence) => {
    const text = changed(ring, [change]);
    const report = judgeText(text);
    const line = lineOf(text, change[1].split('\n')[0] ?? '');
    const told = report.findings.filter(({ place }) => place.line === line);
    expect(['held', 'stopped']).toContain(report.verdict);
    expect(told.map(({ finding }) => finding.message).join(' ')).toMatch(sentence);
  });

  test.each<readonly [string, Change]>([
    ['a pitch of nothing', ['pitch: 33 mm', 'pitch: 0 mm']],
    ['a button of nothing', ['nugget: 6.2 mm', 'nugget: 0 mm']],
    ['an edge of nothing', ['edge: 9 mm', 'edge: 0 mm']],
    ['a sheet of nothing', ['thickness: 1.4 mm', 'thickness: 0 mm']],
    ['a button in the wrong unit', ['nugget: 6.2 mm', 'nugget: 6.2 cm']],
    ['a sheet in the wrong unit', ['thickness: 1.4 mm', 'thickness: 1.4 cm']],
    ['a hundred thousand spots', ['count: 56', 'count: 100001']],
  ])('%s is never cleared', (_name, change) => {
    expect(judgeText(changed(ring, [change])).verdict).not.toBe('cleared');
  });
});
