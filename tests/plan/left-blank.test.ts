import { expect, test } from 'vitest';
import { dropLeftBlank } from '../../src/plan/left-blank.ts';

// What people put where they have nothing to write: common practice, and one text for each beginning that is looked for.
test.each([
  ...[
    '-',
    '?',
    ' … ',
    'n/a',
    'N.A.',
    'nn',
    'TBD',
    'To do',
    'Unknown',
    'not stated',
    'still to be named',
    'Yet to be found',
  ],
  ...[
    'to follow',
    'none yet',
    'not yet known',
    'Nobody',
    'no one',
    'Somebody',
    'anyone',
    'Whoever is there',
    'pending',
    'later.',
  ],
])('"%s" says nothing and is taken out', (text) => {
  const plan = { damage: { impact: text } };
  dropLeftBlank(plan);
  expect(plan).toEqual({ damage: {} });
});

test.each([
  '40 mm',
  'Left side',
  'Not on the sill',
  'later model',
  'b-pillar',
  '12 V',
  'Zinc flake',
  'None found',
])('"%s" says something and stays', (text) => {
  const plan = { damage: { impact: text } };
  dropLeftBlank(plan);
  expect(plan).toEqual({ damage: { impact: text } });
});
