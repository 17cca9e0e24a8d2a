import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coverage } from '../../src/vehicle/coverage.ts';
import type { CoveredVehicle, Covers } from '../../src/vehicle/coverage.ts';

const vehicle: CoveredVehicle = {
  maker: 'Corvane',
  model: 'Tarn',
  body: 'wagon',
  modelYear: 2021,
  vin: '0DMAC3D44M1000125',
  buildDate: 18_700,
  plant: 'Ostvik',
};
const covers: Covers = {
  maker: 'Corvane',
  models: ['Tarn'],
  bodies: ['wagon', 'hatchback'],
  years: { from: 2020, to: 2022 },
};

describe('coverage, all stated', () => {
  it('covers a vehicle that agrees in maker, model, body and year', () => {
    expect(coverage(vehicle, covers)).toEqual({ covers: 'yes' });
  });
  it('takes both ends of the years as covered', () => {
    expect(coverage({ ...vehicle, modelYear: 2020 }, covers).covers).toBe('yes');
    expect(coverage({ ...vehicle, modelYear: 2022 }, covers).covers).toBe('yes');
  });
  it.each([
    ['maker', { maker: 'Halden' }, /maker Corvane, not Halden/u],
    ['model', { model: 'Tarn II' }, /model Tarn, not Tarn II/u],
    ['model', { model: 'Tarn Estate' }, /model Tarn, not Tarn Estate/u],
    ['model', { model: 'Tar' }, /model Tarn, not Tar/u],
    ['body', { body: 'saloon' }, /body wagon, hatchback, not saloon/u],
    ['year', { modelYear: 2019 }, /model years 2020 to 2022, not 2019/u],
    ['year', { modelYear: 2023 }, /model years 2020 to 2022, not 2023/u],
  ] as const)('does not cover another %s: %j', (because, other, reason) => {
    expect(coverage({ ...vehicle, ...other }, covers)).toEqual({
      covers: 'no',
      because: [because],
      reason: expect.stringMatching(reason),
    });
  });
  it('names every mismatch', () => {
    const answer = coverage({ ...vehicle, model: 'Sill', modelYear: 2019 }, covers);
    expect(answer).toMatchObject({ covers: 'no', because: ['model', 'year'] });
  });
  it.each(['CORVANE', ' corvane '])('compares names without case: %s', (maker) => {
    expect(coverage({ ...vehicle, maker }, covers).covers).toBe('yes');
  });
  it.each(['tarn-estate', 'Tarn  Estate', 'TARN_ESTATE'])('folds blanks and hyphens: %s', (model) => {
    expect(coverage({ ...vehicle, model }, { ...covers, models: ['Tarn Estate'] }).covers).toBe('yes');
  });
  it('takes "all" bodies at its word, even for an unknown body', () => {
    const { body, ...unknownBody } = vehicle;
    expect(body).toBe('wagon');
    expect(coverage(unknownBody, { ...covers, bodies: 'all' }).covers).toBe('yes');
  });
});

describe('coverage, silence', () => {
  it('cannot tell without a statement of what is covered', () => {
    expect(coverage(vehicle, undefined)).toMatchObject({
      covers: 'cannot tell',
      missing: ['what the reference covers'],
    });
  });
  it.each([
    ["the reference's maker", { maker: undefined }],
    ["the reference's models", { models: undefined }],
    ["the reference's models", { models: [] }],
    ["the reference's models", { models: [' '] }],
    ["the reference's bodies", { bodies: undefined }],
    ["the reference's model years", { years: undefined }],
  ] as const)('cannot tell without %s: %j', (missing, silent) => {
    expect(coverage(vehicle, { ...covers, ...silent })).toMatchObject({
      covers: 'cannot tell',
      missing: [missing],
    });
  });
  it.each([
    ["the vehicle's maker", { maker: undefined }],
    ["the vehicle's model", { model: '' }],
    ["the vehicle's body", { body: undefined }],
    ["the vehicle's model year", { modelYear: undefined }],
    ["the vehicle's model year", { modelYear: Number.NaN }],
  ] as const)('cannot tell without %s: %j', (missing, silent) => {
    expect(coverage({ ...vehicle, ...silent }, covers)).toMatchObject({
      covers: 'cannot tell',
      missing: [missing],
    });
  });
  it('lets a known mismatch beat an unknown', () => {
    expect(coverage({ ...vehicle, body: undefined, modelYear: 2019 }, covers)).toMatchObject({
      covers: 'no',
      because: ['year'],
    });
  });
  it('does not ask for what the document does not restrict', () => {
    const { maker, model, body, modelYear } = vehicle;
    expect(coverage({ maker, model, body, modelYear }, covers).covers).toBe('yes');
  });
});

describe('coverage, narrower statements', () => {
  const range = (from: string, to: string): Covers => ({ ...covers, vinRange: { from, to } });

  it.each([
    ['0DMAC3D44M1000125', '0DMAC3D44M1000125'],
    ['0DMAC3D44M1000100', '0DMAC3D44M1000125'],
    ['0DMAC3D44M1000125', '0DMAC3D44M1000200'],
    // The check digit is another one for each number and no part of the order.
    ['0DMAC3D49M1000100', '0DMAC3D40M1000200'],
    ['0dmac3d44m1 000100', '0DMAC3D44M1-000200'],
  ])('covers a serial from %s to %s, ends included', (from, to) => {
    expect(coverage(vehicle, range(from, to)).covers).toBe('yes');
  });
  it.each([
    ['0DMAC3D44M1000126', '0DMAC3D44M1000200'],
    ['0DMAC3D44M1000001', '0DMAC3D44M1000124'],
  ])('does not cover a serial outside %s to %s', (from, to) => {
    expect(coverage(vehicle, range(from, to))).toMatchObject({ covers: 'no', because: ['vin range'] });
  });
  it.each([
    ['another plant', '0DMAC3D44M2000100', '0DMAC3D44M2000200', /differs .* before the serial/u],
    ['another descriptor', '0DMBC3D44M1000100', '0DMBC3D44M1000200', /differs .* before the serial/u],
    ['ends of two kinds', '0DMAC3D44M1000100', '0DMAC3D44M2000200', /ends .* differ before the serial/u],
    ['crossed ends', '0DMAC3D44M1000200', '0DMAC3D44M1000100', /begins after it ends/u],
    ['an end out of form', '0DMAC3D44M100010', '0DMAC3D44M1000200', /not in form/u],
    ['a letter in the serial', '0DMAC3D44M1A00100', '0DMAC3D44M1A00200', /differs .* before the serial/u],
  ])('cannot tell with %s', (_, from, to, reason) => {
    expect(coverage(vehicle, range(from, to))).toMatchObject({
      covers: 'cannot tell',
      reason: expect.stringMatching(reason),
    });
  });
  it('cannot tell a VIN range without the number of the vehicle, or with one out of form', () => {
    const covered = range('0DMAC3D44M1000100', '0DMAC3D44M1000200');
    expect(coverage({ ...vehicle, vin: undefined }, covered).covers).toBe('cannot tell');
    expect(coverage({ ...vehicle, vin: 'TRN10-0012345' }, covered).covers).toBe('cannot tell');
  });
  it('keeps small makers apart, who share all places before the twelfth', () => {
    const small: CoveredVehicle = { ...vehicle, vin: '0D9SP0R17MA700017' };
    expect(coverage(small, range('0D9SP0R17MA700001', '0D9SP0R17MA700099')).covers).toBe('yes');
    expect(coverage(small, range('0D9SP0R17MA600001', '0D9SP0R17MA800099')).covers).toBe('cannot tell');
  });

  it.each([
    [18_700, 18_800, 'yes'],
    [18_600, 18_700, 'yes'],
    [18_701, 18_800, 'no'],
    [18_600, 18_699, 'no'],
    [18_800, 18_600, 'cannot tell'],
    [undefined, 18_700, 'yes'],
    [undefined, 18_699, 'no'],
    [18_700, undefined, 'yes'],
    [18_701, undefined, 'no'],
    [undefined, undefined, 'cannot tell'],
    [Number.NaN, 18_800, 'cannot tell'],
  ])('build dates from day %s to %s: %s', (from, to, expected) => {
    expect(coverage(vehicle, { ...covers, buildRange: { from, to } }).covers).toBe(expected);
  });
  it('shows build dates as dates', () => {
    expect(coverage(vehicle, { ...covers, buildRange: { from: 20_731, to: 20_732 } })).toMatchObject({
      covers: 'no',
      reason: expect.stringContaining('2026-10-05 to 2026-10-06'),
    });
    expect(coverage(vehicle, { ...covers, buildRange: { from: 20_731 } })).toMatchObject({
      reason: expect.stringContaining('build dates from 2026-10-05 on, not'),
    });
    expect(coverage(vehicle, { ...covers, buildRange: { to: 18_699 } })).toMatchObject({
      reason: expect.stringContaining('build dates until 2021-03-13, not'),
    });
  });
  it('cannot tell with years that cross', () => {
    expect(coverage(vehicle, { ...covers, years: { from: 2022, to: 2020 } })).toMatchObject({
      covers: 'cannot tell',
      reason: expect.stringMatching(/begin after they end \(2022 to 2020\)/u),
    });
  });
  it('asks for the plant only when the document names plants', () => {
    expect(coverage(vehicle, { ...covers, plants: ['Ostvik', 'Lem'] }).covers).toBe('yes');
    expect(coverage(vehicle, { ...covers, plants: ['Lem'] })).toMatchObject({
      covers: 'no',
      because: ['plant'],
    });
    expect(coverage({ ...vehicle, plant: undefined }, { ...covers, plants: ['Lem'] }).covers).toBe(
      'cannot tell',
    );
  });
  it('asks for the market only when the document names markets', () => {
    const american = { ...vehicle, market: 'united-states' };
    expect(coverage(american, covers).covers).toBe('yes');
    expect(coverage(american, { ...covers, markets: [] }).covers).toBe('yes');
    expect(coverage(american, { ...covers, markets: ['japan', 'united-states'] }).covers).toBe('yes');
    expect(coverage(american, { ...covers, markets: ['north-america'] }).covers).toBe('yes');
    expect(coverage(american, { ...covers, markets: ['canada', 'japan'] })).toEqual({
      covers: 'no',
      because: ['market'],
      reason: 'The reference covers market canada, japan, not united-states.',
    });
    expect(coverage(vehicle, { ...covers, markets: ['japan'] })).toMatchObject({
      covers: 'cannot tell',
      missing: ["the vehicle's market"],
    });
  });
});

describe('coverage, properties', () => {
  const word = fc.constantFrom('Tarn', 'Tarn Estate', 'Tarn II', 'tarn', 'Sill', undefined);
  const anyVehicle = fc.record({
    maker: fc.constantFrom('Corvane', 'Halden', undefined),
    model: word,
    body: fc.constantFrom('wagon', 'saloon', undefined),
    modelYear: fc.option(fc.integer({ min: 2015, max: 2025 }), { nil: undefined }),
    buildDate: fc.option(fc.integer({ min: 18_000, max: 19_000 }), { nil: undefined }),
  });
  const anyCovers = fc.record({
    maker: fc.constantFrom('Corvane', 'Halden', undefined),
    models: fc.option(fc.array(fc.constantFrom('Tarn', 'Tarn Estate', 'Sill'), { maxLength: 2 }), {
      nil: undefined,
    }),
    bodies: fc.constantFrom('all' as const, ['wagon'], ['saloon'], undefined),
    years: fc.option(
      fc.record({ from: fc.integer({ min: 2015, max: 2025 }), to: fc.integer({ min: 2015, max: 2025 }) }),
      { nil: undefined },
    ),
  });

  it('forgetting something never turns an answer into yes', () => {
    const keys = fc.constantFrom('maker', 'model', 'body', 'modelYear', 'buildDate');
    fc.assert(
      fc.property(anyVehicle, anyCovers, keys, (car, document, key) => {
        fc.pre(coverage(car, document).covers !== 'yes');
        expect(coverage({ ...car, [key]: undefined }, document).covers).not.toBe('yes');
      }),
    );
  });

  it('says yes only when year, maker and model are stated on both sides and agree', () => {
    let covered = 0;
    fc.assert(
      fc.property(anyVehicle, anyCovers, (car, document) => {
        if (coverage(car, document).covers !== 'yes') return;
        covered += 1;
        expect(car.maker).toBe(document.maker);
        expect(document.models?.map((name) => name.toLowerCase())).toContain(car.model?.toLowerCase());
        const { from, to } = document.years ?? { from: Infinity, to: -Infinity };
        expect((car.modelYear ?? Number.NaN) >= from && (car.modelYear ?? Number.NaN) <= to).toBe(true);
      }),
      { numRuns: 30_000 },
    );
    // Some ninety of them agree in everything.
    expect(covered).toBeGreaterThan(40);
  });
});
