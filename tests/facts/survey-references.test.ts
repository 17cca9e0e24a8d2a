import { describe, expect, test } from 'vitest';
import { factsOf, surveyOf } from './facts-of.ts';

const vehicle = 'vehicle: { maker: Corvane, model: Tarn, body: wagon, model_year: 2021 }';

/** How far one citation of a reference with these entries carries. */
function standing(entries: string, of = vehicle): string | undefined {
  const plan = `${of}\nreferences: [{ id: m, ${entries} }]\nparts: [{ operations: [{ do: heat, cite: { reference: m } }] }]`;
  return surveyOf(plan).operations[0]?.restsOn?.standing;
}
const procedure = (covers: string): string => `kind: maker procedure, covers: { ${covers} }`;

describe('how far a document carries an operation', () => {
  test.each([
    [
      'its own maker, model, body and year',
      'maker: Corvane, model: Tarn, bodies: [wagon], years: 2020-2022',
      'covers',
    ],
    ['all bodies', 'maker: Corvane, model: Tarn, bodies: [all], years: 2021', 'covers'],
    ['several models', 'maker: Corvane, models: [Ilex, Tarn], bodies: [All], years: 2021', 'covers'],
    [
      'the year after the last',
      'maker: Corvane, model: Tarn, bodies: [wagon], years: 2015-2020',
      'other year',
    ],
    [
      'the year before the first',
      'maker: Corvane, model: Tarn, bodies: [wagon], years: 2022-2024',
      'other year',
    ],
    ['another body', 'maker: Corvane, model: Tarn, bodies: [saloon], years: 2021', 'other body'],
    ['another model', 'maker: Corvane, model: Ilex, bodies: [wagon], years: 2021', 'other model'],
    ['another maker', 'maker: Ostra, model: Tarn, bodies: [wagon], years: 2021', 'other maker'],
    [
      'another year and maker: the wider',
      'maker: Ostra, model: Tarn, bodies: [wagon], years: 2015',
      'other maker',
    ],
    [
      'another year and body: the wider',
      'maker: Corvane, model: Tarn, bodies: [saloon], years: 2015',
      'other body',
    ],
    ['no years stated', 'maker: Corvane, model: Tarn, bodies: [wagon]', 'cannot tell'],
    ['no bodies stated', 'maker: Corvane, model: Tarn, years: 2021', 'cannot tell'],
    ['nothing stated', '', 'cannot tell'],
  ])('%s', (_name, covers, expected) => {
    expect(standing(procedure(covers))).toBe(expected);
  });

  const own = 'covers: { maker: Corvane, model: Tarn, bodies: [wagon], years: 2021 }';

  test.each([
    ['maker procedure', 'covers'],
    ['maker bulletin', 'covers'],
    ['maker manual', 'maker text without permission'],
    ['maker position statement', 'maker text without permission'],
    ['marking on part', 'maker text without permission'],
    ['public standard', 'other kind'],
    ['general guidance', 'other kind'],
    ['training', 'other kind'],
    ['memory', 'other kind'],
    ['last job', 'other kind'],
  ])('%s carries: %s', (kind, expected) => {
    expect(standing(`kind: ${kind}, ${own}`)).toBe(expected);
  });

  test('a source of unstated kind permits nothing for sure, and of another year nothing at all', () => {
    expect(standing(own)).toBe('cannot tell');
    expect(standing('covers: { maker: Corvane, model: Tarn, bodies: [wagon], years: 2015 }')).toBe(
      'other year',
    );
  });

  test('where the plan does not say which car it is, nothing covers it', () => {
    for (const of of ['vehicle: {}', 'vehicle: { maker: Corvane, model: Tarn, body: wagon }']) {
      expect(standing(`kind: maker procedure, ${own}`, of)).toBe('cannot tell');
    }
  });

  test('an id that no reference bears', () => {
    const plan = 'parts: [{ operations: [{ do: heat, cite: { reference: x } }, { do: heat, cite: {} }] }]';
    expect(surveyOf(plan).operations.map(({ restsOn }) => restsOn?.standing)).toEqual([
      'not listed',
      'not listed',
    ]);
  });
});

describe('the citation that an operation rests on', () => {
  const references = `${vehicle}
references:
  - { id: course, kind: training }
  - { id: old, kind: maker procedure, covers: { maker: Corvane, model: Tarn, bodies: [wagon], years: 2015 } }
  - { id: own, kind: maker procedure, document: B, revision: D, looked_up: 2026-10-06, covers: { maker: Corvane, model: Tarn, bodies: [wagon], years: 2021 } }
  - { id: bare, kind: maker procedure, covers: { maker: Corvane, model: Tarn, bodies: [wagon], years: 2021 } }
  - { id: sheet, kind: maker procedure, document: C, revision: A, looked_up: 2026-10-06, single_sheet: true, covers: { maker: Corvane, model: Tarn, bodies: [wagon], years: 2021 } }
`;
  const restsOn = (...cites: readonly string[]): string | undefined =>
    surveyOf(`${references}parts: [{ operations: [{ do: heat, cite: [${cites.join(', ')}] }] }]`)
      .operations[0]?.restsOn?.id;
  const cite = (id: string, place?: string): string =>
    `{ reference: ${id}${place === undefined ? '' : `, at: ${place}`} }`;

  test('is the best of those given, in whatever order', () => {
    expect(restsOn(cite('course', 'p. 1'), cite('own', 'p. 2'), cite('old', 'p. 3'))).toBe('own');
    expect(restsOn(cite('old', 'p. 3'), cite('own', 'p. 2'), cite('course', 'p. 1'))).toBe('own');
    expect(restsOn(cite('course', 'p. 1'), cite('old', 'p. 3'))).toBe('old');
    expect(restsOn(cite('nobody'), cite('course'))).toBe('course');
  });

  test('is, among those that carry equally, the one with fewest gaps', () => {
    expect(restsOn(cite('bare'), cite('own'))).toBe('own');
    expect(restsOn(cite('own'), cite('own', 'p. 2'))).toBe('own');
    const derived = factsOf(
      `${references}parts: [{ operations: [{ do: heat, cite: [${cite('own')}, ${cite('own', 'p. 2')}] }] }]`,
    );
    expect(derived.value('operation.citation_text')).toContain('p. 2');
    expect(restsOn(cite('sheet'), cite('own'))).toBe('sheet');
  });

  test('is none where nothing is cited', () => {
    expect(restsOn()).toBeUndefined();
    expect(surveyOf('parts: [{ operations: [{ do: heat }] }]').operations[0]?.restsOn).toBeUndefined();
  });
});

test('what a document is called: number with revision, else title, else id', () => {
  const names = surveyOf(
    'references: [{ document: B-1, revision: D, title: T }, { document: B-1 }, { title: T, id: t }, { id: t2 }, {}]',
  ).references.map(({ name }) => name);
  expect(names).toEqual(['B-1 revision D', 'B-1', 'T', 't2', 'a reference without a name']);
});
