import { expect, test } from 'vitest';
import { checkCases } from '../../src/judge/check-cases.ts';
import type { Cases, Pack } from '../../src/packs/pack.ts';
import { rule } from './invented-pack.ts';

function failed(cases: Partial<Cases>, unless: Parameters<typeof rule>[0]['unless'] = []): readonly string[] {
  const pack: Pack = {
    name: 'invented',
    version: '1.0.0',
    released: false,
    title: 'Invented',
    format: 1,
    facts: 1,
    rules: [
      rule({
        id: 'big-red',
        judges: 'part',
        when: [
          { fact: 'box.colour', test: { anyOf: ['red'] } },
          { fact: 'box.weight', test: { range: { above: 10 } } },
        ],
        unless,
        cases: { finds: [], passes: [], asks: [], ...cases },
      }),
    ],
    limits: [],
    allowances: [],
    reaches: [],
    provisions: [],
    digest: 'sha256:0',
  };
  return checkCases(pack).map(({ list, index, sentence }) => `${list} ${String(index)} ${sentence}`);
}

test('cases that come out as claimed say nothing', () => {
  expect(
    failed({
      finds: [{ 'box.colour': 'red', 'box.weight': 10.1 }],
      passes: [{ 'box.colour': 'red', 'box.weight': 10 }, { 'box.colour': 'green' }],
      asks: [{ 'box.colour': 'red' }, {}],
    }),
  ).toEqual([]);
});

test('a find that is not found, a pass that is, and the place of each', () => {
  expect(
    failed({
      finds: [
        { 'box.colour': 'red', 'box.weight': 11 },
        { 'box.colour': 'green', 'box.weight': 11 },
      ],
      passes: [{ 'box.colour': 'red', 'box.weight': 11 }],
    }),
  ).toEqual([
    'finds 1 The rule `big-red` does not prove itself: case 2 of `finds` comes out as passed.',
    'passes 0 The rule `big-red` does not prove itself: case 1 of `passes` comes out as found.',
  ]);
});

test('a near miss that leaves a fact out is no near miss: the unknown is named', () => {
  expect(failed({ passes: [{ 'box.colour': 'red' }] })).toEqual([
    'passes 0 The rule `big-red` does not prove itself: case 1 of `passes` comes out as unknown (box.weight).',
  ]);
});

test('a near miss may be lifted, a find may not', () => {
  const lifted = { 'box.colour': 'red', 'box.weight': 11, 'provision.permits': true } as const;
  const unless = [[{ fact: 'provision.permits', test: { anyOf: [true] } }]];
  expect(failed({ passes: [lifted] }, unless)).toEqual([]);
  expect(failed({ finds: [lifted] }, unless)).toHaveLength(1);
});

test('a case for the unknown must hang on one', () => {
  expect(failed({ asks: [{ 'box.colour': 'green' }] })).toHaveLength(1);
  expect(failed({ asks: [{ 'box.colour': 'red', 'box.weight': 11 }] })).toHaveLength(1);
});

test('a name that every object bears is no value of a case', () => {
  const [sentence] = failed({ finds: [Object.create({ 'box.colour': 'red', 'box.weight': 11 })] });
  expect(sentence).toContain('comes out as unknown (box.colour, box.weight)');
});
