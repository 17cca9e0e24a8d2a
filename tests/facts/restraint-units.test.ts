import { describe, expect, test } from 'vitest';
import { factsOf } from './facts-of.ts';

/** Whether an undeployed unit stays fitted at the part `p` (a b-pillar, where units usually sit). */
function stays(units: string | undefined, part = 'id: p, kind: b-pillar'): unknown {
  const safe = units === undefined ? '' : `make_safe: { restraints: { units: [${units}] } }\n`;
  const value = factsOf(`${safe}parts: [{ ${part} }]`).value('part.holds_undeployed_unit');
  return typeof value === 'string' ? 'open' : value;
}

describe('an undeployed unit at the part', () => {
  test.each([
    ['no list of units', undefined, 'open'],
    ['a list that leaves the part out', '{ at: other, state: undeployed, treatment: stays }', false],
    // Hardly a car of today carries none at a pillar; that this one does not is said by what restraints it has.
    ['an empty list', '', 'open'],
    ['stays', '{ at: p, state: undeployed, treatment: stays }', true],
    ['stays, its state not yet seen', '{ at: p, state: not yet seen, treatment: stays }', true],
    ['stays, its state not stated', '{ at: p, treatment: stays }', true],
    ['is removed', '{ at: p, state: undeployed, treatment: removed }', false],
    ['what becomes of it is not stated', '{ at: p, state: undeployed }', 'open'],
    ['went off', '{ at: p, state: deployed }', false],
    [
      'one went off, one stays',
      '{ at: p, state: deployed }, { at: p, state: undeployed, treatment: stays }',
      true,
    ],
    ['one removed, one open', '{ at: p, treatment: removed }, { at: p, state: undeployed }', 'open'],
    ['one without its place that is left on', '{ state: undeployed }', 'open'],
    ['one without its place that went off', '{ state: deployed }', false],
    ['one without its place that is taken off', '{ state: undeployed, treatment: removed }', false],
  ])('%s', (_name, units, expected) => {
    expect(stays(units)).toBe(expected);
  });

  test('where the part itself is said to hold one, it is there', () => {
    expect(stays(undefined, 'id: p, kind: bracket, holds: [airbag]')).toBe(true);
    expect(stays('', 'id: p, kind: bracket, holds: [belt pretensioner]')).toBe(true);
    expect(stays(undefined, 'id: p, kind: bracket, holds: [wiring]')).toBe(false);
  });

  test('a part of a kind that carries none needs no list', () => {
    expect(stays(undefined, 'id: p, kind: front rail')).toBe(false);
    expect(stays(undefined, 'id: p, kind: seat')).toBe('open');
  });

  test('an empty list counts where the plan says which restraints the vehicle has', () => {
    const none = factsOf(
      'vehicle: { restraints: lap belts only }\nmake_safe: { restraints: { units: [] } }\nparts: [{ id: p, kind: b-pillar }]',
    );
    expect(none.value('part.holds_undeployed_unit')).toBe(false);
  });

  test('taken off at a step, with work whose step is not written, cannot be told', () => {
    const off = '{ at: p, state: undeployed, treatment: removed, step: 5 }';
    expect(stays(off, 'id: p, kind: b-pillar, operations: [{ do: weld }]')).toBe('open');
    expect(stays(off, 'id: p, kind: b-pillar, operations: [{ do: weld }, { do: heat, step: 2 }]')).toBe(true);
  });

  test('taken off only after work of a lower step, it was there during the work', () => {
    const off = '{ at: p, state: undeployed, treatment: removed, step: 5 }';
    const work = (step: string): string => `id: p, kind: b-pillar, operations: [{ do: weld${step} }]`;
    expect(stays(off, work(', step: 4'))).toBe(true);
    expect(stays(off, work(', step: 6'))).toBe(false);
    expect(stays(off, 'id: p, kind: b-pillar, operations: [{ do: refinish, step: 4 }]')).toBe(false);
  });
});
