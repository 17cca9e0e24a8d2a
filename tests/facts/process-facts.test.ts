import { describe, expect, test } from 'vitest';
import { factsOf, tarn } from './facts-of.ts';

/** A fact of the step at a place, as text; `?` when it is not known. */
function step(place: string, name: string, text: string): string {
  const fact = factsOf(`${tarn}\n${text}`).fact(`step.${name}`, place);
  return fact.known ? String(fact.value) : '?';
}

describe('rows of a wheel alignment', () => {
  const row = (entries: string, name: string): string =>
    step(
      '/verify/alignment',
      name,
      `verify: { alignment: { done: 2026-10-12, result: within range, values: [{ ${entries} }] } }`,
    );
  const camber = 'of: camber, at: front left';

  test.each([
    [`specified: -0°30', tolerance: 0°30', after: -1°00'`, '?'],
    [`specified: -0°30', tolerance: 0°30', after: 0°00'`, '?'],
    [`specified: -0°30', tolerance: 0°30', after: -1°01'`, `front left camber -1°01' (-0°30' ± 0°30')`],
    [`specified: -0.5°, tolerance: 0.5°, after: 0.02°`, 'front left camber 0.02° (-0.5° ± 0.5°)'],
    [`from: -1°00', to: 0°00', after: 0°01'`, `front left camber 0°01' (-1°00' to 0°00')`],
    [`from: -1°00', to: 0°00', after: -0.99°`, '?'],
    // Ten minutes and a third are no binary fraction: the end of the range belongs to it all the same.
    [`specified: 0°20', tolerance: 0°10', after: 0°30'`, '?'],
  ])('%s: out is %s', (entries, out) => {
    expect(row(`${camber}, ${entries}`, 'values_out')).toBe(out);
    expect(row(`${camber}, ${entries}`, 'values_open')).toBe('?');
  });

  test.each([
    [`${camber}, specified: 0°20', tolerance: 0°10'`, 'no value after the repair'],
    [`${camber}, after: 0°20'`, 'no specified value'],
    [`${camber}, specified: 0°20', after: 0°20'`, 'neither a tolerance nor both ends of a range'],
    [`${camber}, from: 0°20', after: 0°20'`, 'no specified value'],
    [`${camber}, from: 1°00', to: 0°20', after: 0°30'`, 'its range ends before it begins'],
    [`${camber}, from: 0°00', to: 1°00', tolerance: 0°10', after: 0°30'`, 'which of the two'],
    [`${camber}, specified: 0°20', tolerance: -0°10', after: 0°20'`, 'its tolerance is negative'],
    [`${camber}, specified: -2 mm, tolerance: 1 mm, after: -2 mm`, 'it is an angle and is given in mm'],
    [
      'of: toe, at: front left, specified: 1 mm, tolerance: 1 mm, after: 0.1°',
      'degrees and millimetres are mixed',
    ],
    [
      `of: total toe, at: front left, specified: 0°, tolerance: 1°, after: 0°`,
      'it is of an axle, and a wheel is named',
    ],
    [
      `of: toe, at: front axle, specified: 0°, tolerance: 1°, after: 0°`,
      'it is of a wheel, and an axle is named',
    ],
    [`of: toe, specified: 0°, tolerance: 1°, after: 0°`, 'the wheel or axle is not stated'],
    [`at: front left, specified: 0°, tolerance: 1°, after: 0°`, 'what is measured is not stated'],
  ])('%s is open', (entries, why) => {
    expect(row(entries, 'values_open')).toContain(why);
    expect(row(entries, 'values_out')).toBe('?');
  });

  test('toe in mm within and out of its range', () => {
    const toe = (after: string): string =>
      row(`of: total toe, at: front axle, specified: 1 mm, tolerance: 1 mm, after: ${after}`, 'values_out');
    expect(toe('2 mm')).toBe('?');
    expect(toe('2.1 mm')).toBe('front axle total toe 2.1 mm (1 mm ± 1 mm)');
    expect(toe('-0.5 mm')).toContain('-0.5 mm');
  });

  test('what is missing beside the rows', () => {
    const rows = (text: string, name: string): string =>
      step('/verify/alignment', name, `verify: { alignment: { result: within range, values: [${text}] } }`);
    const one = (of: string, at: string): string => `{ of: ${of}, at: ${at} }`;
    expect(rows(one('toe', 'front left'), 'values_short')).toBe('camber, toe front right');
    expect(rows([one('camber', 'rear left'), one('camber', 'rear right')].join(', '), 'values_short')).toBe(
      'toe',
    );
    expect(
      rows(
        [one('camber', 'front left'), one('camber', 'front right'), one('total toe', 'front axle')].join(
          ', ',
        ),
        'values_short',
      ),
    ).toBe('?');
    expect(rows(one('camber', 'front left'), 'values_lacking')).toBe(
      'caster, thrust angle, the rear axle, the values before the work',
    );
  });

  test('values that are the specified ones, all of them', () => {
    const copied = (rows: readonly (readonly [string, string])[]): string =>
      step(
        '/verify/alignment',
        'values_copied',
        `verify: { alignment: { values: [${rows.map(([specified, after]) => `{ specified: ${specified}, after: ${after} }`).join(', ')}] } }`,
      );
    const same = [`0°30'`, '0.5°'] as const;
    expect(copied([same, same, same, same])).toBe('true');
    expect(copied([same, same, same])).toBe('false');
    expect(copied([same, same, same, same, [`0°30'`, `0°31'`]])).toBe('false');
  });

  test('an alignment that is not stated has no values; what was measured counts, whatever is said of the whole', () => {
    const alignment = (name: string, text: string): string => step('/verify/alignment', name, text);
    const out = `{ of: camber, at: front left, specified: 0°, tolerance: 0.5°, after: 2° }`;
    expect(alignment('values', '')).toBe('none');
    expect(alignment('values', 'verify: { alignment: { result: not required } }')).toBe('none');
    expect(
      alignment('values_out', `verify: { alignment: { result: not required, values: [${out}] } }`),
    ).toContain('front left camber 2°');
    expect(step('/verify/road_test', 'values', '')).toBe('?');
  });
});

describe('how a sensor was calibrated', () => {
  const short = (entries: string): string =>
    step('/verify/calibrations/0', 'calibration_short', `verify: { calibrations: [{ ${entries} }] }`);
  const whole = 'static or dynamic, tank and load, tyre pressures, the level floor, the result document';

  test.each([
    ['sensor: front camera, result: passed', whole],
    ['result: passed', `which sensor, ${whole}`],
    [
      'sensor: rear radar, kind: dynamic, result: passed',
      'tank and load, tyre pressures, the result document',
    ],
    [
      'sensor: front camera, result: passed, conditions: { load: not checked, tyre_pressures: none, floor: to do }',
      whole,
    ],
    ['sensor: steering angle sensor, result: passed', '?'],
    ['sensor: seat occupant mat, result: passed', '?'],
    ['sensor: parking sensors, result: passed', '?'],
    [
      'sensor: parking camera, kind: static, result: passed',
      'tank and load, tyre pressures, the level floor, the result document',
    ],
    ['sensor: front camera, result: failed', '?'],
    ['sensor: front camera, kind: not required', '?'],
    ['sensor: front camera, kind: not fitted', '?'],
  ])('%s: missing is %s', (entries, missing) => {
    expect(short(entries)).toBe(missing);
  });
});

describe('a hold point against what it comes before', () => {
  const joined = (id: string, kind: string, done: string): string =>
    `{ id: ${id}, name: ${id}, kind: ${kind}, structural: true, operations: [{ do: replace, done: ${done}, joints: [{ method: resistance spot }] }] }`;
  const late = (point: string, parts: readonly string[]): string =>
    step('/hold_points/0', 'too_late_for', `hold_points: [{ ${point} }]\nparts: [${parts.join(', ')}]`);
  const sill = joined('sill', 'sill', '2026-10-08T10:00');
  const rail = joined('rail', 'front rail', '2026-10-10T10:00');

  test.each([
    ['point: flange before closing, done: 2026-10-08T09:59', '?'],
    ['point: flange before closing, done: 2026-10-08', '?'],
    ['point: flange before closing, done: 2026-10-08T10:01', '?'],
    ['point: flange before closing, done: 2026-10-10T10:01', 'the joint of sill'],
    ['point: flange before closing, part: sill, done: 2026-10-08T10:01', 'the joint of sill'],
    ['point: flange before closing, part: rail, done: 2026-10-09', '?'],
    ['point: structure before the last weld, done: 2026-10-09', '?'],
    ['point: structure before the last weld, done: 2026-10-11', 'the joint of sill'],
    ['point: cavity before the skin, done: 2026-10-11', '?'],
    ['point: cavity before the skin, part: sill, done: 2026-10-11', 'the joint of sill'],
    ['point: other, name: Doors hung, done: 2026-10-11', '?'],
    ['point: flange before closing', '?'],
  ])('%s: too late for %s', (point, found) => {
    expect(late(point, [sill, rail])).toBe(found);
  });

  test('where each flange point names its part, a part that none names is asked about', () => {
    const because = (points: string): string => {
      const sheets = factsOf(`${tarn}\nhold_points: [${points}]\nparts: [${sill}, ${rail}]`).all('step');
      const fact = sheets.find(({ at }) => at === '/hold_points')?.facts['step.needed_because'];
      return fact?.known === true ? String(fact.value) : '?';
    };
    const flange = 'point: flange before closing';
    const structure = '{ point: structure before the last weld }';
    expect(because(`{ ${flange}, part: sill }, ${structure}`)).toBe(
      'flange before closing (rail is joined in as well)',
    );
    expect(because(`{ ${flange}, part: sill }, { ${flange}, part: rail }, ${structure}`)).toBe('?');
    expect(because(`{ ${flange} }, ${structure}`)).toBe('?');
  });

  test('restraint wiring against the trim', () => {
    const trim =
      '{ id: t, name: Sill trim, kind: trim, operations: [{ do: remove and refit, done: 2026-10-12 }] }';
    const point = (day: string): string => `point: restraint wiring before the trim, done: ${day}`;
    expect(late(point('2026-10-11'), [trim])).toBe('?');
    expect(late(point('2026-10-13'), [trim])).toBe('the fitting of Sill trim');
    // A door that is hung hides the wiring of its own unit alone.
    const door = trim.replace('Sill trim, kind: trim', 'Door, kind: door');
    expect(late(point('2026-10-13'), [door])).toBe('?');
    expect(late(`${point('2026-10-13')}, part: t`, [door])).toBe('the fitting of Door');
  });

  test('who releases, at the start; when, at release', () => {
    const missing = (stage: string, point: string): string =>
      step('/hold_points/0', 'missing', `stage: ${stage}\nhold_points: [{ ${point} }]`);
    expect(missing('start', 'point: flange before closing')).toBe('who releases it');
    expect(missing('start', 'point: flange before closing, by: { name: none }')).toBe('who releases it');
    expect(missing('start', 'point: flange before closing, by: { name: B. Ohm }')).toBe('?');
    expect(missing('release', 'point: flange before closing, by: { name: B. Ohm }')).toBe(
      'when it was released',
    );
  });
});

describe('lamps, units and charge', () => {
  const lamp = (entries: string, name: string): string =>
    step('/verify/warning_lamps', name, `verify: { warning_lamps: { lit: [{ ${entries} }] } }`);

  test('a lamp of a system on which a life hangs, by its system or by its name', () => {
    for (const entries of ['lamp: Airbag', 'lamp: ABS', 'lamp: brakes', 'lamp: x, system: traction battery'])
      expect(lamp(`${entries}, explanation: known`, 'lamps_lit')).not.toBe('?');
    expect(lamp('lamp: starter battery, system: engine, explanation: weak', 'lamps_lit')).toBe('?');
    expect(lamp('lamp: washer fluid', 'lamps_unexplained')).toBe('washer fluid');
    expect(lamp('lamp: washer fluid, explanation: none', 'lamps_unexplained')).toBe('washer fluid');
    expect(lamp('lamp: washer fluid, explanation: Empty; the owner fills it.', 'lamps_unexplained')).toBe(
      '?',
    );
  });

  test('lamps that were lit at the counter are looked at again', () => {
    const needed = (text: string): string =>
      String(
        factsOf(`${tarn}\njob: { as_received: { warning_lamps: ${text} } }`)
          .all('step')
          .some(({ at }) => at === '/verify/warning_lamps'),
      );
    for (const none of ['none', 'None lit', 'no lamps lit', 'all off', 'all lamps were out'])
      expect(needed(none)).toBe('false');
    for (const lit of ['airbag', 'no oil pressure lamp at key-on', 'none of the airbag lamps work'])
      expect(needed(lit)).toBe('true');
  });

  test('a charge that no battery has is not taken', () => {
    const charge = (text: string): string =>
      step(
        '/verify/high_voltage',
        'state_of_charge',
        `verify: { high_voltage: { done: 2026-10-12, state_of_charge: ${text} } }`,
      );
    expect(charge('100 %')).toBe('100');
    expect(charge('0 %')).toBe('0');
    expect(charge('101 %')).toBe('?');
    expect(charge('-1 %')).toBe('?');
  });
});
