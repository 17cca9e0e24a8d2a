import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { csvRows } from '../../.build/steel-table.ts';
import { describeDesignation } from '../../src/steel/answer/describe-designation.ts';
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

  // Typical values of a public page, delivered and after 2 % strain and 170 °C for 20 min.
  it.each([
    ['6111-T4', 115, 240],
    ['6111-T4 baked', 210, 285],
    ['6116-T4', 130, 240],
    ['6116-T4 baked', 205, 285],
  ])('%s typically has %d MPa yield and %d MPa tensile strength, and promises neither', (text, low, high) => {
    expect(describeIt(text)).toMatchObject({
      typical: { yield: low, tensile: high, unit: 'MPa' },
      yield: null,
      tensile: null,
    });
  });

  it('names the baked state only where it is stated', () => {
    expect(describeIt('6111-T4').condition).toBe('as delivered');
    expect(describeIt('6111-T4 baked').condition).toBe('paint baked');
    expect(describeIt('6016-T4').typical).toBeNull();
    expect(describeIt('HC220B baked').note).toContain('35 MPa');
  });

  // JIS G 3141: the tensile strength of SPCC is guaranteed only on request, which T behind the name says.
  it('says when a minimum holds only if it was ordered', () => {
    expect(describeIt('SPCC')).toMatchObject({
      tensile: { min: 270 },
      tensile_only_if: 'ordered with T (SPCCT)',
    });
    expect(describeIt('SPCC-SD').tensile_only_if).not.toBeNull();
    expect(describeIt('SPCCT-SD').tensile_only_if).toBeNull();
    expect(describeIt('SPCD').tensile_only_if).toBeNull();
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
  // The classes of families by the application guidelines of the steel industry and common practice; from 980 MPa none is weaker than
  // ultra-high-strength. A name counts as strong as the strongest of its rows, a blank as the stronger of its sheets.
  it('the class is never weaker than that of any row with the name, nor of any sheet of a blank', () => {
    const floors: readonly (readonly [RegExp, number])[] = [
      [/^press_hardening|^quenched_tempered/, 4],
      [/^martensitic|^hsla_ultra/, 3],
      [/^(?:dual_phase|trip|complex_phase)/, 2],
      [
        /^(?:hsla|bake_|structural|isotropic|rephos|solid_|dent_|ferrite_|high_strength_if|cold_|recovery_)/,
        1,
      ],
      [/^mild$/, 0],
    ];
    const least = new Map<string, number>();
    for (const { designation = '', class: family = '', rm_min_mpa: tensile = '' } of grades) {
      const floor = floors.find(([form]) => form.test(family))?.[1];
      if (floor === undefined) continue;
      const own = Math.max(floor, Number(tensile) >= 980 ? 3 : 0);
      least.set(designation, Math.max(own, least.get(designation) ?? 0));
    }
    const steels = [...least.keys()].filter((name) => names.includes(name));
    expect(steels.length).toBeGreaterThan(400);
    const rank = (text: string): number => steelRank(describeIt(text).class ?? 'aluminium') ?? -1;
    fc.assert(
      fc.property(fc.constantFrom(...steels), fc.constantFrom(...steels), (a, b) => {
        const [low, high] = [least.get(a) ?? Infinity, Math.max(least.get(a) ?? 0, least.get(b) ?? 0)];
        expect([a, rank(a) >= low]).toEqual([a, true]);
        const blank = `${a} + ${b}`;
        expect([blank, rank(blank) >= high]).toEqual([blank, true]);
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
