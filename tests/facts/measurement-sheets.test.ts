import { describe, expect, test } from 'vitest';
import { factsOf, tarn } from './facts-of.ts';

const measured = (entries: string, parts = 'parts: []', asOf = '2026-10-21'): ReturnType<typeof factsOf> =>
  factsOf(`${tarn}\n${parts}\nmeasurements: { ${entries} }`, { asOf });

test('no measurements, no sheets', () => {
  expect(factsOf(tarn).all('measurement')).toEqual([]);
  expect(measured('').all('measurement')).toHaveLength(1);
});

describe('a point', () => {
  const point = (entries: string, more = ''): ReturnType<typeof factsOf> =>
    measured(`${more}points: [{ ${entries} }]`);
  const nominal = 'nominal: [1412 mm, -702 mm, 611 mm]';

  test('lies off its nominal by the largest of the three axes', () => {
    const derived = point(`${nominal}, after: [1413 mm, -704.5 mm, 611.2 mm]`);
    expect(derived.value('point.deviation_after')).toBeCloseTo(2.5, 9);
    expect(derived.value('point.over_tolerance')).toBeCloseTo(-0.5, 9);
    expect(derived.fact('point.tolerance')).toMatchObject({ value: 3, from: 'assumed' });
  });

  test('exactly at the tolerance it is not over it, whatever the last digit of the sum', () => {
    expect(point(`${nominal}, after: [1415 mm, -702 mm, 611 mm]`).value('point.over_tolerance')).toBe(0);
    // 0.3 − 0.2 and 0.1 differ in the last bit of a double.
    const tenth = 'nominal: [0.2 mm, 0 mm, 0 mm], after: [0.3 mm, 0 mm, 0 mm], tolerance: 0.1 mm';
    expect(point(tenth).value('point.over_tolerance')).toBe(0);
    expect(
      point(`${nominal}, after: [1415.1 mm, -702 mm, 611 mm]`).value('point.over_tolerance'),
    ).toBeCloseTo(0.1, 9);
  });

  test('its own tolerance comes before that of the plan, and that before the usual one', () => {
    const far = `${nominal}, after: [1416 mm, -702 mm, 611 mm]`;
    expect(point(`${far}, tolerance: 1 mm`, 'tolerance: 2 mm, ').value('point.over_tolerance')).toBe(3);
    expect(point(far, 'tolerance: 2 mm, ').value('point.over_tolerance')).toBe(2);
    expect(point(far).value('point.over_tolerance')).toBe(1);
  });

  test('signs and units count', () => {
    expect(
      point('nominal: [0 mm, -70.2 cm, 0 mm], after: [0 mm, 702 mm, 0 mm]').value('point.deviation_after'),
    ).toBe(1404);
    expect(
      point('nominal: [1 in, 0 mm, 0 mm], after: [25.4 mm, 0 mm, 0 mm]').value('point.deviation_after'),
    ).toBeCloseTo(0, 9);
  });

  test('without nominal or reading nothing is claimed', () => {
    for (const entries of [nominal, 'after: [0 mm, 0 mm, 0 mm]', `${nominal}, after: [0 mm, 0, 0 mm]`]) {
      expect([entries, point(entries).fact('point.over_tolerance').known]).toEqual([entries, false]);
    }
  });
});

describe('an opening', () => {
  const opening = (entries: string): ReturnType<typeof factsOf> => measured(`openings: [{ ${entries} }]`);

  test('its diagonals differ from nominal, or from each other where there is none', () => {
    const after = 'diagonals_after: [1204 mm, 1199 mm]';
    expect(opening(after).value('opening.difference_after')).toBe(5);
    expect(opening(`${after}, nominal: [1200 mm, 1200 mm]`).value('opening.difference_after')).toBe(4);
    expect(opening(`${after}, nominal: [1200 mm]`).value('opening.difference_after')).toBe(5);
    expect(opening(after).value('opening.over_tolerance')).toBe(2);
    expect(opening(`${after}, tolerance: 6 mm`).value('opening.over_tolerance')).toBe(-1);
  });

  test('one diagonal is no comparison', () => {
    for (const entries of [
      'diagonals_after: [1200 mm]',
      'name: A',
      'nominal: [1200 mm, 1200 mm], diagonals_after: [1200 mm]',
    ]) {
      expect([entries, opening(entries).fact('opening.over_tolerance').known]).toEqual([entries, false]);
    }
  });
});

describe('the measuring as a whole', () => {
  test('zero points are counted once each', () => {
    expect(measured('zero_points: [A, B, A]').value('measurement.zero_points')).toBe(2);
    expect(measured('system: optical').fact('measurement.zero_points').known).toBe(false);
  });

  test('a zero point on a damaged part, on a sound one, on one that nobody knows', () => {
    const on = (part: string, points = '{ name: A, on: p }'): unknown =>
      measured(`zero_points: [A], points: [${points}]`, `parts: [{ id: p, ${part} }]`).value(
        'measurement.zero_point_in_damage',
      );
    expect(on('damage: { kind: kink }')).toBe(true);
    expect(on('damage: { kinds: [scratch, bend] }')).toBe(true);
    expect(on('damage: { kind: none }')).toBe(false);
    expect(on('damage: { kind: scratch }')).toBe(false);
    expect(on('kind: floor')).toMatch(/^\? /u);
    expect(on('damage: { kind: not yet seen }')).toMatch(/^\? /u);
    expect(on('damage: { kind: none }', '{ name: A }')).toMatch(/^\? /u);
    expect(on('damage: { kind: none }', '{ name: B, on: p }')).toMatch(/^\? /u);
  });

  test('numbers are stated when every point has nominal and a reading', () => {
    const full = '{ nominal: [0 mm, 0 mm, 0 mm], before: [0 mm, 0 mm, 0 mm] }';
    expect(measured(`points: [${full}]`).value('measurement.numbers_stated')).toBe(true);
    expect(measured(`points: [${full}, { name: B }]`).value('measurement.numbers_stated')).toBe(false);
    expect(measured('points: []').value('measurement.numbers_stated')).toBe(false);
    expect(measured('before: 2026-10-06').value('measurement.numbers_stated')).toBe(false);
  });

  test('calibration counts on the last day of measuring, and without one on the as-of date', () => {
    expect(measured('calibration_due: 2026-10-21').value('measurement.calibration')).toBe('in date');
    expect(measured('calibration_due: 2026-10-20').value('measurement.calibration')).toBe('overdue');
    expect(measured('calibration_due: 2026-10-20, after: 2026-10-20').value('measurement.calibration')).toBe(
      'in date',
    );
    expect(
      measured('calibration_due: 2026-10-07, before: 2026-10-06, after: 2026-10-08').value(
        'measurement.calibration',
      ),
    ).toBe('overdue');
    expect(measured('calibration_due: soon').fact('measurement.calibration').known).toBe(false);
  });

  test('a point that was measured before and not after has been dropped, unless the plan says why', () => {
    const before = 'before: [0 mm, 0 mm, 0 mm]';
    const points = (second: string): string =>
      `points: [{ name: A, ${before}, after: [0 mm, 0 mm, 0 mm] }, { name: B, ${before}${second} }]`;
    expect(measured(points('')).value('measurement.dropped')).toBe('B');
    expect(measured(points(', dropped_because: cut away')).fact('measurement.dropped').known).toBe(false);
    expect(measured(`points: [{ name: B, ${before} }]`).fact('measurement.dropped').known).toBe(false);
    expect(measured(`after: 2026-10-08, points: [{ ${before} }]`).value('measurement.dropped')).toBe(
      'a point without a name',
    );
  });

  test('the data sheet covers this vehicle, another, or does not say', () => {
    const sheet = (entries: string): ReturnType<typeof factsOf> => measured(`data_sheet: { ${entries} }`);
    const own = 'maker: Corvane, model: Tarn, body: wagon, years: 2020-2022';
    expect(sheet(own).value('measurement.data_sheet_covers')).toBe(true);
    expect(sheet(own.replace('wagon', 'saloon')).value('measurement.data_sheet_covers')).toBe(false);
    expect(sheet(own.replace('2020-2022', '2015-2019')).value('measurement.data_sheet_covers')).toBe(false);
    const open = sheet(own.replace(', years: 2020-2022', '')).fact('measurement.data_sheet_covers');
    expect(!open.known && open.reason).not.toContain('The reference');
    expect(measured('').fact('measurement.data_sheet_covers').known).toBe(false);
  });
});

describe('a tolerance wider than the usual 3 mm', () => {
  const off = 'nominal: [0 mm, 0 mm, 0 mm], after: [14 mm, 0 mm, 0 mm], tolerance: 20 mm';
  const own = (entries: string): ReturnType<typeof factsOf> => measured(`points: [{ ${off} }], ${entries}`);

  test('is the plan’s own word until a page of the maker is cited', () => {
    expect(own('').value('point.tolerance_own_word')).toBe(true);
    expect(own('').value('point.over_tolerance')).toBe(-6);
    expect(own('').value('point.over_usual')).toBe(11);
    const cited = (id: string): unknown =>
      own(`tolerance_cite: { reference: ${id}, at: p. 1 }`).value('point.tolerance_own_word');
    expect(cited('own')).toBe(false);
    expect(cited('old')).toBe(true);
    expect(cited('course')).toBe(true);
  });

  test('3 mm and less need no page', () => {
    const word = (tolerance: string): unknown =>
      measured(`points: [{}], openings: [{}], tolerance: ${tolerance}`).value('opening.tolerance_own_word');
    expect(word('3 mm')).toBe(false);
    expect(word('3.1 mm')).toBe(true);
  });

  test('of an opening too', () => {
    const derived = measured('openings: [{ diagonals_after: [1200 mm, 1230 mm], tolerance: 40 mm }]');
    expect(derived.value('opening.tolerance_own_word')).toBe(true);
    expect(derived.value('opening.tolerance')).toBe(40);
    expect(derived.value('opening.over_usual')).toBe(27);
  });

  test('a zero point is held to the usual one until then', () => {
    const zero = (more: string): unknown =>
      measured(
        `zero_points: [Z1], points: [{ name: Z1, nominal: [0 mm, 0 mm, 0 mm], before: [4 mm, 0 mm, 0 mm], tolerance: 5 mm }]${more}`,
      ).value('point.over_before');
    expect(zero('')).toBe(1);
    expect(zero(', tolerance_cite: { reference: own, at: p. 1 }')).toBe(-1);
  });
});

test('a zero point is one that is named as such', () => {
  const derived = measured('zero_points: [Z1], points: [{ name: Z1 }, { name: A1 }, {}]');
  const at = (index: number): unknown => derived.value('point.zero', `/measurements/points/${String(index)}`);
  expect([at(0), at(1), at(2)]).toEqual([true, false, false]);
});

test('a data sheet bears number and revision', () => {
  const missing = (entries: string): unknown =>
    measured(`data_sheet: { ${entries} }`).value('measurement.data_sheet_missing');
  expect(missing('maker: Corvane')).toBe('number and no revision');
  expect(missing('document: M')).toBe('revision');
  expect(missing('revision: A')).toBe('number');
  expect(String(missing('document: M, revision: A'))).toMatch(/^\?/u);
});
