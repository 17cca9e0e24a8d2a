import { describe, expect, test } from 'vitest';
import { factsOf, tarn } from './facts-of.ts';

/** A fact of the check at a place; `open` when it is not known. */
function check(place: string, name: string, text: string): unknown {
  const fact = factsOf(`${tarn}\n${text}`).fact(`step.${name}`, `/verify/${place}`);
  return fact.known ? fact.value : 'open';
}
const part = (entries: string): string => `parts: [{ id: p, ${entries} }]`;

describe('what the work makes necessary', () => {
  const units = (unit: string): string =>
    `make_safe: { restraints: { planned: true, units: [{ ${unit} }] } }`;

  test('restraint units that came off or went off: completion, and a scan', () => {
    for (const unit of ['treatment: removed', 'treatment: replaced', 'state: deployed']) {
      expect(check('restraints', 'needed', units(unit))).toBe(true);
      expect(check('scan_after', 'needed', units(unit))).toBe(true);
    }
    expect(check('restraints', 'needed', units('treatment: stays, state: undeployed'))).toBe(false);
    expect(check('restraints', 'needed', '')).toBe(false);
  });

  test.each([
    ['a subframe taken off', 'kind: subframe, operations: [{ do: remove and refit }]', true],
    ['a suspension part replaced', 'kind: suspension part, operations: [{ do: replace }]', true],
    ['a rail that was hit', 'kind: front rail, damage: { kind: bend }', true],
    ['a rail that is sound', 'kind: front rail, damage: { kind: none }', false],
    ['a rail that is only painted', 'kind: front rail, operations: [{ do: refinish }]', false],
    ['a wheel that was hit', 'kind: wheel, damage: { kind: crack }', true],
    ['a wheel taken off for access', 'kind: wheel, operations: [{ do: remove and refit }]', false],
    ['a door ring replaced', 'kind: door ring, operations: [{ do: replace }]', false],
  ])('alignment after %s', (_name, entries, needed) => {
    expect(check('alignment', 'needed', part(entries))).toBe(needed);
  });

  test('a scan after electric welding and after isolation, not after paint', () => {
    expect(check('scan_after', 'needed', part('kind: sill, operations: [{ do: weld }]'))).toBe(true);
    expect(check('scan_after', 'needed', part('kind: fender, operations: [{ do: refinish }]'))).toBe(false);
    const isolation = (planned: string): string =>
      `make_safe: { high_voltage: { isolation: { planned: ${planned} } } }`;
    expect(check('scan_after', 'needed', isolation('true'))).toBe(true);
    expect(check('scan_after', 'needed', isolation('false'))).toBe(false);
  });

  test('calibration is answered where a windscreen or bumper cover came off', () => {
    const calibration = (entries: string): unknown => check('calibrations', 'needed', part(entries));
    expect(calibration('kind: glass, name: Windscreen, operations: [{ do: replace }]')).toBe(true);
    expect(calibration('kind: glass, name: Rear door glass, operations: [{ do: replace }]')).toBe(false);
    expect(calibration('kind: bumper cover, operations: [{ do: remove and refit }]')).toBe(true);
    expect(calibration('kind: bumper cover, operations: [{ do: refinish }]')).toBe(false);
  });
});

describe('how a check came out', () => {
  test('in words of its own, and as one of four', () => {
    const result = (place: string, entries: string): unknown =>
      check(place, 'result', `verify: { ${entries} }`);
    expect(result('road_test', 'road_test: { result: failed }')).toBe('failed');
    expect(result('alignment', 'alignment: { result: out of range }')).toBe('failed');
    expect(result('alignment', 'alignment: { result: within range }')).toBe('passed');
    expect(result('restraints', 'restraints: { result: open }')).toBe('unfinished');
    expect(result('calibrations/0', 'calibrations: [{ result: not finished }]')).toBe('unfinished');
    expect(result('calibrations/0', 'calibrations: [{ kind: not required }]')).toBe('not required');
    expect(result('calibrations/0', 'calibrations: [{ kind: static }]')).toBe('open');
  });

  test('what is missing of it', () => {
    const missing = (place: string, entries: string, more = ''): unknown =>
      check(place, 'missing', `verify: { ${entries} }\n${more}`);
    expect(missing('road_test', 'road_test: { planned: true }')).toBe('the day, what came out');
    expect(missing('road_test', 'road_test: { done: 2026-10-20, result: passed }')).toBe('open');
    expect(missing('scan_after', 'scan_after: { done: 2026-10-20 }')).toBe('what came out');
    expect(missing('scan_after', 'scan_after: { done: 2026-10-20, codes: [] }')).toBe('open');
    const bent = part('kind: front rail, damage: { kind: bend }');
    const page = 'the maker’s page by which it is not required';
    expect(missing('alignment', 'alignment: { result: not required }', bent)).toBe(page);
    expect(
      missing('alignment', 'alignment: { result: not required, cite: { reference: own, at: p. 1 } }', bent),
    ).toBe('open');
    expect(missing('alignment', 'alignment: { result: not required }')).toBe('open');
  });
});

test('no sensor is fitted: no page is asked for', () => {
  const missing = (entries: string): unknown =>
    check(
      'calibrations/0',
      'complete',
      `verify: { calibrations: [{ ${entries} }] }\n${part('kind: bumper cover, operations: [{ do: replace }]')}`,
    );
  expect(missing('sensor: none fitted')).toBe(true);
  expect(missing('sensor: front radar, kind: not required')).toBe(false);
  expect(missing('sensor: front radar, kind: not required, cite: { reference: own, at: p. 1 }')).toBe(true);
});

describe('codes that the scan after the repair leaves', () => {
  const codes = (fact: string, entries: string): unknown =>
    check(
      'scan_after',
      fact,
      `verify: { scan_after: { done: 2026-10-20, codes: [{ code: X1, ${entries} }] } }`,
    );

  test.each([
    // process.md, step 22: what remains of restraint, brake, steering or battery is a stop, explained or not.
    ['system: restraint, state: active', 'X1 (restraint, active)', 'open', 'open'],
    ['system: brake, state: active, explanation: seen before', 'X1 (brake, active)', 'open', 'open'],
    ['system: restraint, state: stored', 'X1 (restraint, stored)', 'open', 'open'],
    ['system: restraint', 'X1 (restraint)', 'open', 'open'],
    [
      'system: steering, state: stored, explanation: battery was off',
      'X1 (steering, stored)',
      'open',
      'open',
    ],
    ['system: traction battery, state: stored', 'X1 (traction battery, stored)', 'open', 'open'],
    ['system: restraint, state: cleared', 'open', 'open', 'open'],
    ['system: driver assistance, state: active', 'open', 'open', 'X1 (driver assistance, active)'],
    [
      'system: driver assistance, state: active, explanation: will learn',
      'open',
      'open',
      'X1 (driver assistance, active)',
    ],
    ['system: driver assistance, state: stored', 'open', 'X1 (driver assistance, stored)', 'open'],
    ['system: engine, state: active', 'open', 'X1 (engine, active)', 'open'],
    ['system: engine, state: active, explanation: tank was empty', 'open', 'open', 'open'],
    ['system: engine, state: active, explanation: none', 'open', 'X1 (engine, active)', 'open'],
    ['state: active', 'open', 'X1 (active)', 'open'],
  ])('%s', (entries, left, unexplained, ofAssistance) => {
    expect([
      codes('codes_left', entries),
      codes('codes_unexplained', entries),
      codes('codes_of_assistance', entries),
    ]).toEqual([left, unexplained, ofAssistance]);
  });
});

test.each([
  ['none', 'none'],
  ['None left.', 'none'],
  // Only the whole text counts: what begins with no may be the very fault.
  ['No faults stored', 'unclear'],
  ['No isolation between battery and body', 'unclear'],
  ['nothing works', 'unclear'],
  ['0 V isolation fault active', 'left'],
  ['none, except the isolation warning', 'unclear'],
  ['isolation fault active, battery lamp on', 'left'],
  ['P0AA6 stored', 'unclear'],
  ['isolation fault no longer active', 'unclear'],
])('faults left by re-commissioning: %s', (text, expected) => {
  expect(
    check('high_voltage', 'faults', `verify: { high_voltage: { done: 2026-10-20, faults: "${text}" } }`),
  ).toBe(expected);
});

test('a check comes after the work on the body', () => {
  const order = (done: string): unknown =>
    check(
      'scan_after',
      'in_order',
      `verify: { scan_after: { done: ${done} } }\n${part('kind: sill, operations: [{ do: weld, done: 2026-10-10 }]')}`,
    );
  expect(order('2026-10-11')).toBe(true);
  expect(order('2026-10-09')).toBe(false);
  expect(order('2026-10-10')).toBe('open');
});
