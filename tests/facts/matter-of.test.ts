import { describe, expect, test } from 'vitest';
import { factsOf } from './facts-of.ts';
import { numberFromPaper } from '../../src/facts/number-place.ts';

const cited = (reference: string, kind = 'front rail'): unknown => {
  const { value } = factsOf(`format: 1
vehicle: { maker: Corvane, model: Tarn, body: wagon, model_year: 2021 }
references: [{ id: M1, kind: maker procedure, document: D-1, revision: A, ${reference} }]
parts:
  - { id: a, name: A, kind: ${kind}, structural: true, operations: [{ do: replace, cite: { reference: M1, at: p. 1 } }] }
`);
  return value('operation.cited_for_other_matter', '/parts/0/operations/0');
};

// process.md, step 9: a citation is for this very part and operation.
describe('a page of another matter', () => {
  test.each(['title: Restraint system', 'title: Front suspension', 'title: Body, about: restraints'])(
    '%s',
    (ref) => {
      expect(cited(ref)).toMatch(/^D-1 revision A/u);
    },
  );

  test.each([
    'title: "Front rail, replacement"',
    'title: Body structure and restraint system',
    'title: Chapter 5',
    'title: Restraint system, about: [restraints, body structure]',
    'document: D-1',
  ])('%s: may be of it', (ref) => {
    expect(cited(ref.replace('document: D-1', 'note: none'))).toMatch(/^\?/u);
  });

  test('a subframe stands in the book of the axle', () => {
    expect(cited('title: Front axle', 'subframe')).toMatch(/^\?/u);
  });
});

// vehicle-id.md, section 6: the number is read from the vehicle, not from paperwork.
describe('a number from papers', () => {
  const from = (read?: string, confirmed?: string): unknown =>
    numberFromPaper({
      ...(read === undefined ? {} : { read_from: read }),
      ...(confirmed === undefined ? {} : { confirmed_at: confirmed }),
    });

  test('found', () => {
    expect(from('claim form of the insurer', 'registration papers')).toBe(
      'claim form of the insurer; registration papers',
    );
    expect(from('owner, by phone')).toBe('owner, by phone');
    expect(from('number plate look-up, database')).toBe('number plate look-up, database');
  });

  test.each([
    ['plate in the windscreen', 'stamp in the right sill'],
    ['plate in the windscreen', 'registration papers'],
    ['claim form', 'stamp on the strut tower'],
    ['label on the B-pillar', undefined],
    ['Typenschild', 'Fahrzeugschein'],
    [undefined, undefined],
  ])('%s, %s', (read, confirmed) => {
    expect(from(read, confirmed)).toBeUndefined();
  });
});
