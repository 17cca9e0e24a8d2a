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

// Where the schema says that a text names something, a refusal leaves it out; where "none" is an answer it stays. Common practice, no source.
test.each(['none', 'None needed', 'not done', 'no access', 'skipped', 'to follow'])(
  '"%s" names no page, no product and no person',
  (text) => {
    const plan = {
      references: [{ id: 'a', revision: text }],
      finish: { primer: { product: text } },
      sign_off: { by: { name: text } },
      damage: { indirect: { found: 'none' } },
    };
    dropLeftBlank(plan);
    expect(plan).toEqual({
      references: [{ id: 'a' }],
      finish: { primer: {} },
      sign_off: { by: {} },
      damage: { indirect: { found: 'none' } },
    });
  },
);

test('"No. 3" and a name that begins like a refusal stay', () => {
  const plan = { references: [{ id: 'a', revision: 'No. 3' }], sign_off: { by: { name: 'Noel Lateron' } } };
  const before = structuredClone(plan);
  dropLeftBlank(plan);
  expect(plan).toEqual(before);
});
