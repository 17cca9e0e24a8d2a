import { describe, expect, test } from 'vitest';
import { factsOf } from './facts-of.ts';

const work = (done: string): string =>
  `parts: [{ id: rail, name: Rail, kind: front rail, operations: [{ do: heat${done} }, { do: refinish, done: 2026-10-30 }] }]`;

describe('the days of the measurements', () => {
  const days = (stage: string, measured: string, done = ', done: 2026-10-09'): readonly unknown[] => {
    const derived = factsOf(`stage: ${stage}\n${work(done)}\nmeasurements: { ${measured} }`);
    return [derived.value('measurement.before_late'), derived.value('measurement.after_early')];
  };

  test('before is before, or on the day; after is after, or on the day', () => {
    expect(days('release', 'before: 2026-10-09, after: 2026-10-09')).toEqual([false, false]);
    expect(days('release', 'before: 2026-10-10, after: 2026-10-10')).toEqual([true, false]);
    expect(days('release', 'before: 2026-10-08, after: 2026-10-08')).toEqual([false, true]);
  });

  test('a joint counts as well as the whole operation', () => {
    const joined =
      ', joints: [{ method: resistance spot, done: 2026-10-07 }, { method: resistance spot, done: 2026-10-12 }]';
    expect(days('release', 'before: 2026-10-08, after: 2026-10-11', joined)).toEqual([true, true]);
  });

  test('what is only bolted on bends nothing, with its bolts listed or not', () => {
    const afterEarly = (joints: string): unknown =>
      factsOf(
        `stage: release\nparts: [{ id: beam, kind: bumper beam, operations: [{ do: replace, done: 2026-10-12, joints: [${joints}] }] }]\nmeasurements: { after: 2026-10-11 }`,
      ).value('measurement.after_early');
    expect(afterEarly('')).toBe(false);
    expect(afterEarly('{ method: bolt, done: 2026-10-12 }')).toBe(false);
    expect(afterEarly('{ method: bolt }, { method: resistance spot }')).toBe(true);
  });

  test('left out, they are asked for at the release, and may still come before it', () => {
    expect(days('start', '')).toEqual([false, false]);
    expect(days('release', '')).toEqual([
      '? The day of the measurement before the repair is not written.',
      '? The day of the measurement after the repair is not written.',
    ]);
  });
});

describe('a part that was worked on', () => {
  const unmeasured = (parts: string, points: string): unknown =>
    factsOf(`parts: [${parts}]\nmeasurements: { points: [${points}] }`).value('measurement.unmeasured');
  const rail =
    '{ id: rail, name: Rail, kind: front rail, joined_to: [apron], operations: [{ do: section }] }';
  const point = (on: string, after = 'after: [0 mm, 0 mm, 0 mm]'): string => `{ on: ${on}, ${after} }`;

  test('a rail bears a point of its own', () => {
    expect(unmeasured(rail, point('rail'))).toEqual(expect.stringMatching(/^\?/u));
    expect(unmeasured(`${rail}, { id: apron, kind: apron }`, point('apron'))).toBe('Rail');
  });

  test('a rail bears more than one, for it can lie turned about a single one', () => {
    const atOne = (points: string, parts = rail): unknown =>
      factsOf(`parts: [${parts}]\nmeasurements: { points: [${points}] }`).value('measurement.at_one_point');
    expect(atOne(point('rail'))).toBe('Rail');
    expect(atOne(`${point('rail')}, ${point('apron')}`)).toBe('Rail');
    for (const fine of [`${point('rail')}, ${point('rail')}`, '', point('apron')])
      expect(atOne(fine)).toEqual(expect.stringMatching(/^\?/u));
    expect(atOne(point('rail'), rail.replace('front rail', 'strut tower'))).toEqual(
      expect.stringMatching(/^\?/u),
    );
  });

  test('a smaller part bears a point, or a part that it touches does, whichever names the other', () => {
    const cross = rail.replace('front rail', 'crossmember');
    expect(unmeasured(cross, point('floor'))).toBe('Rail');
    expect(unmeasured(cross, '')).toBe('Rail');
    const fine = [point('rail'), point('apron'), point('tower')];
    const parts = `${cross}, { id: apron, kind: apron }, { id: tower, kind: strut tower, joined_to: [rail] }`;
    for (const one of fine)
      expect([one, unmeasured(parts, one)]).toEqual([one, expect.stringMatching(/^\?/u)]);
  });

  const opened = (
    part: string,
    opening: string,
    rest = 'damage: { impact: Front corner }',
    fact = 'measurement.unmeasured',
  ): unknown =>
    factsOf(
      `parts: [{ id: x, name: X, ${part}, operations: [{ do: section }] }]\nmeasurements: { points: [{ name: C1, on: x }, { name: F1, on: floor, before: [0 mm, 0 mm, 0 mm] }], openings: [{ ${opening} }] }\n${rest}`,
    ).value(fact);
  const after = 'diagonals_after: [1200 mm, 1201 mm]';

  test.each([
    ['b-pillar', 'name: Front door'],
    ['b-pillar', 'name: Rear door'],
    ['b-pillar', 'name: Door opening'],
    ['a-pillar', 'name: Windscreen'],
    ['c-pillar', 'name: Tailgate'],
    ['sill', 'name: Front door'],
    ['b-pillar, side: left', 'name: Front left door'],
    ['b-pillar', 'corners: [C1, C2, C3, C4]'],
  ])('or it is a %s, and of its opening (%s) the diagonals are measured afterwards', (kind, name) => {
    expect(opened(`kind: ${kind}`, `${name}, ${after}`)).toEqual(expect.stringMatching(/^\?/u));
    expect(opened(`kind: ${kind}`, `${name}, diagonals_after: [1200 mm]`)).toBe('X');
    expect(opened(`kind: ${kind}`, `${name}, diagonals_before: [1200 mm, 1201 mm]`)).toBe('X');
  });

  test.each([
    ['front rail', 'name: Front door'],
    ['b-pillar', 'name: Boot'],
    ['b-pillar', 'name: Windscreen'],
    ['b-pillar', 'name: Tailgate'],
    ['a-pillar', 'name: Rear door'],
    ['c-pillar', 'name: Front door'],
    ['b-pillar', 'name: Opening 1'],
    ['b-pillar', 'corners: [C2, C3, C4, C5]'],
    ['b-pillar, side: left', 'name: Front door right'],
  ])('the diagonals of another opening tell nothing of a %s (%s)', (kind, name) => {
    expect(opened(`kind: ${kind}`, `${name}, ${after}`)).toBe('X');
  });

  test('pushed in from the side, it bears a point of its own, for no diagonal shows that', () => {
    const hit = (impact: string, kind = 'b-pillar', damage = 'kink', fact?: string): unknown =>
      opened(
        `kind: ${kind}, damage: { kind: ${damage} }`,
        `name: Front door, ${after}, diagonals_before: [1200 mm, 1190 mm]`,
        impact === '' ? '' : `damage: { impact: ${impact} }`,
        fact,
      );
    const fine: unknown = expect.stringMatching(/^\?/u);
    for (const impact of ['Left side', 'At a right angle at the front door', 'Head on into a post', ''])
      expect([impact, hit(impact), hit(impact, 'sill')]).toEqual([impact, 'X', 'X']);
    for (const impact of ['Front corner', 'From behind', 'A tree fell on the roof'])
      expect([impact, hit(impact)]).toEqual([impact, fine]);
    expect(hit('Left side', 'b-pillar', 'none')).toEqual(fine);
    expect(hit('Left side', 'b-pillar', 'kink', 'measurement.unmeasured_before')).toBe('X');
    expect(hit('Front corner', 'b-pillar', 'kink', 'measurement.unmeasured_before')).toEqual(fine);
  });

  test('hit, it was measured before as well, or a part that it touches was', () => {
    const before = (damage: string, points: string): unknown =>
      factsOf(
        `parts: [${rail.replace('kind:', `damage: { kind: ${damage} }, kind:`)}, { id: apron, kind: apron }]\nmeasurements: { points: [${points}] }`,
      ).value('measurement.unmeasured_before');
    const onFloor = point('floor', 'before: [0 mm, 0 mm, 0 mm]');
    expect(before('kink', onFloor)).toBe('Rail');
    expect(before('kink', point('rail'))).toBe('Rail');
    const fine = [
      point('rail', 'before: [0 mm, 0 mm, 0 mm]'),
      point('apron', 'before: [0 mm, 0 mm, 0 mm]'),
      '',
    ];
    for (const points of fine)
      expect([points, before('kink', points)]).toEqual([points, expect.stringMatching(/^\?/u)]);
    expect(before('none', onFloor)).toEqual(expect.stringMatching(/^\?/u));
  });

  test('a point that was measured before and not after is told at its own line, and not again of the part', () => {
    const before = point('rail', 'before: [0 mm, 0 mm, 0 mm]');
    expect(unmeasured(rail, before)).toEqual(expect.stringMatching(/^\?/u));
  });

  test.each([
    ['bolted on', 'kind: bumper beam, operations: [{ do: replace, extent: whole }]'],
    ['only drilled', 'kind: front rail, operations: [{ do: drill }]'],
    ['painted', 'kind: front rail, operations: [{ do: refinish }]'],
    ['not to be worked on after all', 'kind: front rail, operations: [{ do: heat, planned: false }]'],
    ['cosmetic', 'kind: side panel, structural: false, operations: [{ do: section }]'],
  ])('is not one that is %s', (_name, part) => {
    expect(unmeasured(`{ name: X, ${part} }`, point('floor'))).toEqual(expect.stringMatching(/^\?/u));
  });
});
