import { describe, expect, it } from 'vitest';
import { aluminiumKind } from '../../src/steel/aluminium-kind.ts';
import { describeDesignation } from '../../src/steel/answer/describe-designation.ts';
import { readDesignation } from '../../src/steel/reading/read-designation.ts';
import { settleMaterial } from '../../src/steel/settling/settle-material.ts';

const tell = (text: string): ReturnType<typeof describeDesignation> =>
  describeDesignation(text, { find: false });

describe('a grade that is none', () => {
  it.each([
    '?',
    '???',
    '-',
    '–',
    '.',
    'TBD',
    'n/a',
    'N.A.',
    'unknown',
    'not known',
    'to be confirmed',
    'none',
    '',
  ])('"%s" is asked for, and what stands beside it does not make it read', (grade) => {
    for (const beside of [{ class: 'mild' }, { tensileMpa: 440 }] as const) {
      const settled = settleMaterial({ grade, ...beside });
      expect([settled.unreadable, settled.mistyped]).toEqual([true, true]);
      expect(settled.ambiguity).toMatch(/names no grade|is empty/);
    }
  });

  it('a name that only nobody knows is no question left open', () => {
    const settled = settleMaterial({ grade: 'XQ-17', class: 'mild' });
    expect([settled.unreadable, settled.mistyped]).toEqual([true, undefined]);
  });
});

describe('a press-hardened grade with a coating that there is none of', () => {
  it.each(['22MnB5+A5150', '22MnB5+A150', '22MnB5 + A5150', '1.5528+ASI150'])(
    '%s keeps its class, in doubt',
    (text) => {
      expect(tell(text)).toMatchObject({ known: 'ambiguous', class: 'press-hardened' });
      expect(tell(text).reason).toContain('no coating');
      for (const word of ['mild', 'high-strength', 'aluminium'] as const)
        expect(settleMaterial({ grade: text, class: word }).class).not.toBe(word);
    },
  );

  it('a blank of two steels is still one, and behind a soft grade an odd sign is not passed over', () => {
    expect(tell('22MnB5+HC340LA').blank).toEqual(['22MnB5', 'HC340LA']);
    expect(tell('HC340LA+A5150').class).toBeNull();
    expect(settleMaterial({ grade: 'HC340LA+A5150', class: 'high-strength' }).class).toBeUndefined();
  });

  it('of unlike metals none stands for the other, whatever class is stated beside them', () => {
    for (const word of ['mild', 'aluminium', 'press-hardened'] as const) {
      expect(settleMaterial({ grade: 'DC04 + EN AW-6016-T4', class: word }).class).toBeUndefined();
    }
  });
});

// The register of EN 573-3 and the Aluminum Association, from memory: 1050, 1100, 1200, 2024, 3003, 8011 are in it, 1500 and 1470 are not.
describe('aluminium by its number', () => {
  it.each(['EN AW-1500', 'AA1500', 'EN AW-1500-O', 'AW-1470', 'EN AW-2200-T6'])('%s is no alloy', (text) => {
    expect(readDesignation(text).known).toBe(false);
  });

  it.each([
    'EN AW-1050A',
    'AA1100-O',
    'EN AW-1200-H14',
    'EN AW-2024-T3',
    'AW-3003',
    'EN AW-8011-O',
    'AA7003',
  ])('%s is one', (text) => {
    expect(tell(text)).toMatchObject({ known: 'known', class: 'aluminium' });
  });

  it('of a body series it is asked about where the number is not in the list', () => {
    expect(tell('EN AW-5980')).toMatchObject({ known: 'ambiguous', class: 'aluminium' });
  });
});

describe('kinds of aluminium', () => {
  it.each([
    ['EN AC-43500', 'casting'],
    ['AlSi10MnMg', 'casting'],
    ['EN AC-AlSi10MnMg-T7', 'casting'],
    ['AlSi7Mg0.3', 'casting'],
    ['AlSi9Cu3(Fe)', 'casting'],
    ['die-cast aluminium', 'casting'],
    ['EN AW-7075-T6', '7xxx'],
    ['AA7003', '7xxx'],
    ['6016-T4', '6xxx'],
    ['EN AW-6082-T6', '6xxx'],
    ['5754-H22', '5xxx'],
    ['EN AW-1050A', 'other wrought'],
    ['aluminium', undefined],
  ])('%s: %s', (grade, expected) => {
    expect(aluminiumKind(settleMaterial({ grade }).readings)).toBe(expected);
  });

  it.each(['GMT', 'glass mat thermoplastic'])('%s is a thermoplastic composite', (grade) => {
    expect(tell(grade)).toMatchObject({ class: 'composite', family: 'thermoplastic composite' });
  });
});

// ISO 18265 converts tensile strength and hardness; a yield has none.
it('a hardness is told of a tensile strength alone', () => {
  expect(tell('85 ksi yield').hardness).toBeNull();
  expect(tell('Re 600 MPa').hardness).toBeNull();
  expect(tell('85 ksi tensile').hardness).not.toBeNull();
});
