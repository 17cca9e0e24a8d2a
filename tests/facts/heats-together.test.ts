import { describe, expect, test } from 'vitest';
import { factsOf } from './facts-of.ts';

/** A heat of the rail with the hardened pillar beside it. */
const heat = (hold: string, distance: string, treatment = 'stays'): string =>
  `{ do: heat, source: induction, temperature: 600 °C, hold: ${hold}, times: 1, measured_by: { means: contact probe }, free_end: runs on, starts_below: 20 °C, near: [{ part: n, distance: ${distance}, path: same sheet, treatment: ${treatment} }] }`;

function left(...heats: readonly string[]) {
  const derived = factsOf(`parts:
  - { id: h, grade: HC340LA, thickness: 1.2 mm, operations: [${heats.join(', ')}] }
  - { id: n, grade: 22MnB5, thickness: 1.4 mm }`);
  return {
    tensile: Number(derived.value('exposure.tensile_left')),
    peak: Number(derived.value('exposure.peak')),
    note: JSON.stringify(derived.fact('exposure.peak')),
  };
}

describe('several heats beside one hardened part', () => {
  test('add up in what they take of its strength, and each keeps its own peak', () => {
    const one = left(heat('60 s', '20 mm'));
    const both = left(heat('60 s', '20 mm'), heat('300 s', '20 mm'));
    expect(both.tensile).toBeLessThan(one.tensile);
    expect(both.peak).toBe(one.peak);
    expect(both.note).toContain('1 other heat beside it');
  });

  // Handbook heat.md section 7: damage is additive at equal parameter, so two equal heats are one of twice the time; in the
  // working curve a hold of 600 s against one of 60 s at 300 °C costs 5 points of the per cent.
  test('twice the same is less than ten times the time', () => {
    const one = left(heat('60 s', '20 mm')).tensile;
    const twice = left(heat('60 s', '20 mm'), heat('60 s', '20 mm')).tensile;
    expect(twice).toBeLessThan(one);
    expect(one - twice).toBeLessThan(5);
  });

  test('a heat at which it is off the vehicle, or renewed after, does not count', () => {
    const one = left(heat('60 s', '20 mm'));
    expect(left(heat('60 s', '20 mm'), heat('300 s', '20 mm', 'removed')).tensile).toBe(one.tensile);
    expect(left(heat('60 s', '20 mm'), heat('300 s', '20 mm', 'renewed')).tensile).toBe(one.tensile);
  });
});
