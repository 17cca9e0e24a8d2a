import { describe, expect, test } from 'vitest';
import { operationTraits } from '../../src/facts/survey-operation.ts';
import { surveyOf } from './facts-of.ts';

/** What an operation does, as letters: c(uts part-way) h(eats) s(traightens) w(orks) o(hot) e(lectric); `?` after what is open. */
function traits(operation: string, part = 'kind: sill'): string {
  const [one] = surveyOf(`parts: [{ ${part}, operations: [${operation}] }]`).operations;
  if (one === undefined) throw new Error('no operation');
  const { cutsPartWay, heats, straightens, works, hot, electricWelding } = operationTraits(
    one.operation,
    one.part.part,
  );
  const letters = { c: cutsPartWay, h: heats, s: straightens, w: works, o: hot, e: electricWelding };
  return Object.entries(letters)
    .map(([letter, value]) => (value === undefined ? `${letter}?` : value ? letter : ''))
    .join('');
}

const spots = 'joints: [{ method: resistance spot }]';
const rivets = 'joints: [{ method: blind rivet }]';

describe('what an operation does is read off its word', () => {
  test.each([
    ['{ do: section }', 'cwoe'],
    ['{ do: butt weld }', 'cwoe'],
    ['{ do: heat }', 'hwo'],
    ['{ do: straighten, method: cold }', 'sw'],
    ['{ do: straighten, method: with heat }', 'hswo'],
    ['{ do: weld }', 'woe'],
    ['{ do: braze }', 'woe'],
    ['{ do: bond }', 'w'],
    ['{ do: rivet }', 'w'],
    ['{ do: drill }', 'wo'],
    ['{ do: cut for access }', 'cwo'],
    ['{ do: grind }', 'o'],
    // A sill is welded in: it comes off by drilling or cutting only.
    ['{ do: remove and refit }', 'wo'],
    ['{ do: remove and refit, at: B }', 'cwo'],
    ['{ do: remove and refit, extent: part }', 'cwo'],
    ['{ do: fill }', ''],
    ['{ do: refinish }', ''],
    ['{ do: bake }', ''],
    ['{ do: leave }', ''],
    ['{ do: replace, extent: whole }', 'woe'],
    ['{ do: replace, extent: part }', 'cwoe'],
    ['{ do: replace }', 'c?woe'],
    ['{}', 'c?h?s?w?o?e?'],
  ])('%s: %s', (operation, expected) => {
    expect(traits(operation)).toBe(expected);
  });
});

describe('and off its joints', () => {
  test.each([
    [`{ do: replace, extent: whole, ${spots} }`, 'woe'],
    // The old part is drilled or cut out, whatever holds the new one.
    [`{ do: replace, extent: whole, ${rivets} }`, 'wo'],
    [`{ do: section, ${rivets} }`, 'cwo'],
    ['{ do: replace, extent: whole, joints: [{}] }', 'woe?'],
    ['{ do: replace, extent: whole, joints: [{}, { method: plug weld }] }', 'woe'],
    ['{ do: replace, extent: whole, joints: [{ method: laser seam }] }', 'wo'],
    // Called whole, but joined end to end: it is cut part-way.
    ['{ do: replace, extent: whole, joints: [{ method: arc seam, form: open butt }] }', 'cwoe'],
    ['{ do: weld, joints: [{ method: arc seam, form: butt with insert }] }', 'cwoe'],
    ['{ do: weld, joints: [{ method: laser seam }] }', 'wo'],
    ['{ do: rivet, joints: [{ method: blind rivet, form: open butt }] }', 'cw'],
    [`{ do: remove and refit, ${spots} }`, 'woe'],
    ['{ do: remove and refit, joints: [{ method: bolt }] }', ''],
    // A cut or a weld does not hide behind a harmless word.
    ['{ do: leave, joints: [{ method: arc seam, form: open butt }] }', 'cwoe'],
    ['{ do: heat, joints: [{ method: blind rivet, form: butt with insert }] }', 'chwo'],
    [`{ do: straighten, method: cold, ${spots} }`, 'swoe'],
    ['{ do: refinish, joints: [{}] }', 'w?o?e?'],
    [`{ do: fill, ${rivets} }`, 'w'],
    // Without a word the joints still say what they say.
    [`{ ${spots} }`, 'c?h?s?woe'],
    ['{ joints: [{ form: open butt }] }', 'ch?s?wo?e?'],
    [`{ ${rivets} }`, 'c?h?s?wo?e?'],
  ])('%s: %s', (operation, expected) => {
    expect(traits(operation)).toBe(expected);
  });

  test('a part that is bolted or glued on goes on without welding, unless a joint says otherwise', () => {
    expect(traits('{ do: replace, extent: whole }', 'kind: bonnet')).toBe('w');
    expect(traits('{ do: replace }', 'kind: lamp')).toBe('w');
    expect(traits('{ do: replace, extent: part }', 'kind: bumper cover')).toBe('cw');
    expect(traits(`{ do: replace, extent: whole, ${spots} }`, 'kind: bonnet')).toBe('woe');
    expect(traits('{ do: replace, extent: whole }', 'name: of no kind')).toBe('woe');
  });
});

describe('heat in straightening', () => {
  test.each([
    'source: torch',
    'temperature: 600 °C',
    'hold: 20 s',
    'times: 1',
    'measured_by: { means: none }',
  ])('%s says that there is heat, whatever the method says', (entry) => {
    expect(traits(`{ do: straighten, ${entry} }`)).toBe('hswo');
    expect(traits(`{ do: straighten, method: cold, ${entry} }`)).toBe('hswo');
  });

  test('nothing said is no answer, for it and for all that hangs on it', () => {
    expect(traits('{ do: straighten }')).toBe('h?swo?');
  });
});

test('off the vehicle nothing of the vehicle is hot or carries current; the part is worked on all the same', () => {
  for (const kind of ['kind: door', 'kind: door skin', 'kind: tailgate']) {
    expect(traits('{ do: section, off_vehicle: true }', kind)).toBe('cw');
    expect(traits('{ do: heat, off_vehicle: true }', kind)).toBe('hw');
  }
  expect(traits('{ do: section, off_vehicle: false }', 'kind: door')).toBe('cwoe');
});

describe('a bracket or a part that no kind fits, replaced whole', () => {
  const whole = (more: string, part = 'kind: other'): string =>
    traits(`{ do: replace, extent: whole, ${more} }`, part);

  test('is welded or bolted: nobody knows until the plan says it', () => {
    expect(traits('{ do: replace, extent: whole }', 'kind: other')).toBe('wo?e?');
    expect(traits('{ do: replace, extent: whole }', 'kind: bracket, structural: false')).toBe('wo?e?');
    expect(whole('fasteners: { one_time: none }')).toBe('wo?e?');
    expect(whole('earth_clamp_on: none needed')).toBe('wo?e?');
  });

  test.each([
    'fasteners: { one_time: renewed }',
    'fasteners: { one_time: none, cite: { reference: r } }',
    'fasteners: { tightened: 2026-09-22 }',
    'joints: [{ method: bolt }]',
  ])('neither welded nor cut: %s', (more) => {
    expect(whole(more)).toBe('w');
    expect(whole(more, 'kind: bracket, structural: false')).toBe('w');
  });

  test('neither is a composite welded', () => {
    expect(traits('{ do: replace, extent: whole }', 'kind: other, class: composite')).toBe('w');
  });

  test.each([
    ['kind: other, structural: true', 'fasteners: { one_time: renewed }'],
    ['kind: bracket, class: press-hardened', 'fasteners: { one_time: renewed }'],
    ['kind: bracket, name: Welded bracket', 'fasteners: { one_time: renewed }'],
    ['kind: reinforcement', 'fasteners: { one_time: renewed }'],
    ['name: of no kind', 'fasteners: { one_time: renewed }'],
    ['kind: other', 'earth_clamp: on the same part'],
    ['kind: other', 'cut_with: grinder'],
  ])('taken for welded: %s, %s', (part, more) => {
    expect(whole(more, part)).toBe('woe');
  });

  test('its joints say more than its kind', () => {
    expect(whole(spots)).toBe('woe');
    expect(whole(rivets)).toBe('wo');
    expect(whole('joints: [{ method: bolt }, { method: arc seam }]')).toBe('woe');
  });
});

test('what is part of the body is not welded off the vehicle, whatever the plan says; what comes off may be filed there', () => {
  for (const kind of ['kind: sill', 'kind: door ring', 'kind: other', 'name: of no kind']) {
    expect(traits('{ do: section, off_vehicle: true }', kind)).toBe('cwoe');
    expect(traits('{ do: heat, off_vehicle: true }', kind)).toBe('hwo');
  }
  expect(traits('{ do: grind, off_vehicle: true }', 'kind: door')).toBe('');
  expect(traits('{ do: grind, off_vehicle: true }', 'kind: other')).toBe('');
  expect(traits('{ do: grind, off_vehicle: true }', 'kind: sill')).toBe('o');
});

describe('a heat does not hide behind another word', () => {
  test.each(['bake', 'refinish', 'remove and refit', 'bond', 'leave', 'fill'])(
    '%s with a torch, or above 100 °C',
    (word) => {
      const heats = (entry: string): boolean => traits(`{ do: ${word}, ${entry} }`).startsWith('h');
      expect(heats('source: torch')).toBe(true);
      expect(heats('source: induction, temperature: 60 °C')).toBe(true);
      expect(heats('temperature: 101 °C')).toBe(true);
      expect(heats('temperature: 600 °C, source: hot air')).toBe(true);
      expect(heats('temperature: 100 °C, source: infra-red panel')).toBe(false);
      expect(heats('source: infra-red panel')).toBe(false);
    },
  );

  test('a replacement with a torch heats too', () => {
    expect(traits('{ do: replace, extent: whole, temperature: 600 °C, source: torch }')).toBe('hwoe');
  });
});

describe('whole and yet with a cut', () => {
  test.each([
    ['extent: whole', ''],
    ['extent: whole, at: B', 'c?'],
    ['extent: whole, joints: [{ method: resistance spot, insert: { grade: DC04 } }]', 'c?'],
    ['extent: part, at: B', 'c'],
  ])('{ do: replace, %s }', (entries, cut) => {
    expect(traits(`{ do: replace, ${entries} }`)).toBe(`${cut}woe`);
  });
});
