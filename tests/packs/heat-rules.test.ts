import { describe, expect, test } from 'vitest';
import { builtInPacks } from '../../src/generated/built-in-packs.ts';
import { keepOffRule, leastTensileLeft, limitSource } from '../../src/packs/heat-rules.ts';
import type { Pack, Rule } from '../../src/packs/pack.ts';
import type { Layer } from '../../src/packs/layers/resolve-packs.ts';

const rule = (id: string, lines: Partial<Rule>): Rule => ({
  id,
  topic: 'heat',
  since: '1.0.0',
  judges: 'exposure',
  severity: 'stop',
  from: 'draft',
  when: [],
  unless: [],
  message: '',
  instead: '',
  why: '',
  source: { practice: 'common' },
  cases: { finds: [], passes: [], asks: [] },
  ...lines,
});
const layer = (...rules: readonly Rule[]): Layer => ({
  name: 'x',
  version: '1.0.0',
  digest: '',
  released: false,
  rules,
});
const of = (victim: string): Rule['when'] => [
  { fact: 'exposure.victim', test: { anyOf: [victim] } },
  { fact: 'exposure.from', test: { anyOf: ['heat', 'arc'] } },
];
const distance = (range: { readonly min?: number; readonly below?: number }): Rule['when'][number] => ({
  fact: 'exposure.distance',
  test: { range },
});

describe('the least strength left', () => {
  const below = (percent: number): Rule['when'] => [
    { fact: 'exposure.tensile_left', test: { range: { below: percent } } },
  ];

  test('is the strictest that a rule stops below; a hold is none', () => {
    expect(leastTensileLeft([layer(rule('a', { when: below(90) }), rule('b', { when: below(95) }))])).toBe(
      95,
    );
    expect(leastTensileLeft([layer(rule('a', { when: below(95), severity: 'hold' }))])).toBeUndefined();
    expect(leastTensileLeft([])).toBeUndefined();
  });
});

describe('the rule of distance', () => {
  const near = rule('near', { when: [...of('wiring'), distance({ below: 100 })] });
  const unlessFar = rule('unless-far', { when: of('wiring'), unless: [[distance({ min: 250 })]] });

  test('is read from either form, and the farthest counts', () => {
    expect(keepOffRule([layer(near)], 'wiring', 'heat')).toEqual({ distanceMm: 100, rule: 'near' });
    expect(keepOffRule([layer(near, unlessFar)], 'wiring', 'arc')).toEqual({
      distanceMm: 250,
      rule: 'unless-far',
    });
  });

  test('speaks only of its own victims and heats, and only where it stops', () => {
    expect(keepOffRule([layer(near)], 'foam', 'heat')).toBeUndefined();
    expect(keepOffRule([layer(near)], 'wiring', 'bake')).toBeUndefined();
    expect(keepOffRule([layer({ ...near, severity: 'hold' })], 'wiring', 'heat')).toBeUndefined();
    // Lifted by a distance only together with something else, it names no distance.
    const both = rule('both', { when: of('wiring'), unless: [[distance({ min: 250 }), ...of('wiring')]] });
    expect(keepOffRule([layer(both)], 'wiring', 'heat')).toBeUndefined();
  });
});

test('the source of a limit names every pack that sets one', () => {
  const [general] = builtInPacks();
  if (general === undefined) throw new Error('no pack');
  const shop: Pack = {
    ...general,
    name: 'shop',
    version: '2.1.0',
    limits: [{ victim: 'foam', holdAboveCelsius: 70, source: { document: 'D-1', page: 'p. 3' } }],
  };
  expect(limitSource([general, shop], 'foam')).toBe(
    `pack general ${general.version}: common practice, no published source; pack shop 2.1.0: D-1, p. 3`,
  );
  expect(limitSource([general], 'airbag')).toBeUndefined();
});
