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

/** Two heats of two rails beside one pillar, the second begun on cooled sheet or not. */
function besideOne(distance: string, second: string): ReturnType<typeof factsOf> {
  const rail = (id: string, more: string): string =>
    `  - { id: ${id}, grade: HC340LA, thickness: 1.2 mm, operations: [{ do: heat, source: induction, temperature: 600 °C, hold: 60 s, times: 1, measured_by: { means: contact probe }, free_end: runs on, ${more} near: [{ part: n, distance: ${distance}, path: joined }] }] }`;
  return factsOf(`parts:
${rail('g', 'step: 1,')}
${rail('h', `step: 2, ${second}`)}
  - { id: n, grade: 22MnB5, thickness: 1.4 mm }`);
}

describe('the rise of several heats beside one part', () => {
  // Conduction adds up: two rises of 162 K (one: 181.6 °C at 40 mm) are 344 °C, over the 200 °C that one alone keeps.
  test('adds up without a pause: what one alone keeps is then not known', () => {
    const derived = besideOne('40 mm', '');
    const over = derived.fact('exposure.over_limit');
    expect(over.known).toBe(false);
    expect(!over.known && over.reason).toContain('`starts_below`');
  });

  test('does not where the later one begins on cooled sheet, which stays as much warmer', () => {
    const cold = Number(
      besideOne('40 mm', 'starts_below: 20 °C,').value('exposure.peak', '/parts/1/operations/0/near/0'),
    );
    const warm = Number(
      besideOne('40 mm', 'starts_below: 30 °C,').value('exposure.peak', '/parts/1/operations/0/near/0'),
    );
    expect(cold).toBeLessThan(200);
    expect(warm).toBeCloseTo(cold + 10, 6);
  });

  test('is told as the sum as long as the sum keeps the limit', () => {
    const sum = Number(besideOne('80 mm', '').value('exposure.peak'));
    const one = Number(besideOne('80 mm', 'starts_below: 20 °C,').value('exposure.peak'));
    expect(sum - 20).toBeCloseTo(2 * (one - 20), 6);
  });

  test('two heats of one place are one of twice the time; two places of one part are two', () => {
    const places = (first: string, second: string, times: string): number => {
      const heatAt = (place: string): string =>
        `{ do: heat, ${place} source: induction, temperature: 600 °C, hold: 60 s, times: ${times}, measured_by: { means: contact probe }, free_end: runs on, near: [{ part: n, distance: 60 mm, path: same sheet }] }`;
      return Number(
        factsOf(`parts:
  - { id: h, grade: HC340LA, thickness: 1.2 mm, operations: [${[first, second]
    .filter((one) => one !== '-')
    .map(heatAt)
    .join(', ')}] }
  - { id: n, grade: DC04, structural: false, thickness: 1.4 mm }`).value('exposure.peak'),
      );
    };
    expect(places('', '', '1')).toBeCloseTo(places('', '-', '2'), 6);
    expect(places('at: front,', 'at: front,', '1')).toBeCloseTo(places('', '-', '2'), 6);
    expect(places('at: front,', 'at: rear,', '1')).toBeCloseTo(places('', '-', '1'), 6);
  });
});

describe('several seams', () => {
  const seams = (count: number, settings: string): ReturnType<typeof factsOf> =>
    factsOf(`parts:
  - { id: h, grade: HC340LA, thickness: 1.2 mm, operations: [{ do: weld, free_end: runs on, joints: [${Array.from({ length: count }, () => `{ method: arc seam, form: open butt, settings: { voltage: 17 V, current: 90 A, travel_speed: 8 mm/s${settings} } }`).join(', ')}], near: [{ part: n, distance: 45 mm, path: same sheet }] }] }
  - { id: n, grade: 22MnB5 }`);

  // Adams (handbook heat.md section 3): 153 J/mm in 1.2 mm, 45 mm off: 1/(4.1327 · 0.0044 · 1.2 · 45 / 153 + 1/1490) = 141 K over 20 °C.
  test('without a stated pause may add up: one keeps the limit, three are asked about', () => {
    expect(seams(1, '').value('exposure.peak')).toBeCloseTo(161, 0);
    const three = seams(3, '').fact('exposure.over_limit');
    expect(!three.known && three.reason).toContain('`interpass`');
    expect(seams(3, ', interpass: 40 °C').fact('exposure.peak').known).toBe(true);
    expect(Number(seams(3, ', interpass: 40 °C').value('exposure.over_limit'))).toBeLessThan(0);
  });
});
