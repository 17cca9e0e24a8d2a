import { describe, expect, test } from 'vitest';
import { factsOf } from './facts-of.ts';

const job = 'job: { number: K-1, opened: 2026-10-05 }';
const reference = (
  entries: string,
  rest = job,
  statements?: Parameters<typeof factsOf>[1],
): ReturnType<typeof factsOf> => factsOf(`${rest}\nreferences: [{ id: m, ${entries} }]`, statements);

describe('when it was looked up', () => {
  const lookUp = (entries: string, rest = job): unknown =>
    reference(entries, rest).value('reference.look_up');

  test('between the beginning of the job and the as-of date, both included', () => {
    expect(lookUp('looked_up: 2026-10-04')).toBe('before the job');
    expect(lookUp('looked_up: 2026-10-05')).toBe('in time');
    expect(lookUp('looked_up: 2026-10-21')).toBe('in time');
    expect(lookUp('looked_up: 2026-10-22')).toBe('after the as-of date');
  });

  test('the first estimate may lie before the opening', () => {
    const early = 'job: { number: K-1, opened: 2026-10-05, first_estimate: 2026-10-01 }';
    expect(lookUp('looked_up: 2026-10-01', early)).toBe('in time');
    expect(lookUp('looked_up: 2026-09-30', early)).toBe('before the job');
    const late = 'job: { number: K-1, opened: 2026-10-05, first_estimate: 2026-10-10 }';
    expect(lookUp('looked_up: 2026-10-04', late)).toBe('before the job');
    expect(lookUp('looked_up: 2026-10-05', late)).toBe('in time');
    expect(lookUp('looked_up: 2026-10-01', 'job: { first_estimate: 2026-10-01 }')).toBe('in time');
  });

  test('after the work that rests on it', () => {
    const done = (day: string): string =>
      `${job}\nparts: [{ operations: [{ do: heat, done: ${day}, cite: { reference: m } }] }]`;
    expect(lookUp('looked_up: 2026-10-08', done('2026-10-07'))).toBe('after the work');
    expect(lookUp('looked_up: 2026-10-08', done('2026-10-08'))).toBe('in time');
    expect(lookUp('looked_up: 2026-10-08', done('2026-10-09T08:00'))).toBe('in time');
  });

  test('after a joint that was made by it', () => {
    const made = (day: string): string =>
      `${job}\nparts: [{ operations: [{ do: replace, cite: { reference: m }, joints: [{ done: ${day} }] }] }]`;
    expect(lookUp('looked_up: 2026-10-08', made('2026-10-07'))).toBe('after the work');
    expect(lookUp('looked_up: 2026-10-08', made('2026-10-08'))).toBe('in time');
  });

  test('after the measurement that follows the work, or after the signature, though the work bears no day', () => {
    const undated = 'parts: [{ operations: [{ do: heat, cite: { reference: m } }] }]';
    const lookedUp = (rest: string): unknown =>
      lookUp('looked_up: 2026-10-08', `stage: start\n${job}\n${undated}\n${rest}`);
    expect(lookedUp('measurements: { after: 2026-10-07 }')).toBe('after the work');
    expect(lookedUp('measurements: { after: 2026-10-08 }')).toBe('in time');
    expect(lookedUp('sign_off: { date: 2026-10-07 }')).toBe('after the signature');
    expect(lookedUp('sign_off: { date: 2026-10-08 }')).toBe('in time');
  });

  test('which structural work by it bears no day', () => {
    const undated = (entries: string, part = 'name: Rail'): unknown =>
      reference(
        'looked_up: 2026-10-08',
        `${job}\nparts: [{ ${part}, operations: [{ do: heat, cite: { reference: m }${entries} }] }]`,
      ).value('reference.undated_work');
    const none = '? All structural work that rests on it bears its day.';
    expect(undated('')).toBe('Rail');
    expect(undated(', done: 2026-10-09')).toBe(none);
    expect(undated(', planned: false')).toBe(none);
    expect(undated(', joints: [{ done: 2026-10-09 }]')).toBe(none);
    expect(undated(', joints: [{ done: 2026-10-09 }, {}]')).toBe('Rail');
    expect(undated('', 'name: Rail, structural: false')).toBe(none);
  });

  test('after a step that was taken by it', () => {
    const isolated = (day: string): unknown =>
      lookUp(
        'looked_up: 2026-10-08, kind: maker procedure, covers: { maker: Corvane, model: Tarn, bodies: [all], years: 2021 }',
        `${job}\nvehicle: { maker: Corvane, model: Tarn, body: wagon, model_year: 2021 }\nmake_safe: { high_voltage: { isolation: { done: ${day}, cite: { reference: m, at: p. 1 } } } }`,
      );
    expect(isolated('2026-10-07')).toBe('after the work');
    expect(isolated('2026-10-08')).toBe('in time');
  });

  test('a page cannot have been read before it was published', () => {
    const published = (day: string): unknown =>
      reference(`looked_up: 2026-10-08, published: ${day}`).value('reference.published_after_look_up');
    expect(published('2026-10-09')).toBe(true);
    expect(published('2026-10-08')).toBe(false);
    expect(reference('looked_up: 2026-10-08').fact('reference.published_after_look_up').known).toBe(false);
  });

  test('for another job', () => {
    expect(lookUp('looked_up: 2026-10-08, for_job: K-2')).toBe('for another job');
    expect(lookUp('looked_up: 2026-10-08, for_job: " K-1 "')).toBe('in time');
    expect(lookUp('for_job: K-2')).toBe('for another job');
    const unnumbered = reference('looked_up: 2026-10-08, for_job: K-2', 'job: { opened: 2026-10-05 }');
    expect(unnumbered.fact('reference.look_up')).toMatchObject({ known: false, at: '/job/number' });
  });

  test('without its day, or without that of the job, it is not known', () => {
    expect(reference('kind: maker procedure').fact('reference.look_up').known).toBe(false);
    expect(reference('looked_up: 2026-10-08', 'job: {}').fact('reference.look_up')).toMatchObject({
      known: false,
      at: '/job/opened',
    });
    expect(reference('looked_up: 2026-02-30').fact('reference.look_up').known).toBe(false);
  });

  test('its age is counted to the signature, or to the as-of date', () => {
    const age = (rest: string): unknown =>
      reference('looked_up: 2026-10-01', rest).value('reference.look_up_age');
    expect(age(job)).toBe(20);
    expect(age(`${job}\nsign_off: { date: 2026-10-11 }`)).toBe(10);
    expect(age(`${job}\nsign_off: { date: 2026-09-11 }`)).toBe(0);
    expect(reference('id2: x').fact('reference.look_up_age').known).toBe(false);
  });
});

describe('what it is', () => {
  test('what is written of it and what is not', () => {
    const derived = reference('document: B-1, published: 2021-02-01');
    const names = ['reference.document_stated', 'reference.revision_stated', 'reference.published_stated'];
    expect(names.map((name) => derived.value(name))).toEqual([true, false, true]);
  });

  test('whether structural work rests on it', () => {
    const resting = (part: string): unknown =>
      reference('kind: maker procedure', `${job}\nparts: [{ ${part} }]`).value('reference.rested_on');
    const cite = 'cite: { reference: m }';
    expect(resting(`kind: sill, operations: [{ do: heat, ${cite} }]`)).toBe(true);
    expect(resting(`kind: bonnet, operations: [{ do: heat, ${cite} }]`)).toBe(false);
    expect(resting(`kind: sill, operations: [{ do: refinish, ${cite} }]`)).toBe(false);
    expect(resting('kind: sill, operations: [{ do: heat }]')).toBe(false);
    expect(resting(`kind: bracket, operations: [{ ${cite} }]`)).toBe(true);
  });

  test('a document that it calls must be listed', () => {
    expect(reference('calls: [m]').value('reference.called_missing')).toBe(false);
    expect(reference('calls: [m, other]').value('reference.called_missing')).toBe(true);
  });
});

describe('against the packs', () => {
  const statement = {
    ...{ part: 'sill', years: { from: 2020, to: 2022 }, shall: [], shallNot: [], may: [], conditions: [] },
    ...{ document: 'B-1', revision: 'D', published: '2021-02-01' },
  };
  const revision = (entries: string, ...statements: readonly (typeof statement)[]): unknown =>
    reference(entries, job, { statements }).value('reference.revision_in_pack');

  test('the days of publication say which revision is newer', () => {
    expect(revision('document: B-2, revision: A', statement)).toBe('not in the packs');
    expect(revision('document: B-1, revision: D', statement)).toBe('same');
    expect(revision('document: B-1, revision: C, published: 2020-01-01', statement)).toBe('pack is newer');
    expect(revision('document: B-1, revision: E, published: 2022-01-01', statement)).toBe('pack is older');
    expect(revision('document: B-1, revision: C', statement)).toMatch(/^\? /u);
    expect(revision('document: B-1', statement)).toMatch(/^\? /u);
  });

  test('a document is the same whatever its capitals', () => {
    expect(revision('document: b-1, revision: d', statement)).toBe('same');
    expect(revision('document: b-1, revision: C, published: 2020-01-01', statement)).toBe('pack is newer');
  });

  test('of several statements of one document the newest counts', () => {
    const newer = { ...statement, revision: 'E', published: '2023-01-01' };
    const plan = 'document: B-1, revision: D, published: 2021-02-01';
    expect(revision(plan, statement, newer)).toBe('pack is newer');
    expect(revision(plan, newer, statement)).toBe('pack is newer');
  });
});
