import { describe, expect, test } from 'vitest';
import { factsOf, tarn } from './facts-of.ts';

const operation = (entries: string, part = 'kind: sill'): ReturnType<typeof factsOf> =>
  factsOf(`${tarn}\nparts: [{ id: p, ${part}, operations: [{ ${entries} }] }]`);

describe('what it does', () => {
  test('an operation without a word leaves open all that hangs on the word', () => {
    const derived = operation('cite: { reference: own, at: p. 1 }');
    for (const name of [
      ...[
        'operation.do',
        'operation.work',
        'operation.cuts_part_way',
        'operation.heats',
        'operation.straightens',
      ],
      ...['operation.alters_structure', 'operation.hot', 'operation.hot_or_impact', 'operation.flame_or_arc'],
    ]) {
      expect([name, derived.value(name)]).toEqual([name, '? What is to be done is not stated.']);
    }
  });

  test('said to be whole and yet to be cut, it is asked which', () => {
    const value = operation('do: replace, extent: whole, at: B', 'kind: sill').value(
      'operation.cuts_part_way',
    );
    expect(value).toMatch(/^\? It is to be replaced whole, and yet/u);
  });

  test('an unreadable word says so instead', () => {
    expect(operation('do: splice').value('operation.do')).toBe(
      '? What the plan writes there cannot be read.',
    );
  });

  test.each([
    ['do: section', 'kind: sill', true],
    ['do: replace, extent: whole', 'kind: sill', true],
    ['do: section', 'kind: bonnet', false],
    ['do: refinish', 'kind: sill', false],
    ['do: grind', 'kind: sill', false],
    ['do: refinish', 'kind: bracket', false],
    ['do: section', 'kind: bracket', '? Whether p is structural'],
    ['do: section', 'kind: bracket, structural: true', true],
  ])('{ %s } on { %s } alters structure: %s', (entries, part, expected) => {
    const value = operation(entries, part).value('operation.alters_structure');
    if (typeof expected === 'string') expect(value).toContain(expected);
    else expect(value).toBe(expected);
  });

  test('heat and blows on the vehicle, none off it', () => {
    expect(operation('do: straighten, method: cold').value('operation.hot_or_impact')).toBe(true);
    expect(operation('do: weld').value('operation.hot_or_impact')).toBe(true);
    expect(operation('do: weld, off_vehicle: true', 'kind: door').value('operation.hot_or_impact')).toBe(
      false,
    );
    expect(operation('do: weld, off_vehicle: true', 'kind: door').value('operation.flame_or_arc')).toBe(
      false,
    );
    expect(operation('do: weld, off_vehicle: true', 'kind: sill').value('operation.hot_or_impact')).toBe(
      true,
    );
    expect(operation('do: refinish').value('operation.hot_or_impact')).toBe(false);
  });

  test.each([
    ['do: heat', true],
    ['do: weld', true],
    ['do: weld, joints: [{ method: resistance spot }]', false],
    ['do: weld, joints: [{ method: arc braze }]', true],
    ['do: weld, joints: [{ method: resistance spot }, { method: plug weld }]', true],
    ['do: grind, off_vehicle: true', false],
    ['do: refinish', false],
  ])('{ %s } has flame or arc: %s', (entries, expected) => {
    expect(operation(entries).value('operation.flame_or_arc')).toBe(expected);
  });

  test('with a joint whose method is not stated, whether there is an arc is open', () => {
    const entries = 'do: weld, joints: [{ method: resistance spot }, {}]';
    expect(operation(entries).fact('operation.flame_or_arc').known).toBe(false);
  });

  test('joints are due where something is joined', () => {
    const stated = (entries: string, part?: string): unknown =>
      operation(entries, part).value('operation.joints_stated');
    expect(stated('do: weld')).toBe(false);
    expect(stated('do: weld, joints: [{}]')).toBe(true);
    expect(stated('do: replace')).toBe(false);
    expect(stated('do: replace', 'kind: bonnet')).toBe(true);
    expect(stated('do: section', 'kind: bonnet')).toBe(false);
    expect(stated('do: heat')).toBe(true);
  });
});

describe('on what it rests', () => {
  test.each([
    ['cite: { reference: own, at: p. 1 }', 'covers', 'BRM-1 revision D, p. 1'],
    ['cite: { reference: own }', 'covers', 'BRM-1 revision D'],
    ['cite: { reference: course }', 'other kind', 'A course (training)'],
    ['cite: { reference: nobody }', 'not listed', 'nobody, which the plan does not list'],
  ])('{ %s } is %s', (entries, standing, text) => {
    expect(operation(`do: heat, ${entries}`).value('operation.citation')).toBe(standing);
    expect(operation(`do: heat, ${entries}`).value('operation.citation_text')).toBe(text);
  });

  test('a document of other years says which', () => {
    const derived = operation('do: heat, cite: { reference: old, at: p. 1 }');
    expect(derived.value('operation.citation')).toBe('other year');
    expect(derived.value('operation.citation_text')).toMatch(
      /BRM-0 revision A, p\. 1\. .*2015 to\s2019, not 2021/u,
    );
  });

  test('nothing cited', () => {
    expect(operation('do: heat').value('operation.citation')).toBe('none');
    expect(operation('do: heat').fact('operation.citation_text').known).toBe(false);
  });

  test('a sheet for each citation, and none for one of nothing listed', () => {
    const cites = 'cite: [{ reference: own, at: p. 1 }, { reference: course }, { reference: nobody }]';
    const sheets = operation(`do: heat, ${cites}`).all('citation');
    expect(sheets.map(({ at }) => at)).toEqual([
      '/parts/0/operations/0/cite/0',
      '/parts/0/operations/0/cite/1',
    ]);
    const facts = sheets.map((sheet) =>
      ['citation.rested_on', 'citation.place_stated'].map((name) => {
        const fact = sheet.facts[name];
        return fact?.known === true && fact.value;
      }),
    );
    expect(facts).toEqual([
      [true, true],
      [false, false],
    ]);
  });

  test('a citation sees its operation, part and document', () => {
    const derived = operation('do: heat, cite: { reference: own }', 'kind: sill, name: Sill');
    expect(derived.fact('citation.place_stated', '/parts/0/operations/0/cite')).toMatchObject({
      value: false,
    });
    const [sheet] = derived.all('citation');
    expect(sheet?.standsOn.map(({ kind }) => kind).sort()).toEqual(['operation', 'reference']);
  });
});

describe('what lies around it', () => {
  const around = (entries: string): unknown =>
    operation(`do: heat, ${entries}`).value('operation.looked_within');

  test('is stated by how far it was looked; a list alone leaves open what it leaves out', () => {
    expect(around('step: 1')).toBe(0);
    expect(around('near: []')).toBe(0);
    expect(around('near: [{ item: foam }]')).toBe(0);
    expect(around('near: [{ item: foam }], clear_within: 300 mm')).toBe(300);
    expect(around('clear_within: 299 mm')).toBe(299);
    expect(around('clear_within: 12 in')).toBeCloseTo(304.8, 9);
    expect(around('clear_within: 300')).toBe(0);
  });

  test('earth clamp and control units are both due', () => {
    const [clamp, units] = ['earth_clamp: on the sill', 'control_units: unplugged'];
    const unsaid = (text: string): unknown =>
      operation(`do: weld, ${text}`).value('operation.current_path_unsaid');
    expect(unsaid(`${clamp}, ${units}`)).toContain('?');
    expect(unsaid(clamp)).toBe('what is done with control units');
    expect(unsaid(units)).toBe('the place of the earth clamp');
    expect(unsaid('step: 1')).toBe('the place of the earth clamp and what is done with control units');
  });

  test.each([
    ['do: weld', 'welding'],
    ['do: weld, joints: [{ method: laser seam }]', undefined],
    ['do: weld, joints: [{ method: resistance spot }]', undefined],
    ['do: weld, joints: [{ method: arc braze }]', 'welding'],
    ['do: replace, cut_with: plasma, joints: [{ method: resistance spot }]', 'plasma cut'],
    ['do: replace, cut_with: plasma, joints: [{ method: plug weld }]', 'welding and plasma cut'],
    ['do: replace, cut_with: flame, joints: [{ method: resistance spot }]', undefined],
  ])('%s: an arc of %s', (text, expected) => {
    const value = operation(text, 'kind: sill').value('operation.arc_work');
    expect(value).toEqual(expected ?? expect.stringContaining('?'));
  });

  test('a fire watch of the operation or of the whole plan', () => {
    expect(operation('do: weld').value('operation.fire_watch_stated')).toBe(false);
    expect(operation('do: weld, fire_watch: 30 min').value('operation.fire_watch_stated')).toBe(true);
    const whole = factsOf('make_safe: { fire: { watch: 1 h } }\nparts: [{ operations: [{ do: weld }] }]');
    expect(whole.value('operation.fire_watch_stated')).toBe(true);
  });
});
