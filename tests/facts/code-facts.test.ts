import { describe, expect, test } from 'vitest';
import { factsOf } from './facts-of.ts';

const car = `format: 1
stage: release
vehicle: { maker: Corvane, model: Tarn, body: wagon, model_year: 2021 }
parts: [{ id: rail, name: Rail, kind: front rail }]
`;

function after(code: string, before = '', fact = 'left'): unknown {
  const text = `${car}verify:\n  scan_before: { done: 2026-10-01, codes: [${before}] }\n  scan_after: { done: 2026-10-09, codes: [{ ${code} }] }`;
  const found = factsOf(text).fact(`step.codes_${fact}`, '/verify/scan_after');
  return found.known ? found.value : 'nothing';
}

const first = '{ code: B0012, system: restraint, state: active }';

// process.md, step 22: a code of restraints, brakes, steering or battery that remains is a stop.
describe('the system of the first scan', () => {
  test.each(['other', 'body', 'engine'])('%s now', (system) => {
    expect(after(`code: b0012-13, system: ${system}, state: stored, explanation: goes out`, first)).toBe(
      `b0012-13 (${system}, stored, restraint in the first scan)`,
    );
  });

  test('a cleared code is gone, another code is another', () => {
    expect(after('code: B0012, system: other, state: cleared', first)).toBe('nothing');
    expect(after('code: B1012, system: body, state: stored, explanation: window', first)).toBe('nothing');
  });

  test('a code in words', () => {
    expect(after('code: Airbag driver open circuit, system: other, state: active')).toBe(
      'Airbag driver open circuit (other, active, restraint by its words)',
    );
    expect(after('code: Window lifter left, system: body, state: stored, explanation: taught')).toBe(
      'nothing',
    );
  });
});

// Ranges of numbers: SAE J2012, from memory; P0AA6 as the isolation fault was seen in public code lists.
describe('what the number says', () => {
  const misfiled = (code: string): unknown =>
    after(`${code}, explanation: known`, '', 'misfiled') !== 'nothing';

  test.each([
    'code: P0AA6, system: engine, state: active',
    'code: P0AA6, system: engine, state: stored',
    'code: B0012, system: body, state: stored',
    'code: C0040, system: body, state: stored',
    'code: C0040, system: other, state: active',
    'code: C0745, system: other, state: active',
    'code: C0751, system: other, state: active',
    'code: C0750, system: engine, state: active',
  ])('%s', (code) => {
    expect(misfiled(code)).toBe(true);
  });

  test.each([
    'code: P0300, system: engine, state: stored',
    'code: P0AA6, system: engine, state: cleared',
    'code: P0AA6, system: traction battery, state: active',
    'code: B1012, system: body, state: active',
    'code: C0040, system: other, state: stored',
    // The four sensors of tyre pressure, as public lists of codes name them.
    'code: C0750, system: other, state: active',
    'code: C0765-29, system: body, state: active',
    'code: C1105, system: driver assistance, state: stored',
    'code: U0151, system: other, state: stored',
  ])('%s: not held for it', (code) => {
    expect(misfiled(code)).toBe(false);
  });

  test('one of the tyres that nobody explains is asked for', () => {
    expect(after('code: C0750, system: other, state: active', '', 'unexplained')).toBe(
      'C0750 (other, active)',
    );
  });

  test('a line between control units, active', () => {
    expect(after('code: U0151, system: other, state: active, explanation: radio', '', 'of_lines')).toBe(
      'U0151 (other, active)',
    );
    expect(after('code: U0151, system: other, state: stored, explanation: radio', '', 'of_lines')).toBe(
      'nothing',
    );
  });

  test('what is said of an active one', () => {
    expect(
      after('code: X17, system: other, state: active, explanation: airbag lamp on', '', 'misfiled'),
    ).toBe('X17 (other, active, of the restraint by what is said of it)');
  });
});

describe('lamps', () => {
  const lit = (lamp: string): unknown => {
    const found = factsOf(`${car}verify: { warning_lamps: { done: 2026-10-09, lit: [{ ${lamp} }] } }`).fact(
      'step.lamps_lit',
      '/verify/warning_lamps',
    );
    return found.known;
  };

  test.each([
    'lamp: airbag, system: other, explanation: goes out',
    'lamp: SRS, system: body',
    'lamp: ABS, system: other',
    'lamp: power, system: steering',
    'lamp: high-voltage warning, system: engine',
    'lamp: airbag, system: driver assistance',
    'lamp: belt',
  ])('%s', (lamp) => {
    expect(lit(lamp)).toBe(true);
  });

  test.each([
    'lamp: passenger airbag off, system: other',
    'lamp: parking brake, system: other',
    'lamp: emergency brake assist, system: driver assistance',
    'lamp: seat belt reminder, system: other',
    'lamp: service due, system: engine',
  ])('%s: no lamp of such a system', (lamp) => {
    expect(lit(lamp)).toBe(false);
  });
});

// process.md, steps 3, 22 and 24: the first scan against what the plan says of units and battery.
describe('the first scan against the plan', () => {
  const belies = (code: string, safe: string): unknown => {
    const text = `${car}make_safe: { ${safe} }\nverify: { scan_before: { done: 2026-10-01, codes: [{ ${code} }] } }`;
    return factsOf(text).fact('step.scan_belies', '/verify/scan_before').known;
  };
  const fired = 'code: B0070, system: restraint, state: active, explanation: belt pretensioner fired';
  const leak = 'code: P0AA6, system: traction battery, state: active';
  const sound = 'high_voltage: { battery_condition: sound }';

  test('found', () => {
    expect(belies(fired, 'restraints: { deployed: false }')).toBe(true);
    expect(belies(fired, 'restraints: { units: [{ unit: airbag, state: undeployed }] }')).toBe(true);
    expect(belies(leak, sound)).toBe(true);
    expect(belies(`code: X1, system: traction battery, explanation: insulation too low`, sound)).toBe(true);
  });

  test('near misses', () => {
    expect(belies(fired, 'restraints: { deployed: true }')).toBe(false);
    expect(belies(fired, 'restraints: { units: [{ unit: airbag, state: deployed }] }')).toBe(false);
    expect(
      belies(fired.replace('pretensioner fired', 'plug open, not fired'), 'restraints: { deployed: false }'),
    ).toBe(false);
    expect(belies(leak, 'high_voltage: { battery_condition: isolation fault }')).toBe(false);
    expect(belies(leak.replace('active', 'cleared'), sound)).toBe(false);
    expect(belies('code: P0A7E, system: traction battery, state: active, explanation: fan', sound)).toBe(
      false,
    );
  });
});
