import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { csvRows, steelTableSource } from '../../.build/steel-table.ts';
import { describeDesignation } from '../../src/steel/answer/describe-designation.ts';
import { gradeTable } from '../../src/steel/table/grade-table.ts';
import { steelFamily } from '../../src/steel/steel-family.ts';

const file = (path: string): string => readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8');
const gradesCsv = file('src/steel/data/grades.csv');
const numbersCsv = file('src/steel/data/steel-numbers.csv');

describe('the packed steel table', () => {
  it('is the one that the tables give', () => {
    expect(file('src/generated/steel-table.ts')).toBe(steelTableSource(gradesCsv, numbersCsv));
  });

  it('holds every grade of the tables and a class for its family', () => {
    const packed = new Set([...gradeTable().keys()].flatMap((key) => gradeTable().rowsOf(key) ?? []));
    expect(packed.size).toBe(csvRows(gradesCsv).length);
    for (const row of packed) expect(steelFamily(row.familyKey).floor).not.toBe('');
  });

  it('resolves every steel number whose name has a grade row', () => {
    const named = new Set(csvRows(gradesCsv).map((row) => row['designation']));
    for (const row of csvRows(numbersCsv)) {
      const { steel_number: number = '', designation: name = '' } = row;
      if (named.has(name))
        expect(gradeTable().numbered(number) !== undefined, `${number} ${name}`).toBe(true);
      else expect(named.has(number), `${number} ${name}`).toBe(true);
    }
  });

  it('gives a number no surer than its own mark and that of its name', () => {
    const order = ['[seen]', '[memory]', '[practice]'];
    const ofName = new Map(
      csvRows(gradesCsv).map((row) => [row['designation'] ?? '', row['confidence'] ?? '']),
    );
    let worse = 0;
    for (const { steel_number: number = '', designation: name = '', confidence = '' } of csvRows(
      numbersCsv,
    )) {
      if (!(gradeTable().numbered(number) !== undefined)) continue;
      const { mark } = describeDesignation(number, { find: false });
      expect([number, order.indexOf(`[${mark}]`) >= order.indexOf(confidence)]).toEqual([number, true]);
      expect([number, order.indexOf(`[${mark}]`) >= order.indexOf(ofName.get(name) ?? '')]).toEqual([
        number,
        true,
      ]);
      if (confidence === '[memory]' && ofName.get(name) === '[seen]') worse++;
    }
    expect(worse).toBeGreaterThan(5);
  });

  it('refuses a cell that would break the packing', () => {
    const head = gradesCsv.slice(0, gradesCsv.indexOf('\n') + 1);
    expect(() =>
      steelTableSource(
        `${head}A|B,EN 1,2000,f,mild,,,,,,as_delivered,,[seen],s\n`,
        'steel_number,designation\n',
      ),
    ).toThrow();
    expect(() => csvRows('a,b\n1,2,3\n')).toThrow('row 2');
  });
});
