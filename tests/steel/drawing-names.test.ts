import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { csvRows } from '../../.build/steel-table.ts';
import { describeDesignation } from '../../src/steel/answer/describe-designation.ts';

const tell = (text: string) => describeDesignation(text, { find: false });

/**
 * Six hundred names as drawings, part lists and marks on parts write them, and what each is, written down by hand before any was read:
 * by the standard that the name belongs to, from memory, and where no class is given, because the name is cut short, mistyped or no
 * name at all. An empty `known` leaves open whether it is sure.
 */
const names = csvRows(readFileSync(new URL('drawing-names.csv', import.meta.url), 'utf8'));

describe('names of drawings', () => {
  it('are many', () => {
    expect(names.length).toBeGreaterThan(600);
  });

  it.each(names.map((row) => [row['text'] ?? '', row] as const))('%s', (text, row) => {
    const answer = tell(text);
    expect([text, answer.class ?? '']).toEqual([text, row['class']]);
    if (row['known'] !== '') expect([text, answer.known]).toEqual([text, row['known']]);
    if (row['coating'] !== '') expect([text, answer.coating]).toEqual([text, row['coating']]);
    if (answer.known !== 'known') expect(answer.reason).toMatch(/\.$/);
  });
});

describe('what a name promises', () => {
  // EN 10088-2 and EN 10151: C is the tensile, CP the proof strength. From memory.
  it.each([
    ['1.4318+C1000', { min: 1000, max: null, unit: 'MPa' }, null],
    ['1.4318+CP700', null, { min: 700, max: null, unit: 'MPa' }],
    ['X5CrNi18-10+C700', { min: 700, max: null, unit: 'MPa' }, null],
  ] as const)('%s', (text, tensile, yielding) => {
    expect(tell(text)).toMatchObject({
      known: 'known',
      condition: 'cold hardened',
      tensile,
      yield: yielding,
    });
  });

  it('has no step that the standards do not have without asking', () => {
    expect(tell('1.4318+C800')).toMatchObject({ known: 'ambiguous', class: 'stainless' });
  });

  // A metal distributor's page gives 185 and 140 ksi for type 301 full hard, 150 and 110 for half hard.
  it('knows the tempers of stainless strip', () => {
    expect(tell('AISI 301 full hard')).toMatchObject({ tensile: { min: 1275 }, yield: { min: 965 } });
    expect(tell('ASTM A666 301 1/2 hard')).toMatchObject({ tensile: { min: 1035 }, yield: { min: 760 } });
    expect(tell('SUS301-H').tensile?.min).toBe(1320);
  });

  // ASTM A653: 0.90 oz/ft² on both sides is Z275; A463: T1-40 is 0.40 oz/ft², 120 g/m² (metric T1M 120); A792: AZ50 is AZM150.
  it.each([
    ['A653 CS Type B, G90', 275],
    ['A653 CS Type B Z275', 275],
    ['A463 CS Type A T1-40', 122],
    ['A792 SS Grade 33 AZ50', 153],
    ['A792 SS Grade 33 AZM150', 150],
  ])('%s has its coating mass', (text, grams) => {
    expect(tell(text).coating_mass).toEqual({ grams, counted: 'both sides together' });
  });

  it('counts the coating of SAE each side', () => {
    expect(tell('SAE J2340 340X CR HD70G70G').coating_mass).toEqual({ grams: 70, counted: 'each side' });
  });

  it('asks about a coating that sheet is not ordered with', () => {
    expect(tell('A653 SS Grade 33 G91').known).toBe('ambiguous');
    expect(tell('A463 CS T1-41').known).toBe('ambiguous');
  });
});

describe('the standard that a coating settles', () => {
  it.each(['CR3-UNC-U', 'CR4-GI50/50-U', 'CR5-GA40/40-E', 'CR4-EG29/29-E'])('%s is VDA 239-100', (text) => {
    expect(tell(text)).toMatchObject({ known: 'known', standard: 'VDA 239-100:2016', class: 'mild' });
  });

  it('is not settled by the rank alone', () => {
    expect(tell('CR4').known).toBe('ambiguous');
  });

  it.each([
    ['CR3EC', 'CR3'],
    ['CR2BC', 'CR2'],
    ['VDA 239-100 CR3EC', 'CR3'],
  ])('%s is unknown, with %s to look at', (text, nearest) => {
    expect(tell(text)).toMatchObject({ known: 'unknown', class: null });
    expect(tell(text).nearest).toContain(nearest);
  });
});

describe('standards as they are printed', () => {
  it.each([
    ['EN 10130 HX340LAD', 'EN 10130'],
    ['EN 10149-2 DC04', 'EN 10149-2'],
    ['EN 10088-4 DC04', 'EN 10088-4'],
    ['JIS G 3135 DC04', 'JIS G 3135'],
    ['VDA 239-100 HC340LA', 'VDA 239-100'],
    ['VDA 239-500 DC04', 'VDA 239-500'],
    ['GB/T 20564.2-2017 DC04', 'GB/T 20564.2'],
    ['ASTM A653/A653M DC04', 'ASTM A653'],
    ['SAE J2340 DC04', 'SAE J2340'],
    ['SEW 093 DC04', 'SEW 093'],
  ])('%s: %s', (text, printed) => {
    expect(tell(text).reason).toContain(`The text names ${printed}, but`);
  });

  it('stand beside a name that several of them share', () => {
    const ways =
      /\((?<ways>.*)\)/.exec(tell('SS Grade 33').reason ?? '')?.groups?.['ways']?.split('; ') ?? [];
    expect(ways.length).toBeGreaterThan(2);
    expect(new Set(ways).size).toBe(ways.length);
    expect(ways.filter((way) => way.includes(' of ASTM A')).length).toBeGreaterThan(1);
  });

  it('names a grade without a row as it was written', () => {
    expect(tell('ASTM A1046 SS Grade 33').reason).toContain('no row for SS Grade 33;');
    expect(tell('A1046 SS Gr 33').reason).toContain('no row for SS Gr 33;');
  });
});

describe('boron steel by its stock', () => {
  // EN 10083-3: 27MnCrB5-2 quenched and tempered 1000–1250 MPa. From memory.
  it('keeps the range of the stock, in words where the part stands higher and as the range where the stock is meant', () => {
    expect(tell('27MnCrB5-2')).toMatchObject({ class: 'press-hardened', tensile: { min: 1000, max: null } });
    expect(tell('27MnCrB5-2').note).toContain('1000–1250 MPa for quenched and tempered stock');
    expect(tell('27MnCrB5-2+QT')).toMatchObject({
      class: 'press-hardened',
      tensile: { min: 1000, max: 1250 },
    });
    expect(tell('27MnCrB5-2 quenched and tempered').tensile?.max).toBe(1250);
  });
});
