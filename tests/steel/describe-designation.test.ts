import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { csvRows } from '../../.build/steel-table.ts';
import { describeDesignation } from '../../src/steel/describe-designation.ts';
import { steelRank } from '../../src/steel/strength-class.ts';

const grades = csvRows(readFileSync(new URL('../../src/steel/data/grades.csv', import.meta.url), 'utf8'));
const needStandard = new Set(['CS', 'DS', 'DDS', 'EDDS']);
const names = [...new Set(grades.map((row) => row['designation'] ?? ''))].filter(
  (name) => !needStandard.has(name),
);
const plain = { find: false };
const describeIt = (text: string) => describeDesignation(text, plain);

describe('what a designation is', () => {
  it('says everything of press-hardening steel', () => {
    expect(describeIt('22MnB5+AS150')).toMatchObject({
      given: '22MnB5+AS150',
      known: 'known',
      usable: true,
      class: 'press-hardened',
      family: 'press-hardening steel',
      tensile: { min: 1300, max: 1650, unit: 'MPa' },
      yield: { min: 950, max: null, unit: 'MPa' },
      coating: 'aluminium-silicon',
      coating_mass: { grams: 150, counted: 'both sides together' },
      hardened: true,
      mark: 'seen',
      reason: null,
    });
  });

  it.each([
    ['HX340LAD+Z100MB', 100, 'both sides together'],
    ['CR330Y590T-DP-GI50/50-U', 50, 'each side'],
    ['HCT980X+ZE75/75', 54, 'each side'], // 7.5 µm of zinc at 7.14 g/cm³
    ['JAC590R-45/45', 45, 'each side'],
    ['SGC440-F08', 80, 'both sides together'],
  ])('%s carries %d g/m² %s', (text, grams, counted) => {
    expect(describeIt(text).coating_mass).toEqual({ grams, counted });
  });

  it.each(['DC04', '22MnB5+AS', 'HX340LAD+Z'])('%s has no coating mass', (text) => {
    expect(describeIt(text).coating_mass).toBeNull();
  });

  it('gives the range of a class word, and counts its strongest end', () => {
    expect(describeIt('AHSS')).toMatchObject({
      known: 'ambiguous',
      class: 'press-hardened',
      weakest_class: 'advanced high-strength',
      tensile: null,
    });
    expect(describeIt('boron')).toMatchObject({ known: 'known', class: 'press-hardened', mark: 'practice' });
    expect(describeIt('high tensile')).toMatchObject({ weakest_class: 'high-strength' });
  });

  it('lists yield and tensile strength for a bare number, and counts the stronger', () => {
    const answer = describeIt('600');
    expect(answer).toMatchObject({ known: 'ambiguous', class: 'ultra-high-strength' });
    expect(answer.readings.map((one) => [one.yield?.min, one.tensile?.min])).toEqual([
      [600, undefined],
      [undefined, 600],
    ]);
  });

  it('keeps both sheets of a tailored blank; the stronger counts', () => {
    const answer = describeIt('22MnB5+AS150 1.6T + HC340LA+Z100 1.2T');
    expect(answer.blank).toEqual(['22MnB5+AS150 1.6T', 'HC340LA+Z100 1.2T']);
    expect(answer).toMatchObject({ known: 'known', class: 'press-hardened', coating: null });
    expect(describeIt('DC04+HC260LA').readings.map((one) => one.designation)).toEqual(['HC260LA', 'DC04']);
    expect(describeIt('22MnB5 with patch HC340LA').class).toBe('press-hardened');
    expect(describeIt('DC04 + EN AW-6016-T4')).toMatchObject({ known: 'ambiguous', class: null });
  });

  it('reads laminated sheet by its skins, and a soft zone as two strengths', () => {
    expect(describeIt('laminated DC04')).toMatchObject({ laminated: true, class: 'mild', known: 'known' });
    expect(describeIt('DC04 sound-damping steel').laminated).toBe(true);
    expect(describeIt('22MnB5 with soft zone')).toMatchObject({ class: 'press-hardened' });
    expect(describeIt('22MnB5 with soft zone').note).toContain('two strengths');
    expect(describeIt('laminated').known).toBe('unknown');
  });

  it('gives strengths after the paint oven only when the baked state is named', () => {
    expect(describeIt('6111-T4').yield?.min ?? null).not.toBe(210);
    expect(describeIt('6111-T4 baked').condition).toBe('paint baked');
    expect(describeIt('HC220B baked').note).toContain('35 MPa');
  });

  it('names what the text cannot be', () => {
    expect(describeIt('HC340')).toMatchObject({ known: 'unknown', usable: true, class: null, readings: [] });
    expect(describeIt('HC340').reason).toContain('cut short');
  });
});

describe('text that is no designation', () => {
  it.each([
    ['', 'empty'],
    ['X'.repeat(10_240), '10240 characters'],
    ['DC\u000704', 'does not print'],
    ['DС04', 'Cyrillic'],
    ['DCO4', 'looks like DC04'],
    ['DC04 or HC260LA', 'more than one grade'],
    ['<b>DC04</b>', 'web-page text'],
  ])('%j: %s', (text, words) => {
    const answer = describeIt(text);
    expect(answer).toMatchObject({ known: 'unknown', usable: false, class: null });
    expect(answer.reason).toContain(words);
    expect(answer.reason?.match(/[.!?](?:\s|$)/g)?.length).toBeLessThanOrEqual(2);
    expect(answer.given.length).toBeLessThanOrEqual(121);
  });
});

describe('looking for what was meant', () => {
  it('finds more with `find` than without, and leaves a known name alone', () => {
    expect(describeDesignation('HCT98X', { find: true }).nearest).toContain('HCT980X');
    expect(describeDesignation('22MNB', { find: true }).nearest).toContain('22MnB5');
    expect(describeDesignation('DC04', { find: true }).nearest).toEqual([]);
  });
});

describe('whatever is given', () => {
  it('the class is that of the strongest reading, and none is stronger', () => {
    const texts = fc.oneof(
      fc.constantFrom(...names),
      fc.integer({ min: 200, max: 2200 }).map(String),
      fc.integer({ min: 200, max: 2200 }).map((mpa) => `${mpa} MPa`),
      fc.tuple(fc.constantFrom(...names), fc.constantFrom(...names)).map(([a, b]) => `${a} + ${b}`),
      fc.constantFrom('HSS', 'AHSS', 'UHSS', 'boron', 'mild', 'high tensile'),
    );
    fc.assert(
      fc.property(texts, (text) => {
        const { class: counts, readings } = describeIt(text);
        if (counts === null) return;
        const ranks = readings.map((one) => steelRank(one.class) ?? -1);
        expect(steelRank(counts) ?? -1).toBe(Math.max(...ranks));
      }),
      { numRuns: 1000 },
    );
  });

  it('any text is answered, in one form, and only what is known has a class', () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.string({ maxLength: 120 }), fc.string({ unit: 'binary', maxLength: 60 })),
        (text) => {
          const answer = describeDesignation(text, { find: true });
          expect(answer.reason === null).toBe(answer.known === 'known');
          if (answer.known === 'unknown') expect(answer.class).toBeNull();
          if (!answer.usable) expect(answer.known).toBe('unknown');
        },
      ),
      { numRuns: 1000 },
    );
  });

  it('hostile texts take no time: every form is read in one pass', () => {
    const hostile = [
      '1'.repeat(80),
      'CR'.repeat(40),
      `${'+'.repeat(40)}${'A'.repeat(40)}`,
      'DC04+'.repeat(16),
      '5T/'.repeat(26),
      `HC340LA${'+Z'.repeat(30)}`,
    ];
    const start = performance.now();
    for (const text of hostile) describeDesignation(text, { find: true });
    expect(performance.now() - start).toBeLessThan(500);
  });
});
