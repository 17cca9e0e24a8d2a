import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readYears } from '../../src/quantity/year-range.ts';

describe('readYears', () => {
  it.each([
    [2021, 2021, 2021],
    ['2021', 2021, 2021],
    ['2020-2022', 2020, 2022],
    ['2020–2022', 2020, 2022],
    ['2020 - 2022', 2020, 2022],
    ['2021-2021', 2021, 2021],
  ])('reads %s', (value, from, to) => {
    expect(readYears(value)).toEqual({ ok: true, from, to });
  });

  it.each([
    ['2022-2020', /begins after it ends: write 2020-2022/u],
    ['2O21', /letter O among its digits: write 2021/u],
    ['2020-2O22', /letter O among its digits: write 2020-2022/u],
    ['20-22', /without its century/u],
    ['2020-22', /without its century/u],
    ["'21", /without its century/u],
    [21, /without its century/u],
    ['2020-', /open at one end/u],
    ['-2022', /open at one end/u],
    ['2020+', /open at one end/u],
    ['from 2020', /open at one end/u],
    ['2020, 2021', /neither a year nor a range/u],
    ['2020/2022', /neither a year nor a range/u],
    ['2020-2021-2022', /neither a year nor a range/u],
    ['２０２１', /another script/u],
    ['all', /no model year/u],
    ['', /No year is written/u],
    [2021.5, /no model year/u],
    [Number.NaN, /no model year/u],
    [1899, /write a year from 1900 to 2199/u],
    ['2020-2200', /2200 is no model year/u],
    ['2020-10-05', /no model year/u],
  ])('refuses %s', (value, reason) => {
    const reading = readYears(value);
    expect(reading.ok ? '' : reading.reason).toMatch(reason);
  });

  it('reads what it is given and nothing crossed', () => {
    const year = fc.integer({ min: 1900, max: 2199 });
    fc.assert(
      fc.property(year, year, fc.constantFrom('-', '–', ' - '), (from, to, mark) => {
        const reading = readYears(`${from}${mark}${to}`);
        if (from <= to) expect(reading).toEqual({ ok: true, from, to });
        else expect(reading.ok).toBe(false);
      }),
    );
  });
});
