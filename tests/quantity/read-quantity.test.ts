import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dimensions } from '../../src/quantity/dimension.ts';
import type { Dimension } from '../../src/quantity/dimension.ts';
import { readQuantity } from '../../src/quantity/read-quantity.ts';
import { sense } from '../../src/quantity/sense.ts';
import { units } from '../../src/quantity/units.ts';

function valueOf(text: string, dimension: Dimension): number | undefined {
  const reading = readQuantity(text, dimension);
  return reading.ok ? reading.value : undefined;
}

function reasonOf(text: string, dimension: Dimension): string {
  const reading = readQuantity(text, dimension);
  return reading.ok ? `read as ${reading.value}` : reading.reason;
}

describe('what is read', () => {
  it.each([
    ['600 °C', 'temperature', 600],
    ['600°C', 'temperature', 600],
    ['600C', 'temperature', 600],
    ['600 ºC', 'temperature', 600],
    ['600 ℃', 'temperature', 600],
    ['600 deg C', 'temperature', 600],
    ['-20 °C', 'temperature', -20],
    ['−20 °C', 'temperature', -20],
    ['0 °C', 'temperature', 0],
    ['1.4 mm', 'length', 1.4],
    ['1.500 mm', 'length', 1.5],
    ['.055 in', 'length', 1.397],
    ['0 mm', 'length', 0],
    ['-0 mm', 'length', 0],
    ['120 µm', 'length', 0.12],
    ['120 \u03bcm', 'length', 0.12],
    ['120 um', 'length', 0.12],
    ['3.2 m', 'length', 3200],
    ['1500 MPa', 'stress', 1500],
    ['1500 mpa', 'stress', 1500],
    ['1500 N/mm²', 'stress', 1500],
    ['1500 N/mm2', 'stress', 1500],
    ['1.5 GPa', 'stress', 1500],
    ['2 days', 'time', 172_800],
    ['1 day', 'time', 86_400],
    ['240 ms', 'time', 0.24],
    ['2.5 h', 'time', 9000],
    ['350 daN', 'force', 3.5],
    ['9500 A', 'current', 9.5],
    ['0.4 kV', 'voltage', 400],
    ['1.2 kJ/cm', 'energy per length', 0.12],
    ['25.4 kJ/in', 'energy per length', 1],
    ['1.6 J/cm2', 'energy per area', 1.6],
    ['600 mm/min', 'speed', 10],
    ['1.5 kW', 'power', 1500],
    ['60 cm/min', 'speed', 10],
    ['0.6 m/min', 'speed', 10],
    ['500 Ω/V', 'insulation', 500],
    ['500 \u2126/V', 'insulation', 500],
    ['0.5 kohm/V', 'insulation', 500],
    ['1 MΩ', 'resistance', 1_000_000],
    ['5 mΩ', 'resistance', 0.005],
    ['12 °', 'angle', 12],
    ['12°', 'angle', 12],
    ['85 %', 'percent', 85],
  ] as const)('%s as %s is %d', (text, dimension, expected) => {
    expect(valueOf(text, dimension)).toBeCloseTo(expected, 10);
  });

  it('never shows a negative zero', () => {
    expect(Object.is(valueOf('-0 mm', 'length'), 0)).toBe(true);
  });

  it('keeps a difference of temperature apart from a temperature', () => {
    expect(valueOf('300 °F', 'temperature')).toBeCloseTo(148.889, 3);
    expect(valueOf('300 °F', 'temperature difference')).toBeCloseTo(166.667, 3);
    expect(valueOf('40 °C', 'temperature difference')).toBe(40);
    expect(valueOf('40 K', 'temperature difference')).toBe(40);
    expect(valueOf('40 K', 'temperature')).toBeCloseTo(-233.15, 10);
  });
});

describe('what is refused, and why', () => {
  it.each([
    ['600', 'temperature', /has no unit: write °C, °F or K/u],
    ['1,4 mm', 'length', /decimal comma: write 1\.4 mm\./u],
    [',5 mm', 'length', /decimal comma: write 0\.5 mm\./u],
    ['0,055 in', 'length', /decimal comma: write 0\.055 in\./u],
    ['217,000 psi', 'stress', /thousands mark .*: write 217000 psi, or 217 psi if/u],
    ['1,500,000 psi', 'stress', /thousands mark .*: write 1500000 psi\./u],
    ["1'500 MPa", 'stress', /thousands mark .*: write 1500 MPa\./u],
    ['1 500 MPa', 'stress', /thousands mark .*: write 1500 MPa\./u],
    ['1\u202f500 MPa', 'stress', /thousands mark .*: write 1500 MPa\./u],
    ['1.500,5 mm', 'length', /thousands mark and a decimal comma/u],
    ['1.500 MPa', 'stress', /thousands point .*: write 1500 MPa or 1\.5 MPa\./u],
    ['217.000 psi', 'stress', /thousands point .*: write 217000 psi or 217 psi\./u],
    ['１４ mm', 'length', /digits of another script/u],
    ['١٤ mm', 'length', /digits of another script/u],
    ['2O21', 'length', /the letter O among its digits: write 2021/u],
    ['6OO °C', 'temperature', /the letter O among its digits: write 600 °C/u],
    ['l.4 mm', 'length', /the letter l among its digits: write 1\.4 mm/u],
    ['600 mm', 'temperature', /is a length, but a temperature is needed, a number with °C, °F or K/u],
    ['30 s', 'length', /is a time, but a length is needed/u],
    ['500 Ω', 'insulation', /is a resistance, but an insulation resistance per volt/u],
    ['1.4 mn', 'length', /unknown unit "mn": the nearest known one is mm/u],
    ['1500 Mpq', 'stress', /nearest known one is MPa/u],
    ['5 ft', 'length', /unknown unit "ft": write mm, cm, m, µm or in/u],
    ['600 °C / 1112 °F', 'temperature', /more than one number/u],
    ['600 °C (1112 °F)', 'temperature', /more than one number/u],
    ['600 °C, 30 s', 'temperature', /more than one number/u],
    ['6 x 20 mm', 'length', /more than one number/u],
    ['600-650 °C', 'temperature', /is a range/u],
    ['600–650 °C', 'temperature', /is a range/u],
    ['600 to 650 °C', 'temperature', /is a range/u],
    ['600 °C - 650 °C', 'temperature', /is a range/u],
    ['<600 °C', 'temperature', /a limit or an estimate/u],
    ['≤ 600 °C', 'temperature', /a limit or an estimate/u],
    ['~600 °C', 'temperature', /a limit or an estimate/u],
    ['about 600 °C', 'temperature', /a limit or an estimate/u],
    ['600 °C max', 'temperature', /a limit or an estimate/u],
    ['6.2 ±0.1 mm', 'length', /a tolerance/u],
    ['1/4 in', 'length', /a fraction/u],
    ['1 1/2 in', 'length', /a fraction/u],
    ['½ in', 'length', /a fraction/u],
    ['1e3 MPa', 'stress', /a power of ten/u],
    ['055 in', 'length', /needless zero/u],
    ['5. mm', 'length', /no decimals follow/u],
    ['1.2.3 mm', 'length', /no decimals follow/u],
    ['', 'length', /Nothing is written here; a length is needed/u],
    ['  \t', 'length', /Nothing is written here/u],
    ['mm', 'length', /does not begin with a number/u],
    ['Infinity mm', 'length', /does not begin with a number/u],
    ['NaN mm', 'length', /does not begin with a number/u],
    ['5 __proto__', 'length', /unknown unit/u],
    ['5 constructor', 'length', /unknown unit/u],
    ['-5 mm', 'length', /is negative, and a length cannot be/u],
    ['-1 K', 'temperature', /below absolute zero/u],
    ['-273.16 °C', 'temperature', /below absolute zero/u],
    ['99999999999 mm', 'length', /out of all proportion/u],
    [`${'9'.repeat(400)} mm`, 'length', /has 403 characters/u],
  ] as const)('%s as %s', (text, dimension, reason) => {
    expect(reasonOf(text, dimension)).toMatch(reason);
  });

  it('tells milli from mega only by case, and asks where case says nothing', () => {
    expect(reasonOf('1500 mPa', 'stress')).toMatch(/small m of milli/u);
    expect(reasonOf('5 mΩ/V', 'insulation')).toMatch(/write 5 MΩ\/V/u);
    expect(reasonOf('5 mohm/v', 'insulation')).toMatch(/write 5 MΩ\/V/u);
    expect(reasonOf('5 MOHM', 'resistance')).toMatch(/write mΩ or MΩ/u);
    expect(valueOf('5 Mohm', 'resistance')).toBe(5_000_000);
    expect(valueOf('5 mohm', 'resistance')).toBe(0.005);
  });

  it('leaves converted values with three decimals alone', () => {
    expect(valueOf('648.889 °C', 'temperature')).toBe(648.889);
    expect(valueOf('1.397 mm', 'length')).toBe(1.397);
    expect(valueOf('217.550 ksi', 'stress')).toBeCloseTo(1499.95, 1);
  });

  it('says one sentence that ends with a full stop and calls nothing invalid', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 60 }), fc.constantFrom(...dimensions), (text, dimension) => {
        const reading = readQuantity(text, dimension);
        if (!reading.ok) {
          expect(reading.reason.endsWith('.')).toBe(true);
          expect(reading.reason.replace(JSON.stringify(text), '')).not.toMatch(/\binvalid\b|\bplease\b/u);
        }
      }),
    );
  });
});

const unitsWithDimension = dimensions.flatMap((dimension) =>
  units[dimension].flatMap((unit) =>
    [unit.symbol, ...(unit.also ?? [])].map((spelling) => ({ dimension, unit, spelling })),
  ),
);

/** Decimal number with up to three decimals, as a person writes it; its last decimal is never a zero. */
const written = fc
  .tuple(fc.integer({ min: 0, max: 900 }), fc.integer({ min: 0, max: 99 }))
  .map(([whole, hundredths]) => String(whole + hundredths / 100));

describe('properties', () => {
  it('every spelling of every unit is read as its unit', () => {
    for (const { dimension, unit, spelling } of unitsWithDimension) {
      expect(valueOf(`7 ${spelling}`, dimension), spelling).toBe(valueOf(`7 ${unit.symbol}`, dimension));
    }
  });

  it('case and blanks do not change a value; at most they make it unclear, and only for milliohm and megohm', () => {
    const blanks = fc.constantFrom('', ' ', '\u00a0', '\u2009', '\u202f', '  ', '\t');
    fc.assert(
      fc.property(
        fc.constantFrom(...unitsWithDimension),
        written,
        blanks,
        fc.boolean(),
        (given, number, blank, upper) => {
          const { dimension, spelling } = given;
          const plain = valueOf(`${number} ${spelling}`, dimension);
          fc.pre(!(dimension === 'resistance' && /^m/iu.test(spelling)));
          const other = ` ${number}${blank}${upper ? spelling.toUpperCase() : spelling.toLowerCase()} `;
          const reading = readQuantity(other, dimension);
          if (reading.ok) expect(reading.value).toBe(plain);
          else if (plain !== undefined) expect(reading.reason).toMatch(/milli/u);
        },
      ),
    );
  });

  it('a value written in any unit of its dimension comes back the same', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...unitsWithDimension),
        fc.integer({ min: 1, max: 900 }),
        (given, tenths) => {
          const { dimension, unit } = given;
          const canonical = tenths / 10;
          const inUnit = (canonical * (unit.over ?? 1)) / (unit.times ?? 1) - (unit.before ?? 0);
          const text = `${inUnit.toFixed(12)} ${unit.symbol}`;
          const value = valueOf(text, dimension);
          // What is too large or too small to be written with twelve decimals is no case.
          fc.pre(text.length <= 40 && inUnit > 1e-3 && canonical <= sense[dimension].highest);
          expect(value).toBeDefined();
          expect(Math.abs((value ?? 0) / canonical - 1)).toBeLessThan(1e-8);
        },
      ),
    );
  });

  it('no text without a unit is ever a number', () => {
    const text = fc.oneof(
      fc.string({ maxLength: 45 }),
      fc.string({ unit: fc.constantFrom(...'0123456789.,-+ eE/'), maxLength: 45 }),
      fc.double().map(String),
    );
    const endings = new Set(unitsWithDimension.map(({ spelling }) => spelling.toLowerCase()));
    fc.assert(
      fc.property(text, fc.constantFrom(...dimensions), (given, dimension) => {
        const reading = readQuantity(given, dimension);
        const rest = given
          .trim()
          .replace(/^[-+−]?[\d.]+\s*/u, '')
          .toLowerCase();
        if (reading.ok) expect(endings.has(rest)).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });

  it('what is read lies within what can be meant', () => {
    fc.assert(
      fc.property(fc.constantFrom(...unitsWithDimension), fc.double({ noNaN: true }), (given, number) => {
        const value = valueOf(`${number} ${given.spelling}`, given.dimension);
        const { lowest, highest } = sense[given.dimension];
        if (value !== undefined) expect(value >= lowest && value <= highest).toBe(true);
      }),
    );
  });

  it('reads a larger number as a larger value', () => {
    fc.assert(
      fc.property(fc.constantFrom(...unitsWithDimension), written, written, (given, one, other) => {
        const [low, high] = Number(one) < Number(other) ? [one, other] : [other, one];
        const lowValue = valueOf(`${low} ${given.spelling}`, given.dimension);
        const highValue = valueOf(`${high} ${given.spelling}`, given.dimension);
        fc.pre(lowValue !== undefined && highValue !== undefined);
        if (low === high) expect(lowValue).toBe(highValue);
        else expect(lowValue).toBeLessThan(highValue);
      }),
    );
  });
});
