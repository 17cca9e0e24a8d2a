import { describe, expect, test } from 'vitest';
import { factsOf, tarn } from './facts-of.ts';

const parts = (...entries: readonly string[]): ReturnType<typeof factsOf> =>
  factsOf(`${tarn}\nparts: [${entries.map((one) => `{ ${one} }`).join(', ')}]`);
const part = (entries: string): ReturnType<typeof factsOf> => parts(entries);

test.each([
  ['grade: CR4', true],
  ['grade: UHSS', true],
  ['grade: "600"', true],
  ['grade: 1.5 GPa', true],
  ['grade: JSC1470Y', true],
  ['grade: HC340LA', false],
  ['grade: 22MnB5+AS150', false],
  ['grade: boron', false],
  ['grade: HSS, strength: 450 MPa', false],
  ['strength: 1500 MPa', false],
  ['class: mild', false],
  ['grade: DC04, zones: [{ name: foot, grade: UHSS }]', true],
  ['grade: 22MnB5, zones: [{ name: foot, grade: CR4 }]', true],
])('{ %s } is ambiguous: %s', (entries, expected) => {
  expect(part(entries).value('part.material_ambiguous')).toBe(expected);
});

test('the question says what would settle it', () => {
  expect(part('grade: UHSS').value('part.material_question')).toContain('State the grade');
  expect(part('grade: DC04').fact('part.material_question').known).toBe(false);
});

test('a delivered strength in the grade does not soften the part', () => {
  expect(part('grade: 22MnB5 as delivered').value('part.class')).toBe('press-hardened');
});

test('carbon equivalents where a composition is on record, with what they rest on', () => {
  expect(part('grade: 22MnB5+AS150').value('part.weldability')).toBe(
    'CE 0.46, CET 0.36, Pcm 0.31 (typical composition)',
  );
  expect(part('grade: S355MC').value('part.weldability')).toContain('limits of the analysis');
  expect(part('grade: HCT980X').fact('part.weldability').known).toBe(false);
});

test.each([
  ['grade: 22MnB5+AS150, coating: zinc', false],
  ['grade: CR1220Y1500T-MS-UC, coating: zinc', false],
  ['grade: DC04+ZE50/50, coating: none', false],
  ['grade: DX54D+ZF100, coating: zinc', true],
  ['grade: DX54D+Z100, coating: zinc', true],
  ['grade: 22MnB5+AS150', true],
  ['grade: DC04, coating: zinc', true],
  ['coating: zinc', true],
])('{ %s }: the coatings agree: %s', (entries, expected) => {
  expect(part(entries).value('part.coating_agrees')).toBe(expected);
});

test('a contradiction of coatings names both', () => {
  expect(part('grade: 22MnB5+AS150, coating: zinc').value('part.coating_contradiction')).toBe(
    'The grade 22MnB5+AS150 carries aluminium-silicon, but the coating is stated as zinc.',
  );
});

// EN 10268 and EN 10130 are written for 0.35 to 3 mm, EN 10149-2 for 1.5 to 20 mm (from memory of the scopes).
test.each([
  ['grade: HC340LA, thickness: 6 mm', false],
  ['grade: HC340LA, thickness: 3 mm', true],
  ['grade: S355MC, thickness: 0.8 mm', false],
  ['grade: S355MC, thickness: 6 mm', true],
  ['grade: CR330Y590T-DP, thickness: 9 mm', true],
  ['grade: HC340LA', true],
  ['thickness: 9 mm', true],
])('{ %s }: the thickness fits the standard: %s', (entries, expected) => {
  expect(part(entries).value('part.thickness_fits')).toBe(expected);
});

test('a tailored blank or a soft zone in the grade counts as zones', () => {
  expect(part('grade: 22MnB5+AS150 + HC340LA+Z100').value('part.zones')).toBe(true);
  expect(part('grade: 22MnB5 with soft zone').value('part.zones')).toBe(true);
  expect(part('grade: 22MnB5').value('part.zones')).toBe(false);
});

describe('left and right of one part', () => {
  const differs = (left: string, right: string, more = ''): unknown =>
    parts(
      `id: sill-l, name: 'Sill, left', kind: sill, ${left}`,
      `id: sill-r, name: 'Sill, right', kind: sill, ${right}${more}`,
    ).value('part.twin_differs', '/parts/1');

  test.each([
    ['grade: HCT780X', 'grade: DC04', true],
    ['thickness: 1.2 mm', 'thickness: 1.5 mm', true],
    ['class: mild', 'class: high-strength', true],
    ['strength: 780 MPa', 'strength: 980 MPa', true],
    ['grade: HCT780X', 'grade: hct 780 x', false],
    ['thickness: 1.2 mm', 'thickness: 0.047 in', false],
    ['grade: HCT780X', 'class: advanced high-strength', false],
    ['grade: HCT780X', 'thickness: 1.2 mm', false],
  ])('{ %s } beside { %s }: %s', (left, right, expected) => {
    expect(differs(left, right)).toBe(expected);
  });

  test('it is told on the second of them, with both names', () => {
    const plan = parts(
      'name: Sill left, kind: sill, grade: DC04',
      'name: Sill right, kind: sill, grade: HC340LA',
    );
    expect(plan.value('part.twin_differs', '/parts/0')).toBe(false);
    expect(plan.value('part.twin_difference', '/parts/1')).toBe(
      'grade HC340LA against DC04 (Sill right against Sill left)',
    );
  });

  test.each([
    [
      'another part',
      'name: Sill left, kind: sill, grade: DC04',
      'name: Rail right, kind: front rail, grade: HCT780X',
    ],
    [
      'the same side',
      'name: Sill left, kind: sill, grade: DC04',
      'name: Sill left, kind: sill, grade: HCT780X',
    ],
    ['no side', 'name: Sill, kind: sill, grade: DC04', 'name: Sill, kind: sill, grade: HCT780X'],
    [
      'a word that only begins like a side',
      'name: Roof rail lower, kind: roof rail, grade: DC04',
      'name: Roof rail right, kind: roof rail, grade: HCT780X',
    ],
  ])('%s is no twin', (_why, one, other) => {
    expect(parts(one, other).value('part.twin_differs', '/parts/1')).toBe(false);
  });

  test('the side may stand apart from the name', () => {
    expect(
      parts(
        'name: Sill, side: left, kind: sill, grade: DC04',
        'name: Sill, side: right, kind: sill, grade: HCT780X',
      ).value('part.twin_differs', '/parts/1'),
    ).toBe(true);
  });
});
