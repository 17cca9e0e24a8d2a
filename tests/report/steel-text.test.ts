import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { SteelAnswer } from '../../src/report/steel-report.ts';
import { steelText } from '../../src/report/steel-text.ts';
import { textWidth } from '../../src/report/text-width.ts';
import { describeDesignation } from '../../src/steel/describe-designation.ts';

const answer = (text: string): SteelAnswer => ({
  ...describeDesignation(text, { find: true }),
  rules: [{ rule: 'r', severity: 'stop', sentence: 'The part cannot be heated.', maker_may_permit: true }],
});
const shown = (...texts: readonly string[]): string =>
  steelText({ answers: texts.map(answer), pack: 'general 1.0.0' }, { colour: false, columns: 80 });

describe('designations as text', () => {
  test('one stands with its facts below it', () => {
    const text = shown('22MnB5+AS150');
    expect(text).toContain('22MnB5+AS150: known');
    expect(text).toMatch(/^ {2}Class {5}press-hardened$/mu);
    expect(text).toMatch(/^ {2}Tensile {3}1300 to 1650 MPa$/mu);
    expect(text).toContain('What pack general 1.0.0 says of press-hardened parts');
    expect(text).toMatch(/^ {4}STOP {2}The part cannot be heated\. A statement of the maker/mu);
  });

  test('several stand side by side, three in a row, in the order given', () => {
    const heads = shown('DC04', 'HC340LA', 'HCT980X', '22MnB5')
      .split('\n')
      .filter((line) => /: known/u.test(line));
    expect(heads).toHaveLength(2);
    expect(heads[0]).toMatch(/DC04: known\s+HC340LA: known\s+HCT980X: known/u);
    expect(heads[1]).toContain('22MnB5: known');
  });

  test('what rules say of a class stands there once', () => {
    expect(shown('DC04', 'DC03').split('says of mild parts')).toHaveLength(2);
  });

  test('one that is not known says why, and what it resembles', () => {
    const text = shown('HCT98X');
    expect(text).toContain('HCT98X: unknown');
    expect(text).toContain('There is no grade "HCT98X" in the table.');
    expect(text).toContain('Nearest known: HCT980X');
    expect(text).not.toContain('What pack');
    expect(shown('')).toContain('(nothing): unknown');
  });

  test('an ambiguous one lists its readings', () => {
    expect(shown('CR4').split('May be: CR4 by').length - 1).toBe(3);
  });

  test('whatever is given, no line is wider than 80 columns and no control character gets through', () => {
    const texts = fc.array(
      fc.oneof(
        fc.constantFrom('22MnB5+AS150', 'HC340LA', 'UHSS', '600', '1.5 GPa', 'DC04 + HC260LA', 'EN AW-6016'),
        fc.string({ unit: 'grapheme', maxLength: 150 }),
        fc.string({ unit: 'binary', maxLength: 60 }),
      ),
      { minLength: 1, maxLength: 7 },
    );
    fc.assert(
      fc.property(texts, (given) => {
        for (const line of shown(...given).split('\n')) {
          // A word that is wider than the line stands alone below the sheet, so that it stays searchable.
          const running = / {4}\S+: |^ {2}About|^ {6}/u.test(line);
          if (!running || line.trim().includes(' '))
            expect([line, textWidth(line) <= 80 || running]).toEqual([line, true]);
          // eslint-disable-next-line no-control-regex -- these are what must not get through
          expect(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202a-\u202e]/u.test(line)).toBe(false);
        }
      }),
      { numRuns: 300 },
    );
  });
});
