import { describe, expect, test } from 'vitest';
import { factsOf } from './facts-of.ts';

const cloth =
  'kind: wet cloth, distance: 30 mm, width: 20 mm, length: 300 mm, water: 200 g, across: true, done: 2026-10-08';
const bar =
  'kind: copper bar, distance: 30 mm, width: 30 mm, thickness: 10 mm, held: clamped, across: true, done: 2026-10-08';

/** Adhesive 70 mm from 600 °C held for a minute; over its 80 °C without a measure on the way. */
function beside(
  sink: string | undefined,
  given: { readonly stage?: 'start' | 'release'; more?: string; hold?: string } = {},
) {
  const near = `item: structural adhesive, distance: 70 mm, path: joined${sink === undefined ? '' : `, sink: { ${sink} }`}${given.more ?? ''}`;
  return factsOf(
    `parts: [{ id: h, grade: HC340LA, thickness: 1.2 mm, operations: [{ do: heat, source: induction, temperature: 600 °C, hold: ${given.hold ?? '60 s'}, times: 1, measured_by: { means: contact probe }, free_end: runs on, near: [{ ${near} }] }] }]`,
    { stage: given.stage ?? 'release' },
  );
}

const peakOf = (derived: ReturnType<typeof beside>): number => Number(derived.value('exposure.peak'));
const noteOf = (derived: ReturnType<typeof beside>): string => {
  const fact = derived.fact('exposure.peak');
  return fact.known ? (fact.note ?? '') : '';
};

describe('a heat sink on the way to a neighbour', () => {
  test.each([
    ['wet cloth', cloth, 'wet cloth from 30 mm to 50 mm'],
    ['copper bar', bar, 'copper bar from 30 mm to 60 mm'],
  ])('a %s with all its numbers cools what lies behind it, and is named', (_kind, sink, words) => {
    const without = peakOf(beside(undefined));
    const derived = beside(sink);
    expect(peakOf(derived)).toBeLessThan(without);
    // Never colder than the surroundings; behind a cloth that boils, never by its coldness.
    expect(peakOf(derived)).toBeGreaterThan(20);
    expect(derived.value('exposure.sink')).toContain(words);
    expect(noteOf(derived)).toContain(`Counted: ${words}`);
  });

  test.each([
    ['kind: wet cloth, ', '', 'whether it is a wet cloth or a copper bar'],
    ['distance: 30 mm, ', '', '`distance`'],
    ['width: 20 mm, ', '', '`width`'],
    ['width: 20 mm', 'width: 0 mm', '`width`'],
    ['length: 300 mm, ', '', '`length`'],
    ['water: 200 g, ', '', '`water`'],
    ['across: true, ', '', 'across the whole way'],
    ['across: true', 'across: false', 'across the whole way'],
    [', done: 2026-10-08', '', '`done`'],
  ])('a cloth without `%s` is not counted, and the reason is told', (part, instead, reason) => {
    const derived = beside(cloth.replace(part, instead));
    expect(peakOf(derived)).toBe(peakOf(beside(undefined)));
    expect(derived.fact('exposure.sink').known).toBe(false);
    expect(noteOf(derived)).toContain('is not counted');
    expect(noteOf(derived)).toContain(reason);
  });

  test.each(['thickness: 10 mm, ', 'held: clamped, '])('a bar without `%s` is not counted', (part) => {
    expect(peakOf(beside(bar.replace(part, '')))).toBe(peakOf(beside(undefined)));
  });

  test('a bar that is only laid on takes less than one that is clamped', () => {
    expect(peakOf(beside(bar.replace('clamped', 'laid on')))).toBeGreaterThan(peakOf(beside(bar)));
  });

  test('before the release a planned sink counts; at release only one that is dated', () => {
    const planned = cloth.replace(', done: 2026-10-08', '');
    expect(peakOf(beside(planned, { stage: 'start' }))).toBe(peakOf(beside(cloth)));
    expect(peakOf(beside(planned))).toBe(peakOf(beside(undefined)));
  });

  test('a cloth so near that it dries out helps nothing: it is not taken to cool, and that is told', () => {
    const near = beside(cloth.replace('distance: 30 mm', 'distance: 10 mm'));
    expect(peakOf(near)).toBeGreaterThanOrEqual(peakOf(beside(undefined)));
    expect(noteOf(near)).toContain('helps nothing');
  });

  test('it is needed where the limit is broken without it and kept with it, and only there', () => {
    expect(beside(undefined).value('exposure.needs_sink')).toBe(false);
    expect(beside(cloth).value('exposure.over_limit')).toBeLessThanOrEqual(0);
    expect(beside(cloth).value('exposure.needs_sink')).toBe(true);
    // Where the heat is short, nothing asks for it.
    const short = beside(cloth, { hold: '5 s' });
    expect(short.value('exposure.needs_sink')).toBe(false);
  });

  test('a reading is set beside both limits, and only a means that reads right watches', () => {
    const read = beside(cloth, { more: ', watched_by: { means: contact probe }, reading: 90 °C' });
    expect(read.value('exposure.watched')).toBe(true);
    expect(read.value('exposure.reading_over_limit')).toBeCloseTo(10, 9);
    expect(read.value('exposure.reading_over_stop_limit')).toBeCloseTo(-30, 9);
    for (const means of ['none', 'infra-red'])
      expect(beside(cloth, { more: `, watched_by: { means: ${means} }` }).value('exposure.watched')).toBe(
        false,
      );
    expect(beside(cloth).fact('exposure.reading_over_limit').known).toBe(false);
  });
});
