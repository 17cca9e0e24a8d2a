import { expect, test } from 'vitest';
import { calledWith } from '../../src/facts/called-with.ts';

test.each([
  ['glass', 'glass', 'glass'],
  ['Structural adhesive', 'structural adhesive', 'Structural adhesive'],
  ['foam at Pillar', 'foam', 'foam at Pillar'],
  ['Pillar', 'plain steel', 'Pillar (plain steel)'],
  ['Fibreglass flap', 'glass', 'Fibreglass flap (glass)'],
  ['Windscreen', 'glass', 'Windscreen (glass)'],
])('%s that is %s is called %s', (name, victim, called) => {
  expect(calledWith(name, victim)).toBe(called);
});
