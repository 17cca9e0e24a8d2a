import { describe, expect, test } from 'vitest';
import type { MakerStatement } from '../../src/facts/context.ts';
import { builtInPacks } from '../../src/generated/built-in-packs.ts';
import { planSchema } from '../../src/generated/plan-schema.ts';
import { factsOf, tarn } from './facts-of.ts';

const statement: MakerStatement = {
  part: 'door ring',
  years: { from: 2020, to: 2022 },
  document: 'BRM-1',
  revision: 'D',
  published: '2021-02-01',
  page: 'p. 12-19',
  shall: [],
  shallNot: [],
  may: [],
  conditions: [],
};
const may: MakerStatement = { ...statement, may: [{ do: 'section', at: 'B' }] };
const cite = 'cite: { reference: own, at: p. 14 }';

function provision(
  statements: readonly MakerStatement[],
  operation: string,
  part = 'kind: door ring, side: left',
  rest = tarn,
): ReturnType<typeof factsOf> {
  return factsOf(`${rest}\nparts: [{ ${part}, operations: [{ ${operation} }] }]`, { statements });
}

describe('heat is let by its own name alone', () => {
  const straighten = { do: 'straighten' };
  const whole = { do: 'replace', extent: 'whole' } as const;

  test.each<readonly [string, MakerStatement['may'], string, boolean]>([
    ['straightening, cold', [straighten], 'do: straighten, method: cold', true],
    ['straightening with heat, heat not named', [straighten], 'do: straighten, method: with heat', false],
    [
      'straightening with heat, both named',
      [straighten, { do: 'heat' }],
      'do: straighten, method: with heat',
      true,
    ],
    ['a whole part cut free with a saw', [whole], 'do: replace, extent: whole, cut_with: saw', true],
    ['a whole part cut free by plasma', [whole], 'do: replace, extent: whole, cut_with: plasma', false],
    [
      'a whole part cut free by a flame, heat named',
      [whole, { do: 'heat' }],
      'do: replace, extent: whole, cut_with: flame',
      false,
    ],
  ])('%s', (_name, named, operation, isLet) => {
    const derived = provision([{ ...statement, may: named }], `${operation}, ${cite}`);
    expect(derived.value('provision.permits')).toBe(isLet);
  });

  test('what to type in names heat as well, and nothing for a flame', () => {
    const typed = (operation: string): string =>
      String(provision([], operation).value('provision.to_type_in'));
    expect(typed('do: straighten, method: with heat')).toContain('may: ["straighten", "heat"]');
    expect(typed('do: heat')).toContain('may: ["heat"]');
    expect(typed('do: replace, extent: whole, cut_with: flame')).toMatch(/^\? No statement/u);
  });
});

describe('what the plan says of a condition is held against its own joints', () => {
  const conditioned = { ...may, conditions: ['insert of 30 mm each side', 'coupon before the weld'] };
  const withJoints = (joints: string): ReturnType<typeof factsOf> =>
    provision(
      [conditioned],
      `do: section, at: B, ${cite}, joints: [${joints}], conditions_met: ["insert of 30 mm each side", "coupon before the weld"]`,
    );
  const insert = 'form: butt with insert, insert: { length_each_side: 30 mm }';

  test('kept', () => {
    const derived = withJoints(`{ ${insert}, coupon: passed }`);
    expect(derived.value('provision.permits')).toBe(true);
    expect(derived.fact('provision.pending').known).toBe(false);
  });

  test.each([
    ['an insert that is too short', '{ insert: { length_each_side: 29 mm }, coupon: passed }', 'insert'],
    ['an insert of no stated length', '{ insert: {}, coupon: passed }', 'insert'],
    ['a lap without insert', '{ form: lap, coupon: passed }', 'insert'],
    ['a coupon that failed', `{ ${insert}, coupon: failed }`, 'coupon'],
    [
      'a coupon after the weld',
      `{ ${insert}, coupon: { result: passed, date: 2026-10-15 }, done: 2026-10-14 }`,
      'coupon',
    ],
  ])('%s: not kept', (_name, joints, word) => {
    const derived = withJoints(joints);
    expect(derived.value('provision.permits')).toBe(false);
    expect(derived.value('provision.open')).toEqual(['not kept']);
    expect(derived.value('provision.open_text')).toContain(`as the plan states them: ${word}`);
  });

  test('a coupon that is only planned keeps the permission and leaves a question', () => {
    const derived = withJoints(`{ ${insert}, coupon: planned }`);
    expect(derived.value('provision.permits')).toBe(true);
    expect(derived.value('provision.pending')).toBe('coupon before the weld');
  });

  test('a joint of the cut at another mark is another cut; a flange may lie anywhere', () => {
    const joint = `${insert}, coupon: passed`;
    expect(withJoints(`{ ${joint}, place: D }`).value('provision.open')).toEqual(['place']);
    for (const more of ['place: B', 'place: "b, upper"']) {
      expect([more, withJoints(`{ ${joint}, ${more} }`).value('provision.permits')]).toEqual([more, true]);
    }
    const flange = '{ form: flange, place: D, coupon: planned }';
    expect(withJoints(`{ ${joint}, place: B }, ${flange}`).value('provision.permits')).toBe(true);
  });
});

describe('a permission counts only when all of it is met', () => {
  const atB = `do: section, at: B, ${cite}`;

  test('the operation, the place, the document with its revision and a place in it', () => {
    const derived = provision([may], atB);
    expect(derived.value('provision.permits')).toBe(true);
    expect(derived.value('provision.says')).toBe('may');
    expect(derived.value('provision.by')).toBe('BRM-1, revision D, p. 12-19, in pack corvane-tarn 1.0.0');
    expect(derived.fact('provision.open').known).toBe(false);
  });

  test.each<readonly [string, string, readonly string[]]>([
    ['not cited', 'do: section, at: B', ['not cited']],
    ['cited by the course', 'do: section, at: B, cite: { reference: course, at: p. 1 }', ['not cited']],
    [
      'cited by the document of the years before',
      'do: section, at: B, cite: { reference: old, at: p. 1 }',
      ['not cited'],
    ],
    ['cited without a place in it', 'do: section, at: B, cite: { reference: own }', ['not cited']],
    ['cited on another page of it', 'do: section, at: B, cite: { reference: own, at: p. 30 }', ['page']],
    ['at another place', `do: section, at: C, ${cite}`, ['place']],
    ['at no stated place', `do: section, ${cite}`, ['place']],
    ['both', 'do: section, at: C', ['not cited', 'place']],
  ])('%s: open', (_name, operation, open) => {
    const derived = provision([may], operation);
    expect(derived.value('provision.permits')).toBe(false);
    expect(derived.value('provision.open')).toEqual(open);
    expect(derived.fact('provision.by').known).toBe(false);
  });

  test('another revision than the pack’s', () => {
    const derived = provision([{ ...may, revision: 'E' }], atB);
    expect(derived.value('provision.permits')).toBe(false);
    expect(derived.value('provision.open')).toEqual(['revision']);
    expect(derived.value('provision.open_text')).toContain('another revision than E');
  });

  test('a pack without revision goes by the day of publication', () => {
    const dated = (published: string): MakerStatement => {
      const { revision: _revision, ...rest } = may;
      return { ...rest, published };
    };
    expect(provision([dated('2021-02-01')], atB).value('provision.permits')).toBe(true);
    expect(provision([dated('2021-02-02')], atB).value('provision.permits')).toBe(false);
  });

  test('every condition must be said to be met, capitals aside', () => {
    const conditioned = { ...may, conditions: ['Insert of 30 mm', 'coupon before the weld'] };
    const cut = '{ insert: { length_each_side: 30 mm }, coupon: passed }';
    const met = (list: string): unknown =>
      provision([conditioned], `${atB}, joints: [${cut}], conditions_met: [${list}]`).value(
        'provision.permits',
      );
    expect(met('')).toBe(false);
    expect(met('insert of 30 mm')).toBe(false);
    expect(met('coupon before the weld, " insert of 30 MM"')).toBe(true);
  });

  test.each<readonly [string, Partial<MakerStatement>]>([
    ['other years', { years: { from: 2015, to: 2019 } }],
    ['another kind of part', { part: 'b-pillar' }],
    ['the other side', { sides: ['right'] }],
    ['another body', { bodies: ['saloon'] }],
    ['another operation', { may: [{ do: 'replace', extent: 'part' }] }],
  ])('a statement for %s is silent here', (_name, change) => {
    const derived = provision([{ ...may, ...change }], atB);
    expect(derived.value('provision.permits')).toBe(false);
    expect(derived.fact('provision.open').known).toBe(false);
    expect(derived.value('provision.says')).not.toBe('may');
  });

  test('in doubt about side, body or year it does not permit', () => {
    expect(provision([{ ...may, sides: ['left'] }], atB, 'kind: door ring').value('provision.permits')).toBe(
      false,
    );
    const noYear = tarn.replace(', model_year: 2021', '');
    expect(provision([may], atB, undefined, noYear).value('provision.permits')).toBe(false);
  });

  test('a pack of another maker or model says nothing', () => {
    const other = tarn.replace('maker: Corvane, model: Tarn, body', 'maker: Corvane, model: Ilex, body');
    const derived = provision([may], atB, undefined, other);
    expect(derived.fact('provision.says').known).toBe(false);
    expect(derived.value('provision.permits')).toBe(false);
  });

  test('a shall permits what it demands', () => {
    const shall = { ...statement, shall: [{ do: 'replace', extent: 'whole' as const }] };
    const derived = provision([shall], `do: replace, extent: whole, ${cite}`);
    expect(derived.value('provision.says')).toBe('shall');
    expect(derived.value('provision.permits')).toBe(true);
    expect(provision([shall], `do: replace, ${cite}`).value('provision.permits')).toBe(false);
  });
});

describe('a prohibition', () => {
  const forbids = (statements: readonly MakerStatement[], operation: string, part?: string): unknown =>
    provision(statements, operation, part).value('provision.forbids');
  const not = (word: string, more = {}): MakerStatement => ({
    ...statement,
    shallNot: [{ do: word, ...more }],
  });

  test('counts whether the plan cites it or not', () => {
    expect(forbids([not('section')], 'do: section')).toBe(true);
    expect(provision([not('section')], 'do: section').value('provision.says')).toBe('shall not');
    expect(forbids([not('section')], 'do: weld')).toBe(false);
  });

  test('of sectioning meets every way of cutting and joining part-way', () => {
    expect(forbids([not('section')], 'do: butt weld')).toBe(true);
    expect(forbids([not('section')], 'do: replace, extent: part')).toBe(true);
    expect(forbids([not('section')], 'do: weld, joints: [{ method: arc seam, form: open butt }]')).toBe(true);
    expect(forbids([not('section')], 'do: replace, extent: whole')).toBe(false);
  });

  test('of heat meets straightening with heat', () => {
    expect(forbids([not('heat')], 'do: straighten, method: with heat')).toBe(true);
    expect(forbids([not('heat')], 'do: straighten, method: cold')).toBe(false);
  });

  test('of one place counts where the place is not stated', () => {
    expect(forbids([not('section', { at: 'B' })], 'do: section, at: B')).toBe(true);
    expect(forbids([not('section', { at: 'B' })], 'do: section')).toBe(true);
  });

  test('counts in doubt about side or year', () => {
    expect(forbids([{ ...not('section'), sides: ['left'] }], 'do: section', 'kind: door ring')).toBe(true);
    expect(
      forbids([{ ...not('section'), sides: ['left'] }], 'do: section', 'kind: door ring, side: right'),
    ).toBe(false);
  });

  test('in general yields to the place that the same page draws', () => {
    const both = { ...may, shallNot: [{ do: 'section' }] };
    expect(forbids([both], `do: section, at: B, ${cite}`)).toBe(false);
    expect(forbids([both], `do: section, at: C, ${cite}`)).toBe(true);
    expect(forbids([both], 'do: section, at: B')).toBe(true);
  });

  test('of a later page wins over an older permission', () => {
    const newer = { ...not('section'), document: 'BUL-2', published: '2022-05-01' };
    const older = { ...not('section'), document: 'BUL-0', published: '2020-05-01' };
    expect(forbids([may, newer], `do: section, at: B, ${cite}`)).toBe(true);
    expect(provision([may, newer], `do: section, at: B, ${cite}`).value('provision.permits')).toBe(false);
    expect(forbids([may, older], `do: section, at: B, ${cite}`)).toBe(false);
  });
});

describe('what a part shall get', () => {
  const shall = { ...statement, shall: [{ do: 'replace', extent: 'whole' as const }] };

  test('is done when an operation of the plan does it', () => {
    expect(provision([shall], 'do: replace, extent: whole').value('part.shall_done')).toBe(true);
    expect(provision([shall], 'do: section').value('part.shall_done')).toBe(false);
    expect(provision([shall], 'do: replace').value('part.shall_done')).toBe(false);
    expect(provision([shall], 'do: section').value('part.shall')).toBe(
      'replace whole (BRM-1, revision D, p. 12-19, in pack corvane-tarn 1.0.0)',
    );
  });

  test('is unknown where no pack says', () => {
    expect(provision([may], 'do: section').fact('part.shall_done').known).toBe(false);
  });
});

describe('without a pack', () => {
  test('silence is not permission, and the entry to type in is filled from the plan', () => {
    const derived = factsOf(
      `${tarn}\nparts: [{ kind: door ring, operations: [{ do: section, at: B, ${cite} }] }]`,
    );
    expect(derived.value('provision.permits')).toBe(false);
    expect(derived.fact('provision.says').known).toBe(false);
    expect(derived.value('provision.to_type_in')).toBe(
      '{part: "door ring", years: "2021", document: "BRM-1", revision: "D", page: "p. 14", may: ["section at B"]}',
    );
  });

  test('what the plan does not know is left to be filled in', () => {
    const derived = factsOf('parts: [{ operations: [{}] }]');
    expect(derived.value('provision.to_type_in')).toBe(
      '{part: "…", years: "…", document: "…", revision: "…", page: "…", may: ["…"]}',
    );
  });

  test('a document that does not cover the vehicle is not offered', () => {
    const derived = factsOf(
      `${tarn}\nparts: [{ kind: sill, operations: [{ do: section, cite: { reference: old, at: p. 1 } }] }]`,
    );
    expect(derived.value('provision.to_type_in')).toContain('document: "…"');
  });

  test('whether there is a pack for the vehicle', () => {
    const says = (vehicle: string, context = {}): unknown => {
      const fact = factsOf(
        `${vehicle}\nparts: [{ kind: bonnet, operations: [{ do: refinish }] }]`,
        context,
      ).fact('provision.says');
      return fact.known ? fact.value : 'unknown';
    };
    const packs = { statements: [statement] };
    expect(says(tarn)).toBe('unknown');
    expect(says(tarn, packs)).toBe('silent');
    expect(says('vehicle: { maker: Corvane }', packs)).toBe('unknown');
    expect(says(tarn.replace('model_year: 2021', 'model_year: 2025'), packs)).toBe('unknown');
  });
});

test('no permission is offered for just the damage that the rule on folded and torn structure stops', () => {
  const rule = builtInPacks()
    .flatMap(({ rules }) => rules)
    .find(({ id }) => id === 'straighten-kinked-torn-or-cracked');
  const line = rule?.when.find(({ fact }) => fact === 'part.damage');
  const stopped = line !== undefined && 'anyOf' in line.test ? line.test.anyOf : [];
  const kinds = planSchema().$defs?.['damage_kind']?.enum ?? [];
  const notOffered = kinds.filter((kind) =>
    String(
      provision(
        [],
        'do: straighten, method: cold',
        `kind: sill, structural: true, damage: { kind: ${kind} }`,
      ).value('provision.to_type_in'),
    ).startsWith('? '),
  );
  expect(kinds.length).toBeGreaterThan(stopped.length);
  expect([...notOffered].sort()).toEqual([...stopped].map(String).sort());
});
