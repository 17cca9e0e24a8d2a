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
    ['source: induction, temperature: 600 °C, measured_by: { means: infra-red }', 630, 'assumed'],
    ['source: induction, temperature: 600 °C, measured_by: { means: none }', 630, 'assumed'],
    ['source: induction, temperature: 600 °C', 630, 'assumed'],
    ['temperature: 600 °C', 630, 'assumed'],
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
    expect(heat('source: induction').fact('operation.peak').known).toBe(false);
    expect(heat('source: induction, temperature: 600').value('operation.peak')).toMatch(/cannot be read/u);
  });
});

describe('what else is said of the heat', () => {
  test('the time hot is hold by number of heatings, and needs both', () => {
    expect(heat('hold: 2 min, times: 3').value('operation.hot_time')).toBe(360);
    expect(heat('hold: 2 min').fact('operation.hot_time').known).toBe(false);
    expect(heat('times: 3').fact('operation.hot_time').known).toBe(false);
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
