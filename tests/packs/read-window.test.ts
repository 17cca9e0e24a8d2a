import { expect, test } from 'vitest';
import { FaultList } from '../../src/packs/reading/fault-list.ts';
import { readWindow } from '../../src/packs/reading/read-window.ts';

type Stated = Parameters<typeof readWindow>[0];

const stated: Stated = {
  coat: 'zinc',
  over: '1.0 mm',
  up_to: '0.063 in',
  force: { min: '2.8 kN', max: '3600 N' },
  current: { min: '10 kA', max: '13000 A' },
  time: { min: '200 ms', max: '0.26 s' },
  tip: '6 mm',
  source: { practice: 'common' },
};

function read(change: Partial<Stated>): readonly [ReturnType<typeof readWindow>, readonly string[]] {
  const list = new FaultList({ path: 'x.yaml', text: '' }, undefined);
  const window = readWindow({ ...stated, ...change }, '/windows/0', list);
  return [window, list.faults.map(({ sentence }) => sentence)];
}

test('is read in the units of the facts', () => {
  const [window, faults] = read({});
  expect(faults).toEqual([]);
  expect(window).toMatchObject({
    coat: 'zinc',
    overMm: 1,
    force: { min: 2.8, max: 3.6 },
    current: { min: 10, max: 13 },
    time: { min: 0.2, max: 0.26 },
    tipMm: 6,
  });
  expect(window?.upToMm).toBeCloseTo(1.6002, 9);
});

test.each<readonly [string, Partial<Stated>, RegExp]>([
  ['ends that cross', { force: { min: '4 kN', max: '3 kN' } }, /cross/u],
  ['a range of sheet that ends before it begins', { over: '2 mm' }, /ends before it begins/u],
  ['a number without its unit', { time: { min: 10, max: '13 ms' } }, /unit/u],
  ['a force in kA', { force: { min: '3 kA', max: '4 kN' } }, /force/u],
  ['a face that is no length', { tip: 'six' }, /length/u],
])('%s is refused', (_name, change, sentence) => {
  const [window, faults] = read(change);
  expect(window).toBeUndefined();
  expect(faults.join(' ')).toMatch(sentence);
});
