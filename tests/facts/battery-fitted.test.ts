import { describe, expect, test } from 'vitest';
import { factsOf } from './facts-of.ts';

const plan = (fitting: string, work: string, finish = ''): string => `format: 1
vehicle: {}
parts:
  - { id: pack, kind: traction battery, operations: [{ ${fitting} }] }
  - { id: sill, name: Sill, kind: sill, operations: [{ do: weld, ${work}, near: [{ item: traction battery, treatment: removed }] }] }
${finish}`;
const at = '/parts/0/operations/0';

describe('what the traction battery is fitted before, though it was to be out for it', () => {
  test.each([
    ['at an earlier step', 'do: remove and refit, step: 1, refit_step: 3', 'step: 5', 'the work on Sill'],
    ['at the same step', 'do: remove and refit, step: 1, refit_step: 5', 'step: 5', 'the work on Sill'],
    ['on an earlier day', 'do: remove and refit, done: 2026-10-01', 'done: 2026-10-02', 'the work on Sill'],
    ['a new one, at an earlier step', 'do: replace, step: 4', 'step: 5', 'the work on Sill'],
    ['at a later step', 'do: remove and refit, step: 1, refit_step: 6', 'step: 5', undefined],
    ['a new one, at a later step', 'do: replace, step: 6', 'step: 5', undefined],
    ['on the same day', 'do: remove and refit, done: 2026-10-02', 'done: 2026-10-02', undefined],
    ['nobody says when', 'do: remove and refit', 'step: 5', undefined],
    [
      'it is only looked at',
      'do: leave, refit_step: 1, done: 2026-10-01',
      'step: 5, done: 2026-10-02',
      undefined,
    ],
  ])('%s', (_name, fitting, work, expected) => {
    const fact = factsOf(plan(fitting, work)).fact('operation.battery_fitted_before', at);
    expect(fact.known ? fact.value : undefined).toBe(expected);
  });

  test.each([
    ['removed', '2026-10-03', true],
    ['removed', '2026-10-02', false],
    ['in the vehicle', '2026-10-03', false],
  ])('baked with it %s on %s', (where, day, expected) => {
    const finish = `finish: { bake: { done: ${day}, traction_battery: ${where} } }`;
    const text = plan('do: remove and refit, done: 2026-10-02', 'done: 2026-10-01', finish);
    const fact = factsOf(text).fact('operation.battery_back_before_bake', at);
    expect(fact.known ? fact.value : undefined).toBe(expected);
  });
});
