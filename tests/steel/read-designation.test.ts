import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { csvRows } from '../../.build/steel-table.ts';
import type { DesignationReading, Material } from '../../src/steel/reading/read-designation.ts';
import { readDesignation } from '../../src/steel/reading/read-designation.ts';
import { steelRank } from '../../src/steel/strength-class.ts';

const grades = csvRows(readFileSync(new URL('../../src/steel/data/grades.csv', import.meta.url), 'utf8'));
const names = [...new Set(grades.map((row) => row['designation'] ?? ''))];
/** Two and three letters are too easily something else; these count only beside their standard. */
const needStandard = new Set(['CS', 'DS', 'DDS', 'EDDS']);
const plainNames = names.filter((name) => !needStandard.has(name));

function first(text: string) {
  const reading = readDesignation(text);
  if (!reading.known) throw new Error(`${text}: ${reading.reason}`);
  const [material] = reading.readings;
  if (material === undefined) throw new Error(`${text} has no reading`);
  return material;
}

function reasonOf(reading: DesignationReading): string {
  return reading.known ? `known as ${JSON.stringify(reading.readings)}` : reading.reason;
}

/** Class, family and strengths: what must not depend on how a name is typed. */
function substance(text: string): unknown {
  const reading = readDesignation(text);
  if (!reading.known) return reading.reason;
  return reading.readings.map((one) => [
    one.class,
    one.family,
    one.tensileMinMpa,
    one.tensileMaxMpa,
    one.yieldMinMpa,
  ]);
}

describe('reading a designation', () => {
  it.each(plainNames)('knows %s from the table', (name) => {
    const reading = readDesignation(name);
    const squeezed = (one: string): string => one.replaceAll(/[\s-]/g, '');
    // ASTM grades without their class have the rows of every class, and of every standard that prints none.
    expect(reading.known && reading.readings.map((one) => squeezed(one.designation))).toContain(
      squeezed(name),
    );
  });

  it('splits a coating off and keeps its kind', () => {
    expect(first('HCT980X+ZE75/75').coating).toBe('zinc');
    expect(first('DX54D+ZF100RB').coating).toBe('zinc-iron');
    expect(first('HX260LAD+ZA130MC_O').coating).toBe('zinc-aluminium');
    expect(first('HX340LAD+ZM120MB').coating).toBe('zinc-magnesium');
    expect(first('22MnB5+AS150').coating).toBe('aluminium-silicon');
    expect(first('CR1220Y1500T-MS-UC').coating).toBe('none');
    expect(first('JAC590R-45/45').coating).toBe('zinc-iron');
    expect(first('SGC440-F08').coating).toBe('zinc-iron');
    expect(first('DC04').coating).toBeUndefined();
  });

  it('does not take anything after a plus for a coating', () => {
    expect(readDesignation('DC04+QX12').known).toBe(false);
    expect(readDesignation('DC04+ZDP').known).toBe(false);
    expect(first('DC01+C690').class).toBe('advanced high-strength');
  });

  it('lets a named standard choose between readings', () => {
    expect(first('VDA 239-100 CR340LA').tensileMaxMpa).toBe(530);
    expect(first('GB/T 20564.4 CR340LA').tensileMaxMpa).toBe(510);
    expect(first('SAE J2329 CR3EC').standard).toBe('SAE J2329:2015');
  });

  it('gives every reading of a rank that several standards use, and none for a standard whose scale is another', () => {
    const open = readDesignation('CR4');
    expect(open.known && open.readings.length).toBe(3);
    expect(open.known && open.note).toContain('BS 1449');
    const named = readDesignation('VDA 239-100 CR4-EG29/29-E');
    expect(named.known && named.readings.map((one) => one.standard)).toEqual(['VDA 239-100:2016']);
    expect(readDesignation('BS 1449 CR4').known).toBe(false);
  });

  it('counts boron steel of unknown state as hardened and says so', () => {
    const reading = readDesignation('22MnB5');
    expect(reading.known && reading.readings.map((one) => [one.condition, one.tensileMinMpa])).toEqual([
      ['hardened', 1300],
    ]);
    expect(reading.known && reading.note).toContain('counts as hardened');
    expect(reading.known && reading.note).toContain('450–750 MPa');
    expect(first('22MnB5 (hardened)').tensileMinMpa).toBe(1300);
  });

  it('keeps boron steel press-hardened even where the delivered state is named', () => {
    expect(first('22MnB5 as delivered')).toMatchObject({
      class: 'press-hardened',
      condition: 'as delivered',
      tensileMaxMpa: 750,
    });
  });

  it('reads a steel number as the grade it stands for', () => {
    expect(first('1.0338').designation).toBe('DC04');
    expect(first('1.0944').class).toBe('ultra-high-strength');
    expect(first('1.5528+AS150')).toMatchObject({ designation: '22MnB5', class: 'press-hardened' });
    expect(first('1.0330+C590').designation).toBe('DC01+C590');
    expect(first('X5CrNi18-10').class).toBe('stainless');
    expect(readDesignation('1.9999').known).toBe(false);
  });

  it.each([
    ['DP600', 'advanced high-strength', 590],
    ['980DP', 'ultra-high-strength', 980],
    ['DP1000', 'ultra-high-strength', 980],
    ['TRIP 780', 'advanced high-strength', 780],
    ['MS1500', 'ultra-high-strength', 1500],
    ['PHS1500', 'press-hardened', undefined],
    ['boron steel', 'press-hardened', undefined],
    ['Hot-stamped steel', 'press-hardened', undefined],
    ['mild steel', 'mild', undefined],
    ['aluminium', 'aluminium', undefined],
  ] as const)('reads the trade name %s as practice', (text, expected, tensileMinMpa) => {
    const material = first(text);
    expect(material).toMatchObject({ class: expected, mark: 'practice' });
    expect(material.tensileMinMpa).toBe(tensileMinMpa);
  });

  it('takes a thickness or width at the end for what it is', () => {
    for (const size of [' 1.2 mm', ' t=1.2', ' 1.2T', ' 1,2 mm', ' 2 mm', ' x 1250']) {
      expect(substance(`DC04${size}`)).toEqual(substance('DC04'));
      expect(substance(`DP1000${size}`)).toEqual(substance('DP1000'));
    }
  });
});

describe('refusing what is no designation', () => {
  it.each([
    ['', 'empty'],
    ['   ', 'empty'],
    ['X'.repeat(81), '81 characters'],
    ['DC\u000704', 'U+0007'],
    ['DC\u200B04', 'U+200B'],
    ['<b>DC04</b>', 'web-page text'],
    ['DC04&nbsp;', 'web-page text'],
    ['DC04 or HC260LA', 'more than one grade'],
    ['HC340', 'cut short'],
    ['CR980Y700T-DP', 'the yield comes first'],
    ['CR440Y480T-DP', 'misprinted'],
    ['DP 590T/780Y', 'the tensile strength comes first'],
    ['DC04, HC260LA', 'more than one grade'],
    ['DC04/HC260LA', 'more than one grade'],
    ['12', 'number without a unit'],
    ['5 MPa', 'no strength that sheet steel has'],
    ['Grade 50 [500]', 'no grade'],
    ['CS', 'State the standard'],
    ['SPFC590T', 'no grade'],
  ])('%j: %s', (text, words) => {
    const reading = readDesignation(text);
    expect(reading.known).toBe(false);
    expect(reasonOf(reading)).toContain(words);
  });

  it.each([
    ['DС04', 'Cyrillic letter "С"', 'DC04'],
    ['ΗC340LA', 'Greek letter "Η"', 'HC340LA'],
    ['DCO4', 'looks like DC04', 'DC04'],
    ['HCT98OX', 'looks like HCT980X', 'HCT980X'],
    ['22MnBS', 'no grade', '22MnB5'],
  ])('offers the grade that %s looks like, and does not use it', (text, words, nearest) => {
    const reading = readDesignation(text);
    expect(reading.known).toBe(false);
    expect(reasonOf(reading)).toContain(words);
    expect(!reading.known && reading.nearest).toContain(nearest);
  });

  it('keeps a near miss of a refused form: UHSS with its grade, CS with its standard, full-width letters', () => {
    expect(first('UHSS Grade 100 [690] Type 1').tensileMinMpa).toBe(760);
    expect(first('ASTM A1008 CS').class).toBe('mild');
    expect(first('ＤＣ０４').designation).toBe('DC04');
    expect(first(' DC04\n').designation).toBe('DC04');
  });
});

describe('whatever the name', () => {
  const someName = fc.constantFrom(...plainNames);

  it('case, blanks, dashes and full-width characters do not change the answer', () => {
    const dashes = ['-', '‐', '‑', '–', '—', '−', ' ', ''];
    fc.assert(
      fc.property(
        someName,
        fc.constantFrom(...dashes),
        fc.boolean(),
        fc.boolean(),
        (name, dash, wide, lower) => {
          let text = name.replaceAll('-', dash);
          if (lower) text = text.toLowerCase();
          if (wide)
            text = text.replaceAll(/[!-~]/g, (char) => String.fromCharCode(char.charCodeAt(0) + 0xfee0));
          expect(substance(`  ${text} `)).toEqual(substance(name));
        },
      ),
      { numRuns: 600 },
    );
  });

  it('a coating behind a sheet steel, in the way of its standard, does not change its class', () => {
    const of = (standards: RegExp): readonly string[] =>
      grades.filter((row) => standards.test(row['standard'] ?? '')).map((row) => row['designation'] ?? '');
    const behind = [
      [
        of(/^(?:EN 10346|EN 10338|GB)/),
        ['+Z100MB', '+ZF100RB', '+AS150', '+Z', '+ZM120', ' Z100', '-Z100', 'ZF120'],
      ],
      [of(/^VDA/), ['-GI50/50-U', '-GA40/40', '-UC', '-EG29/29-E', 'ZM70/70', '+Z100', '-U']],
      [of(/^JFS/), ['-45/45', '-60/60']],
      [of(/^JIS G 33(?:02|23)/), ['-Z27', '-F08', 'Z12', ' Z275']],
      [of(/^JIS G 3141/), ['-SD', 'T', '-T-SD', '-SB']],
      [of(/^EN 101(?:30|52)|^EN 10268/), ['-A-m', '-B-g-O', '-B']],
      [of(/^EN 10149|^EN 10111/), ['-P', '-PO']],
    ] as const;
    const named = behind.flatMap(([list, suffixes]) =>
      list.flatMap((name) => suffixes.map((suffix) => [name, suffix] as const)),
    );
    expect(named.length).toBeGreaterThan(800);
    fc.assert(
      fc.property(fc.constantFrom(...named), ([name, suffix]) => {
        const text = `${name}${suffix}`;
        expect([text, first(text).class]).toEqual([text, first(name).class]);
      }),
      { numRuns: 1000 },
    );
  });

  it('the first reading is the strongest', () => {
    for (const name of plainNames) {
      const reading = readDesignation(name);
      if (!reading.known) throw new Error(name);
      const ranks = reading.readings.map((one) => steelRank(one.class) ?? 0);
      expect(ranks[0]).toBe(Math.max(...ranks));
    }
  });

  it('what is read stands in the text letter for letter, however the name is mistyped', () => {
    fc.assert(
      fc.property(someName, fc.nat(30), fc.constantFrom('', ...'AIOQVWXZ'), (name, at, put) => {
        fc.pre(at < name.length);
        const text = name.slice(0, at) + put + name.slice(at + 1);
        const reading = readDesignation(text);
        fc.pre(reading.known);
        const letters = (one: string): string =>
          one
            .toUpperCase()
            .replaceAll(/\[\d+\]/g, '')
            .replaceAll(/[^A-Z0-9.]/g, '');
        for (const one of reading.readings) {
          if (/^(?:trade name|word of the trade|stated)/.test(one.standard)) continue;
          // A coating that nobody orders may be a slip for the C of cold-hardened strip: both are readings, and it is asked.
          if (one.condition === 'cold hardened' && /Z\d{3}/.test(text.toUpperCase())) continue;
          // GB grades may begin with HC or HD; the word before an AISI number is no part of it; of aluminium the alloy alone tells the class.
          const own = letters(one.designation.replace(/^(?:CR|HR)(?=\d+\/)|^Type (?=\d)/, ''));
          const loose = own.replace(/^ENAW(\d{4}A?).*/, '$1').replace(/(?:EXTRUSION|(?:CLASS|TYPE)\d)$/, '');
          expect([letters(text).includes(loose), text, one.designation]).toEqual([
            true,
            text,
            one.designation,
          ]);
        }
      }),
      { numRuns: 400 },
    );
  });

  // Of two or three signs almost every text is some size, rank or mark; and a number with letters may be a shop's name, so it is no random text.
  it('random text never surely is a material', () => {
    const alphabet = fc.constantFrom(...'ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789+-/ .');
    const texts = fc.oneof(
      fc.string({ maxLength: 90 }),
      fc.string({ unit: 'grapheme' }),
      fc.string({ unit: alphabet, minLength: 4, maxLength: 20 }),
      fc.lorem(),
      fc
        .tuple(fc.integer({ min: 0, max: 9999 }), fc.string({ unit: alphabet, maxLength: 4 }))
        .map((pair) => pair.join('')),
      fc
        .tuple(fc.string({ unit: alphabet, maxLength: 4 }), fc.integer({ min: 0, max: 9999 }))
        .map((pair) => pair.join('')),
    );
    const surely = (text: string): boolean => {
      const reading = readDesignation(text);
      return reading.known && reading.ambiguity === undefined;
    };
    fc.assert(
      fc.property(texts, (text) => {
        const reading = readDesignation(text);
        if (!reading.known) {
          expect(reasonOf(reading)).toMatch(/\.$/);
          return;
        }
        // By chance it may be a name letter for letter; then the table or the trade has it.
        if (surely(text)) expect([text, isName(text, reading.readings)]).toEqual([text, true]);
      }),
      { numRuns: 5000 },
    );
  });
});

/** Whether the text is, sign for sign, a name of the table, of a body alloy or of the trade with its coating or size. */
function isName(text: string, readings: readonly Material[]): boolean {
  const plain = (one: string): string => one.toUpperCase().replaceAll(/[^A-Z0-9]/g, '');
  return readings.every(
    (one) =>
      one.standard === 'trade name' ||
      /^(?:EN 573|EN 1706|VDA 239-200|EN 10139)/.test(one.standard) ||
      // A stainless type is the same with and without its series before it.
      plain(text).includes(plain(one.designation.replace(/^(?:EN AW-|Type |SUS)/, ''))),
  );
}
