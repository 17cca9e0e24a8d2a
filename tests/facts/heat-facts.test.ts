import { describe, expect, test } from 'vitest';
import { factsOf } from './facts-of.ts';

const heat = (entries: string): ReturnType<typeof factsOf> =>
  factsOf(`parts: [{ operations: [{ do: heat, ${entries} }] }]`);

describe('the hottest that the place may get', () => {
  // Allowances of instruments and what a torch reaches: common practice, no source.
  test.each([
    ['source: induction, temperature: 600 °C, measured_by: { means: temperature crayon }', 620, 'computed'],
    ['source: induction, temperature: 600 °C, measured_by: { means: contact probe }', 620, 'computed'],
    [
      'source: induction, temperature: 600 °C, measured_by: { means: infra-red on a prepared spot }',
      630,
      'computed',
    ],
    // Bare metal may send back half of what it should: as good as nobody measuring.
    ['source: induction, temperature: 600 °C, measured_by: { means: infra-red }', 900, 'assumed'],
    ['source: induction, temperature: 600 °C, measured_by: { means: none }', 900, 'assumed'],
    ['source: induction, temperature: 600 °C', 900, 'assumed'],
    ['temperature: 600 °C', 900, 'assumed'],
    ['source: torch, temperature: 600 °C, measured_by: { means: temperature crayon }', 620, 'computed'],
    ['source: torch, temperature: 600 °C, measured_by: { means: infra-red }', 900, 'assumed'],
    ['source: torch, temperature: 600 °C', 900, 'assumed'],
    ['source: torch', 900, 'assumed'],
    ['source: other, temperature: 200 °C', 900, 'assumed'],
    ['source: torch, temperature: 950 °C', 980, 'assumed'],
  ] as const)('{ %s }: %i °C', (entries, value, from) => {
    const fact = heat(entries).fact('operation.peak');
    expect(fact).toMatchObject({ known: true, from });
    expect(fact.known && fact.value).toBeCloseTo(value, 6);
    expect(fact.known && fact.note).toMatch(/\S/u);
  });

  test('is not known where nobody says, nor where the number has no unit', () => {
    expect(heat('hold: 30 s').fact('operation.peak').known).toBe(false);
    expect(heat('temperature: 600').value('operation.peak')).toMatch(/cannot be read/u);
  });

  // The figures stand in `heat/source-reach.ts`: common practice and makers' data, from memory.
  test.each([
    ['torch', 900],
    ['other', 900],
    ['induction', 900],
    ['hot air', 650],
    ['infra-red panel', 300],
    ['oven', 250],
  ])('of a silent %s it is the worst that such a source reaches, %i °C, and said so', (source, celsius) => {
    const measured = 'measured_by: { means: contact probe }';
    const fact = heat(`source: ${source}, ${measured}`).fact('operation.peak');
    expect(fact).toMatchObject({ known: true, value: celsius, from: 'assumed' });
    expect(fact.known && fact.note).toContain(`${String(celsius)} °C`);
  });
});

describe('what else is said of the heat', () => {
  test('several heats of one place count together: the longest hold, the sum of the times', () => {
    const twice = (second: string): ReturnType<typeof factsOf> =>
      factsOf(
        `parts: [{ operations: [{ do: heat, at: B, hold: 60 s, times: 1 }, { do: heat, ${second} }] }]`,
      );
    expect(twice('at: B, hold: 2 min, times: 2').value('operation.hold')).toBe(120);
    expect(twice('at: B, hold: 2 min, times: 2').value('operation.times')).toBe(3);
    expect(twice('at: C, hold: 2 min, times: 2').value('operation.hold')).toBe(60);
    expect(twice('at: C, hold: 2 min, times: 2').value('operation.times')).toBe(1);
    expect(twice('at: B, times: 2').fact('operation.hold').known).toBe(false);
    expect(twice('at: B, hold: 2 min').fact('operation.times').known).toBe(false);
  });

  test.each([
    ['', true],
    ['source: induction', true],
    ['at: B', true],
    ['step: 11', true],
    ['step: 10', true],
    ['done: 2026-10-09T11:00', true],
    ['done: 2026-10-09', true],
    ['done: 2026-10-09T11:01', true],
    ['done: 2026-10-10', true],
    // A heat of its own, elsewhere, or before it.
    ['times: 1', false],
    ['temperature: 500 °C', false],
    ['source: torch', false],
    ['at: C', false],
    ['step: 9', false],
    ['done: 2026-10-09T09:59', false],
    ['done: 2026-10-08', false],
  ])('straightened in the heat of the entry before (%s): %s', (pull, isOne) => {
    const heat =
      '{ do: heat, step: 10, at: B, source: induction, hold: 60 s, times: 1, done: 2026-10-09T10:00 }';
    const facts = factsOf(
      `parts:\n  - operations:\n      - ${heat}\n      - { do: straighten, method: with heat${pull === '' ? '' : `, ${pull}`} }`,
    );
    const place = '/parts/0/operations/1';
    expect(facts.value('operation.heats', place)).toBe(true);
    const fact = facts.fact('operation.hold', place);
    expect(fact.known && fact.at === '/parts/0/operations/0/hold').toBe(isOne);
    if (isOne) {
      expect(facts.value('operation.times', place)).toBe(1);
      expect(facts.value('operation.times', '/parts/0/operations/0')).toBe(1);
      expect(facts.value('operation.flame_or_arc', place)).toBe(false);
    }
  });

  test.each([
    ['2026-10-09T10:00', '2026-10-09T11:00', false],
    ['2026-10-09T10:00', '2026-10-09T11:01', true],
    ['2026-10-09T10:00', '2026-10-09', false],
    ['2026-10-09', '2026-10-10', true],
    ['2026-10-09T23:50', '2026-10-10T00:20', false],
  ])('heated %s and pulled %s: cold by then: %s', (heated, pulled, isCold) => {
    const facts = factsOf(
      `parts: [{ operations: [{ do: heat, done: ${heated} }, { do: straighten, method: with heat, done: ${pulled} }] }]`,
    );
    const cold = facts.fact('operation.pulled_cold', '/parts/0/operations/1');
    expect(cold.known).toBe(isCold);
    expect(facts.fact('operation.pulled_cold', '/parts/0/operations/0').known).toBe(false);
  });

  test('straightened before it is heated, or in a heat that is not to be, it has a heat of its own', () => {
    const hold = (heat: string): unknown =>
      factsOf(
        `parts:\n  - operations:\n      - { do: heat, hold: 60 s, ${heat} }\n      - { do: straighten, step: 5, method: with heat }`,
      ).value('operation.hold', '/parts/0/operations/1');
    expect(hold('step: 5')).toBe(60);
    expect(hold('step: 6')).toContain('?');
    expect(hold('planned: false')).toContain('?');
  });

  test.each([
    ['temperature: 600 °C, hold: 60 s, times: 2', '{ temperature: 650 °C, time: 90 s, times: 2 }', true],
    ['temperature: 650 °C, hold: 90 s, times: 2', '{ temperature: 650 °C, time: 90 s, times: 2 }', true],
    ['temperature: 651 °C, hold: 60 s, times: 1', '{ temperature: 650 °C, time: 90 s, times: 2 }', false],
    ['temperature: 600 °C, hold: 91 s, times: 1', '{ temperature: 650 °C, time: 90 s, times: 2 }', false],
    ['temperature: 600 °C, hold: 60 s, times: 3', '{ temperature: 650 °C, time: 90 s, times: 2 }', false],
    // What the page does not limit need not be stated; what it limits must be.
    ['temperature: 600 °C', '{ temperature: 650 °C }', true],
    ['temperature: 600 °C', '{ temperature: 650 °C, time: 90 s }', undefined],
  ])('heated to { %s } under the limit %s: kept %s', (stated, limit, kept) => {
    const fact = heat(`${stated}, limit: ${limit}`).fact('operation.limit_kept');
    expect(fact.known ? fact.value : undefined).toBe(kept);
  });

  test('a limit counts by its own page, or by the page of the operation', () => {
    const page = (standing: string, cites: string): unknown =>
      factsOf(`
vehicle: { maker: Corvane, model: Tarn, body: wagon, model_year: 2021 }
references:
  - { id: own, kind: maker procedure, document: D, revision: A, looked_up: '2026-10-06', covers: { maker: Corvane, model: Tarn, bodies: [all], years: '${standing}' } }
parts: [{ operations: [{ do: heat, ${cites} }] }]`).value('operation.limit_stated');
    expect(page('2020-2022', 'limit: { temperature: 650 °C }, cite: { reference: own, at: p. 8 }')).toBe(
      true,
    );
    expect(page('2020-2022', 'limit: { temperature: 650 °C, cite: { reference: own, at: p. 8 } }')).toBe(
      true,
    );
    expect(page('2015-2019', 'limit: { temperature: 650 °C, cite: { reference: own, at: p. 8 } }')).toBe(
      false,
    );
    expect(page('2015-2019', 'limit: { temperature: 650 °C }, cite: { reference: own, at: p. 8 }')).toBe(
      false,
    );
    expect(page('2020-2022', 'limit: { temperature: 650 °C }')).toBe(false);
    expect(page('2020-2022', 'limit: { times: 2, cite: { reference: own, at: p. 8 } }')).toBe(false);
  });

  test('the temperature as stated is kept beside the peak', () => {
    expect(heat('temperature: 1112 °F').value('operation.temperature')).toBeCloseTo(600, 9);
  });

  test.each(['operation.source', 'operation.times', 'operation.measured_by', 'operation.cooling'])(
    '%s left out is unknown',
    (name) => {
      expect(heat('step: 1').fact(name).known).toBe(false);
    },
  );
});

test('the instrument is in calibration on the day of the heat, or today', () => {
  const instrument = (measured: string, done = ''): unknown => {
    const fact = factsOf(`parts: [{ operations: [{ do: heat, measured_by: { ${measured} }${done} }] }]`).fact(
      'operation.instrument',
    );
    return fact.known ? fact.value : 'open';
  };
  expect(instrument('means: contact probe, calibration_due: 2026-10-21')).toBe('in date');
  expect(instrument('means: contact probe, calibration_due: 2026-10-20')).toBe('overdue');
  expect(instrument('means: contact probe, calibration_due: 2026-10-20', ', done: 2026-10-19')).toBe(
    'in date',
  );
  expect(instrument('means: contact probe')).toBe('open');
  expect(instrument('means: temperature crayon, calibration_due: 2020-01-01')).toBe('open');
});
