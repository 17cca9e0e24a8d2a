import { describe, expect, test } from 'vitest';
import { surveyPapers } from '../../src/facts/papers/survey-papers.ts';
import { factsOf, surveyOf, tarn } from './facts-of.ts';

/** What rests on each document, by its id, with `?` where the place in it is not stated. */
const papers = (text: string): readonly string[] =>
  [...surveyPapers(surveyOf(`${tarn}\n${text}`))].flatMap(([{ reference }, list]) =>
    list.map(({ what, placeStated }) => `${reference.id ?? ''}: ${what}${placeStated ? '' : ' ?'}`),
  );

describe('what rests on a document beside operations', () => {
  test.each<readonly [string, string]>([
    ['make_safe: { high_voltage: { isolation: { cite: CITE } } }', 'the high-voltage isolation'],
    ['make_safe: { restraints: { wait_cite: CITE } }', 'the wait of the restraints'],
    ['make_safe: { restraints: { replacement_list: CITE } }', 'the list of restraint parts to replace'],
    ['make_safe: { fire: { fluids: [{ item: fuel line }], cite: CITE } }', 'fuel and gas beside hot work'],
    ['finish: { bake: { battery_limit: { cite: CITE } } }', 'the battery’s limit in the bake'],
    ['measurements: { tolerance_cite: CITE }', 'the tolerance of the measuring'],
    ['parts: [{ name: Door, kind: door, cosmetic_by: CITE }]', 'that Door carries no crash load'],
    ['parts: [{ name: Rail, damage: { tolerable_by: CITE } }]', 'that the damage of Rail may stay'],
    ['parts: [{ name: Rail, kind: front rail, donor: { cite: CITE } }]', 'that Rail may be second-hand'],
    [
      'parts: [{ name: Rail, operations: [{ do: heat, limit: { cite: CITE } }] }]',
      'the limit of the heat on Rail',
    ],
    [
      'parts: [{ name: Rail, operations: [{ do: heat, near: [{}, { cite: CITE }] }] }]',
      'what stays beside the work on Rail',
    ],
    [
      'parts: [{ name: Rail, kind: front rail, operations: [{ do: weld, joints: [{ cite: CITE }] }] }]',
      'a joint of Rail',
    ],
  ])('%s', (text, what) => {
    expect(papers(text.replace('CITE', '{ reference: own, at: p. 1 }'))).toEqual([`own: ${what}`]);
    expect(papers(text.replace('CITE', '{ reference: own }'))).toEqual([`own: ${what} ?`]);
    // What does not cover this vehicle counts for nothing, and is told where it stands.
    expect(papers(text.replace('CITE', '{ reference: old, at: p. 1 }'))).toEqual([]);
    expect(papers(text.replace('CITE', '{ reference: course, at: p. 1 }'))).toEqual([]);
    // A further text that only explains takes nothing away.
    expect(
      papers(
        text.replace('CITE', '[{ reference: own }, { reference: own, at: p. 1 }, { reference: course }]'),
      ),
    ).toEqual([`own: ${what}`]);
  });

  test('what a part that may carry load is made of', () => {
    const made = (part: string): readonly string[] =>
      papers(`parts: [{ name: Rail, ${part}, grade_from: { reference: own } }]`);
    expect(made('kind: front rail')).toEqual(['own: what Rail is made of ?']);
    expect(made('kind: bracket')).toEqual(['own: what Rail is made of ?']);
    expect(made('kind: door skin, structural: false')).toEqual([]);
  });

  test('a citation that carries nothing makes no document count', () => {
    const idle = ['make_safe: { low_voltage: { cite: C } }', 'make_safe: { fire: { cite: C } }'];
    for (const text of idle) expect(papers(text.replace('C', '{ reference: own }'))).toEqual([]);
  });
});

test('such a document is held to the rules of what is rested on', () => {
  const derived = (at: string): ReturnType<typeof factsOf> =>
    factsOf(`${tarn}\nmake_safe: { restraints: { wait_cite: { reference: own${at} } } }`);
  const place = '/references/0';
  expect(derived('').value('reference.rested_on', place)).toBe(true);
  expect(derived('').value('reference.unplaced', place)).toBe('the wait of the restraints');
  expect(derived('').fact('reference.unplaced', place)).toMatchObject({
    at: '/make_safe/restraints/wait_cite',
  });
  expect(derived(', at: p. 2').fact('reference.unplaced', place).known).toBe(false);
  expect(derived('').value('reference.rested_on', '/references/1')).toBe(false);
});

test('of many things without a place the first three are named', () => {
  const parts = ['A', 'B', 'C', 'D', 'E'].map(
    (name) => `{ name: ${name}, kind: front rail, grade_from: { reference: own } }`,
  );
  expect(factsOf(`${tarn}\nparts: [${parts.join(', ')}]`).value('reference.unplaced')).toBe(
    'what A is made of; what B is made of; what C is made of; and 2 more',
  );
});
