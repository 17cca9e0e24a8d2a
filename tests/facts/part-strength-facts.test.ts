import { describe, expect, test } from 'vitest';
import { lookUp } from '../../src/facts/sheet.ts';
import { factsOf, tarn } from './facts-of.ts';

const parts = (...entries: readonly string[]): ReturnType<typeof factsOf> =>
  factsOf(`${tarn}\nparts: [${entries.map((one) => `{ ${one} }`).join(', ')}]`);
const value = (entries: string, name: string): unknown => parts(entries).value(name);

describe('how the grade can be read', () => {
  test.each([
    ['strength: 440 MPa', 'none stated'],
    ['grade: , strength: 440 MPa', 'none stated'],
    ['grade: HC340LA', 'read'],
    ['grade: CR820Y1180T-DP', 'read by its form'],
    ['grade: "600"', 'several readings'],
    ['grade: XQ-17, class: mild', 'not read'],
    ['grade: XQ-17', 'not read'],
    ['grade: "?", strength: 440 MPa', 'mistyped or left open'],
    ['grade: TBD, class: mild', 'mistyped or left open'],
    ['grade: n/a, class: mild', 'mistyped or left open'],
    ['grade: "", class: mild', 'mistyped or left open'],
    ['grade: HC34OLA, class: mild', 'mistyped or left open'],
    [
      'class: mild, zones: [{ name: foot, grade: "?", class: mild }, { name: head, grade: DC04 }]',
      'mistyped or left open',
    ],
  ])('{ %s }: %s', (entries, expected) => {
    expect(value(entries, 'part.grade_read')).toBe(expected);
  });
});

describe('cold work', () => {
  test('the hardest zone counts, and an open one before a soft one', () => {
    const zones = (one: string, other: string): string =>
      `zones: [{ name: a, grade: ${one} }, { name: b, grade: ${other} }]`;
    expect(value(zones('1.4310+C1000', '1.4310+C850'), 'part.cold_worked_to')).toBe(1000);
    expect(value(zones('1.4301+2B', '1.4310+C850'), 'part.cold_worked')).toBe(true);
    expect(value(zones('1.4301+2B', '1.4310'), 'part.cold_worked')).toMatch(/^\? Whether the stainless/);
    expect(value(zones('DC04', 'HC340LA'), 'part.cold_worked')).toBe(false);
  });

  test('a sheet of the stack is enough', () => {
    const joint = (other: string): unknown =>
      parts(
        'id: a, grade: HC340LA, operations: [{ do: weld, joints: [{ method: plug weld, sheets: [a, b] }] }]',
        `id: b, ${other}`,
      ).value('joint.cold_worked');
    expect(joint('grade: DC01+C440')).toBe(true);
    expect(joint('grade: DC01')).toBe(false);
    expect(joint('grade: 1.4310')).toMatch(/^\? Whether the stainless/);
  });
});

describe('which aluminium', () => {
  test.each([
    ['grade: HC340LA', 'no aluminium'],
    ['grade: EN AC-43500', 'casting'],
    ['grade: AA7003', '7xxx'],
    ['class: aluminium, kind: bonnet', 'sheet of a skin'],
    ['class: aluminium, kind: quarter panel', 'sheet of a skin'],
    ['grade: EN AC-43500, kind: bonnet', 'casting'],
    [
      'class: aluminium, kind: strut tower',
      '? Whether it is sheet, a profile or a casting, and of which alloy, is not stated.',
    ],
    [
      'class: aluminium, kind: bracket',
      '? Whether it is sheet, a profile or a casting, and of which alloy, is not stated.',
    ],
  ])('{ %s }: %s', (entries, expected) => {
    expect(value(entries, 'part.aluminium')).toBe(expected);
  });
});

test.each([
  ['grade: HC340LA, strength: 450 MPa', 'fits'],
  ['grade: HC340LA, strength: 560 MPa', 'outside'],
  ['grade: HC420LA, strength: 600 MPa', 'outside, and another class'],
  ['strength: 600 MPa', 'fits'],
  ['grade: HC340LA', 'fits'],
])('{ %s }: the strength %s', (entries, expected) => {
  expect(value(entries, 'part.strength_fits')).toBe(expected);
});

describe('the weaker of two sides', () => {
  const cited = (at: string): string => `grade_from: { reference: own, at: ${at} }`;
  const weaker = (left: string, right: string): readonly unknown[] => {
    const plan = parts(`name: Sill left, kind: sill, ${left}`, `name: Sill right, kind: sill, ${right}`);
    return [plan.value('part.weaker_than_twin', '/parts/0'), plan.value('part.weaker_than_twin', '/parts/1')];
  };

  test.each([
    ['mild beside press-hardened', 'grade: DC04', 'grade: 22MnB5', [true, false]],
    ['wherever it stands', 'grade: 22MnB5', 'grade: DC04', [false, true]],
    ['from one page', `grade: DC04, ${cited('p. 3')}`, `grade: 22MnB5, ${cited('p. 3')}`, [true, false]],
    ['by its own page', `grade: DC04, ${cited('p. 5')}`, `grade: 22MnB5, ${cited('p. 3')}`, [false, false]],
    [
      'by its own marking',
      'grade: DC04, grade_from: { by: marking on part }',
      'grade: 22MnB5',
      [false, false],
    ],
    ['by a magnet of its own', 'grade: DC04, grade_from: { by: magnet }', 'grade: 22MnB5', [true, false]],
    [
      'by the page of another year',
      'grade: DC04, grade_from: { reference: old, at: p. 1 }',
      'grade: 22MnB5',
      [true, false],
    ],
    ['steel beside aluminium', 'grade: DC04', 'grade: 6016-T4', [true, true]],
    ['another grade of the class', 'grade: HC300LA', 'grade: HC340LA', [false, false]],
    ['alike', 'grade: DC04', 'grade: DC04', [false, false]],
    ['one of unknown class', 'grade: DC04', 'thickness: 1 mm', [false, false]],
  ])('%s', (_why, left, right, expected) => {
    expect(weaker(left, right)).toEqual(expected);
  });

  test('a cut in a zone does not hide it', () => {
    const plan = parts(
      'name: Sill left, kind: sill, grade: HC340LA, zones: [{ name: foot, grade: DC04 }], operations: [{ do: section, zone: foot, at: B }]',
      'name: Sill right, kind: sill, grade: 22MnB5',
    );
    const [cut] = plan.all('operation');
    const fact = cut === undefined ? undefined : lookUp(cut, 'part.weaker_than_twin');
    expect(fact).toMatchObject({ known: true, value: true });
  });

  test('both are named with what they are stated as', () => {
    const plan = parts(
      'name: Sill left, kind: sill, grade: DC04',
      'name: Sill right, kind: sill, strength: 1500 MPa',
    );
    expect(plan.value('part.twin_stronger', '/parts/0')).toBe(
      'Sill left is stated as DC04 (mild), and Sill right as 1500 MPa (ultra-high-strength)',
    );
  });
});
