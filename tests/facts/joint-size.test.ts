import { describe, expect, test } from 'vitest';
import type { Derived } from './facts-of.ts';
import { joint } from './joint-plan.ts';

const spot = 'method: resistance spot, sheets: [own, hard]';

describe('the stack of a spot', () => {
  test('governing, thinnest, thickest, ratio and sum', () => {
    const three = joint('sheets: [skin, own, hard]');
    expect(three.value('joint.governing_thickness')).toBe(1.2);
    expect(three.value('joint.thinnest')).toBe(0.7);
    expect(three.value('joint.thickest')).toBe(1.4);
    expect(three.value('joint.thickness_ratio')).toBeCloseTo(2, 9);
    expect(three.value('joint.stack_total')).toBeCloseTo(3.3, 9);
    expect(joint('sheets: [own], to: hard').value('joint.governing_thickness')).toBe(1.2);
  });

  test('the part that the operation stands in is a sheet whether or not the joint lists it', () => {
    expect(joint('sheets: [skin, hard], to: hard').value('joint.governing_thickness')).toBe(1.2);
    expect(joint('sheets: [hard], to: hard').value('joint.governing_thickness')).toBe(1.2);
  });

  test.each([
    ['to: hard', /sheets of the stack are not stated/u],
    ['sheets: [own]', /sheets of the stack are not stated/u],
    ['sheets: [own, bare]', /thickness of a sheet/u],
    ['sheets: [own, gone]', /thickness of a sheet/u],
    ['sheets: [own, hard, skin, light]', /four sheets/u],
  ])('unknown with its reason for { %s }', (entries, reason) => {
    expect(joint(entries).value('joint.governing_thickness')).toMatch(reason);
  });

  test('of a blank of several thicknesses the thickest asks for the larger spot', () => {
    expect(joint('sheets: [blank, blank]').value('joint.governing_thickness')).toBe(1.8);
  });

  test('a thin sheet outside, of three', () => {
    expect(joint('sheets: [skin, own, hard]').value('joint.thin_outside')).toBe(true);
    expect(joint('sheets: [own, hard, skin]').value('joint.thin_outside')).toBe(true);
    expect(joint('sheets: [own, skin, hard]').value('joint.thin_outside')).toBe(false);
    expect(joint('sheets: [skin, skin, own]').value('joint.thin_outside')).toBe(false);
    expect(joint('sheets: [own, hard]').fact('joint.thin_outside').known).toBe(false);
  });

  test('the strongest sheet is known when all are', () => {
    expect(joint('sheets: [own, hard]').fact('joint.strongest').known).toBe(true);
    expect(joint('sheets: [own, bare]').fact('joint.strongest').known).toBe(false);
  });
});

describe('the button', () => {
  test('by the root of the governing thickness: 6 mm in 1.2 mm are 5.48 roots', () => {
    expect(joint(`${spot}, nugget: 6 mm`).value('joint.button_factor')).toBeCloseTo(5.477, 3);
    expect(joint(spot).value('joint.four_root')).toBeCloseTo(4.382, 3);
    expect(joint(spot).value('joint.five_root')).toBeCloseTo(5.477, 3);
  });

  test('where none is asked for, the one of the coupon; where none is measured, unknown', () => {
    const measured = joint(`${spot}, coupon: { result: passed, nugget: 5 mm }`);
    expect(measured.value('joint.button')).toBe(5);
    expect(measured.value('joint.coupon_factor')).toBeCloseTo(4.564, 3);
    expect(joint(`${spot}, coupon: passed`).fact('joint.button').known).toBe(false);
    expect(joint(`${spot}, nugget: 0 mm`).fact('joint.button_factor').known).toBe(false);
  });

  test('the coupon below what is asked', () => {
    const less = joint(`${spot}, nugget: 6 mm, coupon: { nugget: 5.5 mm }`);
    expect(less.value('joint.coupon_below_asked')).toBeCloseTo(0.5, 9);
    expect(joint(`${spot}, nugget: 6 mm`).fact('joint.coupon_below_asked').known).toBe(false);
  });
});

describe('distances', () => {
  // Table of spot spacing: 19.5 mm at 1.0 mm, 22.5 mm at 1.25 mm; so 21.9 mm at 1.2 mm, and 28.5 mm of three sheets.
  test('the least pitch, by the table between its rows', () => {
    expect(joint(`${spot}, pitch: 20 mm`).value('joint.pitch_short')).toBeCloseTo(1.9, 9);
    expect(joint(`${spot}, pitch: 30 mm`).value('joint.pitch_short')).toBeCloseTo(-8.1, 9);
    const three = joint('method: resistance spot, sheets: [skin, own, hard], pitch: 28 mm');
    expect(three.value('joint.least_pitch')).toBeCloseTo(28.47, 9);
  });

  test('the table is for steel', () => {
    const mixed = joint('method: resistance spot, sheets: [light, light], pitch: 30 mm');
    expect(mixed.value('joint.pitch_short')).toMatch(/^\? The table of spot spacing is for steel/u);
  });

  test('the widest gap by the factory’s pitch, or by the page’s', () => {
    expect(joint(`${spot}, pitch: 33 mm, factory_pitch: 30 mm`).value('joint.gap_factor')).toBeCloseTo(
      1.1,
      9,
    );
    const wide = joint(`${spot}, pitch: 33 mm, widest_gap: 60 mm, factory_pitch: 30 mm`);
    expect(wide.value('joint.gap_factor')).toBe(2);
    const paged = joint(
      `${spot}, pitch: 40 mm, factory_pitch: 20 mm, pattern: { pitch: 40 mm, cite: { reference: own, at: p. 1 } }`,
    );
    expect(paged.value('joint.gap_factor')).toBe(1);
    expect(joint(`${spot}, pitch: 33 mm`).fact('joint.gap_factor').known).toBe(false);
  });

  test('the edge by the larger button; without any, by five roots, which is said', () => {
    expect(joint(`${spot}, nugget: 6 mm, edge: 9 mm`).value('joint.edge_factor')).toBe(1.5);
    const measured = joint(`${spot}, nugget: 6 mm, edge: 9 mm, coupon: { nugget: 7.2 mm }`);
    expect(measured.value('joint.edge_factor')).toBe(1.25);
    expect(joint(`${spot}, edge: 9 mm`).fact('joint.edge_factor')).toMatchObject({ from: 'assumed' });
  });

  test('overlap, flange and row', () => {
    // 15 mm at 1.25 mm, 12.5 mm at 1.0 mm: 14.5 mm at 1.2 mm.
    expect(joint(`${spot}, overlap: 14 mm`).value('joint.overlap_short')).toBeCloseTo(0.5, 9);
    const row = joint(`${spot}, count: 11, pitch: 30 mm, length: 290 mm, edge: 9 mm, overlap: 18 mm`);
    expect(row.value('joint.row_beyond_flange')).toBe(10);
    expect(row.value('joint.pitch_beyond_flange')).toBe(-260);
    expect(row.value('joint.edge_beyond_overlap')).toBe(-9);
  });
});

describe('a pattern of the page', () => {
  const pattern = (entries: string, own = 'count: 38, pitch: 34 mm'): Derived =>
    joint(`${spot}, ${own}, pattern: { ${entries} }`);
  const cite = 'cite: { reference: own, at: p. 5 }';

  test.each([
    [`count: 38, pitch: 34 mm, ${cite}`, 'kept'],
    [`count: 37, ${cite}`, 'kept'],
    [`count: 38, method: resistance spot, ${cite}`, 'kept'],
    [`count: 39, ${cite}`, 'not kept'],
    ['count: 39', 'not kept'],
    [`count: 38, pitch: 33 mm, ${cite}`, 'not kept'],
    [`count: 38, method: plug weld, ${cite}`, 'not kept'],
    ['count: 38', 'uncited'],
    ['count: 38, cite: { reference: own }', 'uncited'],
    ['count: 38, cite: { reference: old, at: p. 5 }', 'uncited'],
    ['count: 38, cite: { reference: course, at: p. 5 }', 'uncited'],
    ['count: 38, cite: { reference: gone, at: p. 5 }', 'uncited'],
    [`pitch: 34 mm, ${cite}`, 'open'],
    [`edge: 6 mm, ${cite}`, 'none'],
  ])('{ %s } is %s', (entries, standing) => {
    expect(pattern(entries).value('joint.pattern')).toBe(standing);
  });

  test('what of it is open', () => {
    expect(pattern(`count: 38, ${cite}`, 'pitch: 34 mm').value('joint.pattern_text')).toMatch(
      /number of joints/u,
    );
    expect(pattern(`count: 38, pitch: 34 mm, ${cite}`, 'count: 38').value('joint.pattern_text')).toMatch(
      /distance/u,
    );
  });

  test('its own diameter and distances count only when it is cited, and only to that figure', () => {
    const own = 'nugget: 4.2 mm, edge: 6 mm, pitch: 18 mm';
    const paged = (given: string): readonly unknown[] => {
      const facts = pattern(given, own);
      return ['button', 'edge', 'pitch'].map((name) => facts.value(`joint.${name}_by_page`));
    };
    expect(paged(`nugget: 4.2 mm, edge: 6 mm, pitch: 18 mm, ${cite}`)).toEqual([true, true, true]);
    expect(paged(`nugget: 4.3 mm, edge: 6.5 mm, pitch: 19 mm, ${cite}`)).toEqual([false, false, false]);
    expect(paged('nugget: 4.2 mm, edge: 6 mm, pitch: 18 mm')).toEqual([false, false, false]);
  });
});
