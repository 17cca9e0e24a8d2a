import { describe, expect, test } from 'vitest';
import { bonnetOnHinges, neighbour } from './faults-beside-false-alarms.ts';
import { judgeText, ruleIds } from './judge-text.ts';
import { changed, rail, skin } from './one-change.ts';
import type { Change } from './one-change.ts';

// Good plans that were once held or stopped without cause. Beside each, faults-beside-false-alarms.ts has the fault that is still found.
describe('what is ordinary practice is cleared', () => {
  test.each<readonly [string, string, readonly Change[]]>([
    [
      'the windscreen behind a shield with air between',
      rail,
      [neighbour('{ item: glass, distance: 60 mm, path: through air, treatment: shielded }')],
    ],
    [
      'trim behind a shield, where the metal stays cold',
      rail,
      [neighbour('{ item: trim, distance: 250 mm, path: same sheet, treatment: shielded }')],
    ],
    [
      'an aluminium bonnet on hinges of steel with coated bolts',
      skin,
      [bonnetOnHinges(', insulation: Coated bolts of the factory')],
    ],
  ])('%s', (_name, plan, changes) => {
    expect(ruleIds(judgeText(changed(plan, changes)))).toEqual([]);
  });
});
