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
    // It is in again when the paint is baked.
    expect(bake(`${usual}, traction_battery: in the vehicle`, 'hybrid', out).value('exposure.stays')).toBe(
      true,
    );
  });

  test('out by one word and in by another: which, cannot be told', () => {
    const stays = 'make_safe: { high_voltage: { battery_removed: false } }';
    expect(bake(`${usual}, traction_battery: removed`, 'hybrid', stays).fact('exposure.stays').known).toBe(
      false,
    );
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

  test('what is welded into the body goes into the booth with it', () => {
    const off = (kind: string): number =>
      factsOf(
        `vehicle: { drive: battery-electric }\nparts: [{ kind: ${kind}, operations: [{ do: bake, temperature: 80 °C, off_vehicle: true }] }]`,
      ).all('exposure').length;
    expect(['sill', 'quarter panel', 'back panel', 'b-pillar'].map(off)).toEqual([1, 1, 1, 1]);
    expect(['door', 'door skin', 'bumper cover', 'bumper beam', 'other'].map(off)).toEqual([0, 0, 0, 0, 0]);
  });

  test('a bake that is refused is none', () => {
    expect(bake('planned: false').all('exposure')).toEqual([]);
    // Refused and described: the figures count.
    expect(bake('planned: false, temperature: 80 °C').value('exposure.over_stop_limit')).toBe(20);
  });

  test('each of several bakes is judged by itself; one that says nothing hides behind no other', () => {
    const several = bake(
      'temperature: 45 °C, time: 30 min',
      'battery-electric',
      'parts: [{ operations: [{ do: bake, temperature: 80 °C, hold: 20 min }, { do: bake }] }]',
    );
    const first = '/parts/0/operations/0';
    expect(several.value('exposure.over_stop_limit', '/finish/bake')).toBe(-15);
    expect(several.value('exposure.over_stop_limit', first)).toBe(20);
    expect(several.fact('exposure.over_stop_limit', '/parts/0/operations/1').known).toBe(false);
    expect(several.fact('exposure.over_time', '/parts/0/operations/1').known).toBe(false);
  });

  test('paint that is dried with heat is baked too', () => {
    const dried = (entries: string): ReturnType<typeof factsOf> =>
      factsOf(
        `vehicle: { drive: battery-electric }\nparts: [{ operations: [{ do: refinish, ${entries} }] }]`,
      );
    expect(dried('temperature: 80 °C, hold: 45 min').value('exposure.over_stop_limit')).toBe(20);
    expect(dried('temperature: 80 °C, off_vehicle: true').all('exposure')).toEqual([]);
    expect(dried('film: 0.1 mm').all('exposure')).toEqual([]);
    expect(dried('source: infra-red panel').fact('exposure.over_stop_limit').known).toBe(false);
  });

  test('not where nothing is baked', () => {
    expect(factsOf('vehicle: { drive: battery-electric }').all('exposure')).toEqual([]);
  });
});

describe('several bakes of one part together', () => {
  const over = (operations: string, finish = ''): unknown => {
    const fact = factsOf(
      `vehicle: { drive: battery-electric }\n${finish}\nparts: [${operations
        .split(' | ')
        .map((one) => `{ operations: [${one}] }`)
        .join(', ')}]`,
    ).fact('plan.bakes_together_over');
    return fact.known ? fact.value : 'open';
  };
  const one = '{ do: bake, temperature: 60 °C, hold: 30 min }';
  const finish = (figures: string): string => `finish: { bake: { ${figures} } }`;

  test('add up, against the time that the battery may see', () => {
    // 60 min against 45 min.
    expect(over(`${one}, ${one}`)).toBe(15 * 60);
    expect(over(one, finish('temperature: 50 °C, time: 20 min'))).toBe(5 * 60);
  });

  test('one bake is one, however often it is told', () => {
    expect(over(one)).toBe('open');
    expect(over(one, finish('temperature: 60 °C, time: 30 min'))).toBe('open');
    // Two doors in the booth at once.
    expect(over(`${one} | ${one}`)).toBe('open');
    expect(over(`{ do: refinish, temperature: 60 °C, hold: 30 min }, ${one}`)).toBe('open');
  });

  test('a cool one counts for nothing, and with the battery out none does', () => {
    expect(over(`${one}, { do: bake, temperature: 40 °C, hold: 5 h }`)).toBe('open');
    expect(over(`${one}, ${one}`, finish('traction_battery: removed'))).toBe('open');
  });
});

test.each([
  ['paint, and nothing more', '{ do: refinish }', true],
  ['paint off the vehicle', '{ do: refinish, off_vehicle: true }', false],
  [
    'paint, and a bake off the vehicle',
    '{ do: refinish }, { do: bake, off_vehicle: true, temperature: 80 °C }',
    false,
  ],
  ['paint dried by a lamp', '{ do: refinish, source: infra-red panel }', false],
  ['no paint', '{ do: fill }', false],
])('nobody says how it dries: %s', (_name, operations, expected) => {
  const derived = factsOf(`parts: [{ kind: door skin, operations: [${operations}] }]`);
  expect(derived.value('plan.paint_cure_open')).toBe(expected);
});
