import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { seamedRail } from './faults-of-joining.ts';
import { batteryOut } from './faults-of-the-battery-out.ts';
import { bondedRail } from './faults-of-the-bonded-rail.ts';
import { wholeJob } from './faults-of-the-whole-job.ts';
import { judgeText, ruleIds } from './judge-text.ts';
import { changed } from './one-change.ts';
import type { Change } from './one-change.ts';

// Each of these is as a good shop does it or writes it, and is cleared. Common practice; gases by ISO 14175, from memory.

const prepared = 'Ground with its own discs and primed within the hour';
const coupon = 'coupon: { result: passed, date: 2026-09-04 }';
const wax = 'wax: Through the drawn holes after all heat';

test.each<readonly [string, string, readonly Change[]]>([
  // 6.5 mm of rivet: 13 mm is twice.
  ['thirteen millimetres left on the other side', bondedRail, [['overlap: 28 mm', 'overlap: 27 mm']]],
  ['a row half a millimetre off the middle', bondedRail, [['edge: 14 mm', 'edge: 13.5 mm']]],
  [
    'old adhesive cut down as the page draws',
    bondedRail,
    [
      [
        'Ground with its own discs and primed within the hour',
        "'Old adhesive cut down to a film of 0.5 mm as p. 12 draws, blown off with clean air, cleaned and primed'",
      ],
    ],
  ],
  [
    'refrigerant drawn off',
    wholeJob,
    [
      [
        'watch: 40 min }',
        "watch: 40 min, fluids: [{ item: refrigerant line, treatment: emptied, place: 'Drawn off and weighed, nothing let off' }] }",
      ],
    ],
  ],
  ['gas as the bottle writes it', seamedRail, [['gas: M21', 'gas: 82/18 argon and carbon dioxide (M21)']]],
  ['gas at the upper limit of its group', seamedRail, [['gas: M21', "gas: 'M21, 25 % CO2, rest argon'"]]],
  ['gas with its shares behind the names', seamedRail, [['gas: M21', "gas: 'Ar 82 %, CO2 18 % (M21)'"]]],
  ['gas of three', seamedRail, [['gas: M21', "gas: 'M24, 10 % CO2, 3 % O2, argon'"]]],
  [
    'discs that are denied',
    bondedRail,
    [
      [
        prepared,
        "'Ground with discs kept for aluminium, never those of the steel bay, no thinner; primed within the hour'",
      ],
    ],
  ],
  [
    'a list of tools that are denied',
    bondedRail,
    [
      [
        prepared,
        "'Never the discs, brushes or files of the steel bay; ground with its own and primed within the hour'",
      ],
    ],
  ],
  [
    'a brush of stainless steel',
    bondedRail,
    [
      [
        prepared,
        "'Brushed with its own stainless steel brush, wiped with isopropanol, bonded onto the primer within the hour'",
      ],
    ],
  ],
  [
    'paint taken off',
    bondedRail,
    [[prepared, "'Old paint ground off with its own discs, primed within the hour'"]],
  ],
  [
    'a record with lot and job of its own',
    bondedRail,
    [[coupon, 'coupon: { result: passed, date: 2026-09-04, record: B-2240-3 of job K-2240 lot L-8841 }']],
  ],
  [
    'epoxy with zinc phosphate',
    bondedRail,
    [['product: Two-part epoxy }\n  sealer', 'product: Two-part epoxy with zinc phosphate }\n  sealer']],
  ],
  [
    'zinc that is denied',
    bondedRail,
    [
      [
        'product: Two-part epoxy }\n  sealer',
        "product: 'Two-part epoxy, no weld-through primer' }\n  sealer",
      ],
    ],
  ],
  ['the other side named twice', wholeJob, [['sheets: [rail-l, apron-l]', 'sheets: [apron-l, rail-l]']]],
  [
    'holes of the lance plugged, drains left open',
    batteryOut,
    [[wax, "wax: 'Through the lance holes after all heat, these plugged again; drain holes left open'"]],
  ],
  [
    'drains taped only for the work',
    batteryOut,
    [[wax, "wax: 'After all heat; drain holes taped while the wax went in, tape off and opened again'"]],
  ],
])('cleared: %s', (_name, plan, changes) => {
  expect(ruleIds(judgeText(changed(plan, changes)))).toEqual([]);
});

test('left and right of different grades, each by its own line of the page, are a note', () => {
  const two = changed(batteryOut, [
    [
      'grade: HCT780X+Z100\n    grade_from: { reference: sill, at: p. 2 }\n    thickness: 1.4 mm\n    under',
      'grade: HC340LA\n    grade_from: { reference: sill, at: "p. 2, left" }\n    thickness: 1.4 mm\n    under',
    ],
  ]);
  const found = judgeText(two).findings.filter(({ finding }) => finding.rule.startsWith('twin-'));
  expect(found.map(({ finding: { rule, severity } }) => [rule, severity])).toEqual([
    ['twin-parts-differ', 'note'],
  ]);
});

test('two sheets of which one is the new piece of the part are two, not three', () => {
  const text = readFileSync('examples/plans/ring-end-piece-released.yaml', 'utf8');
  expect(judgeText(text).findings.map(({ finding }) => finding.rule)).not.toContain('thin-sheet-outside');
});
