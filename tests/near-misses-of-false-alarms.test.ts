import { describe, expect, test } from 'vitest';
import { bonnetOnHinges, cover, neighbour, partMore } from './faults-beside-false-alarms.ts';
import { judgeText, ruleIds } from './judge-text.ts';
import { changed, rail, ring, skin } from './one-change.ts';
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
    [
      'a wing that is cracked at its edge',
      skin,
      [
        partMore(
          'name: Wing, kind: fender, damage: { kind: crack, found_by: seen }, operations: [{ do: replace, extent: whole }]',
        ),
      ],
    ],
    [
      'a condenser that is bolted on, called cosmetic',
      skin,
      [
        partMore(
          'name: Condenser, kind: other, structural: false, damage: { kind: bend, found_by: seen }, operations: [{ do: replace, extent: whole, fasteners: { one_time: renewed } }]',
        ),
      ],
    ],
  ])('%s', (_name, plan, changes) => {
    expect(ruleIds(judgeText(changed(plan, changes)))).toEqual([]);
  });
});

// What is told of a fault is told once, and nothing that only follows from it.
describe('one mistake, one hold', () => {
  test.each<readonly [string, string, Change, string]>([
    [
      'a misspelt replacement',
      ring,
      ['do: replace\n        step: 20', 'do: repalce\n        step: 20'],
      'entry-unknown-word',
    ],
    ['a misspelt heat', rail, ['do: heat', 'do: haet'], 'entry-unknown-word'],
    ['a misspelt joint', ring, ['method: resistance spot', 'method: resistance sopt'], 'entry-unknown-word'],
    [
      'a bracket of which nobody says whether it carries load',
      skin,
      [
        '  - id: mirror-l\n',
        `  - id: holder
    name: Holder of the horn
    kind: bracket
    class: mild
    thickness: 1 mm
    damage: { kind: bend, found_by: seen }
    operations:
      - { do: replace, extent: whole, fasteners: { one_time: renewed } }
  - id: mirror-l
`,
      ],
      'structural-operation-uncited',
    ],
  ])('%s', (_name, plan, change, rule) => {
    const report = judgeText(changed(plan, [change]));
    const holds = report.findings.filter(({ finding }) => finding.severity !== 'note');
    expect(holds.map(({ finding }) => finding.rule)).toEqual([rule]);
  });
});

test('where a fold forbids the work, no permission to type in is offered', () => {
  const report = judgeText(
    changed(rail, [
      ['- do: heat', '- do: straighten\n        method: with heat'],
      ['kind: bend', 'kind: kink'],
      ['grade: HC340LA', 'grade: HCT780X'],
    ]),
  );
  expect(ruleIds(report, ['stop'])).toEqual([
    'heat-advanced-high-strength',
    'straighten-kinked-torn-or-cracked',
  ]);
  expect(report.findings.some(({ finding }) => /pack|unknown/.test(finding.instead))).toBe(false);
});
