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

describe('a unit whose place is not written', () => {
  const reason = (unit: string, kind: string, name = 'P'): unknown =>
    factsOf(
      `make_safe: { restraints: { planned: true, units: [{ ${unit}, state: undeployed, treatment: stays }] } }\nparts: [{ id: p, name: ${name}, kind: ${kind} }]`,
    ).value('part.holds_undeployed_unit');

  test('is asked for by its name', () => {
    expect(reason('unit: curtain airbag, name: Curtain left', 'c-pillar')).toBe(
      '? The plan does not say at which part this unit sits, which stays fitted: Curtain left.',
    );
    expect(reason('unit: airbag, name: Driver airbag', 'bulkhead')).toMatch(/^\?.*Driver airbag/u);
  });

  test('that of the driver sits in no crossmember but the one that carries the column', () => {
    const driver = 'unit: airbag, name: Driver airbag';
    expect(reason(driver, 'crossmember', 'Upper front crossmember')).toBe(false);
    expect(reason('unit: airbag, name: Steering wheel airbag', 'bracket', 'Radiator bracket')).toBe(false);
    expect(reason(driver, 'crossmember', 'Front dashboard crossmember')).toMatch(/^\?/u);
    expect(reason(driver, 'crossmember', 'Crossmember')).toMatch(/^\?/u);
    expect(reason('unit: airbag, name: Passenger', 'crossmember', 'Front crossmember')).toMatch(/^\?/u);
  });

  test('one of the steering wheel or the dashboard sits in no pillar and no panel', () => {
    expect(reason('unit: airbag, name: Driver airbag', 'c-pillar')).toBe(false);
    expect(reason('unit: airbag, name: Passenger', 'quarter panel')).toBe(false);
    expect(reason('unit: knee airbag', 'sill')).toBe(false);
    // At the side of the driver may be a door, a seat or a roof rail.
    expect(reason('unit: airbag, name: Driver side', 'c-pillar')).toMatch(/^\?/u);
    expect(reason('unit: airbag', 'c-pillar')).toMatch(/^\?/u);
  });
});

describe('what deployed and stays', () => {
  const fact = (name: string, units: string, parts = ''): unknown => {
    const found = factsOf(
      `make_safe: { restraints: { planned: true, units: [${units}] } }\nparts: [${parts}]`,
    ).fact(`plan.${name}`);
    return found.known ? found.value : 'open';
  };
  const belt = (operations: string): string =>
    `{ id: belt, name: Belt, kind: restraint unit, damage: { kind: deployed }, operations: [${operations}] }`;

  test('by the list of units', () => {
    expect(fact('deployed_kept', '{ name: Curtain, state: deployed, treatment: stays }')).toBe('Curtain');
    expect(fact('deployed_kept', '{ unit: airbag, state: deployed, treatment: replaced }')).toBe('open');
    expect(fact('deployed_kept', '{ unit: airbag, state: undeployed, treatment: stays }')).toBe('open');
    const listed = '{ name: Belt, at: belt, state: deployed, treatment: stays }';
    expect(fact('deployed_kept', listed, belt('{ do: replace }'))).toBe('open');
  });

  test('as a part that nothing replaces', () => {
    expect(fact('deployed_kept', '', belt('{ do: remove and refit }'))).toBe('Belt');
    expect(fact('deployed_kept', '', belt('{ do: replace }'))).toBe('open');
    expect(fact('restraint_deployed', '', belt('{ do: replace }'))).toBe(true);
  });

  test('open: not seen, or deployed and nothing said of it', () => {
    expect(fact('units_open', '{ name: Curtain, state: not yet seen, treatment: removed }')).toBe('Curtain');
    expect(fact('units_open', '{ name: Curtain, state: deployed }')).toBe('Curtain');
    expect(fact('units_open', '{ name: Curtain, state: undeployed, treatment: removed }')).toBe('open');
  });
});
