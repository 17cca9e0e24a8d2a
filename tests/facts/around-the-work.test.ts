import { describe, expect, test } from 'vitest';
import { factsOf } from './facts-of.ts';

// What stands around the work: days against each other, donor, cavity, record. Dates and spans are reckoned by hand.

const own =
  'references:\n  - { id: own, kind: maker procedure, covers: { maker: Corvane, model: Tarn, bodies: [wagon], years: 2020-2022 } }\n';
const vehicle = 'vehicle: { maker: Corvane, model: Tarn, body: wagon, model_year: 2021 }\n';
const cite = '{ reference: own, at: p. 1 }';

const value = (name: string, text: string, at?: string): unknown => factsOf(text).value(name, at);

describe('the wait after the current was cut off', () => {
  const restraints = (low: string, done: string, wait = 'wait: 10 min'): unknown =>
    value(
      'step.wait_left',
      `make_safe: { low_voltage: { done: ${low} }, restraints: { done: ${done}, ${wait} } }`,
      '/make_safe/restraints',
    );

  test.each([
    ['2026-10-07T08:00', '2026-10-07T08:10', 'wait: 10 min', 0],
    ['2026-10-07T08:00', '2026-10-07T08:09', 'wait: 10 min', 60],
    // What the page asks counts, not what the plan set itself.
    ['2026-10-07T08:00', '2026-10-07T08:10', 'wait: 10 min, wait_asked: 15 min', 300],
    ['2026-10-07T08:10', '2026-10-07T08:00', 'wait: 10 min', 1200],
    ['2026-10-07T23:55', '2026-10-08T00:10', 'wait: 10 min', -300],
  ])('%s, then %s, %s: %s s', (low, done, wait, expected) => {
    expect(restraints(low, done, wait)).toBe(expected);
  });

  test('is not told by days alone, nor without a wait', () => {
    expect(restraints('2026-10-07', '2026-10-07T08:10')).toContain('?');
    expect(restraints('2026-10-07T08:00', '2026-10-07T08:10', 'planned: true')).toContain('?');
  });

  test('of the traction voltage runs from the isolation', () => {
    const text = (proved: string): string =>
      `make_safe: { high_voltage: { isolation: { done: 2026-10-07T09:00, wait: 5 min }, proof_of_absence: { done: ${proved} } } }`;
    const at = '/make_safe/high_voltage/proof_of_absence';
    expect(value('step.wait_left', text('2026-10-07T09:05'), at)).toBe(0);
    expect(value('step.wait_left', text('2026-10-07T09:01'), at)).toBe(240);
  });
});

describe('what is dated before the job', () => {
  const early = (job: string, done: string): unknown =>
    value('plan.dated_before_job', `job: { ${job} }\nmake_safe: { low_voltage: { done: ${done} } }`);

  test('the day of opening counts, and that of an earlier estimate', () => {
    expect(early('opened: 2026-10-05', '2026-10-04')).toBe('2026-10-04');
    expect(early('opened: 2026-10-05', '2026-10-05T07:00')).toContain('?');
    expect(early('opened: 2026-10-05, first_estimate: 2026-10-01', '2026-10-04')).toContain('?');
    expect(early('number: K-1', '2020-01-01')).toContain('?');
  });
});

describe('the fit before welding', () => {
  const late = (fit: string, done: string): unknown =>
    value(
      'plan.fit_checked_late',
      `parts:\n  - { kind: sill, operations: [{ do: replace, joints: [{ method: resistance spot, done: ${done} }] }] }\nmeasurements: { before_welding: ${fit} }`,
    );

  test('is no later than the first joint', () => {
    expect(late('2026-10-08', '2026-10-09')).toBe(false);
    expect(late('2026-10-10', '2026-10-09')).toBe(true);
    expect(late('2026-10-09', '2026-10-09')).toContain('?');
  });

  test('is asked for of what carries load, not of a bonded pane', () => {
    const joined = (kind: string): unknown =>
      value(
        'plan.structure_joined',
        `parts:\n  - { kind: ${kind}, operations: [{ do: replace, joints: [{ method: adhesive }] }] }`,
      );
    expect(joined('glass')).toBe(false);
    expect(joined('roof bow')).toBe(true);
  });
});

describe('sealed before a joint', () => {
  test.each([
    ['glass', 'adhesive', false],
    ['lamp', 'adhesive', false],
    ['radiator support', 'adhesive and rivet', true],
    ['radiator support', 'resistance spot', true],
    ['roof skin', 'adhesive', true],
    ['other', 'adhesive', true],
  ])('%s by %s: %s', (kind, method, expected) => {
    const part = `{ kind: ${kind}, operations: [{ do: replace, done: 2026-10-09, joints: [{ method: ${method} }] }] }`;
    expect(
      value(
        'plan.sealed_before_joints',
        `parts:\n  - ${part}\nfinish: { sealer: { planned: true, done: 2026-10-08 } }`,
      ),
    ).toBe(expected);
  });
});

describe('the record', () => {
  const record = (name: string, entries: string): unknown =>
    value(name, `record: { ${entries} }\nsign_off: { date: 2026-10-20 }`);

  test('holds the procedures, or says of them nothing', () => {
    expect(value('plan.record', 'job: {}')).toBe('none');
    expect(record('plan.record', 'kept: [photographs]')).toBe('without the procedures');
    expect(record('plan.record', 'kept: [maker’s documents with revision]')).toBe('with the procedures');
  });

  test('lacks what is not named', () => {
    expect(record('plan.record_missing', 'kept: [procedures, photographs], where: office')).toBe(
      'measurements, codes, what the owner gets',
    );
    expect(
      record(
        'plan.record_missing',
        'kept: [measurements, peel tests, scans, pictures], where: office, owner_gets: [work order]',
      ),
    ).toContain('?');
  });

  test.each([
    [
      'no joint',
      '{ kind: sill, operations: [{ do: straighten, with: pulling }] }',
      'measurements, codes, photographs',
    ],
    [
      'a weld',
      '{ kind: sill, operations: [{ do: replace, joints: [{ method: resistance spot }] }] }',
      'measurements, weld coupons, codes, photographs',
    ],
    [
      'a laser seam',
      '{ kind: sill, operations: [{ do: replace, joints: [{ method: laser seam }] }] }',
      'measurements, weld coupons, codes, photographs',
    ],
    [
      'joints of which nothing is said',
      '{ kind: sill, operations: [{ do: replace }] }',
      'measurements, weld coupons, codes, photographs',
    ],
    [
      'a bond',
      '{ kind: sill, operations: [{ do: replace, joints: [{ method: adhesive and rivet }] }] }',
      'measurements, joint coupons, codes, photographs',
    ],
    [
      'a windscreen by its bead',
      '{ kind: glass, operations: [{ do: replace, joints: [{ method: adhesive }] }] }',
      'measurements, codes, photographs',
    ],
    [
      'an arm by its bolts',
      '{ kind: suspension part, damage: { kind: bend }, operations: [{ do: replace, joints: [{ method: bolt }] }] }',
      'codes',
    ],
    [
      'a beam by its bolts',
      '{ kind: bumper beam, damage: { kind: bend }, operations: [{ do: replace, joints: [{ method: bolt }] }] }',
      'measurements, codes, photographs',
    ],
  ])('of %s lacks what such work leaves behind', (_name, part, missing) => {
    const kept = 'record: { kept: [procedures], where: office, owner_gets: [work order] }';
    expect(value('plan.record_missing', `parts:\n  - ${part}\n${kept}`)).toBe(missing);
  });

  test('is kept for so many years after the signature', () => {
    expect(record('plan.record_years', 'until: 2036-10-20')).toBe(10);
    expect(record('plan.record_years', 'until: 2036-10-10')).toBe(9.97);
  });
});

describe('a part and its cavity', () => {
  test('foam that is cut or heated is renewed, or not', () => {
    const part = (operation: string, more = ''): string =>
      `parts:\n  - { id: s, kind: sill, holds: [foam], operations: [${operation}] }\n${more}`;
    expect(value('part.foam_disturbed', part('{ do: replace, extent: whole }'))).toBe(true);
    expect(value('part.foam_disturbed', part('{ do: refinish }'))).toBe(false);
    expect(value('part.foam_disturbed', 'parts: [{ kind: sill, operations: [{ do: replace }] }]')).toBe(
      false,
    );
    const renewed = (foam: string): unknown =>
      value(
        'part.foam_renewed',
        part('{ do: replace }', `finish: { cavities: [{ part: s, foam: ${foam} }] }`),
      );
    expect(renewed('Two-part foam')).toBe(true);
    expect(renewed('none')).toBe(false);
  });

  test('an earlier repair is known by the name of the part', () => {
    const before = (repairs: string): unknown =>
      value(
        'part.repaired_before',
        `vehicle: { earlier_repairs: ${repairs} }\nparts: [{ id: rl, name: Rear rail left, kind: rear rail }]`,
      );
    expect(before('[{ part: rear rail left, what: end cut }]')).toBe(true);
    expect(before('[{ part: rl }]')).toBe(true);
    expect(before('Rear rail left was sectioned in 2023')).toBe(true);
    expect(before('none known')).toBe(false);
    expect(before('[{ part: front rail left }]')).toBe(false);
  });

  test('two places make two cuts, a cut and its weld make one', () => {
    const cuts = (operations: string): unknown =>
      value('operation.second_cut', `parts: [{ kind: rear rail, operations: [${operations}] }]`);
    expect(cuts('{ do: section, at: B }, { do: section, at: D }')).toBe(true);
    expect(cuts('{ do: section, at: B }, { do: butt weld, at: b }')).toBe(false);
    expect(cuts('{ do: section, at: B }')).toBe(false);
  });
});

test('the film before a radar against its limit, in mm', () => {
  const over = (film: string): unknown =>
    value(
      'operation.film_over',
      `parts: [{ operations: [{ do: refinish, film: ${film}, film_limit: 180 µm }] }]`,
    );
  expect(over('0.2 mm')).toBeCloseTo(0.02, 9);
  expect(over('180 µm')).toBeCloseTo(0, 9);
});

test('a control unit is kept by the page of this vehicle, or by none', () => {
  const unit = (entries: string): unknown =>
    value('plan.restraint_control_unit', `${vehicle}${own}make_safe: { restraints: { ${entries} } }`);
  expect(unit('control_unit: kept')).toBe('without a page');
  expect(unit(`control_unit: reset, control_unit_cite: ${cite}`)).toBe('by the maker’s page');
  expect(unit('control_unit: replaced')).toBe('replaced');
});

test('who wrote and who signed is one person, by whatever initial', () => {
  const same = (signer: string): unknown =>
    value(
      'sign-off.by_author',
      `job: { written_by: { name: R. Amsel } }\nsign_off: { by: { name: ${signer} } }`,
    );
  expect(same('Amsel R')).toBe(true);
  expect(same('B. Ohm')).toBe(false);
});
