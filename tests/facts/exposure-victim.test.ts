import { describe, expect, test } from 'vitest';
import { factsOf } from './facts-of.ts';

/** What a listed neighbour with these entries counts as, as far as heat is concerned. */
function victim(entries: string): unknown {
  const fact = factsOf(
    `parts: [{ operations: [{ do: heat, near: [{ part: n }] }] }, { id: n, ${entries} }]`,
  ).fact('exposure.victim');
  return fact.known ? [fact.value, fact.from] : fact;
}

describe('what stands how much heat', () => {
  test.each([
    ['class: mild, structural: false', 'plain steel'],
    ['class: mild, grade_from: { by: marking on part }', 'plain steel'],
    ['class: high-strength, kind: bonnet', 'plain steel'],
    ['grade: HC340LA, kind: sill, grade_from: { by: marking on part }', 'plain steel'],
    ['class: advanced high-strength', 'hardened or multi-phase steel'],
    ['grade: S700MC, grade_from: { by: marking on part }', 'strong low-alloy steel'],
    ['grade: S700MC, grade_from: { by: magnet }', 'hardened or multi-phase steel'],
    ['grade: S700MC', 'hardened or multi-phase steel'],
    ['grade: S960MC, grade_from: { by: marking on part }', 'hardened or multi-phase steel'],
    ['grade: HCT590X, grade_from: { by: marking on part }', 'hardened or multi-phase steel'],
    [
      'grade: S700MC, class: ultra-high-strength, grade_from: { by: marking on part }',
      'hardened or multi-phase steel',
    ],
    ['grade: DC01+C440, grade_from: { by: marking on part }', 'hardened or multi-phase steel'],
    ['grade: DC01+LC, grade_from: { by: marking on part }', 'plain steel'],
    ['class: ultra-high-strength', 'hardened or multi-phase steel'],
    ['grade: 22MnB5', 'hardened or multi-phase steel'],
    ['class: aluminium, structural: false', 'aluminium'],
    ['grade: EN AW-6016-T4', 'aluminium'],
    // Handbook heat.md section 8: 7xxx 120 °C, castings no heat.
    ['grade: EN AW-7075-T6', 'aluminium 7xxx'],
    ['grade: EN AC-43500', 'aluminium casting'],
    ['class: stainless', 'stainless steel'],
    ['class: magnesium', 'magnesium or composite'],
    ['class: composite', 'magnesium or composite'],
    ['kind: glass', 'glass'],
    ['kind: trim', 'trim'],
    ['kind: traction battery', 'traction battery'],
    ['kind: restraint unit', 'airbag'],
  ])('{ %s } is %s', (entries, expected) => {
    expect(victim(entries)).toEqual([expected, 'computed']);
  });

  test('steel that stands heat only by hearsay counts as hardened, where it may carry load', () => {
    for (const entries of [
      'class: mild',
      'grade: DC04, kind: b-pillar',
      'grade: HC340LA, grade_from: { by: magnet }',
    ]) {
      expect([entries, victim(entries)]).toEqual([entries, ['hardened or multi-phase steel', 'assumed']]);
    }
  });

  test('what is not known is taken as the weakest that it may be, and said to be assumed', () => {
    for (const entries of [
      'kind: b-pillar',
      'kind: bracket',
      'grade: XQ-17, structural: true',
      'kind: bonnet',
      'kind: side panel, structural: false',
      // A strength alone does not tell steel from aluminium.
      'strength: 300 MPa, kind: bonnet',
    ]) {
      expect([entries, victim(entries)]).toEqual([entries, ['unknown material', 'assumed']]);
    }
    expect(victim('class: aluminium')).toEqual(['aluminium of unknown alloy', 'assumed']);
  });
});
