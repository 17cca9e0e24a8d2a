import { describe, expect, test } from 'vitest';
import { factsOf } from './facts-of.ts';

/** What is exposed to a bake, by name, with its peak and whether it stays. */
function baked(parts: string, rest = ''): readonly unknown[] {
  return factsOf(`vehicle: { drive: combustion }\nparts:\n${parts}\n${rest}`)
    .all('exposure')
    .filter(({ facts }) => {
      const from = facts['exposure.from'];
      return from?.known === true && from.value === 'bake';
    })
    .map(({ facts }) =>
      ['exposure.name', 'exposure.victim', 'exposure.stays', 'exposure.peak'].map((name) => {
        const fact = facts[name];
        return fact?.known === true ? fact.value : '?';
      }),
    );
}

const booth = 'finish: { bake: { planned: true, temperature: 70 °C, time: 40 min } }';

describe('a bake on a vehicle without a traction battery', () => {
  test('warms what parts hold and what they are of, told once for each kind', () => {
    const parts = `  - { id: a, name: Pillar, grade: 22MnB5, holds: [structural adhesive, wiring] }
  - { id: b, name: Sill, grade: EN AW-7075-T6, holds: [structural adhesive] }`;
    expect(baked(parts, booth)).toEqual([
      ['Pillar', 'hardened or multi-phase steel', true, 70],
      ['structural adhesive at Pillar, structural adhesive at Sill', 'structural adhesive', true, 70],
      ['wiring at Pillar', 'wiring', true, 70],
      ['Sill', 'aluminium 7xxx', true, 70],
    ]);
  });

  test('warms an airbag that nobody says is off by then, as one that may be there', () => {
    const units =
      'make_safe: { restraints: { units: [{ unit: side airbag, name: Side airbag, at: a, state: undeployed, treatment: removed, step: 1 }] } }';
    expect(baked('  - { id: a, name: Pillar, grade: 22MnB5 }', `${booth}\n${units}`)).toContainEqual([
      'Side airbag',
      'airbag',
      '?',
      70,
    ]);
  });

  test('of which the temperature is not stated is not known, for all of it', () => {
    const open = booth.replace('temperature: 70 °C, ', '');
    const derived = factsOf(`parts: [{ id: a, grade: 22MnB5 }]\n${open}`);
    expect(derived.fact('plan.bake_hottest').known).toBe(false);
    expect(derived.fact('exposure.over_limit').known).toBe(false);
  });

  test('the hottest and the coldest of several are told', () => {
    const derived = factsOf(
      `parts: [{ id: a, operations: [{ do: bake, temperature: 90 °C, hold: 20 min }] }]\n${booth}`,
    );
    expect([derived.value('plan.bake_hottest'), derived.value('plan.bake_coldest')]).toEqual([90, 70]);
  });
});

describe('a lamp', () => {
  const lamp = (word: string, near: string, source = 'infra-red panel'): readonly unknown[] =>
    baked(`  - { id: a, name: Door, class: aluminium, structural: false, joined_to: [b], operations: [{ do: ${word}, source: ${source}, temperature: 95 °C, hold: 40 min, near: [${near}] }] }
  - { id: b, name: Frame, grade: DC04, structural: false, holds: [foam] }
  - { id: c, name: Roof, class: composite, structural: false }`);

  test.each(['bake', 'refinish', 'bond', 'fill'])(
    '%s: warms what it stands before, whatever the word',
    (word) => {
      const names = lamp(word, '{ item: structural adhesive, distance: 0 mm, path: same sheet }').map(String);
      expect(names).toContain('structural adhesive,structural adhesive,true,95');
      expect(names).toContain('foam at Frame,foam,true,95');
      expect(names.join()).not.toContain('Roof');
    },
  );

  test('reaches no farther than 300 mm (common practice); an oven takes the whole vehicle', () => {
    const far = '{ item: wiring, distance: 300 mm, path: through air }';
    expect(lamp('bake', far).join()).not.toContain('wiring');
    expect(lamp('bake', far.replace('300', '299')).join()).toContain('wiring');
    expect(lamp('bake', far, 'oven').join()).toContain('Roof');
  });
});
