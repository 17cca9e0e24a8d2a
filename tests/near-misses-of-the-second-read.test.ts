import { describe, expect, test } from 'vitest';
import { seamNearRing } from './faults-of-the-second-read.ts';
import { judgeText, ruleIds } from './judge-text.ts';
import { changed, ring } from './one-change.ts';
import type { Change } from './one-change.ts';
import { releasedRing } from './released.ts';

// Beside each fault of faults-of-the-second-read.ts a good plan that lies close to it.
describe('near misses of the second read stay cleared', () => {
  test.each<readonly [string, string, readonly Change[]]>([
    [
      'a skin closed over the new ring with its seam 60 mm away, and nothing said of what is done with the ring',
      ring,
      [['treatment: stays, distance: 60 mm', 'distance: 60 mm']],
    ],
  ])('%s', (_name, plan, changes) => {
    expect(ruleIds(judgeText(changed(plan, changes)))).toEqual([]);
  });

  // That day is its own matter: other rules may ask why a seam comes before the flange was looked at.
  test('a seam dated before the new ring goes in does not heat it', () => {
    const report = judgeText(
      changed(releasedRing, [
        seamNearRing,
        ['done: 2026-10-12\n            settings', 'done: 2026-10-08\n            settings'],
      ]),
    );
    expect(ruleIds(report)).not.toContain('neighbour-too-hot');
  });
});
