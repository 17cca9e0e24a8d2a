import { describe, expect, test } from 'vitest';
import { factsOf, tarn } from './facts-of.ts';

interface Seen {
  readonly name: unknown;
  readonly from: unknown;
  readonly listed: unknown;
  readonly stays: unknown;
}

function seen(parts: string, rest = ''): readonly Seen[] {
  const derived = factsOf(`${rest}\nparts:\n${parts}`);
  return derived.all('exposure').map(({ facts }) => {
    const value = (name: string): unknown => {
      const fact = facts[name];
      return fact?.known === true ? fact.value : undefined;
    };
    return {
      name: value('exposure.name'),
      from: value('exposure.from'),
      listed: value('exposure.listed'),
      stays: value('exposure.stays'),
    };
  });
}

const names = (parts: string): readonly unknown[] =>
  seen(parts).map(({ name, from }) => `${String(name)} of ${String(from)}`);

describe('what is exposed to which heat', () => {
  test('every listed neighbour, part or item, to a held heat', () => {
    expect(
      names(`  - { id: h, operations: [{ do: heat, near: [{ part: n }, { item: wiring }, { item: foam, name: Foam in the pillar }] }] }
  - { id: n, name: Pillar }`),
    ).toEqual(['Pillar of heat', 'wiring of heat', 'Foam in the pillar of heat']);
  });

  test('an item at a part is two: the adhesive and the flange stand different heat', () => {
    expect(
      names(`  - { id: h, operations: [{ do: heat, near: [{ part: n, item: structural adhesive, distance: 40 mm, path: joined }] }] }
  - { id: n, name: Pillar }`),
    ).toEqual(['Pillar of heat', 'structural adhesive at Pillar of heat']);
  });

  test('a part that is joined to or layered with the heated one, listed or not', () => {
    for (const [link, other] of [
      ['joined_to: [n]', ''],
      ['over: n', ''],
      ['under: [n]', ''],
      ['kind: sill', ', joined_to: [h]'],
      ['kind: sill', ', over: h'],
      ['kind: sill', ', operations: [{ do: leave, joints: [{ to: h }] }]'],
      ['kind: sill', ', operations: [{ do: leave, joints: [{ sheets: [n, h] }] }]'],
    ] as const) {
      const parts = `  - { id: h, ${link}, operations: [{ do: heat }] }\n  - { id: n, name: Pillar${other} }`;
      expect([link, other, seen(parts)]).toEqual([
        link,
        other,
        [{ name: 'Pillar', from: 'heat', listed: false, stays: true }],
      ]);
    }
  });

  test('a part that has nothing to do with it is not', () => {
    expect(seen('  - { id: h, operations: [{ do: heat }] }\n  - { id: n }')).toEqual([]);
  });

  test('a linked part that is listed comes once', () => {
    expect(
      seen('  - { id: h, joined_to: [n], operations: [{ do: heat, near: [{ part: n }] }] }\n  - { id: n }'),
    ).toHaveLength(1);
  });

  test('off the vehicle only what the plan lists', () => {
    const parts = (near: string): string =>
      `  - { id: h, kind: door, joined_to: [n], operations: [{ do: heat, off_vehicle: true, near: [${near}] }] }\n  - { id: n }`;
    expect(seen(parts(''))).toEqual([]);
    expect(seen(parts('{ item: foam }'))).toHaveLength(1);
  });

  test('work without heat exposes nothing', () => {
    for (const word of ['refinish', 'fill', 'leave', 'bond', 'straighten, method: cold']) {
      expect([word, seen(`  - { id: h, operations: [{ do: ${word}, near: [{ item: foam }] }] }`)]).toEqual([
        word,
        [],
      ]);
    }
  });
});

describe('a joint’s own sheets are the joint’s concern', () => {
  const seam = (more: string): string => `  - id: h
    joined_to: [s, n]
    operations: [{ do: weld, joints: [{ method: arc seam, to: s, sheets: [h, s] }], near: [${more}] }]
  - { id: s, name: Sill }
  - { id: n, name: Pillar }`;

  test('a seam exposes others, not the sheets that it joins, listed or not', () => {
    expect(names(seam(''))).toEqual(['Pillar of arc']);
    expect(names(seam('{ part: s }, { part: n }'))).toEqual(['Pillar of arc']);
    expect(names(seam('{ item: foam }'))).toEqual(['foam of arc', 'Pillar of arc']);
  });

  test('a held heat exposes them', () => {
    expect(
      names(`  - { id: h, operations: [{ do: heat, near: [{ part: s }] }, { do: leave, joints: [{ to: s }] }] }
  - { id: s, name: Sill }`),
    ).toEqual(['Sill of heat']);
  });

  test('brazing and welding are two heats', () => {
    expect(
      names(
        `  - { id: h, operations: [{ do: weld, joints: [{ method: arc braze }, { method: plug weld }], near: [{ item: foam }] }] }`,
      ),
    ).toEqual(['foam of arc', 'foam of brazing']);
  });
});

describe('resistance spots reach items within 25 mm, common practice', () => {
  test.each([
    ['item: foam, distance: 25 mm', 1],
    ['item: foam, distance: 25.1 mm', 0],
    ['item: foam, distance: 1 in', 0],
    ['item: foam', 1],
    ['part: n, distance: 5 mm', 0],
  ])('{ %s }: %i', (near, count) => {
    const parts = `  - { id: h, joined_to: [n], operations: [{ do: weld, joints: [{ method: resistance spot }], near: [{ ${near} }] }] }\n  - { id: n }`;
    expect(seen(parts)).toHaveLength(count);
  });
});

describe('what stays in reach of the heat', () => {
  const stays = (near: string, other = 'kind: sill', step = 'step: 10'): unknown =>
    seen(
      `  - { id: h, operations: [{ do: heat, ${step}, near: [{ part: n, ${near} }] }] }\n  - { id: n, ${other} }`,
    )[0]?.stays;

  test.each([
    ['treatment: stays', true],
    ['path: joined', true],
    // The word alone moves nothing: no operation of the plan takes it off.
    ['treatment: removed', undefined],
    ['treatment: renewed', undefined],
    ['treatment: emptied', true],
    ['treatment: shielded, path: through air', false],
    // A shield stops flame and sparks, not the heat in the metal.
    ['treatment: shielded, path: joined', true],
    ['treatment: shielded, path: same sheet', true],
    ['treatment: shielded', true],
  ])('{ %s }: %s', (near, expected) => {
    expect(stays(near)).toBe(expected);
  });

  test('a part that the plan takes off before and puts on after, by its steps', () => {
    const refit = (from: string, to: string): string =>
      `operations: [{ do: remove and refit, ${from}, ${to} }]`;
    expect(stays('path: joined', refit('step: 5', 'refit_step: 15'))).toBe(false);
    expect(stays('path: joined', refit('step: 5', 'refit_step: 8'))).toBe(true);
    expect(stays('path: joined', refit('step: 12', 'refit_step: 15'))).toBe(true);
    expect(stays('path: joined', refit('step: 5', 'at: B'))).toBe(true);
    expect(stays('path: joined', refit('step: 5', 'refit_step: 15'), 'at: B')).toBe(true);
  });

  test('a part that is replaced whole afterwards does not matter; one replaced before does', () => {
    const replaced = (entries: string): string => `operations: [{ do: replace, ${entries} }]`;
    expect(stays('path: joined', replaced('extent: whole, step: 20'))).toBe(false);
    expect(stays('path: joined', replaced('extent: whole, step: 5'))).toBe(true);
    expect(stays('path: joined', replaced('extent: part, step: 20'))).toBe(true);
    expect(stays('path: joined', replaced('extent: whole'))).toBe(true);
  });

  test('what is said to be off or renewed must be so by its own operations, as far as steps are written', () => {
    for (const said of ['treatment: removed', 'treatment: renewed']) {
      const refit = (steps: string): unknown => stays(said, `operations: [{ do: remove and refit${steps} }]`);
      expect(refit('')).toBe(false);
      expect(refit(', step: 5, refit_step: 15')).toBe(false);
      expect(refit(', step: 5')).toBe(false);
      expect(refit(', step: 10')).toBeUndefined();
      expect(refit(', step: 5, refit_step: 10')).toBeUndefined();
      const replace = (entries: string): unknown => stays(said, `operations: [{ do: replace, ${entries} }]`);
      expect(replace('extent: whole')).toBe(false);
      expect(replace('extent: whole, step: 11')).toBe(false);
      expect(replace('extent: whole, step: 5')).toBeUndefined();
      expect(replace('extent: part, step: 11')).toBeUndefined();
      expect(replace('step: 11')).toBeUndefined();
    }
    expect(stays('treatment: removed', 'kind: fender, operations: [{ do: replace, step: 11 }]')).toBe(false);
  });

  test('what the entry itself says comes before what the steps say', () => {
    expect(stays('treatment: stays', 'operations: [{ do: replace, extent: whole, step: 20 }]')).toBe(true);
  });
});

describe('an item stays unless what is said of it makes it harmless', () => {
  const stays = (near: string): unknown =>
    seen(`  - { id: h, operations: [{ do: heat, near: [{ ${near} }] }] }`, tarn)[0]?.stays;

  test.each([
    ['item: airbag, treatment: removed', false],
    ['item: airbag, treatment: renewed', true],
    ['item: airbag, treatment: emptied', true],
    ['item: belt pretensioner, treatment: renewed', true],
    ['item: traction battery, treatment: renewed', true],
    ['item: high-voltage cable, treatment: renewed', true],
    ['item: fuel tank, treatment: renewed', true],
    ['item: gas cylinder, treatment: renewed', true],
    // Adhesive in a joint comes off with nothing but its joint: by a page, or by a bond that the plan makes.
    ['item: structural adhesive, treatment: renewed', undefined],
    ['item: structural adhesive, treatment: removed', undefined],
    ['item: structural adhesive, treatment: renewed, cite: { reference: old, at: p. 1 }', undefined],
    ['item: structural adhesive, treatment: renewed, cite: { reference: own, at: p. 1 }', false],
    ['item: cavity wax, treatment: renewed', false],
    ['item: structural adhesive, treatment: emptied', true],
    ['item: brake line, treatment: emptied', false],
    // An emptied tank is full of vapour until it is purged, as a page of the maker says.
    ['item: fuel tank, treatment: emptied', true],
    ['item: fuel tank, treatment: emptied, cite: { reference: old, at: p. 1 }', true],
    ['item: fuel tank, treatment: emptied, cite: { reference: own, at: p. 1 }', false],
  ])('{ %s }: %s', (near, expected) => {
    expect(stays(near)).toBe(expected);
  });
});

describe('what a part holds takes the heat with it', () => {
  const heated = (near: string, more = ''): string =>
    `  - { id: h, name: Rail, ${more} operations: [{ do: heat, step: 10, near: [${near}] }] }`;
  const pillar = '  - { id: n, name: Pillar, holds: [foam, airbag] }';
  const namesAndStays = (parts: string, rest = ''): readonly unknown[] =>
    seen(parts, rest).map(({ name, listed, stays }) => [name, listed, stays]);

  test('the items of a listed part, where they are not listed apart', () => {
    expect(namesAndStays(`${heated('{ part: n, path: joined }')}\n${pillar}`)).toEqual([
      ['Pillar', true, true],
      ['foam at Pillar', true, true],
      ['airbag at Pillar', true, true],
    ]);
    expect(
      namesAndStays(`${heated('{ part: n }, { part: n, item: foam, treatment: removed }')}\n${pillar}`),
    ).toEqual([
      ['Pillar', true, true],
      ['airbag at Pillar', true, true],
      ['Pillar', true, undefined],
      ['foam at Pillar', true, false],
      ['airbag at Pillar', true, undefined],
    ]);
  });

  test('with a part that comes off they come off; with one that is renewed an airbag is still there', () => {
    const off = `${pillar.slice(0, -2)}, operations: [{ do: remove and refit, step: 1, refit_step: 20 }] }`;
    expect(
      namesAndStays(`${heated('{ part: n, treatment: removed }')}\n${off}`).map((one) => String(one)),
    ).toEqual(['Pillar,true,false', 'foam at Pillar,true,false', 'airbag at Pillar,true,false']);
    const later = `${pillar.slice(0, -2)}, operations: [{ do: replace, extent: whole, step: 20 }] }`;
    expect(namesAndStays(`${heated('{ part: n, treatment: renewed }')}\n${later}`)).toEqual([
      ['Pillar', true, false],
      ['foam at Pillar', true, false],
      ['airbag at Pillar', true, true],
    ]);
  });

  test('the restraint units listed at it, unless they are off by then', () => {
    const units = (entries: string): string =>
      `make_safe: { restraints: { units: [{ unit: curtain airbag, at: n, state: undeployed, ${entries} }] } }`;
    const of = (entries: string, near = '{ part: n, path: joined }'): unknown =>
      namesAndStays(`${heated(near)}\n  - { id: n, name: Pillar }`, units(entries))[1];
    expect(of('treatment: stays')).toEqual(['curtain airbag at Pillar', true, true]);
    expect(of('treatment: removed, step: 20')).toEqual(['curtain airbag at Pillar', true, true]);
    expect(of('treatment: removed, step: 2')).toBeUndefined();
    expect(of('treatment: removed')).toBeUndefined();
    expect(of('name: Curtain left')).toEqual(['Curtain left', true, undefined]);
  });

  test('what the heated part itself holds and the plan does not list', () => {
    expect(namesAndStays(heated('', 'holds: [foam, cavity wax],'))).toEqual([
      ['foam at Rail', false, true],
      ['cavity wax at Rail', false, true],
    ]);
    expect(namesAndStays(heated('{ item: foam, treatment: removed }', 'holds: [foam],'))).toEqual([
      ['foam', true, false],
    ]);
  });

  test('the old part goes whole, with what it holds', () => {
    const welded = (extent: string): string =>
      `  - { id: h, name: Rail, holds: [foam], operations: [{ do: replace, extent: ${extent}, joints: [{ method: plug weld }] }] }`;
    expect(namesAndStays(welded('whole'))).toEqual([]);
    expect(namesAndStays(welded('part'))).toEqual([['foam at Rail', false, true]]);
  });

  test('what a joined part holds that is not listed', () => {
    expect(namesAndStays(`${heated('', 'joined_to: [n],')}\n${pillar}`)).toEqual([
      ['Pillar', false, true],
      ['foam at Pillar', false, true],
      ['airbag at Pillar', false, true],
    ]);
  });
});

describe('sparks of cutting', () => {
  const from = (operation: string, kind = 'sill'): readonly unknown[] =>
    seen(
      `  - { id: h, kind: ${kind}, operations: [{ ${operation}, near: [{ item: fuel line, distance: 50 mm }] }] }`,
    ).map((one) => one.from);
  const spots = 'joints: [{ method: resistance spot }]';

  test('come with whatever is cut out and welded on anew', () => {
    expect(from(`do: section, ${spots}`)).toEqual(['cutting or grinding']);
    expect(from(`do: replace, extent: whole, ${spots}`)).toEqual(['cutting or grinding']);
    expect(from('do: drill')).toEqual(['cutting or grinding']);
    expect(from(`do: weld, ${spots}`)).toEqual([]);
    expect(from('do: replace, extent: whole', 'bonnet')).toEqual([]);
  });

  test('are not asked about beside an arc, which reaches as far', () => {
    expect(from('do: section, joints: [{ method: arc seam }]')).toEqual(['arc']);
  });
});

describe('limits', () => {
  const exposure = (near: string): ReturnType<typeof factsOf> =>
    factsOf(`${tarn}
parts:
  - id: h
    grade: HC340LA
    thickness: 1.2 mm
    operations: [{ do: heat, source: oven, temperature: 300 °C, hold: 60 s, times: 1, measured_by: { means: contact probe }, free_end: runs on, near: [{ distance: 30 mm, path: joined, ${near} }] }]
  - { id: n, grade: 22MnB5 }
  - { id: m, grade: HC340LA, grade_from: { by: marking on part } }`);

  test('come from the packs; the margin is the peak less the limit', () => {
    const derived = exposure('part: n');
    expect([derived.value('exposure.limit'), derived.value('exposure.stop_limit')]).toEqual([200, 250]);
    const peak = Number(derived.value('exposure.peak'));
    expect(derived.value('exposure.over_limit')).toBeCloseTo(peak - 200, 9);
    expect(derived.value('exposure.over_stop_limit')).toBeCloseTo(peak - 250, 9);
  });

  test('the page’s own figure makes them stricter and never laxer', () => {
    expect(exposure('part: n, limit: 150 °C').value('exposure.stop_limit')).toBe(150);
    expect(exposure('part: n, limit: 220 °C').value('exposure.limit')).toBe(200);
    expect(exposure('part: n, limit: 220 °C').value('exposure.stop_limit')).toBe(220);
    expect(exposure('part: n, limit: 900 °C').value('exposure.limit')).toBe(200);
    expect(exposure('part: n, limit: 900 °C').value('exposure.stop_limit')).toBe(250);
  });

  test('what has no limit is never over it, which is an answer', () => {
    expect(exposure('part: m').value('exposure.over_limit')).toBe(Number.NEGATIVE_INFINITY);
    expect(exposure('part: m').fact('exposure.limit').known).toBe(false);
  });

  test('what the neighbour is must be known', () => {
    expect(exposure('name: something').fact('exposure.over_limit').known).toBe(false);
    expect(exposure('part: nobody').fact('exposure.victim').known).toBe(false);
  });

  test('a treatment rests on a page only when the maker’s for this car is cited', () => {
    const cited = (id: string): unknown =>
      exposure(`part: n, treatment: shielded, cite: { reference: ${id}, at: p. 1 }`).value(
        'exposure.treatment_cited',
      );
    expect([cited('own'), cited('old'), cited('course'), cited('nobody')]).toEqual([
      true,
      false,
      false,
      false,
    ]);
  });

  test('strength that is left is told of hardened steel only', () => {
    expect(exposure('part: n').value('exposure.tensile_left')).toBe(100);
    expect(exposure('part: m').fact('exposure.tensile_left').known).toBe(false);
    expect(exposure('item: foam').fact('exposure.tensile_left').known).toBe(false);
  });
});
