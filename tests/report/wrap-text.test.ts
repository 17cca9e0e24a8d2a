import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { wrapText } from '../../src/report/wrap-text.ts';

describe('wrapping', () => {
  test('a line may be exactly as wide as asked, not wider', () => {
    expect(wrapText('aaa bbb ccc', 7, '')).toEqual(['aaa bbb', 'ccc']);
    expect(wrapText('aaa bbb ccc', 6, '')).toEqual(['aaa', 'bbb', 'ccc']);
  });

  test('the indent counts, and the first line may have its own', () => {
    expect(wrapText('aaa bbb ccc', 9, '  ')).toEqual(['  aaa bbb', '  ccc']);
    expect(wrapText('aaa bbb ccc', 9, '     ', 'HOLD ')).toEqual(['HOLD aaa', '     bbb', '     ccc']);
  });

  test('a word that is wider than a line stands alone and whole', () => {
    expect(wrapText('see BRM-TRN-3120-0001 page 4', 10, '')).toEqual(['see', 'BRM-TRN-3120-0001', 'page 4']);
    expect(wrapText('BRM-TRN-3120', 5, '  ')).toEqual(['  BRM-TRN-3120']);
  });

  test('several blanks are one', () => {
    expect(wrapText('  a   b ', 10, '')).toEqual(['a b']);
  });

  test('a character of East Asian width takes two columns, a combining mark none', () => {
    expect(wrapText('車体 修理', 9, '')).toEqual(['車体 修理']);
    expect(wrapText('車体 修理', 8, '')).toEqual(['車体', '修理']);
    expect(wrapText('e\u0301e\u0301 e\u0301e\u0301', 5, '')).toEqual(['e\u0301e\u0301 e\u0301e\u0301']);
  });

  test('no word is lost, added or moved, and only a single word is ever too wide', () => {
    const word = fc.stringMatching(/^[a-zA-Z0-9.,°-]{1,14}$/u);
    fc.assert(
      fc.property(fc.array(word), fc.integer({ min: 4, max: 40 }), fc.nat(6), (words, columns, deep) => {
        const lines = wrapText(words.join(' '), columns, ' '.repeat(deep));
        expect(lines.join(' ').split(/ +/u).filter(Boolean)).toEqual(words);
        for (const line of lines) {
          if (line.length > columns) expect(line.trim()).not.toContain(' ');
        }
      }),
    );
  });
});
