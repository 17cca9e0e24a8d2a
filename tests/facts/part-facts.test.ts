import { describe, expect, test } from 'vitest';
import { factsOf, tarn } from './facts-of.ts';

const part = (entries: string, rest = tarn): ReturnType<typeof factsOf> =>
  factsOf(`${rest}\nparts:\n  - { ${entries} }\n`);

describe('what a part carries', () => {
  test.each([
    ['kind: b-pillar', true, 'table'],
    ['kind: b-pillar, structural: true', true, 'stated'],
    ['kind: b-pillar, structural: false', true, 'table'],
    ['kind: bonnet', false, 'table'],
    ['kind: bonnet, structural: true', true, 'stated'],
    ['kind: side panel, structural: false', false, 'stated'],
  ])('{ %s }: structural %s, by %s', (entries, value, from) => {
    expect(part(entries).fact('part.structural')).toMatchObject({ known: true, value, from });
  });

  test('where neither kind nor plan says, it is not known', () => {
    expect(part('kind: bracket').fact('part.structural')).toMatchObject({
      known: false,
      at: '/parts/0/structural',
    });
  });

  test('a crash part called cosmetic is declared so only where the maker’s page for this car does', () => {
    const called = 'kind: b-pillar, structural: false';
    expect(part(called).value('part.declared_cosmetic')).toBe(true);
    expect(part(`${called}, cosmetic_by: { reference: old, at: p. 1 }`).value('part.declared_cosmetic')).toBe(
      true,
    );
    expect(part(`${called}, cosmetic_by: { reference: course }`).value('part.declared_cosmetic')).toBe(true);
    expect(part(`${called}, cosmetic_by: { reference: own, at: p. 1 }`).value('part.declared_cosmetic')).toBe(
      false,
    );
    expect(part('kind: side panel, structural: false').value('part.declared_cosmetic')).toBe(false);
  });

  test('a door ring counts as one piece, and that is said to be assumed', () => {
    expect(part('kind: door ring').fact('part.one_piece')).toMatchObject({ value: true, from: 'assumed' });
    expect(part('kind: door ring, one_piece: false').fact('part.one_piece')).toMatchObject({
      value: false,
      from: 'stated',
    });
    expect(part('kind: sill').fact('part.one_piece').known).toBe(false);
  });
});

describe('damage', () => {
  test.each([
    ['{ kind: kink }', ['kink'], true],
    ['{ kinds: [dent, tear] }', ['dent', 'tear'], true],
    ['{ kind: dent, kinds: [dent, tear] }', ['dent', 'tear'], true],
    ['{ kind: none }', ['none'], false],
    ['{ kind: not yet seen, kinds: [kink] }', ['not yet seen', 'kink'], true],
  ])('%s', (damage, kinds, damaged) => {
    const derived = part(`damage: ${damage}`);
    expect(derived.value('part.damage')).toEqual(kinds);
    expect(derived.value('part.damaged')).toBe(damaged);
  });

  test('nothing said, or not yet looked, is neither damaged nor sound', () => {
    for (const entries of ['kind: sill', 'damage: {}', 'damage: { kind: not yet seen }']) {
      expect([entries, part(entries).fact('part.damaged').known]).toEqual([entries, false]);
    }
  });

  test('damage may stay only by the maker’s page for this car', () => {
    const by = (id: string): string => `damage: { kind: dent, tolerable_by: { reference: ${id}, at: p. 1 } }`;
    expect(part(by('own')).value('part.may_stay')).toBe(true);
    expect(part(by('old')).value('part.may_stay')).toBe(false);
    expect(part(by('course')).value('part.may_stay')).toBe(false);
    expect(part(by('nobody')).value('part.may_stay')).toBe(false);
  });

  test('paint, sanding and taking off answer no damage; leaving with a reason is an answer to be judged', () => {
    for (const word of ['refinish', 'grind', 'remove and refit', 'bake', 'drill', 'cut for access']) {
      expect([word, part(`operations: [{ do: ${word} }]`).value('part.has_operation')]).toEqual([
        word,
        false,
      ]);
    }
    for (const word of ['replace', 'straighten', 'fill', 'leave', 'section']) {
      expect([word, part(`operations: [{ do: ${word} }]`).value('part.has_operation')]).toEqual([word, true]);
    }
    expect(part('operations: [{}]').value('part.has_operation')).toBe(true);
    expect(part('kind: sill').value('part.has_operation')).toBe(false);
  });
});

describe('a second-hand part', () => {
  const donor =
    'vin: 0CVBAB2BZM0009999, maker: Corvane, model: Tarn, body: wagon, model_year: 2021, damage: none';
  const agrees = (entries: string): unknown =>
    part(`condition: recycled, donor: { ${entries} }`).value('part.donor');

  test('comes from the same maker, model, body and year, or not', () => {
    expect(agrees(donor)).toBe('same');
    expect(agrees(donor.replace('2021', '2020'))).toBe('other vehicle');
    expect(agrees(donor.replace('wagon', 'saloon'))).toBe('other vehicle');
    expect(agrees('model: Ilex')).toBe('other vehicle');
    expect(agrees(donor.replace('Tarn', ' tarn '))).toBe('same');
  });

  test('and what is not said of it is not taken for granted', () => {
    expect(agrees('')).toBe('not fully stated');
    expect(agrees(donor.replace(', damage: none', ''))).toBe('not fully stated');
    expect(agrees(donor.replace('vin: 0CVBAB2BZM0009999, ', ''))).toBe('not fully stated');
    expect(agrees(donor.replace('body: wagon, ', ''))).toBe('not fully stated');
    expect(part('condition: recycled').value('part.donor')).toBe('not fully stated');
  });

  test.each([
    ['none', 'same'],
    ['None seen', 'same'],
    ['none at this part; front hit', 'same'],
    ['Undamaged.', 'same'],
    ['no damage at this part', 'same'],
    // Words that leave it open, whichever way they lean, are for a person to answer.
    ['hit from behind', 'told in words'],
    ['Front hit; rear untouched, measured', 'told in words'],
    ['None of the rear is straight; hit at this crossmember', 'told in words'],
    ['none to speak of', 'told in words'],
    ['undamaged but for this rail', 'told in words'],
    ['none; hit at this part', 'told in words'],
  ])('its damage in words: %s', (words, answer) => {
    expect(agrees(donor.replace('damage: none', `damage: "${words}"`))).toBe(answer);
  });

  test('the key decides, whatever the words', () => {
    const hit = donor.replace('damage: none', 'damage: Front hit');
    expect(agrees(`${hit}, at_this_part: sound`)).toBe('same');
    expect(agrees(`${donor}, at_this_part: damaged`)).toBe('damaged');
    expect(agrees(`${donor}, at_this_part: not yet seen`)).toBe('not fully stated');
    expect(agrees(`${donor.replace('2021', '2020')}, at_this_part: damaged`)).toBe('damaged');
  });

  test('the vehicle is no donor for itself', () => {
    const own = tarn.replace('model_year: 2021 }', 'model_year: 2021, vin: 0CVBAB2BZM0009999 }');
    const derived = factsOf(
      `${own}\nparts: [{ condition: recycled, donor: { ${donor.toLowerCase().replace('corvane', 'Corvane')} } }]`,
    );
    expect(derived.value('part.donor')).toBe('this vehicle');
  });

  test('is what says so, or names a donor', () => {
    expect(part('condition: refurbished').value('part.second_hand')).toBe(true);
    expect(part('donor: {}').value('part.second_hand')).toBe(true);
    expect(part('condition: new').value('part.second_hand')).toBe(false);
    expect(part('kind: sill').fact('part.donor').known).toBe(false);
    expect(part('donor: { cite: { reference: own } }').value('part.donor_cited')).toBe(true);
    expect(part('donor: { cite: { reference: old } }').value('part.donor_cited')).toBe(false);
  });
});

describe('hollow members', () => {
  const worked = (entries: string): unknown => part(entries).value('part.closed_section_worked');

  test.each([
    ['kind: sill, operations: [{ do: section }]', true],
    ['kind: sill, operations: [{ do: replace, extent: whole }]', true],
    ['kind: sill, operations: [{ do: heat }]', true],
    ['kind: sill, operations: [{ do: straighten, method: cold }]', false],
    ['kind: sill, operations: [{ do: refinish }]', false],
    ['kind: sill', false],
    ['kind: bonnet, operations: [{ do: section }]', false],
    ['kind: bracket, closed_section: true, operations: [{ do: weld }]', true],
    ['kind: sill, closed_section: false, operations: [{ do: weld }]', false],
  ])('{ %s }: %s', (entries, expected) => {
    expect(worked(entries)).toBe(expected);
  });

  test('what is done to it by no known word is open', () => {
    expect(worked('kind: sill, operations: [{}]')).toMatch(/^\? /u);
  });

  test('inside, primer and wax together protect, for that very part', () => {
    const finish = (cavity: string): unknown =>
      part('id: s, kind: sill', `${tarn}\nfinish: { cavities: [${cavity}] }`).value('part.inside_protected');
    expect(finish('{ part: s, primer: epoxy, wax: through the holes }')).toBe(true);
    expect(finish('{ part: s, wax: through the holes }')).toBe(false);
    expect(finish('{ part: s, primer: epoxy }, { part: s, wax: yes }')).toBe(false);
    expect(finish('{ part: other, primer: epoxy, wax: x }')).toBe(false);
    expect(finish('{ primer: epoxy, wax: x }')).toBe(false);
  });
});

test('a point of lifting is the part that the plan names', () => {
  const lifted = (points: string): unknown =>
    part('id: s', `${tarn}\nmake_safe: { lifting: { points: [${points}] } }`).value('part.lifted_on');
  expect(lifted('s')).toBe(true);
  expect(lifted('other')).toBe(false);
  expect(part('kind: sill', `${tarn}\nmake_safe: { lifting: { points: [s] } }`).value('part.lifted_on')).toBe(
    false,
  );
});

describe('what answers the damage', () => {
  const of = (name: string, operations: string): unknown =>
    part(`kind: sill, operations: [${operations}]`).value(`part.${name}`);

  test('the damaged metal is taken away by a replacement or a cut', () => {
    for (const word of ['replace', 'section', 'butt weld', 'cut for access']) {
      expect([word, of('replaced', `{ do: ${word} }`)]).toEqual([word, true]);
    }
    for (const word of ['heat', 'straighten', 'weld', 'braze', 'bond', 'rivet', 'drill', 'fill', 'leave']) {
      expect([word, of('replaced', `{ do: ${word} }`)]).toEqual([word, false]);
    }
    expect(of('replaced', '{ do: heat }, { do: section }')).toBe(true);
  });

  test('joints are made anew by a word that joins or by a joint that is for good', () => {
    expect(of('joined_anew', '{ do: weld }')).toBe(true);
    expect(of('joined_anew', '{ do: straighten, joints: [{ method: resistance spot }] }')).toBe(true);
    expect(of('joined_anew', '{ do: straighten }')).toBe(false);
    expect(of('joined_anew', '{ do: remove and refit, joints: [{ method: bolt }] }')).toBe(false);
  });
});

test('a part of a kind that can be either is called cosmetic by a page of the maker or by nobody', () => {
  const own = (entries: string): unknown => part(entries).value('part.cosmetic_by_own_word');
  for (const kind of [
    'kind: other',
    'kind: back panel',
    'kind: bracket',
    'kind: radiator support',
    'name: of no kind',
  ]) {
    expect([kind, own(`${kind}, structural: false`)]).toEqual([kind, true]);
    expect([kind, own(kind)]).toEqual([kind, false]);
    expect([kind, own(`${kind}, structural: false, cosmetic_by: { reference: own, at: p. 1 }`)]).toEqual([
      kind,
      false,
    ]);
    expect([kind, own(`${kind}, structural: false, cosmetic_by: { reference: old, at: p. 1 }`)]).toEqual([
      kind,
      true,
    ]);
  }
  expect(own('kind: side panel, structural: false')).toBe(false);
});
