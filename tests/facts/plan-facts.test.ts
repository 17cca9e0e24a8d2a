import { describe, expect, test } from 'vitest';
import { factsOf, tarn } from './facts-of.ts';

/** A plan fact, `open` when it is not known. */
function plan(name: string, text: string, given: Parameters<typeof factsOf>[1] = {}): unknown {
  const fact = factsOf(text, given).fact(`plan.${name}`);
  return fact.known ? fact.value : 'open';
}
const parts = (...entries: readonly string[]): string =>
  `parts: [${entries.map((one) => `{ ${one} }`).join(', ')}]`;
const work = (kind: string, operation: string): string => `kind: ${kind}, operations: [{ ${operation} }]`;

describe('what work the plan holds', () => {
  test.each([
    [parts(), false],
    [parts(work('sill', 'do: section')), true],
    [parts(work('bonnet', 'do: replace')), false],
    [parts(work('sill', 'do: refinish')), false],
    [parts(work('sill', '')), 'open'],
    [parts(work('bonnet', '')), false],
    [parts(work('bracket', 'do: section')), 'open'],
    [parts(work('bracket', 'do: section'), work('sill', 'do: section')), true],
  ])('%s: structural work %s', (text, expected) => {
    expect(plan('structural_work', text)).toBe(expected);
  });

  test.each([
    [parts(), false, false],
    [parts(work('sill', 'do: section')), true, true],
    [parts(work('sill', 'do: heat')), true, false],
    [parts(work('bonnet', 'do: grind')), true, false],
    [parts(work('door', 'do: heat, off_vehicle: true')), false, false],
    [parts(work('sill', 'do: heat, off_vehicle: true')), true, false],
    [parts(work('sill', 'do: straighten')), 'open', false],
    [parts(work('sill', 'do: bond, joints: [{}]')), 'open', 'open'],
    [parts(work('sill', '')), 'open', 'open'],
    [parts(work('sill', ''), work('sill', 'do: section')), true, true],
  ])('%s: cut or heated %s, welded electrically %s', (text, hot, electric) => {
    expect(plan('cutting_or_hot_work', text)).toBe(hot);
    expect(plan('electric_welding', text)).toBe(electric);
  });

  test('near high voltage is what is cut, hot, lifted, baked or a battery handled, nothing else', () => {
    expect(plan('work_near_high_voltage', parts(work('bonnet', 'do: refinish')))).toBe(false);
    expect(plan('work_near_high_voltage', parts(work('sill', 'do: section')))).toBe(true);
    expect(plan('work_near_high_voltage', 'finish: { bake: {} }')).toBe(true);
    expect(plan('work_near_high_voltage', parts(work('bonnet', 'do: bake')))).toBe(true);
    expect(plan('work_near_high_voltage', parts(work('battery tray', 'do: refinish')))).toBe(true);
    expect(plan('work_near_high_voltage', parts(work('traction battery', 'do: leave')))).toBe(false);
    expect(plan('work_near_high_voltage', 'make_safe: { high_voltage: { battery_removed: true } }')).toBe(
      true,
    );
    const lifted = `make_safe: { lifting: { points: [t] } }\n${parts('id: t, kind: battery tray')}`;
    expect(plan('work_near_high_voltage', lifted)).toBe(true);
    expect(plan('work_near_high_voltage', lifted.replace('battery tray', 'sill'))).toBe(false);
    expect(plan('work_near_high_voltage', parts(work('sill', '')))).toBe('open');
  });

  test.each([
    [parts('kind: b-pillar, damage: { kind: kink }'), true],
    [parts('kind: b-pillar, damage: { kind: scratch }'), false],
    [parts('kind: b-pillar, damage: { kind: none }'), false],
    [parts('kind: bonnet, damage: { kind: kink }'), false],
    [parts('kind: bonnet, structural: true, damage: { kind: kink }'), true],
    [parts('kind: b-pillar, structural: false, damage: { kind: crack }'), true],
  ])('%s: a part that carries crash load is hit: %s', (text, expected) => {
    expect(plan('load_path_hit', text)).toBe(expected);
  });
});

describe('what the plan says', () => {
  test('the stage is the one that is asked, stated or not', () => {
    expect(factsOf('stage: start').fact('plan.stage')).toMatchObject({ value: 'start', from: 'stated' });
    expect(factsOf('').fact('plan.stage')).toMatchObject({ value: 'release', from: 'assumed' });
    expect(factsOf('stage: draft', { stage: 'start' }).fact('plan.stage')).toMatchObject({
      value: 'start',
      from: 'assumed',
    });
  });

  test('indirect damage is stated by where it was looked for and what was found', () => {
    const stated = (entries: string): unknown =>
      plan('indirect_damage_stated', `damage: { indirect: { ${entries} } }`);
    expect(stated('looked_at: [roof gap], found: none')).toBe(true);
    expect(stated('looked_at: [], found: none')).toBe(false);
    expect(stated('looked_at: [roof gap]')).toBe(false);
    expect(stated('found: none')).toBe(false);
    expect(plan('indirect_damage_stated', '')).toBe(false);
  });

  test.each([
    ['before: 2026-10-06', true],
    ['planned: true', true],
    ['planned: Before the cut.', true],
    ['planned: false', false],
    ['points: [{ before: [0 mm, 0 mm, 0 mm] }]', true],
    ['points: [{ after: [0 mm, 0 mm, 0 mm] }]', false],
    ['system: optical', false],
  ])('measurements: { %s } are before the work: %s', (entries, expected) => {
    expect(plan('measured_before', `measurements: { ${entries} }`)).toBe(expected);
  });

  test('restraints that went off', () => {
    const restraints = (entries: string): string => `${tarn}\nmake_safe: { restraints: { ${entries} } }`;
    expect(plan('restraint_deployed', restraints('deployed: true'))).toBe(true);
    expect(plan('restraint_deployed', restraints('deployed: false, units: [{ state: deployed }]'))).toBe(
      true,
    );
    expect(plan('restraint_deployed', restraints('units: [{ state: undeployed }]'))).toBe(false);
    const listed = (id: string): unknown =>
      plan('restraint_replacement_list', restraints(`replacement_list: { reference: ${id}, at: p. 1 }`));
    expect([listed('own'), listed('old'), listed('course')]).toEqual([true, false, false]);
    expect(plan('belts_checked', restraints('belts_checked: all five'))).toBe(true);
    expect(plan('belts_checked', restraints('deployed: true'))).toBe(false);
  });

  test.each([
    ['author', 'job: { written_by: { name: R. Amsel } }', 'R. Amsel'],
    ['job_opened', 'job: { opened: 2026-10-05 }', '2026-10-05'],
    ['bake', 'finish: { bake: {} }', true],
    ['bake', 'finish: {}', false],
    ['author', 'job: { written_by: {} }', 'open'],
  ])('%s of %s', (name, text, expected) => {
    expect(plan(name, text)).toBe(expected);
  });
});

describe('fuel and gas by the fire list', () => {
  const left = (fluids: string, rest = ''): unknown => {
    const fact = factsOf(
      `${tarn}\nmake_safe: { fire: { cite: { reference: own, at: p. 1 }, fluids: [${fluids}] } }\n${rest}`,
    ).fact('plan.fluids_left');
    return fact.known ? fact.value : 'none';
  };
  test.each([
    ['{ item: fuel line, treatment: stays }', 'fuel line'],
    ['{ item: fuel line }', 'fuel line'],
    [
      '{ item: fuel tank, treatment: renewed }, { item: gas cylinder, treatment: shielded }',
      'fuel tank, gas cylinder',
    ],
    ['{ item: fuel tank, treatment: removed }', 'none'],
    ['{ item: fuel tank, treatment: emptied }', 'none'],
    ['{ item: brake line, treatment: stays }', 'none'],
  ])('%s: %s', (fluids, expected) => {
    expect(left(fluids)).toBe(expected);
  });

  test('emptied by no page, it is still there', () => {
    const fact = factsOf('make_safe: { fire: { fluids: [{ item: fuel tank, treatment: emptied }] } }').fact(
      'plan.fluids_left',
    );
    expect(fact).toMatchObject({
      known: true,
      value: 'fuel tank (emptied, and no page tells how its vapour was got out)',
    });
  });

  test('what an operation lists with its distance is judged there', () => {
    const listed = 'parts: [{ operations: [{ do: weld, near: [{ item: fuel line, distance: 2 m }] }] }]';
    expect(left('{ item: fuel line, treatment: stays }', listed)).toBe('none');
  });
});

test('a plan proposes something when one operation stands in it', () => {
  const proposes = (text: string): unknown => factsOf(text).value('plan.proposes_work');
  expect(proposes('parts: []')).toBe(false);
  expect(proposes('parts: [{ kind: sill }]')).toBe(false);
  expect(proposes('parts: [{ kind: sill, operations: [{ do: leave }] }]')).toBe(true);
});

test('a booth at 45 °C or less warms no battery', () => {
  const near = (temperature: string): unknown =>
    factsOf(`finish: { bake: { ${temperature} } }`).value('plan.work_near_high_voltage');
  expect(near('temperature: 45 °C')).toBe(false);
  expect(near('temperature: 46 °C')).toBe(true);
  expect(near('time: 30 min')).toBe(true);
});
