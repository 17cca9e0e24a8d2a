import { expect, test } from 'vitest';
import { fillMessage } from '../../src/judge/fill-message.ts';
import { readTemplate } from '../../src/packs/message-template.ts';

function filled(template: string, texts: Readonly<Record<string, string>>): string {
  const reading = readTemplate(template);
  if (!reading.ok) throw new Error(reading.sentence);
  return fillMessage(reading.segments, new Map(Object.entries(texts)));
}

test.each([
  ['out of date for {n} days when used', '1', 'out of date for 1 day when used'],
  ['out of date for {n} days when used', '2', 'out of date for 2 days when used'],
  ['out of date for {n} days when used', '11', 'out of date for 11 days when used'],
  ['on {n} zero points; three', '1', 'on 1 zero point; three'],
  ['{n} joints[ to {to}]', '1', '1 joint to Sill'],
  ['{n} times as many', '1', '1 times as many'],
  ['a list of {n} daysheets', '1', 'a list of 1 daysheets'],
])('%s with %s', (template, n, text) => {
  expect(filled(template, { n, to: 'Sill' })).toBe(text);
});

test('what counts can stand in a stretch of its own', () => {
  expect(filled('kept[ for {n} years]', { n: '1' })).toBe('kept for 1 year');
  expect(filled('kept[ for {n} years]', {})).toBe('kept');
});

test.each([
  ['600 s (10 min)', '10 min'],
  ['7200 s (2 h)', '2 h'],
  ['60000 mm (60 m)', '60 m'],
  // The larger unit is rounded here, and alone it would say something else.
  ['610 s (10 min)', '610 s (10 min)'],
  ['60010 mm (60 m)', '60010 mm (60 m)'],
  ['45 s', '45 s'],
])('in a sentence %s is %s', (text, said) => {
  expect(filled('wait {n}', { n: text })).toBe(`wait ${said}`);
});
