import { describe, expect, it } from 'vitest';
import { examineVin } from '../../src/vehicle/examine-vin.ts';
import { marketRules, markets } from '../../src/vehicle/market.ts';

const right = '0DMAC3D44R1000125';
const wrongCheck = '0DMAC3D45R1000125';
const fillerAtNine = '0DMZZZ8XZN1000123';
const letterFifthFromEnd = '0DMAC3D4XR10A0125';

describe('examineVin, check digit', () => {
  it.each([
    [right, 'united-states', 'agrees', '4'],
    [wrongCheck, 'united-states', 'disagrees', '4'],
    [fillerAtNine, 'united-states', 'not a check character', '7'],
    [wrongCheck, 'canada', 'disagrees', '4'],
    [wrongCheck, 'north-america', 'disagrees', '4'],
    [wrongCheck, 'china', 'disagrees', '4'],
    [wrongCheck, 'european-union', 'not required', undefined],
    [fillerAtNine, 'united-kingdom', 'not required', undefined],
    [wrongCheck, 'other', 'not required', undefined],
    [right, undefined, 'market unknown and agrees', '4'],
    [wrongCheck, undefined, 'market unknown and disagrees', '4'],
    [fillerAtNine, undefined, 'market unknown and disagrees', '7'],
  ] as const)('%s in %s: %s', (vin, market, expected, digit) => {
    const facts = examineVin(vin, market, true);
    expect(facts.checkDigit).toBe(expected);
    expect(facts.expectedCheckDigit).toBe(digit);
  });
});

describe('examineVin, model year', () => {
  it.each([
    [right, 'united-states', true, [2024]],
    [right, 'united-states', undefined, [1994, 2024]],
    [right, 'united-states', false, [1994, 2024]],
    // Nothing was found on the seventh place in China's standard, so it decides nothing there.
    [right, 'china', true, [1994, 2024]],
    ['0DMAC3342R1000125', 'canada', true, [1994]],
  ] as const)('%s in %s, light %s: %j', (vin, market, light, years) => {
    expect(examineVin(vin, market, light)).toMatchObject({ years, yearCode: 'read' });
  });

  it.each([
    ['european-union', 'not required'],
    ['japan', 'not required'],
    [undefined, 'market unknown'],
  ] as const)('decodes nothing in %s: %s', (market, yearCode) => {
    expect(examineVin(right, market, true)).toMatchObject({ years: [], yearCode });
  });
});

describe('examineVin, serial', () => {
  it.each([
    [right, true, 'as required'],
    [letterFifthFromEnd, true, 'letter among the last five'],
    [letterFifthFromEnd, false, 'as required'],
    [letterFifthFromEnd, undefined, 'letter fifth from the end, weight class unknown'],
    ['0DMAC3D4XR100A125', false, 'letter among the last four'],
    ['0DMAC3D4XR100A125', undefined, 'letter among the last four'],
    ['0DMAC3D4XR1A00125', true, 'as required'],
  ] as const)('%s, light %s: %s', (vin, light, serial) => {
    expect(examineVin(vin, 'united-states', light).serial).toBe(serial);
  });
  it('is not asked for elsewhere', () => {
    expect(examineVin(letterFifthFromEnd, 'european-union', true).serial).toBe('not required');
    expect(examineVin(letterFifthFromEnd, undefined, true).serial).toBe('market unknown');
  });
});

describe('examineVin, form', () => {
  it('knows a training number by its first character', () => {
    expect(examineVin(right, 'united-states', true).trainingNumber).toBe(true);
    expect(examineVin('11111111111111111', 'united-states', true).trainingNumber).toBe(false);
  });
  it('derives nothing from a number that is not in form', () => {
    expect(examineVin('ODMAC3D44R1000125', 'united-states', true)).toEqual({
      form: 'letters I, O, Q',
      checkDigit: 'not in form',
      years: [],
      yearCode: 'not in form',
      serial: 'not in form',
      trainingNumber: false,
    });
  });
  it('examines a number with blanks and small letters as the tidied one', () => {
    expect(examineVin('0dm ac3d4 4 r1000125', 'united-states', true)).toEqual(
      examineVin(right, 'united-states', true),
    );
  });
});

it('only markets under the federal rule, and China, require check digit and year code', () => {
  const requiring = markets.filter((market) => marketRules(market).checkDigit);
  expect(requiring).toEqual(['united-states', 'canada', 'north-america', 'china']);
  expect(markets.filter((market) => marketRules(market).yearCode)).toEqual(requiring);
});
