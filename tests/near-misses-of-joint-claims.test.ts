import { describe, expect, test } from 'vitest';
import { edgeByPage, fewInAll } from './faults-of-joint-claims.ts';
import { pluggedRing } from './faults-of-joints.ts';
import { judgeText, ruleIds } from './judge-text.ts';
import { changed, ring } from './one-change.ts';
import type { Change } from './one-change.ts';

// Each is a plan that a fault of faults-of-joint-claims.ts lies close to; it stays cleared.
describe('near misses of what is claimed of joints stay cleared', () => {
  test.each<readonly [string, string, readonly Change[]]>([
    ['a row one diameter from the edge, by a page', ring, [edgeByPage('6.2 mm')]],
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
  ])('%s', (_name, plan, changes) => {
    expect(ruleIds(judgeText(changed(plan, changes)))).toEqual([]);
  });
});
