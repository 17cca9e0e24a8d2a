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
    ['class: mild', 'plain steel'],
    ['class: high-strength', 'plain steel'],
    ['grade: HC340LA', 'plain steel'],
    ['class: advanced high-strength', 'hardened or multi-phase steel'],
    ['class: ultra-high-strength', 'hardened or multi-phase steel'],
    ['grade: 22MnB5', 'hardened or multi-phase steel'],
    ['class: aluminium', 'aluminium'],
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

  test('what is not known is taken as the weakest that it may be, and said to be assumed', () => {
    expect(victim('kind: b-pillar')).toEqual(['hardened or multi-phase steel', 'assumed']);
    expect(victim('kind: bracket')).toEqual(['hardened or multi-phase steel', 'assumed']);
    expect(victim('grade: XQ-17, structural: true')).toEqual(['hardened or multi-phase steel', 'assumed']);
    expect(victim('kind: bonnet')).toEqual(['aluminium', 'assumed']);
    expect(victim('kind: side panel, structural: false')).toEqual(['aluminium', 'assumed']);
  });
});
