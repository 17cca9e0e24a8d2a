import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nearestWords } from '../../src/plan/nearest-word.ts';

const operations = [
  'replace',
  'section',
  'butt weld',
  'heat',
  'straighten',
  'weld',
  'braze',
  'bond',
  'bake',
  'fill',
];
const synonyms = new Map([['splice', 'section']]);

describe('nearestWords', () => {
  it.each([
    ['sectoin', ['section']],
    ['Replace', ['replace']],
    ['butt-weld', ['butt weld']],
    ['strighten', ['straighten']],
    ['weeld', ['weld']],
  ])('takes %s for %j', (given, words) => {
    expect(nearestWords(given, operations)).toEqual(words);
  });

  it('counts two swapped letters once', () => {
    // `wedl` is one swap from `weld`; with a swap counted as two, `wed` would be nearer.
    expect(nearestWords('wedl', ['weld', 'wed'])).toEqual(['weld', 'wed']);
    expect(nearestWords('wedl', ['weld', 'bedlm'])).toEqual(['weld']);
  });

  it('lists words that tie in the order of the vocabulary', () => {
    expect(nearestWords('bone', ['zone', 'bond', 'tone', 'bonds'])).toEqual(['zone', 'bond', 'tone']);
    expect(nearestWords('bone', ['tone', 'bond', 'zone'])).toEqual(['tone', 'bond', 'zone']);
  });

  it('answers a word of the trade before any likeness of letters', () => {
    expect(nearestWords('splice', ['slice', ...operations], synonyms)).toEqual(['section']);
    expect(nearestWords('Splice', operations, synonyms)).toEqual(['section']);
    expect(nearestWords('splice', ['slice', ...operations])).toEqual(['slice']);
  });

  it('names nothing that is too unlike', () => {
    expect(nearestWords('paint', operations)).toEqual([]);
    expect(nearestWords('xy', ['ab'])).toEqual([]);
    expect(nearestWords('', operations)).toEqual([]);
    // Three of five letters agree: at the floor. Two of four: below.
    expect(nearestWords('abcxy', ['abcde'])).toEqual(['abcde']);
    expect(nearestWords('abxy', ['abcd'])).toEqual([]);
  });

  it('does not look at words longer than any word of a plan', () => {
    const sixty = 'x'.repeat(60);
    expect(nearestWords(sixty, [`${'x'.repeat(59)}y`])).toHaveLength(1);
    expect(nearestWords(`${sixty}x`, [sixty])).toEqual([]);
    expect(nearestWords(sixty, [`${sixty}x`])).toEqual([]);
  });

  it('finds every word again by itself, and only words that it was given', () => {
    fc.assert(
      fc.property(fc.constantFrom(...operations), fc.string({ maxLength: 12 }), (word, noise) => {
        expect(nearestWords(word, operations)).toEqual([word]);
        for (const near of nearestWords(noise, operations)) expect(operations).toContain(near);
      }),
    );
  });
});
