import { describe, expect, test } from 'vitest';
import { checksNeeded } from '../../src/facts/step/checks-needed.ts';
import type { CheckTrigger } from '../../src/facts/context.ts';
import { factsOf, surveyOf } from './facts-of.ts';

const trigger = (given: Partial<CheckTrigger>): CheckTrigger => ({
  asksFor: 'sensor calibration',
  ...{ sensor: [], kinds: [], holds: [], named: [], unlessNamed: [], was: [], work: [] },
  ...given,
});

const reasons = (parts: string, given: Partial<CheckTrigger>, more = ''): readonly string[] =>
  checksNeeded(surveyOf(`parts:\n  - { ${parts} }\n${more}`, { triggers: [trigger(given)] })).map(
    ({ because }) => because,
  );

describe('what befell a part pulls a trigger', () => {
  const cover = { kinds: ['bumper cover'] };

  test.each([
    ['hit', 'damage: { kind: tear }', 'Cover was hit'],
    ['hit', 'damage: { kind: scratch }', undefined],
    ['hit', 'damage: { kind: none }', undefined],
    ['taken off', 'operations: [{ do: remove and refit }]', 'Cover came off'],
    ['taken off', 'operations: [{ do: replace }]', 'Cover came off'],
    ['taken off', 'operations: [{ do: refinish }]', undefined],
    ['painted', 'operations: [{ do: refinish }]', 'Cover was painted'],
    ['painted', 'operations: [{ do: fill }]', 'Cover was painted'],
    ['painted', 'operations: [{ do: remove and refit }]', undefined],
    ['worked on', 'operations: [{ do: section }]', 'Cover was worked on'],
    ['worked on', 'operations: [{ do: refinish }]', undefined],
  ] as const)('%s: %s', (was, entries, expected) => {
    const found = reasons(`kind: bumper cover, name: Cover, ${entries}`, { ...cover, was: [was] });
    expect(found).toEqual(expected === undefined ? [] : [expected]);
  });

  test('any of it where the trigger names none', () => {
    expect(reasons('kind: bumper cover, name: Cover, operations: [{ do: refinish }]', cover)).toEqual([
      'Cover was painted',
    ]);
    expect(reasons('kind: bumper cover, name: Cover', cover)).toEqual([]);
  });

  test('by words in its name, without regard to capitals', () => {
    const glass = {
      kinds: ['glass'],
      was: ['taken off'],
      named: ['windscreen'],
      unlessNamed: ['rear'],
    } as const;
    const off = 'operations: [{ do: replace }]';
    expect(reasons(`kind: glass, name: WINDSCREEN, ${off}`, glass)).toHaveLength(1);
    expect(reasons(`kind: glass, name: Rear windscreen, ${off}`, glass)).toEqual([]);
    expect(reasons(`kind: glass, name: Door glass, ${off}`, glass)).toEqual([]);
  });

  test('by what it holds', () => {
    const holds = { holds: ['sensor'] };
    expect(reasons('kind: fender, name: Wing, holds: [sensor], damage: { kind: dent }', holds)).toEqual([
      'Wing was hit',
    ]);
    expect(reasons('kind: fender, name: Wing, holds: [wiring], damage: { kind: dent }', holds)).toEqual([]);
  });
});

test.each([
  ['electric welding', 'parts: [{ kind: sill, operations: [{ do: weld }] }]', true],
  ['electric welding', 'parts: [{ kind: sill, operations: [{ do: refinish }] }]', false],
  ['structural work', 'parts: [{ kind: sill, operations: [{ do: straighten, method: cold }] }]', true],
  ['structural work', 'parts: [{ kind: fender, operations: [{ do: straighten, method: cold }] }]', false],
  ['restraint unit off', 'make_safe: { restraints: { units: [{ treatment: removed }] } }', true],
  ['restraint unit off', 'make_safe: { restraints: { units: [{ treatment: stays }] } }', false],
  ['restraint unit deployed', 'make_safe: { restraints: { deployed: true } }', true],
  ['restraint unit deployed', 'make_safe: { restraints: { units: [{ state: deployed }] } }', true],
  ['restraint unit deployed', 'make_safe: { restraints: { units: [{ state: undeployed }] } }', false],
  ['high voltage isolated', 'make_safe: { high_voltage: { isolation: { planned: true } } }', true],
  ['high voltage isolated', 'make_safe: { high_voltage: { isolation: { planned: false } } }', false],
  ['wheels aligned', 'verify: { alignment: { planned: true } }', true],
  ['wheels aligned', 'verify: { alignment: { result: not required } }', false],
] as const)('%s: %s', (work, text, expected) => {
  const found = checksNeeded(surveyOf(text, { triggers: [trigger({ work: [work] })] }));
  expect(found.length > 0).toBe(expected);
});

test('each sensor is answered for by its name, or by the words none fitted', () => {
  const needed = (calibrations: string): unknown => {
    const { all } = factsOf(
      `parts:\n  - { kind: glass, name: Windscreen, operations: [{ do: replace }] }\n  - { kind: bumper cover, name: Front cover, operations: [{ do: replace }] }\nverify: { calibrations: [${calibrations}] }`,
    );
    const open = all('step').find(({ at }) => at === '/verify/calibrations');
    const because = open?.facts['step.needed_because'];
    return because?.known === true ? because.value : undefined;
  };
  const camera = '{ sensor: Front camera, kind: static, result: passed }';
  const radar = '{ sensor: front radar, kind: not fitted }';
  expect(needed('')).toBe('camera: Windscreen came off; radar: Front cover came off');
  expect(needed(camera)).toBe('radar: Front cover came off');
  expect(needed(`${camera}, ${radar}`)).toBeUndefined();
  expect(needed('{ sensor: none fitted }')).toBeUndefined();
  // Which one is meant is not said.
  expect(needed('{ kind: static, result: passed }')).toBe(needed(''));
});
