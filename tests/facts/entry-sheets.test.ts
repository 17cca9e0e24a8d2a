import { describe, expect, test } from 'vitest';
import { factsOf } from './facts-of.ts';

/** Every entry that cannot be read as it stands: fault, place as pointer, place in words. */
function entries(text: string): readonly (readonly unknown[])[] {
  return factsOf(text)
    .all('entry')
    .map(({ at, facts }) => {
      const value = (name: string): unknown => {
        const fact = facts[name];
        return fact?.known === true && fact.value;
      };
      return [value('entry.fault'), at, value('entry.path')];
    });
}

test('a plan without a slip has none', () => {
  expect(entries('parts: [{ id: a, under: b }, { id: b }]')).toEqual([]);
});

test('what the form of the plan refuses, in the words of the plan', () => {
  expect(
    entries(
      'parts: [{ id: ring-l, operations: [{ do: leave }, { do: splice }] }, { name: Sill, thickness: 1.4 }]\njob: { opend: x }',
    ),
  ).toEqual([
    ['unknown key', '/job/opend', 'job › opend'],
    ['unknown word', '/parts/0/operations/1/do', 'parts › ring-l › operations › 2 › do'],
    ['unreadable quantity', '/parts/1/thickness', 'parts › Sill › thickness'],
  ]);
});

describe('ids', () => {
  test('a second bearer', () => {
    expect(
      entries('parts: [{ id: a }, { id: b }, { id: a }, {}, {}]\nreferences: [{ id: a }, { id: a }]'),
    ).toEqual([
      ['repeated id', '/parts/2/id', 'parts › a › id'],
      ['repeated id', '/references/1/id', 'references › a › id'],
    ]);
  });

  test.each([
    ['parts: [{ under: x }]', '/parts/0/under'],
    ['parts: [{ under: [x] }]', '/parts/0/under/0'],
    ['parts: [{ over: [a, x] }, { id: a }]', '/parts/0/over/1'],
    ['parts: [{ joined_to: [x] }]', '/parts/0/joined_to/0'],
    ['parts: [{ grade_from: { reference: x } }]', '/parts/0/grade_from/reference'],
    ['parts: [{ operations: [{ near: [{ part: x }] }] }]', '/parts/0/operations/0/near/0/part'],
    ['parts: [{ operations: [{ joints: [{ to: x }] }] }]', '/parts/0/operations/0/joints/0/to'],
    ['parts: [{ operations: [{ joints: [{ sheets: [x] }] }] }]', '/parts/0/operations/0/joints/0/sheets/0'],
    ['make_safe: { restraints: { units: [{ at: x }] } }', '/make_safe/restraints/units/0/at'],
    ['make_safe: { lifting: { points: [x] } }', '/make_safe/lifting/points/0'],
    ['damage: { direct: [x] }', '/damage/direct/0'],
    ['finish: { cavities: [{ part: x }] }', '/finish/cavities/0/part'],
    [
      'parts: [{ operations: [{ joints: [{ cite: { reference: x } }] }] }]',
      '/parts/0/operations/0/joints/0/cite/reference',
    ],
    [
      'parts: [{ operations: [{ limit: { cite: { reference: x } } }] }]',
      '/parts/0/operations/0/limit/cite/reference',
    ],
    [
      'make_safe: { restraints: { wait_cite: { reference: x } } }',
      '/make_safe/restraints/wait_cite/reference',
    ],
    ['measurements: { points: [{ on: x }] }', '/measurements/points/0/on'],
    ['measurements: { zero_points: [x], points: [{ name: A }] }', '/measurements/zero_points/0'],
  ])('%s points nowhere', (text, at) => {
    expect(entries(text).map(([fault, pointer]) => [fault, pointer])).toEqual([['points nowhere', at]]);
  });

  test('a part is no reference and a reference no part', () => {
    expect(entries('parts: [{ id: a, under: m }]\nreferences: [{ id: m }]')).toHaveLength(1);
    expect(entries('parts: [{ id: a, grade_from: { reference: a } }]')).toHaveLength(1);
  });

  test('the nearest id is named', () => {
    const [sheet] = factsOf('parts: [{ id: ring-left }, { under: ring-lft }]').all('entry');
    expect(sheet?.facts['entry.sentence']).toMatchObject({
      value: 'No part of this plan has the id `ring-lft`. Nearest known: `ring-left`.',
    });
  });
});
