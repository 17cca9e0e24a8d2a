import { describe, expect, test } from 'vitest';
import { factsOf } from './facts-of.ts';

const work =
  'operations: [{ do: replace, done: 2026-10-09T13:00, joints: [{ to: floor, method: resistance spot, sheets: [sill, floor] }] }]';
const both = 'primer: epoxy, wax: through the holes';

function inside(cavities: string, part = 0): readonly unknown[] {
  const derived = factsOf(
    `parts: [{ id: sill, kind: sill, ${work} }, { id: floor, kind: floor }, { id: tower, kind: strut tower }]\nfinish: { cavities: [${cavities}] }`,
  );
  const at = `/parts/${String(part)}`;
  return ['protected', 'done', 'before_heat'].map((word) => derived.value(`part.inside_${word}`, at));
}

describe('the inside of a hollow member', () => {
  test.each([
    ['planned', `planned: true, ${both}`, [true, false, false]],
    ['done', `done: 2026-10-10, ${both}`, [true, true, false]],
    ['not planned', `planned: false, ${both}`, [false, false, false]],
    ['done though not planned', `planned: false, done: 2026-10-10, ${both}`, [true, true, false]],
    ['no wax', 'primer: epoxy', [false, false, false]],
    ['the word none', 'primer: none, wax: None needed', [false, false, false]],
    ['not required', 'primer: epoxy, wax: not required', [false, false, false]],
    ['a product that begins like a no', 'primer: epoxy, wax: No-drip wax no. 4', [true, false, false]],
    ['done before the weld', `done: 2026-10-08, ${both}`, [true, true, true]],
    ['done earlier on the day of the weld', `done: 2026-10-09T09:00, ${both}`, [true, true, true]],
    ['done on the day of the weld, no time', `done: 2026-10-09, ${both}`, [true, true, false]],
  ])('%s', (_name, cavity, expected) => {
    expect(inside(`{ part: sill, ${cavity} }`)).toEqual(expected);
  });

  test('the weld of the next part reaches it, that of another does not', () => {
    expect(inside(`{ part: floor, done: 2026-10-08, ${both} }`, 1)).toEqual([true, true, true]);
    expect(inside(`{ part: tower, done: 2026-10-08, ${both} }`, 2)).toEqual([true, true, false]);
  });

  test('of two cavities both must be done, and one after the heat mends one before it', () => {
    const early = `{ part: sill, done: 2026-10-08, ${both} }`;
    expect(inside(`${early}, { part: sill, planned: true, ${both} }`)).toEqual([true, false, true]);
    expect(inside(`${early}, { part: sill, done: 2026-10-10, ${both} }`)).toEqual([true, true, false]);
  });
});
