import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checkDigit } from '../../src/vehicle/check-digit.ts';
import { examineVin } from '../../src/vehicle/examine-vin.ts';
import { readVin } from '../../src/vehicle/identification-number.ts';
import { modelYears } from '../../src/vehicle/model-years.ts';

const characters = [...'ABCDEFGHJKLMNPRSTUVWXYZ0123456789'];

interface Vector {
  readonly name: string;
  readonly vin: string;
  readonly federal: boolean;
  readonly light: boolean;
  readonly statedYear?: number;
  readonly reason: string;
  readonly sum: string;
  readonly check: string;
  readonly years: readonly number[];
}

// Thirty numbers with the fault that a reader of 49 CFR 565 should find, written down and computed apart from this
// program. Three are printed in public sources (the regulation's own sample among them), all others begin with 0.
const vectors: readonly Vector[] = readFileSync(new URL('vin-vectors.csv', import.meta.url), 'utf8')
  .trim()
  .split(/\r?\n/u)
  .slice(1)
  .map((line) => {
    const [, name = '', vin = '', market, light, stated = '', reason = '', sum = '', check = '', years = ''] =
      [...line.matchAll(/(?:^|,)(?:"([^"]*)"|([^,]*))/gu)].map((cell) => cell[1] ?? cell[2] ?? '');
    return {
      name,
      vin,
      federal: market === 'us',
      light: light === 'yes',
      ...(stated === '' ? {} : { statedYear: Number(stated) }),
      reason,
      sum,
      check,
      years: years === '' ? [] : years.split('/').map(Number),
    };
  });

/** What a reader of the facts would object to, in the words of the vectors. */
function objections({ vin, federal, light, statedYear }: Vector): readonly string[] {
  const facts = examineVin(vin, federal ? 'united-states' : 'european-union', light);
  const found: string[] = [];
  if (facts.form === 'length') found.push('length');
  if (facts.form === 'letters I, O, Q') found.push('charset-ioq');
  if (facts.form === 'character') found.push('charset');
  if (facts.checkDigit === 'not a check character') found.push('check-digit-form');
  if (facts.checkDigit === 'disagrees') found.push('check-digit');
  if (facts.yearCode === 'not a year code') found.push('year-code');
  if (facts.serial.startsWith('letter')) found.push('serial');
  if (statedYear !== undefined && facts.years.length > 0 && !facts.years.includes(statedYear)) {
    found.push('year-mismatch');
  }
  return found;
}

describe('vectors of vehicle identification numbers', () => {
  it('are thirty, half of them faultless', () => {
    expect(vectors).toHaveLength(30);
    expect(vectors.filter(({ reason }) => reason === '')).toHaveLength(15);
  });

  it.each(vectors)('$name: "$reason" and nothing else', (vector) => {
    expect(objections(vector)).toEqual(vector.reason === '' ? [] : [vector.reason]);
  });

  it.each(vectors.filter(({ sum }) => sum !== ''))(
    '$name: sum $sum, check digit $check',
    ({ vin, sum, check }) => {
      const reading = readVin(vin);
      expect(checkDigit(reading.ok ? reading.vin : '')).toEqual({ sum: Number(sum), digit: check });
    },
  );

  it.each(vectors.filter(({ federal, sum }) => federal && sum !== ''))(
    '$name: model years $years',
    ({ vin, light, years }) => {
      expect(examineVin(vin, 'united-states', light).years).toEqual(years);
    },
  );

  it.each(vectors.filter(({ federal }) => !federal))(
    '$name: no year is decoded where none is encoded',
    ({ vin }) => {
      expect(examineVin(vin, 'european-union', true).years).toEqual([]);
    },
  );
});

// 49 CFR 565.15, worked sample of the check digit table: products add up to 411, remainder 4.
it('the worked sample of 49 CFR 565.15 gives 411 and 4', () => {
  expect(checkDigit('1G4AH59H45G118341')).toEqual({ sum: 411, digit: '4' });
});

// 49 CFR 565.15, table of model year codes (from memory): the first thirty from 1980, again from 2010.
describe('model year codes of 49 CFR 565.15', () => {
  const table: readonly (readonly [string, number])[] = [
    ['A', 1980],
    ['B', 1981],
    ['C', 1982],
    ['D', 1983],
    ['E', 1984],
    ['F', 1985],
    ['G', 1986],
    ['H', 1987],
    ['J', 1988],
    ['K', 1989],
    ['L', 1990],
    ['M', 1991],
    ['N', 1992],
    ['P', 1993],
    ['R', 1994],
    ['S', 1995],
    ['T', 1996],
    ['V', 1997],
    ['W', 1998],
    ['X', 1999],
    ['Y', 2000],
    ['1', 2001],
    ['2', 2002],
    ['3', 2003],
    ['4', 2004],
    ['5', 2005],
    ['6', 2006],
    ['7', 2007],
    ['8', 2008],
    ['9', 2009],
  ];
  it.each(table)('%s is %d or thirty years later, by the seventh place', (code, year) => {
    expect(modelYears(`0DMAC334?${code}1000125`, true)).toEqual([year]);
    expect(modelYears(`0DMAC3D4?${code}1000125`, true)).toEqual([year + 30]);
    expect(modelYears(`0DMAC334?${code}1000125`, false)).toEqual([year, year + 30]);
  });
  it.each(['I', 'O', 'Q', 'U', 'Z', '0'])('%s is none', (code) => {
    expect(modelYears(`0DMAC3D4?${code}1000125`, false)).toEqual([]);
  });
});

// Counted apart from this program with another implementation of the federal arithmetic.
it('the check digit misses 32 of the 512 single substitutions of 0DMAC3D44R1000125', () => {
  const vin = '0DMAC3D44R1000125';
  let tried = 0;
  let missed = 0;
  for (const [place, own] of [...vin].entries()) {
    if (place === 8) continue;
    for (const other of characters) {
      if (other === own) continue;
      tried += 1;
      if (checkDigit(vin.slice(0, place) + other + vin.slice(place + 1))?.digit === vin.charAt(8))
        missed += 1;
    }
  }
  expect([tried, missed]).toEqual([512, 32]);
});

it('the check digit catches every slip between neighbouring year codes', () => {
  const order = 'ABCDEFGHJKLMNPRSTVWXY123456789';
  for (let place = 1; place < order.length; place += 1) {
    const [one, next] = [order.charAt(place - 1), order.charAt(place)].map(
      (code) => checkDigit(`0DMAC3D40${code}1000125`)?.digit,
    );
    expect(one).not.toBe(next);
  }
});
