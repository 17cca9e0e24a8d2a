import { describe, expect, test } from 'vitest';
import { factsOf, tarn } from './facts-of.ts';

const part = (entries: string): ReturnType<typeof factsOf> => factsOf(`${tarn}\nparts: [{ ${entries} }]`);

describe('strength', () => {
  test('a stated one is stated, a tabled one is the table’s', () => {
    expect(part('strength: 1500 MPa').fact('part.tensile')).toMatchObject({ value: 1500, from: 'stated' });
    // EN 10268: HC340LA has a proof strength from 340 and a tensile strength from 410 MPa.
    expect(part('grade: HC340LA').fact('part.tensile')).toMatchObject({ value: 410, from: 'table' });
    expect(part('grade: HC340LA').fact('part.yield')).toMatchObject({ value: 340, from: 'table' });
    expect(part('class: mild').fact('part.tensile').known).toBe(false);
  });

  test('in words it is given in MPa and in thousand psi: 1500 MPa is about 218,000 psi (NIST SP 811)', () => {
    expect(part('strength: 1500 MPa').value('part.tensile_text')).toBe(
      'ultra-high-strength, 1500 MPa (about 218,000 psi)',
    );
    expect(part('strength: 217 ksi').value('part.tensile_text')).toContain('(about 217,000 psi)');
    expect(part('class: press-hardened').value('part.tensile_text')).toBe('press-hardened');
    expect(part('kind: sill').fact('part.tensile_text').known).toBe(false);
  });

  test('what cannot be read as a class says why', () => {
    const unknown = part('grade: XQ-17').fact('part.class');
    expect(unknown.known).toBe(false);
    expect(part('kind: sill').value('part.class')).toMatch(/^\? Neither grade nor strength nor class/u);
  });

  test('a strength that the grade cannot have is a contradiction, one within it is none', () => {
    expect(part('grade: 22MnB5+AS150, strength: 420 MPa').value('part.material_agrees')).toBe(false);
    expect(part('grade: 22MnB5+AS150, class: mild').value('part.material_agrees')).toBe(false);
    expect(part('grade: 22MnB5+AS150, strength: 1500 MPa').value('part.material_agrees')).toBe(true);
    expect(part('grade: HC340LA, class: high-strength').value('part.material_agrees')).toBe(true);
  });
});

describe('what the statement rests on', () => {
  test.each([
    ['kind: sill', 'none'],
    ['grade_from: {}', 'none'],
    ['grade_from: { reference: own, at: p. 4 }', 'maker document'],
    ['grade_from: { reference: old, at: p. 4 }', 'hint'],
    ['grade_from: { reference: course }', 'hint'],
    ['grade_from: { reference: nobody }', 'hint'],
    ['grade_from: { by: marking on part }', 'marking on part'],
    ['grade_from: { by: magnet }', 'hint'],
    // A magnet, spark, file or memory is a hint also beside a page; a hardness test beside its page is a check of what was read.
    ['grade_from: { by: magnet, reference: own }', 'hint'],
    ['grade_from: { by: memory, reference: own }', 'hint'],
    ['grade_from: { by: magnet, reference: own, at: p. 4 }', 'hint'],
    ['grade_from: { by: file, reference: own, at: p. 4 }', 'hint'],
    ['grade_from: { by: spark, reference: own, at: p. 4 }', 'hint'],
    ['grade_from: { by: memory, reference: own, at: p. 4 }', 'hint'],
    ['grade_from: { by: hardness test, reference: own, at: p. 4 }', 'maker document'],
    ['grade_from: { by: hardness test, reference: own }', 'hint'],
    ['grade_from: { by: maker document, reference: own }', 'maker document'],
    ['grade_from: { reference: own }', 'maker document'],
    ['grade_from: { by: hardness test }', 'hint'],
    ['grade_from: { by: maker document }', 'hint'],
  ])('{ %s }: %s', (entries, expected) => {
    expect(part(entries).value('part.material_evidence')).toBe(expected);
  });
});

test('thickness in millimetres, coating as stated or as the grade has it', () => {
  expect(part('thickness: 0.055 in').value('part.thickness')).toBeCloseTo(1.397, 9);
  expect(part('thickness: 1.4').value('part.thickness')).toMatch(/^\? .*cannot be read/u);
  expect(part('coating: zinc').fact('part.coating')).toMatchObject({ value: 'zinc', from: 'stated' });
  expect(part('grade: 22MnB5+AS150').value('part.coating')).toBe('aluminium-silicon');
  expect(part('grade: DC04').fact('part.coating').known).toBe(false);
  expect(part('zones: [{}]').value('part.zones')).toBe(true);
  expect(part('zones: []').value('part.zones')).toBe(false);
});
