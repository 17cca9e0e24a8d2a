import { describe, expect, test } from 'vitest';
import { bonnetOnHinges, cover, neighbour } from './faults-beside-false-alarms.ts';
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
    ['a cover of plastic, warmed and pressed back', skin, [cover('class: plastic')]],
    ['a cover by the mark of its plastic', skin, [cover('grade: PP+EPDM-TD20')]],
    [
      'a cover of plastic at a figure of the page',
      rail,
      [
        cover('class: plastic', { before: 'a-pillar-r' }),
        ['temperature: 90 °C', 'cite: { reference: safe, at: p. 4 }, temperature: 110 °C'],
        [
          'hold: 60 s, times: 1, measured_by: { means: contact',
          'limit: { temperature: 120 °C, time: 90 s, times: 2, cite: { reference: safe, at: p. 4 } }, hold: 60 s, times: 1, measured_by: { means: contact',
        ],
      ],
    ],
  ])('%s', (_name, plan, changes) => {
    expect(ruleIds(judgeText(changed(plan, changes)))).toEqual([]);
  });
});
