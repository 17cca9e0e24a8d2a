import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { csvRows } from '../../.build/steel-table.ts';

// Relations that hold in every table of mechanical properties: a yield lies below its tensile strength, a minimum below
// its maximum, and the number in a name is the strength that EN 10027-1 (or the standard of the name) makes of it.
const data = (name: string): string =>
  readFileSync(new URL(`../../src/steel/data/${name}`, import.meta.url), 'utf8');
const grades = csvRows(data('grades.csv'));
const numbers = csvRows(data('steel-numbers.csv'));

function mpa(row: Readonly<Record<string, string>>, name: string): number | undefined {
  const cell = row[name];
  return cell === undefined || cell === '' ? undefined : Number(cell);
}

const id = (row: Readonly<Record<string, string>>): string =>
  `${row['designation']} | ${row['standard']} | ${row['as_delivered_or_hardened']}`;

describe('the grade table', () => {
  it('lists a grade once for each standard and state', () => {
    expect(new Set(grades.map(id)).size).toBe(grades.length);
    expect(grades.length).toBeGreaterThan(500);
  });

  it.each(grades.map((row) => [id(row), row] as const))(
    '%s is whole and its limits are in order',
    (_id, row) => {
      for (const field of ['designation', 'standard', 'standard_year', 'family', 'class', 'source']) {
        expect(row[field], field).not.toBe('');
      }
      expect(row['confidence']).toMatch(/^\[(?:seen|memory|practice)\]$/);
      const yieldMin = mpa(row, 'rp02_min_mpa') ?? 0;
      const yieldMax = mpa(row, 'rp02_max_mpa') ?? Infinity;
      const tensileMin = mpa(row, 'rm_min_mpa') ?? Infinity;
      const tensileMax = mpa(row, 'rm_max_mpa') ?? Infinity;
      const elongation = mpa(row, 'elongation_min_pct') ?? 10;
      expect(yieldMin).toBeLessThan(yieldMax);
      expect(yieldMin).toBeLessThanOrEqual(tensileMin);
      if (tensileMin < Infinity && tensileMax < Infinity) expect(tensileMin).toBeLessThan(tensileMax);
      if (yieldMax < Infinity) expect(yieldMax).toBeLessThanOrEqual(tensileMax);
      expect(elongation).toBeGreaterThanOrEqual(1);
      expect(elongation).toBeLessThanOrEqual(60);
    },
  );

  it('gives as much tensile strength or more to the higher yield within a standard, family, state and rolling', () => {
    // SAE J2745 lists DP 690T/550Y beside DP 780T/420Y; mild grades rank by formability.
    const groups = new Map<
      string,
      { readonly name: string; readonly low: number; readonly tensile: number }[]
    >();
    for (const row of grades) {
      const low = mpa(row, 'rp02_min_mpa');
      const tensile = mpa(row, 'rm_min_mpa');
      const {
        class: family = '',
        standard = '',
        designation: name = '',
        as_delivered_or_hardened: state,
      } = row;
      if (low === undefined || tensile === undefined || /mild|aluminium|stainless/.test(family)) continue;
      if (standard === 'SAE J2745' && family === 'dual_phase') continue;
      const key = [standard, family, state, /^(?:HD|HR|SEFH|SGH)/.test(name)].join('|');
      groups.set(key, [...(groups.get(key) ?? []), { name, low, tensile }]);
    }
    const falling: string[] = [];
    for (const list of groups.values()) {
      list.sort((a, b) => a.low - b.low || a.tensile - b.tensile);
      list.forEach((one, index) => {
        const before = list[index - 1];
        if (before !== undefined && one.tensile < before.tensile)
          falling.push(`${before.name} -> ${one.name}`);
      });
    }
    expect(groups.size).toBeGreaterThan(30);
    expect(falling).toEqual([]);
  });

  it('agrees with the numbers in the names', () => {
    const forms: readonly (readonly [RegExp, readonly string[]])[] = [
      [/^H[CX](\d{3})(?:LA|Y|B|P|I)D?$/, ['rp02_min_mpa']], // EN 10268, EN 10346: yield
      [/^S(\d{3})(?:MC|NC|GD)$/, ['rp02_min_mpa']], // EN 10149, EN 10346: yield
      [/^H[CD]T(\d{3,4})[XTCFM]/, ['rm_min_mpa']], // EN 10338: tensile
      [/^(?:CR|HR)(\d{3,4})Y(\d{3,4})T/, ['rp02_min_mpa', 'rm_min_mpa']], // VDA 239-100: yield, tensile
      [/^(?:CR|HR)(\d{3,4})\/(\d{3,4})[A-Z]/, ['rp02_min_mpa', 'rm_min_mpa']], // GB/T 20564: yield, tensile
      [/(\d{3,4})T\/(\d{3,4})Y$/, ['rm_min_mpa', 'rp02_min_mpa']], // SAE J2745: tensile, yield
      [/^(?:SPF[CH]|SAPH|SGC|J[SA][CH])(\d{3,4})/, ['rm_min_mpa']], // JIS, JFS: tensile
    ];
    let checked = 0;
    for (const row of grades) {
      for (const [form, fields] of forms) {
        const match = form.exec(row['designation'] ?? '');
        if (match === null) continue;
        fields.forEach((field, index) => {
          const stated = mpa(row, field);
          if (stated === undefined) return;
          checked++;
          expect(stated, id(row)).toBe(Number(match[index + 1]));
        });
      }
    }
    expect(checked).toBeGreaterThan(250);
  });
});

describe('the steel numbers', () => {
  it('have the form 1.xxxx (EN 10027-2), one name each, and a mark', () => {
    expect(new Set(numbers.map((row) => row['steel_number'])).size).toBe(numbers.length);
    for (const row of numbers) {
      expect(row['steel_number']).toMatch(/^1\.\d{4}$/);
      expect(row['confidence']).toMatch(/^\[(?:seen|memory|practice)\]$/);
      expect(row['source']).not.toBe('');
    }
  });
});
