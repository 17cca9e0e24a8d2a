import { describe, expect, it } from 'vitest';
import { describeDesignation } from '../../src/steel/answer/describe-designation.ts';

const tell = (text: string) => describeDesignation(text, { find: false });

/** One sentence or two, no list, no code of the tool, no more of the text than helps. */
function isClear(reason: string | null): boolean {
  return (
    reason !== null && /^["A-Z].*[.]$/.test(reason) && reason.length < 260 && !reason.includes('undefined')
  );
}

describe('text that is no designation', () => {
  it.each([
    ['', 'empty'],
    ['\u00a0\t ', 'empty'],
    ['H'.repeat(10_000), '10000 characters'],
    ['HC340LA '.repeat(1250), 'characters'],
    ['HC340\u0000LA', 'U+0000'],
    ['HC340\u001b[31mLA', 'U+001B'],
    ['HC340\u200bLA', 'U+200B'],
    ['HC340\u202eLA', 'U+202E'],
    ['НC340LA', 'Cyrillic letter "Н"'],
    ['ΗC340LA', 'Greek letter "Η"'],
    ['22МnВ5', 'Cyrillic letter "М"'],
    ['HC34OLA', 'the letter O'],
    ['22MnBS', 'no grade'],
    ['l.4301', 'the letter L'],
    ['1.43O1', 'the letter O'],
    ['A653 SS Grade 5O', 'the letter O'],
    ['AZ9lD', 'the letter L'],
    ['SUS3O4', 'the letter O'],
    ['PP-GF3O', 'the letter O'],
    ['<b>HC340LA</b>', 'web-page text'],
    ['HC340LA<br/>', 'web-page text'],
    ['HC340LA&amp;', 'web-page text'],
    ['HC340LA; DC04', 'more than one grade'],
    ['HC340LA or HC420LA', 'more than one grade'],
    ['A653 CS, DC04', 'more than one grade'],
    ['AISI 304, AISI 301', 'more than one grade'],
    ['EN AW-6016-T4 / EN AW-5182-O', 'more than one grade'],
  ])('%j: %s', (text, words) => {
    const { known, class: of, reason } = tell(text);
    expect([known, of]).toEqual(['unknown', null]);
    expect(reason).toContain(words);
    expect(isClear(reason)).toBe(true);
  });

  it('is not full-width figures, nor the angle brackets of ISO 11469', () => {
    expect(tell('ＨＣＴ９８０Ｘ＋Ｚ１００')).toMatchObject({ known: 'known', class: 'ultra-high-strength' });
    expect(tell('>PP-GF30<')).toMatchObject({ known: 'known', class: 'composite' });
    expect(tell('>PA66-(GF25+MD15)<')).toMatchObject({ known: 'known', class: 'composite' });
  });
});
