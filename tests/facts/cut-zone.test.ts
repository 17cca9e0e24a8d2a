import { expect, test } from 'vitest';
import { factsOf } from './facts-of.ts';

// A pillar of press-hardened steel whose foot was kept soft, as tailored blanks and tools make them. Common practice.
const pillar = (operation: string): ReturnType<typeof factsOf> =>
  factsOf(`parts:
  - id: pillar
    kind: b-pillar
    grade: 22MnB5
    zones: [{ name: foot, class: high-strength, grade: HC340LA }, { name: top }]
    operations: [{ ${operation}, joints: [{ method: arc seam, form: butt with insert, sheets: [pillar] }] }]`);
const seen = (operation: string): unknown => {
  const derived = pillar(operation);
  const sheet = derived.all('operation')[0]?.standsOn[0]?.facts['part.class'];
  return [sheet?.known === true && sheet.value, derived.value('joint.classes')];
};

test('a cut is judged by the zone that it lies in, with its joints', () => {
  expect(seen('do: section, at: A, zone: foot')).toEqual(['high-strength', ['high-strength']]);
  expect(seen('do: replace, extent: part, at: A, zone: foot')).toEqual(['high-strength', ['high-strength']]);
});

test('a zone that says nothing of itself, or is not listed, leaves the part’s strongest', () => {
  expect(seen('do: section, at: A, zone: top')).toEqual(['press-hardened', ['press-hardened']]);
  expect(seen('do: section, at: A, zone: nowhere')).toEqual(['press-hardened', ['press-hardened']]);
  expect(seen('do: section, at: A')).toEqual(['press-hardened', ['press-hardened']]);
  expect(pillar('do: section, at: A, zone: nowhere').fact('operation.zone').known).toBe(false);
});

test('heat runs on into the next zone: the strongest counts', () => {
  expect(seen('do: heat, at: A, zone: foot')).toEqual(['press-hardened', ['press-hardened']]);
  expect(seen('do: straighten, method: cold, zone: foot')).toEqual(['press-hardened', ['press-hardened']]);
});

test('where the rest of the part is not known, a zone answers nothing', () => {
  const derived = factsOf(
    'parts: [{ id: p, kind: b-pillar, grade: 22MnBS, zones: [{ name: foot, class: mild }], operations: [{ do: section, at: A, zone: foot }] }]',
  );
  expect(derived.all('operation')[0]?.standsOn[0]?.facts['part.class']?.known).toBe(false);
});

test('a zone that names no grade of its own is judged as the part', () => {
  const derived = factsOf(
    'parts: [{ id: p, kind: b-pillar, grade: 22MnB5, zones: [{ name: foot, class: mild }], operations: [{ do: section, at: A, zone: foot }] }]',
  );
  expect(derived.all('operation')[0]?.standsOn[0]?.facts['part.class']).toMatchObject({
    value: 'press-hardened',
  });
});

test('the part itself keeps its strongest zone', () => {
  expect(pillar('do: section, at: A, zone: foot').value('part.class')).toBe('press-hardened');
});
