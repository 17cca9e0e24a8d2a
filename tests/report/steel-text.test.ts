import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { SteelAnswer, SteelRules } from '../../src/report/steel/steel-report.ts';
import { steelText } from '../../src/report/steel/steel-text.ts';
import { textWidth } from '../../src/report/text-width.ts';
import { describeDesignation } from '../../src/steel/answer/describe-designation.ts';

const answer = (text: string): SteelAnswer => ({
  ...describeDesignation(text, { find: true }),
  rules: ['r'],
});
const rulesOf = (answers: readonly SteelAnswer[]): readonly SteelRules[] =>
  [...new Set(answers.flatMap((one) => one.class ?? []))].map((one) => ({
    of: `${one} parts`,
    rules: [{ rule: 'r', severity: 'stop', sentence: 'The part cannot be heated.', maker_may_permit: true }],
  }));
const shown = (...texts: readonly string[]): string => {
  const answers = texts.map(answer);
  return steelText(
    { answers, rules: rulesOf(answers), pack: 'general 1.0.0' },
    { colour: false, columns: 80 },
  );
};

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

  test('what is usual but not promised, and a minimum on request, say so', () => {
    expect(shown('6111-T4 baked')).toMatch(/^ {2}Typical {3}yield 210 MPa, tensile 285 MPa; not promised$/mu);
    expect(shown('SPCC')).toContain('at least 270 MPa, only if ordered with T');
  });

  test('an ambiguous one lists its readings', () => {
    expect(shown('CR4').split('May be: CR4 by').length - 1).toBe(3);
  });

  test('whatever is given, no line is wider than 80 columns and no control character gets through', () => {
    const texts = fc.array(
      fc.oneof(
        fc.constantFrom('22MnB5+AS150', 'HC340LA', 'UHSS', '600', '1.5 GPa', 'DC04 + HC260LA', 'EN AW-6016'),
        fc.string({ unit: 'grapheme', maxLength: 150 }),
        fc.integer({ min: 60, max: 12_000 }).map((length) => 'X'.repeat(length)),
        fc.string({ unit: 'binary', maxLength: 60 }),
      ),
      { minLength: 1, maxLength: 7 },
    );
    fc.assert(
      fc.property(texts, (given) => {
        for (const line of shown(...given).split('\n')) {
          expect([line, textWidth(line) <= 80]).toEqual([line, true]);
          // eslint-disable-next-line no-control-regex -- these are what must not get through
          expect(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202a-\u202e]/u.test(line)).toBe(false);
        }
      }),
      { numRuns: 300 },
    );
  });
});
