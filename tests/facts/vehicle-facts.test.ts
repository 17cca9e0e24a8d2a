import { describe, expect, test } from 'vitest';
import { factsOf } from './facts-of.ts';

const vehicle = (entries: string): ReturnType<typeof factsOf> => factsOf(`vehicle: { ${entries} }`);

describe('the vehicle', () => {
  test('is named by maker and model together', () => {
    expect(vehicle('maker: Corvane, model: Tarn').value('vehicle.named')).toBe(true);
    expect(vehicle('maker: Corvane').value('vehicle.named')).toBe(false);
  });

  test.each([
    ['drive: combustion', false],
    ['drive: mild-hybrid', false],
    ['drive: natural-gas', false],
    ['drive: hybrid', true],
    ['drive: plug-in-hybrid', true],
    ['drive: battery-electric', true],
    ['drive: fuel-cell', true],
    ['drive: [combustion, natural-gas]', false],
    ['drive: [combustion, plug-in-hybrid]', true],
  ])('%s has traction voltage: %s', (entry, expected) => {
    expect(vehicle(entry).value('vehicle.high_voltage')).toBe(expected);
  });

  test('a combustion engine with an orange cable is a contradiction, not an answer', () => {
    const named = (parts: string): unknown =>
      factsOf(`vehicle: { drive: combustion }\nparts: [${parts}]`).value('vehicle.high_voltage');
    for (const parts of [
      '{ kind: traction battery }',
      '{ holds: [high-voltage cable] }',
      '{ operations: [{ do: weld, near: [{ item: high-voltage cable }] }] }',
    ]) {
      expect([parts, named(parts)]).toEqual([
        parts,
        expect.stringMatching(/^\? The drive is stated as combustion, and yet/u),
      ]);
    }
    expect(named('{ holds: [wiring] }')).toBe(false);
    expect(
      factsOf('vehicle: { drive: hybrid }\nparts: [{ kind: traction battery }]').value(
        'vehicle.high_voltage',
      ),
    ).toBe(true);
  });

  test('an unstated drive is no combustion engine', () => {
    expect(vehicle('').fact('vehicle.high_voltage').known).toBe(false);
    expect(vehicle('drive: []').fact('vehicle.high_voltage').known).toBe(false);
    expect(vehicle('drive: steam').value('vehicle.high_voltage')).toMatch(/^\? .*cannot be read/u);
  });
});

describe('its number', () => {
  // 0CVBAB2BZM0002207: 17 characters of ISO 3779, M in place 10 stands for 2021 (49 CFR 565.15).
  const number = 'vin: 0CVBAB2BZM0002207';

  test('a number in form of a market without check digit', () => {
    const derived = vehicle(`${number}, market: european-union, model_year: 2021`);
    expect(derived.value('vehicle.identity')).toBe('vin');
    expect(derived.value('vehicle.number_form')).toBe('right');
    expect(derived.value('vehicle.check_digit')).toBe('not required');
    expect(derived.value('vehicle.year_code')).toBe('not required');
    expect(derived.value('vehicle.training_number')).toBe(true);
  });

  test('in North America the check digit is held against 49 CFR 565.15(c)', () => {
    // By hand: 0·8+3·7+5·6+9·5+9·4+9·3+1·2+3·10 + 4·9+0+0+0+2·5+2·4+0·3+7·2 = 259, and 259 = 23·11 + 6.
    const right = vehicle('vin: 0CVBABAT6M0002207, market: united-states');
    expect(right.value('vehicle.check_digit')).toBe('agrees');
    const wrong = vehicle('vin: 0CVBABAT1M0002207, market: united-states');
    expect(wrong.value('vehicle.check_digit')).toBe('disagrees');
    expect(wrong.value('vehicle.check_digit_expected')).toBe('6');
  });

  test('without a market neither check digit nor year is judged', () => {
    const derived = vehicle(`${number}, model_year: 2021`);
    for (const name of ['vehicle.check_digit', 'vehicle.year_code']) {
      expect([name, derived.value(name)]).not.toEqual([name, 'agrees']);
    }
  });

  test.each([
    ['vin: 0CVBAB2BZM00O2230', 'letters I, O, Q'],
    ['vin: 0CVBAB2BZM000220', 'length'],
    ['vin: 0CVBAB2BZM0002*07', 'character'],
  ])('%s is out of form by %s, and nothing else is read off it', (entry, form) => {
    const derived = vehicle(`${entry}, market: united-states, model_year: 2021`);
    expect(derived.value('vehicle.number_form')).toBe(form);
    expect(derived.fact('vehicle.check_digit').known).toBe(false);
    expect(derived.fact('vehicle.year_code').known).toBe(false);
  });

  test('the year code agrees or disagrees with the stated year where the market has one', () => {
    // Place 7 of this number is a letter, so a light vehicle's M is 2021 and not 1991 (49 CFR 565.15).
    const with7 = 'vin: 0CVBABAT0M0002207, market: united-states, weight_class: light';
    expect(vehicle(`${with7}, model_year: 2021`).value('vehicle.year_code')).toBe('agrees');
    expect(vehicle(`${with7}, model_year: 1991`).value('vehicle.year_code')).toBe('disagrees');
    expect(vehicle(`${with7}, model_year: 2019`).value('vehicle.year_code')).toBe('disagrees');
    expect(vehicle(with7).fact('vehicle.year_code').known).toBe(false);
  });

  test('of a heavy vehicle, or one whose class is not stated, the two years thirty apart stay open', () => {
    const seven = 'vin: 0CVBAB0T0M0002207, market: united-states';
    expect(vehicle(`${seven}, weight_class: heavy, model_year: 2021`).value('vehicle.year_code')).toBe(
      'open',
    );
    expect(vehicle(`${seven}, model_year: 1991`).value('vehicle.year_code')).toBe('agrees');
    expect(vehicle(`${seven}, model_year: 2021`).fact('vehicle.year_code')).toMatchObject({
      known: false,
      at: '/vehicle/weight_class',
    });
  });

  test('a frame number carries neither check digit nor year', () => {
    const derived = vehicle('frame_number: TRN50-0012345, market: japan');
    expect(derived.value('vehicle.identity')).toBe('frame number');
    expect(derived.value('vehicle.number_form')).toBe('right');
    expect(derived.value('vehicle.check_digit')).toBe('not required');
    expect(derived.fact('vehicle.years_by_code').known).toBe(false);
  });

  test('no number at all', () => {
    const derived = vehicle('');
    expect(derived.value('vehicle.identity')).toBe('none');
    expect(derived.fact('vehicle.number_form').known).toBe(false);
    expect(derived.value('vehicle.number_confirmed')).toBe(false);
  });

  test('confirmed only when a second place is named', () => {
    expect(vehicle(`${number}, confirmed_at: door label`).value('vehicle.number_confirmed')).toBe(true);
  });
});

describe('the day of building', () => {
  const fits = (entries: string): unknown =>
    factsOf(`vehicle: { ${entries} }`).value('vehicle.build_date_fits');

  test('lies in the calendar year of the model year or in the one before', () => {
    expect(fits('model_year: 2021, build_date: 2019-12-31')).toBe(false);
    expect(fits('model_year: 2021, build_date: 2020-01-01')).toBe(true);
    expect(fits('model_year: 2021, build_date: 2021-12-31')).toBe(true);
    expect(fits('model_year: 2021, build_date: 2022-01-01')).toBe(false);
  });

  test('or it is not known', () => {
    for (const entries of ['model_year: 2021', 'build_date: 2020-01-01']) {
      expect([entries, String(fits(entries)).startsWith('?')]).toEqual([entries, true]);
    }
  });
});
