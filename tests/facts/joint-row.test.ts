import { describe, expect, test } from 'vitest';
import { joint } from './joint-plan.ts';

describe('the row beside the factory’s', () => {
  const ratio = (entries: string): unknown => joint(entries).value('joint.row_ratio');
  const stack = 'sheets: [own, hard]';

  test('spots for spots, by number and button; a larger button than five roots counts no more', () => {
    expect(
      ratio(`method: resistance spot, ${stack}, nugget: 5.5 mm, factory_count: 28, count: 28`),
    ).toBeCloseTo(1, 9);
    expect(
      ratio(`method: resistance spot, ${stack}, nugget: 8 mm, factory_count: 28, count: 28`),
    ).toBeCloseTo(1, 9);
    expect(ratio(`method: resistance spot, ${stack}, factory_count: 28, count: 35`)).toBeCloseTo(1.25, 9);
    // Four roots for five: 0.8 in tearing.
    expect(
      ratio(`method: resistance spot, ${stack}, nugget: 4.382 mm, factory_count: 28, count: 28`),
    ).toBeCloseTo(0.8, 3);
    const measured = `nugget: 5.5 mm, coupon: { result: passed, nugget: 4.382 mm }`;
    expect(ratio(`method: resistance spot, ${stack}, ${measured}, factory_count: 28, count: 28`)).toBeCloseTo(
      0.8,
      3,
    );
  });

  // Handbook, joining, section 8, examples B and C: 1.2 mm on 1.2 mm.
  test('plugs for spots by what fuses', () => {
    const even = 'sheets: [own, own]';
    expect(ratio(`method: plug weld, ${even}, factory_count: 28, count: 28`)).toBeCloseTo(1.02, 2);
    expect(ratio(`method: plug weld, ${even}, factory_count: 28, count: 14`)).toBeCloseTo(0.51, 2);
  });

  test('like for like by number', () => {
    const riveted = 'method: self-piercing rivet, factory_method: self-piercing rivet';
    expect(ratio(`${riveted}, ${stack}, factory_count: 20, count: 19`)).toBe(0.95);
    expect(
      joint('method: resistance spot, to: hard, factory_count: 20, count: 30').fact('joint.row_ratio'),
    ).toMatchObject({
      value: 1.5,
      from: 'assumed',
    });
  });

  test.each([
    ['method: blind rivet, factory_count: 20, count: 30', /cannot be set against/u],
    ['method: arc braze, factory_count: 20, count: 30', /cannot be set against/u],
    ['method: plug weld, to: hard, factory_count: 20, count: 20', /thickness of the stack/u],
    ['method: resistance spot, factory_count: 0, count: 30', /put no row/u],
    ['method: resistance spot, factory_count: 20', /number of joints/u],
    ['factory_count: 20, count: 20', /How it is joined/u],
  ])('unknown with its reason for { %s }', (entries, reason) => {
    expect(ratio(entries)).toMatch(reason);
  });

  test('how the factory joined it: as stated, else spots where there was a row, and that is said', () => {
    expect(joint('factory_method: clinch').fact('joint.factory_method')).toMatchObject({ from: 'stated' });
    expect(joint('factory_count: 2').fact('joint.factory_method')).toMatchObject({
      value: 'resistance spot',
      from: 'assumed',
    });
    expect(joint('factory_count: 0').fact('joint.factory_method').known).toBe(false);
  });

  test('loads in kN for what is known whole', () => {
    // HC340LA: at least 410 MPa (EN 10268); 28 spots of 5 √t between two sheets of 1.2 mm by EN 1993-1-3.
    const one = (2.7 * Math.sqrt(1.2) * 5 * Math.sqrt(1.2) * 410) / 1000;
    const row = joint('method: resistance spot, sheets: [own, own], factory_count: 28, count: 14');
    expect(row.value('joint.factory_load')).toBeCloseTo(28 * one, 6);
    expect(row.value('joint.row_load')).toBeCloseTo(14 * one, 6);
    expect(row.fact('joint.spot_shear').known).toBe(true);
    expect(joint('sheets: [own, bare], count: 3').fact('joint.row_load').known).toBe(false);
  });
});

describe('coupon', () => {
  const sheets = (given: string, stack = 'sheets: [own, hard]'): unknown =>
    joint(`${stack}, coupon: { sheets: [${given}] }`).value('joint.coupon_sheets');
  const own = '{ grade: HC340LA, thickness: 1.2 mm }';
  const hard = '{ grade: 22MnB5, thickness: 1.4 mm }';

  test.each([
    [`${own}, ${hard}`, 'same'],
    [`${hard}, ${own}`, 'same'],
    [`{ class: high-strength, thickness: 1.25 mm }, ${hard}`, 'same'],
    [`${own}, ${own}`, 'other'],
    [`${own}, ${hard}, ${own}`, 'other'],
    [`{ grade: HC340LA, thickness: 1 mm }, ${hard}`, 'other'],
    [`{ grade: DC04, thickness: 1.2 mm }, ${hard}`, 'other'],
    [`{ grade: HC340LA }, ${hard}`, 'not stated'],
  ])('of %s: %s', (given, answer) => {
    expect(sheets(given)).toBe(answer);
  });

  test('nothing said of sheets, size or setup', () => {
    const bare = joint('sheets: [own, hard], coupon: passed');
    expect(bare.value('joint.coupon_sheets')).toBe('not stated');
    expect(bare.value('joint.coupon_recorded')).toBe(false);
    expect(bare.value('joint.coupon_other_setup')).toBe(false);
    expect(bare.value('joint.coupon_at_pitch')).toBe(false);
    expect(bare.fact('joint.coupon_failure').known).toBe(false);
  });

  test('size and day make a record', () => {
    expect(joint('coupon: { nugget: 6 mm, date: 2026-10-08 }').value('joint.coupon_recorded')).toBe(true);
    expect(joint('coupon: { nugget: 6 mm }').value('joint.coupon_recorded')).toBe(false);
  });
});
