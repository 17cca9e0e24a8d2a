import { describe, expect, test } from 'vitest';
import {
  bondedRing,
  cureOf,
  drilled,
  buttonByPage,
  edgeByPage,
  fewInAll,
  insertOf,
  postCoupon,
  productOf,
  waxOf,
} from './faults-of-joint-claims.ts';
import { pluggedRing } from './faults-of-joints.ts';
import { bondedQuarter, sectionedPost } from './faults-of-seams.ts';
import { batteryOut } from './faults-of-the-battery-out.ts';
import { judgeText, ruleIds } from './judge-text.ts';
import { changed, ring, skin } from './one-change.ts';
import type { Change } from './one-change.ts';

// Each is a plan that a fault of faults-of-joint-claims.ts lies close to; it stays cleared.
describe('near misses of what is claimed of joints stay cleared', () => {
  test.each<readonly [string, string, readonly Change[]]>([
    ['a row one diameter from the edge, by a page', ring, [edgeByPage('6.2 mm')]],
    ['a button of 3.6 √t, by a page', ring, [buttonByPage('4.2 mm')]],
    ['a row one diameter from the bend, by a page', ring, [edgeByPage('11.8 mm')]],
    ['plug holes with a narrow rim that the page draws', pluggedRing, [edgeByPage('5 mm')]],
    [
      'a dozen factory spots on a flange that is so short',
      ring,
      [fewInAll, ['pitch: 33 mm', 'pitch: 33 mm\n            length: 520 mm']],
    ],
    [
      'a dozen factory spots by the page that counts them',
      ring,
      [
        fewInAll,
        ['pitch: 33 mm', 'pitch: 33 mm\n            factory_count_from: { reference: ring, at: p. 13 }'],
      ],
    ],
    [
      'three dozen spots of a ring',
      ring,
      [['factory_count: 42\n            count: 56', 'factory_count: 27\n            count: 36']],
    ],
    [
      'the coat of hardened sheet left whole',
      ring,
      bondedRing('AlSi left whole, inner flange ground bright'),
    ],
    [
      'the coat of hardened sheet not ground off',
      ring,
      bondedRing('AlSi coat never taken off, wiped with alcohol'),
    ],
    [
      'stainless wire by a page that asks for it',
      sectionedPost,
      [['filler: G3Si1', 'filler: ER308LSi\n            filler_cite: { reference: post, at: p. 9 }']],
    ],
    ['a coupon of the sheets of a seam that lists none', sectionedPost, [postCoupon('HC420LA')]],
    [
      'a coupon of the seam with its insert',
      sectionedPost,
      [
        [
          'coupon: { result: passed, date: 2026-09-14 }',
          'coupon: { result: passed, date: 2026-09-14, sheets: [{ grade: HC420LA, thickness: 1.5 mm }, { grade: HC420LA, thickness: 1.5 mm }, { grade: HC420LA, thickness: 1.5 mm }] }',
        ],
      ],
    ],
    [
      'the factory’s coat under the arc by the page that lets it stay',
      sectionedPost,
      [
        [
          'gap: 2 mm',
          'gap: 2 mm\n            flange_coat: factory coat left whole\n            flange_coat_cite: { reference: post, at: p. 9 }',
        ],
      ],
    ],
    ['an insert somewhat thinner, by a page of its own', sectionedPost, [insertOf('1.2 mm')]],
    [
      'a hole for a pulling hook',
      ring,
      [drilled('One hole of 8 mm for the pulling hook, closed by a plug weld')],
    ],
    ['a bond cured mildly warm', bondedQuarter, [cureOf('24 h at 23 °C or 30 min at 80 °C')]],
    ['an adhesive that is free of silicone', bondedQuarter, [productOf('Two-part epoxy B (silicone-free)')]],
    [
      'wax after the weld and before the trim',
      ring,
      [waxOf('Through the drawn holes after welding and paint, before the trim is fitted')],
    ],
    [
      'control units in fixed words alone',
      ring,
      [['control_units: Unplugged under both front seats.', 'control_units_state: unplugged']],
    ],
    [
      'a parking sensor clipped into its cover',
      skin,
      [
        [
          'verify:\n',
          '  - id: park\n    name: Parking sensor, rear left inner\n    kind: sensor\n    damage: { kind: crack, found_by: seen }\n    operations:\n      - { do: replace, extent: whole }\nverify:\n',
        ],
      ],
    ],
    [
      'a skin cut off first and set on when the sill is in',
      batteryOut,
      [['step: 30', 'step: 10\n        refit_step: 30']],
    ],
  ])('%s', (_name, plan, changes) => {
    expect(ruleIds(judgeText(changed(plan, changes)))).toEqual([]);
  });
});
