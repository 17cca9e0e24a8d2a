import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { mayBeSilent } from './may-be-silent.ts';
import { silentPaths } from './silent-paths.ts';

// Silence is no answer at release either. Of the steps and of the work on the parts every key is left out in turn; the plan is held, or
// somebody wrote down why it need not be.

const reviewed = new Set(Object.values(mayBeSilent).flat());

describe('what a plan for release may leave out without a word has a reason', () => {
  test.each(['front-corner-released', 'sill-with-battery-out', 'aluminium-rail-bonded'])(
    '%s',
    (name) => {
      const silent = silentPaths(readFileSync(`examples/plans/${name}.yaml`, 'utf8'), isStep);
      expect(silent.length).toBeGreaterThan(10);
      expect(silent.filter((path) => !reviewed.has(path))).toEqual([]);
    },
    600_000,
  );
});

/** What was done and what stands around it; papers, material and measuring have tests of their own. */
function isStep([first, , third]: readonly (string | number)[]): boolean {
  return (
    ['make_safe', 'damage', 'finish', 'verify', 'record', 'sign_off', 'hold_points'].includes(
      String(first),
    ) ||
    (first === 'parts' && third === 'operations')
  );
}
