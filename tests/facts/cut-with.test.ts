import { describe, expect, test } from 'vitest';
import { factsOf } from './facts-of.ts';

const cut = (entries: string, near = 'item: sealer, distance: 20 mm, path: same sheet') =>
  factsOf(
    `parts: [{ id: h, kind: sill, grade: HC340LA, thickness: 1.2 mm, operations: [{ ${entries}, near: [{ ${near} }] }] }]`,
  );

describe('what a part is cut with', () => {
  test('a plasma cut heats what lies beside it as the hottest seam that is computed, which is said', () => {
    const derived = cut('do: cut for access, cut_with: plasma, free_end: runs on');
    expect(derived.value('exposure.from')).toBe('arc');
    // Adams, 1000 J/mm for each mm of sheet: 1/(1/1490 + 4.1327 · 0.0044 · 20/1000) + 20 = 986 °C, by hand.
    expect(Number(derived.value('exposure.peak'))).toBeCloseTo(986, 0);
    expect(derived.fact('exposure.peak')).toMatchObject({ from: 'assumed' });
    expect(derived.value('operation.flame_or_arc')).toBe(true);
    expect(derived.value('operation.thermal_cut')).toBe(true);
  });

  test('a flame cut is a heat, and asks for what a heat asks for', () => {
    const derived = cut('do: cut for access, cut_with: flame');
    expect(derived.value('operation.heats')).toBe(true);
    expect(derived.fact('exposure.peak').known).toBe(false);
  });

  test.each(['saw', 'drill', 'chisel', 'cutting disc', 'grinder'])(
    'a %s heats nothing that is computed',
    (tool) => {
      const derived = cut(`do: cut for access, cut_with: ${tool}`);
      expect(derived.value('exposure.from')).toBe('cutting or grinding');
      expect(derived.value('operation.heats')).toBe(false);
    },
  );

  test('hot air of which nobody says how hot counts as a heat, at its worst, whatever the word', () => {
    const derived = cut('do: fill, source: hot air, hold: 60 s');
    expect(derived.value('operation.heats')).toBe(true);
    expect(derived.value('operation.peak')).toBe(650);
    expect(cut('do: fill, source: hot air, temperature: 70 °C').value('operation.heats')).toBe(false);
  });
});
