import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { dictionary } from '../../src/cli/dictionary.ts';
import { draftText } from '../../src/draft/draft-text.ts';
import { readAnswers } from '../../src/draft/read-answers.ts';
import type { MakerStatements } from '../../src/facts/context.ts';
import { builtInPacks } from '../../src/generated/built-in-packs.ts';
import { loadPackFolder } from '../../src/packs/load-pack.ts';
import { resolvePacks } from '../../src/packs/layers/resolve-packs.ts';
import { checkPlan } from '../../src/plan/check-plan.ts';
import { readYaml } from '../../src/plan/read-yaml.ts';
import { judgeText, ruleIds } from '../judge-text.ts';

const folder = 'examples/rules/corvane-tarn';

function makersOf(): readonly MakerStatements[] {
  const loaded = loadPackFolder(folder, dictionary);
  if (!loaded.ok) throw new Error('the example pack does not load');
  const resolved = resolvePacks([...builtInPacks(), loaded.pack], undefined);
  if (!resolved.ok) throw new Error(resolved.sentence);
  return resolved.packs.makers;
}
const makers = makersOf();

const tarn = { maker: 'Corvane', model: 'Tarn', body: 'wagon', model_year: 2021 };

function drafted(answers: object, from: readonly MakerStatements[] = makers): string {
  const reading = readAnswers(JSON.stringify(answers), true);
  if (!reading.ok) throw new Error(reading.sentences.join('\n'));
  return draftText(reading.answers, { makers: from, pins: ['general@2'], schema: '../a.json' });
}

interface DraftedPart {
  readonly id: string;
  readonly kind?: string;
  readonly side?: string;
  readonly grade?: string | null;
  readonly thickness?: string | null;
  readonly one_piece?: boolean;
  readonly under?: string | null;
  readonly over?: string | null;
  readonly damage?: { readonly kind?: string };
  readonly operations?: unknown;
}

function partsOf(text: string): readonly DraftedPart[] {
  const plan: { readonly parts: readonly DraftedPart[] } = parse(text);
  return plan.parts;
}

describe('from a vehicle pack (expected values read off examples/rules/corvane-tarn by hand)', () => {
  test('come grade, thickness, the layer above, and the documents, with the page', () => {
    const text = drafted({
      vehicle: tarn,
      parts: [{ kind: 'door ring', side: 'left', damage: { kind: 'kink' } }],
    });
    const [ring, skin, ...others] = partsOf(text);
    expect(others).toEqual([]);
    expect(ring).toMatchObject({
      id: 'door-ring-left',
      grade: '22MnB5+AS150',
      thickness: '1.4 mm',
      one_piece: true,
      under: 'side-panel-left',
      damage: { kind: 'kink' },
      grade_from: { reference: 'BRM-TRN-3000', at: 'p. 6' },
    });
    expect(skin).toMatchObject({
      id: 'side-panel-left',
      kind: 'side panel',
      over: 'door-ring-left',
      grade: null,
    });
    expect(text).toContain(
      '# shall: replace whole; shall not: section, butt weld, heat, straighten (BRM-TRN-3120',
    );
  });

  test('of a document only the number is taken over; what its page says is asked', () => {
    const plan: { readonly references: readonly object[] } = parse(
      drafted({ vehicle: tarn, parts: [{ kind: 'door ring', side: 'left' }] }),
    );
    expect(plan.references).toEqual(
      ['BRM-TRN-3120', 'BRM-TRN-3000'].map((document) => ({
        id: document,
        document,
        kind: null,
        title: null,
        revision: null,
        published: null,
        covers: null,
        looked_up: null,
      })),
    );
  });

  test('the generation before is another car', () => {
    const [ring] = partsOf(
      drafted({ vehicle: { ...tarn, model_year: 2018 }, parts: [{ kind: 'door ring', side: 'left' }] }),
    );
    expect(ring).not.toHaveProperty('one_piece');
    expect(drafted({ vehicle: { ...tarn, model_year: 2018 }, parts: [{ kind: 'door ring' }] })).not.toContain(
      'BRM-TRN-3',
    );
  });

  test.each<readonly [string, object]>([
    ['the number decides and is not known', tarn],
    ['the number lies in a range, and a wider statement is there too', { ...tarn, vin: '0CVBAB2BZM0005001' }],
    ['the model year is not known', { maker: 'Corvane', model: 'Tarn', body: 'wagon' }],
  ])('two statements are a question, and neither is filled in: %s', (_what, vehicle) => {
    const text = drafted({ vehicle, parts: [{ kind: 'sill', side: 'left' }] });
    const [sill] = partsOf(text);
    expect(sill).toMatchObject({ grade: null, thickness: null });
    expect(text).toMatch(/# \? HC340LA, 1\.2 mm for model years/u);
    expect(text).toMatch(/# \? HCT980X, 1\.2 mm for model year 2021, numbers/u);
  });

  test('a number outside the range leaves one statement', () => {
    const [sill] = partsOf(
      drafted({ vehicle: { ...tarn, vin: '0CVBAB2BZM0002207' }, parts: [{ kind: 'sill', side: 'left' }] }),
    );
    expect(sill).toMatchObject({ grade: 'HC340LA', thickness: '1.2 mm', under: 'sill-skin-left' });
  });

  test.each([
    ['another maker', { ...tarn, maker: 'Oberholt' }],
    ['another model', { ...tarn, model: 'Tarn II' }],
    ['another year', { ...tarn, model_year: 2024 }],
    ['no maker', {}],
  ])('nothing is filled in for %s', (_what, vehicle) => {
    const text = drafted({ vehicle, parts: [{ kind: 'door ring', side: 'left' }] });
    expect(partsOf(text)).toHaveLength(1);
    expect(text).not.toContain('22MnB5');
    expect(text).not.toContain('BRM-');
  });

  test('with no part named come those that the pack describes', () => {
    expect(partsOf(drafted({ vehicle: tarn })).map(({ kind }) => kind)).toEqual([
      'door ring',
      'sill',
      'side panel',
    ]);
  });

  test('words of a pack cannot leave their remark', () => {
    const evil = makers.map((one) => ({
      ...one,
      pack: 'x\nstage: release',
      statements: one.statements.map((statement) => ({
        ...statement,
        conditions: ['a\n    operations: [{ do: heat }]\u2028b'],
      })),
    }));
    const text = drafted({ vehicle: tarn, parts: [{ kind: 'door ring', side: 'left' }] }, evil);
    expect(parse(text)).toMatchObject({ stage: 'draft' });
    expect(text.split(/[\n\u2028]/u).filter((line) => /^\s*operations: \[/u.test(line))).toEqual([]);
  });
});

describe('answers', () => {
  test.each<readonly [string, string, RegExp]>([
    ['not JSON', '{"vehicle": ', /Line 1/u],
    ['a list', '[]', /block of keys/u],
    [
      'a decision',
      '{"parts": [{"kind": "sill", "operations": []}]}',
      /does not take `parts\.\*\.operations`/u,
    ],
    ['a grade', '{"parts": [{"kind": "sill", "grade": "DC04"}]}', /does not take `parts\.\*\.grade`/u],
    ['a signature', '{"sign_off": {}}', /does not take `sign_off`/u],
    ['a stage', '{"stage": "release"}', /does not take `stage`/u],
    [
      'an unknown word',
      '{"vehicle": {"market": "eu"}}',
      /`vehicle\.market`: .*Nearest known: `european-union`/u,
    ],
    ['an unknown kind', '{"parts": [{}, {"kind": "rocker"}]}', /`parts\.2\.kind`: .*`sill`/u],
    ['no such day', '{"job": {"opened": "2026-02-30"}}', /Line 1, column 20: `job\.opened`/u],
    ['a key twice', '{"vehicle": {"maker": "A", "maker": "B"}}', /twice/u],
    ['a name of another kind', '{"vehicle": {"maker": {"a": 1}}}', /`vehicle\.maker`/u],
    ['a control character', '{"vehicle": {"maker": "A\\u001b[2J"}}', /may not hold it/u],
  ])('%s are refused in a sentence', (_what, text, expected) => {
    const reading = readAnswers(text, true);
    expect(reading.ok ? '' : reading.sentences.join('\n')).toMatch(expected);
  });

  test('that say nothing are questions', () => {
    const text = drafted({ job: { number: 'TBD' }, vehicle: { ...tarn, model: '?' } });
    expect(text).toMatch(/^ {2}number: # \?/mu);
    expect(text).toMatch(/^ {2}model: # \?/mu);
  });
});

const hostile = fc.oneof(
  fc.string({ unit: 'grapheme', minLength: 1, maxLength: 30 }),
  fc.constantFrom(
    'true',
    'null',
    '1.10',
    '0x1F',
    '2021',
    '~',
    '- a',
    'a: b',
    'a #b',
    "it's",
    '"',
    '{a}',
    '[b',
    '&x',
    '*x',
    '!!int 3',
    '%a',
    '@b',
    '`c',
    '? d',
    '|',
    '>',
    'yes',
    '12e3',
    '2026-10-05',
    'a\\nb',
    'é',
    '\u00a0',
    ' a ',
  ),
);
const some = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> => fc.option(value, { nil: undefined });

const anyAnswers = fc.record({
  job: some(
    fc.record({
      number: some(hostile),
      opened: some(fc.constant('2026-10-05')),
      written_by: some(fc.record({ name: some(hostile), role: some(hostile) })),
    }),
  ),
  vehicle: fc.record({
    maker: some(fc.oneof(fc.constant('Corvane'), hostile)),
    model: some(fc.oneof(fc.constant('Tarn'), hostile)),
    body: some(fc.oneof(fc.constant('wagon'), hostile)),
    trim: some(hostile),
    model_year: some(fc.constantFrom(2016, 2021, 2030)),
    model_year_from: some(fc.constantFrom('plate', 'vin code')),
    vin: some(fc.oneof(fc.constantFrom('0CVBAB2BZM0002207', '0CVBAB2BZM0005001'), hostile)),
    confirmed_at: some(hostile),
    market: some(fc.constantFrom('european-union', 'japan')),
    drive: some(
      fc.oneof(fc.constantFrom('combustion', 'battery-electric'), fc.constant(['hybrid', 'natural-gas'])),
    ),
  }),
  parts: some(
    fc.array(
      fc.record({
        id: some(hostile),
        name: some(hostile),
        kind: some(fc.constantFrom('door ring', 'sill', 'trim', 'side panel', 'lamp')),
        side: some(fc.constantFrom('left', 'right', 'both')),
        damage: some(
          fc.record({
            kind: some(fc.constantFrom('none', 'kink', 'scratch')),
            found_by: some(fc.constantFrom('seen', 'measured')),
            extent: some(hostile),
          }),
        ),
      }),
      { maxLength: 4 },
    ),
  ),
});

test('whatever is answered: the draft parses, has no fault, keeps the answers, and is cleared at no stage', () => {
  let drafts = 0;
  fc.assert(
    fc.property(
      anyAnswers,
      fc.boolean(),
      fc.constantFrom('draft', 'start', 'release'),
      (given, withPack, stage) => {
        const reading = readAnswers(JSON.stringify(given), true);
        fc.pre(reading.ok);
        drafts += 1;
        const { answers } = reading;
        const text = draftText(answers, {
          makers: withPack ? makers : [],
          pins: ['general@2'],
          schema: 'a b.json',
        });
        const yaml = readYaml(text);
        expect(yaml.ok ? [] : yaml.faults).toEqual([]);
        if (!yaml.ok) return;
        const checked = checkPlan(yaml.root);
        expect(checked.faults).toEqual([]);
        if (!checked.ok) return;
        expect(checked.plan.vehicle).toEqual(answers.vehicle);
        for (const [index, part] of answers.parts.entries()) {
          const { id, damage, ...rest } = part;
          expect(checked.plan.parts[index]).toMatchObject(rest);
          if (id !== undefined) expect(checked.plan.parts[index]?.id).toBe(id);
          if (damage?.kind !== undefined) expect(checked.plan.parts[index]?.damage).toMatchObject(damage);
        }
        expect(checked.plan.parts.every(({ operations }) => operations === undefined)).toBe(true);
        const report = judgeText(
          text.replace('stage: draft', `stage: ${stage}`),
          withPack ? folder : undefined,
        );
        expect(report.verdict).toMatch(/^(?:held|stopped)$/u);
        expect(ruleIds(report)).toContain('nothing-proposed');
      },
    ),
    { numRuns: 150 },
  );
  expect(drafts).toBeGreaterThan(50);
});
