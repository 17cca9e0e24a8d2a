import { describe, expect, test } from 'vitest';
import { surveyOf } from './facts-of.ts';

describe('a plan, looked up once', () => {
  test('what a part is called: name, else id, else kind', () => {
    const { parts } = surveyOf('parts: [{ id: a, name: Sill }, { id: b, kind: sill }, { kind: sill }, {}]');
    expect(parts.map(({ name }) => name)).toEqual(['Sill', 'b', 'sill', 'a part without a name']);
  });

  test('of two bearers of one id the first counts', () => {
    const survey = surveyOf(
      'parts: [{ id: a, name: first }, { id: a, name: second }]\nreferences: [{ id: a }, { id: a }]',
    );
    expect(survey.partById.get('a')?.name).toBe('first');
    expect(survey.referenceById.get('a')?.at).toBe('/references/0');
    expect(survey.parts).toHaveLength(2);
  });

  test.each([
    // Carries load in a crash, whatever the plan says (common practice).
    ['kind: b-pillar, structural: false', true],
    ['kind: b-pillar', true],
    ['kind: side panel, structural: true', true],
    ['kind: bonnet, structural: true', true],
    ['kind: bonnet', false],
    ['kind: side panel, structural: false', false],
    ['kind: side panel', undefined],
    ['kind: bracket', undefined],
    ['name: of no kind', undefined],
  ])('{ %s } is structural: %s', (entries, expected) => {
    expect(surveyOf(`parts: [{ ${entries} }]`).parts[0]?.structural).toBe(expected);
  });
});

describe('of what a part is', () => {
  const classOf = (entries: string): string | undefined =>
    surveyOf(`parts: [{ ${entries} }]`).parts[0]?.material.class;

  test('grade, strength or class; the strongest of what is said counts', () => {
    expect(classOf('grade: 22MnB5+AS150')).toBe('press-hardened');
    expect(classOf('strength: 340 MPa')).toBe('high-strength');
    expect(classOf('strength: 339 MPa')).toBe('mild');
    // 980 MPa is 142.1 ksi and 590 MPa 85.6 (NIST SP 811); the trade drops the decimal.
    expect(classOf('strength: 85 ksi')).toBe('advanced high-strength');
    // A step of five is rounded, and 980 MPa is spoken 140 ksi.
    expect(classOf('strength: 140 ksi')).toBe('ultra-high-strength');
    expect(classOf('strength: 139 ksi')).toBe('advanced high-strength');
    expect(classOf('strength: 140.0 ksi')).toBe('advanced high-strength');
    expect(classOf('strength: 84 ksi')).toBe('high-strength');
    expect(classOf('strength: 60 kgf/mm2')).toBe('advanced high-strength');
    expect(classOf('strength: 59 kgf/mm2')).toBe('high-strength');
    expect(classOf('strength: 142 ksi')).toBe('ultra-high-strength');
    expect(classOf('strength: 143 ksi')).toBe('ultra-high-strength');
    expect(classOf('class: mild, strength: 1000 MPa')).toBe('ultra-high-strength');
    expect(classOf('name: of nothing stated')).toBeUndefined();
    expect(classOf('strength: 1500')).toBeUndefined();
  });

  test('with tailored zones, the strongest zone', () => {
    const soft = '{ name: foot, class: high-strength }';
    const hard = '{ name: top, grade: 22MnB5 }';
    expect(classOf(`zones: [${soft}, ${hard}]`)).toBe('press-hardened');
    expect(classOf(`class: mild, zones: [${hard}, ${soft}]`)).toBe('press-hardened');
    expect(classOf(`grade: 22MnB5, zones: [${soft}]`)).toBe('press-hardened');
  });

  test('a zone that says nothing of its material is of the part’s; one that nobody can read leaves it open', () => {
    const soft = '{ name: foot, class: high-strength }';
    expect(classOf(`class: mild, zones: [${soft}, { name: top, thickness: 1.8 mm }]`)).toBe('high-strength');
    expect(classOf(`zones: [${soft}, { name: top }]`)).toBeUndefined();
    expect(classOf(`class: mild, zones: [${soft}, { name: top, grade: XQ-17 }]`)).toBeUndefined();
    expect(classOf(`zones: [{ grade: 22MnB5 }, { name: top, grade: XQ-17 }]`)).toBe('press-hardened');
  });

  test('a zone speaks for itself only, not for a part whose own material is not known', () => {
    const soft = '{ name: foot, class: high-strength }';
    expect(classOf(`grade: XQ-17, zones: [${soft}]`)).toBeUndefined();
    expect(classOf(`zones: [${soft}]`)).toBeUndefined();
    expect(classOf(`zones: [${soft}, { name: top, class: mild }]`)).toBe('high-strength');
  });

  test('steel beside another material stands for nothing', () => {
    expect(classOf(`grade: HC340LA, zones: [{ name: node, class: aluminium }]`)).toBeUndefined();
    expect(classOf(`grade: HC340LA, zones: [{ name: patch, class: composite }]`)).toBeUndefined();
    expect(classOf(`grade: 22MnB5, zones: [{ name: patch, class: composite }]`)).toBe('press-hardened');
  });
});
