import { describe, expect, test } from 'vitest';
import { factsOf, tarn } from './facts-of.ts';

const bake = (entries: string, drive = 'battery-electric', more = ''): ReturnType<typeof factsOf> =>
  factsOf(`${tarn.replace('model: Tarn, body', `drive: ${drive}, model: Tarn, body`)}
finish: { bake: { ${entries} } }
${more}`);
const usual = 'temperature: 60 °C, time: 30 min';

describe('what the traction battery sees in the booth', () => {
  test('the temperature of the bake, whole', () => {
    const derived = bake(usual);
    expect(derived.value('exposure.victim')).toBe('traction battery');
    expect(derived.value('exposure.from')).toBe('bake');
    expect(derived.value('exposure.peak')).toBe(60);
    expect(derived.value('exposure.over_stop_limit')).toBe(0);
    expect(derived.value('exposure.over_time')).toBe(30 * 60 - 45 * 60);
    expect(bake('temperature: 140 °F, time: 1 h').value('exposure.over_time')).toBe(15 * 60);
    expect(bake('temperature: 61 °C').value('exposure.over_stop_limit')).toBe(1);
  });

  test('a bake below the temperature that counts may take any time', () => {
    expect(bake('temperature: 44 °C, time: 10 h').value('exposure.over_time')).toBeLessThan(0);
    expect(bake('temperature: 45 °C, time: 10 h').value('exposure.over_time')).toBe(600 * 60 - 45 * 60);
  });

  test('what is not stated is unknown', () => {
    expect(bake('time: 30 min').fact('exposure.over_stop_limit').known).toBe(false);
    expect(bake('temperature: 60 °C').fact('exposure.over_time').known).toBe(false);
    expect(bake('temperature: 60, time: 30 min').fact('exposure.peak').known).toBe(false);
  });

  test('the maker’s own figures in the plan make the limits stricter and never laxer', () => {
    const own = (limit: string): ReturnType<typeof factsOf> => bake(`${usual}, battery_limit: { ${limit} }`);
    expect(own('temperature: 50 °C').value('exposure.over_stop_limit')).toBe(10);
    expect(own('temperature: 80 °C').value('exposure.over_stop_limit')).toBe(0);
    expect(own('time: 20 min').value('exposure.over_time')).toBe(600);
    expect(own('time: 3 h').value('exposure.over_time')).toBe(30 * 60 - 45 * 60);
    expect(own('cite: { reference: own, at: p. 1 }').value('exposure.treatment_cited')).toBe(true);
    expect(own('cite: { reference: old, at: p. 1 }').value('exposure.treatment_cited')).toBe(false);
  });

  test('a battery that is out of the vehicle sees nothing', () => {
    expect(bake(usual).value('exposure.stays')).toBe(true);
    expect(bake(`${usual}, traction_battery: in the vehicle`).value('exposure.stays')).toBe(true);
    expect(bake(`${usual}, traction_battery: removed`).value('exposure.stays')).toBe(false);
    const out = 'make_safe: { high_voltage: { battery_removed: true } }';
    expect(bake(usual, 'hybrid', out).value('exposure.stays')).toBe(false);
  });
});

describe('when there is such an exposure', () => {
  test('not in a car without traction voltage', () => {
    expect(bake(usual, 'combustion').all('exposure')).toEqual([]);
    expect(bake(usual, 'mild-hybrid').all('exposure')).toEqual([]);
  });

  test('where the drive is not stated it is asked', () => {
    const derived = factsOf(`${tarn}\nfinish: { bake: { ${usual} } }`);
    expect(derived.fact('exposure.stays').known).toBe(false);
    expect(derived.value('exposure.over_stop_limit')).toBe(0);
  });

  test('also where the bake is an operation on a part, but not off the vehicle', () => {
    const baked = (entries: string): ReturnType<typeof factsOf> =>
      factsOf(`vehicle: { drive: battery-electric }\nparts: [{ operations: [{ do: bake, ${entries} }] }]`);
    const derived = baked('temperature: 80 °C, hold: 1 h');
    expect(derived.value('exposure.over_stop_limit')).toBe(20);
    expect(derived.value('exposure.over_time')).toBe(15 * 60);
    expect(baked('off_vehicle: true, temperature: 80 °C').all('exposure')).toEqual([]);
  });

  test('of several bakes the hottest and the longest count; paint that is dried with heat is baked too', () => {
    const both = bake(
      'temperature: 45 °C, time: 30 min',
      'battery-electric',
      'parts: [{ operations: [{ do: bake, temperature: 80 °C, hold: 20 min }, { do: refinish, temperature: 50 °C, hold: 2 h }] }]',
    );
    expect(both.value('exposure.peak')).toBe(80);
    expect(both.value('exposure.over_time')).toBe(120 * 60 - 45 * 60);
    const dried = (entries: string): ReturnType<typeof factsOf> =>
      factsOf(
        `vehicle: { drive: battery-electric }\nparts: [{ operations: [{ do: refinish, ${entries} }] }]`,
      );
    expect(dried('temperature: 80 °C, hold: 45 min').value('exposure.over_stop_limit')).toBe(20);
    expect(dried('temperature: 80 °C, off_vehicle: true').all('exposure')).toEqual([]);
    expect(dried('film: 0.1 mm').all('exposure')).toEqual([]);
  });

  test('not where nothing is baked', () => {
    expect(factsOf('vehicle: { drive: battery-electric }').all('exposure')).toEqual([]);
  });
});
