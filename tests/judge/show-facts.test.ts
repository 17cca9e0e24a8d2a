import { describe, expect, test } from 'vitest';
import { showFacts } from '../../src/judge/show-facts.ts';
import type { Shown } from '../../src/judge/show-facts.ts';

function shown(...facts: readonly Shown[]): readonly string[] {
  return [...showFacts(facts).values()];
}

describe('numbers are never rounded so far that a sentence contradicts itself', () => {
  test('a value just over its limit does not read as the limit', () => {
    const [text] = shown({ name: 'a', value: 650.0004, unit: '°C', bounds: { above: 650 } });
    expect(Number.parseFloat(text ?? '')).toBeGreaterThan(650);
  });

  test('two numbers that differ do not read the same', () => {
    const [one, two] = shown({ name: 'a', value: 250.04, unit: '°C' }, { name: 'b', value: 250, unit: '°C' });
    expect(one).not.toBe(two);
  });

  test('the same number twice reads the same', () => {
    const [one, two] = shown(
      { name: 'a', value: 250.1, unit: '°C' },
      { name: 'b', value: 250.1, unit: '°C' },
    );
    expect(one).toBe(two);
  });

  test('a plain number is not blown up', () => {
    expect(shown({ name: 'a', value: 651, unit: '°C', bounds: { above: 650 } })).toEqual(['651 °C']);
    expect(shown({ name: 'a', value: 3 })).toEqual(['3']);
  });
});

test.each([
  [90, '90 s'],
  [119, '119 s'],
  [300, '300 s (5 min)'],
  [2700, '2700 s (45 min)'],
  [33_300, '33300 s (9.3 h)'],
])('a time of %d s reads %s', (value, text) => {
  expect(shown({ name: 'a', value, unit: 's' })).toEqual([text]);
});

test.each([
  [2400, '2400 mm'],
  [3000, '3000 mm (3 m)'],
])('a distance of %d mm reads %s', (value, text) => {
  expect(shown({ name: 'a', value, unit: 'mm' })).toEqual([text]);
});

test.each<readonly [Shown['value'], string]>([
  [true, 'yes'],
  [false, 'no'],
  [[], 'none'],
  [['mild'], 'mild'],
  [['mild', 'stainless', 'aluminium'], 'mild, stainless and aluminium'],
  ['press-hardened', 'press-hardened'],
])('%j reads %s', (value, text) => {
  expect(shown({ name: 'a', value })).toEqual([text]);
});
