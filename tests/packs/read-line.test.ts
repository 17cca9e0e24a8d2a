import { expect, test } from 'vitest';
import { FaultList } from '../../src/packs/reading/fault-list.ts';
import type { FactEntry } from '../../src/packs/fact-dictionary.ts';
import { readTest } from '../../src/packs/reading/read-line.ts';

const thickness: FactEntry = {
  kind: 'part',
  type: 'number',
  unit: 'mm',
  dimension: 'length',
  description: 'Thickness.',
};
const count: FactEntry = { kind: 'part', type: 'count', description: 'How many.' };

function told(stated: Parameters<typeof readTest>[0], fact: FactEntry): string[] {
  const list = new FaultList({ path: 'x.yaml', text: '' }, undefined);
  readTest(stated, fact, '/when/x', list);
  return list.faults.map(({ sentence }) => sentence);
}

test.each([['1.4 mm'], [['1.4 mm', '0.055 in']], [1.4]])(
  'a measured value is not asked for the exact number %s',
  (stated) => {
    expect(told(stated, thickness)[0]).toContain('asked by a range');
  },
);

test('a count is asked for its number, a measured value for a range that may be one point', () => {
  expect(told([1, 2], count)).toEqual([]);
  expect(told({ min: '1.4 mm', max: '1.4 mm' }, thickness)).toEqual([]);
});
