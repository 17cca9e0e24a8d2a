import { describe, expect, test } from 'vitest';
import type { Limit, Pack, PackVehicle } from '../../src/packs/pack.ts';
import { resolvePacks } from '../../src/packs/layers/resolve-packs.ts';
import type { CoveredVehicle } from '../../src/vehicle/coverage.ts';
import { rule } from '../judge/invented-pack.ts';

const tarn: PackVehicle = { maker: 'Corvane', models: ['Tarn'], years: { from: 2020, to: 2022 } };
const plan: CoveredVehicle = { maker: 'Corvane', model: 'Tarn', body: 'wagon', modelYear: 2021 };

function pack(name: string, given: Partial<Pack> = {}): Pack {
  return {
    name,
    version: '1.0.0',
    released: false,
    title: name,
    format: 1,
    facts: 1,
    rules: [rule({ id: `rule-of-${name}`, judges: 'part', when: [] })],
    limits: [],
    allowances: [],
    reaches: [],
    windows: [],
    provisions: [],
    digest: `sha256:${name}`,
    ...given,
  };
}

function glue(stopAboveCelsius: number): Limit {
  return { victim: 'glass', stopAboveCelsius, source: { practice: 'common' } };
}

const general = pack('general', { limits: [glue(150)] });

function layersFor(vehicle: PackVehicle, of: CoveredVehicle | undefined): readonly string[] {
  const resolved = resolvePacks([general, pack('maker', { vehicle })], ['maker@1'], of);
  return resolved.ok ? resolved.packs.layers.map(({ name }) => name) : [resolved.sentence];
}

describe('a vehicle pack judges its own vehicles', () => {
  test.each<[string, PackVehicle, CoveredVehicle | undefined]>([
    ['this model and year', tarn, plan],
    ['the first year', { ...tarn, years: { from: 2021, to: 2021 } }, plan],
    ['spelling in capitals', { ...tarn, maker: 'CORVANE' }, plan],
    ['no years of its own', { maker: 'Corvane', models: ['Tarn'] }, plan],
    ['a plan that gives no year', tarn, { maker: 'Corvane', model: 'Tarn' }],
    ['a plan that gives nothing', tarn, {}],
    ['no vehicle asked about', tarn, undefined],
  ])('%s: its rules count', (_name, vehicle, of) => {
    expect(layersFor(vehicle, of)).toEqual(['general', 'maker']);
  });

  test.each<[string, PackVehicle, CoveredVehicle]>([
    ['another maker', { ...tarn, maker: 'Oberholt' }, plan],
    ['another model', { ...tarn, models: ['Tarn Estate', 'Mere'] }, plan],
    ['the year after', tarn, { ...plan, modelYear: 2023 }],
    ['another body', { ...tarn, bodies: ['saloon'] }, plan],
    ['another maker and no year', tarn, { maker: 'Oberholt', model: 'Tarn' }],
  ])('%s: they are set aside', (_name, vehicle, of) => {
    expect(layersFor(vehicle, of)).toEqual(['general']);
  });

  test('what is set aside is told with the reason, and its limits do not count', () => {
    const other = pack('oberholt', { vehicle: { ...tarn, maker: 'Oberholt' }, limits: [glue(100)] });
    const resolved = resolvePacks([general, other], undefined, plan);
    expect(resolved.ok && resolved.packs.setAside).toEqual([
      { name: 'oberholt', version: '1.0.0', reason: 'The pack covers maker Oberholt, not Corvane.' },
    ]);
    expect(resolved.ok && resolved.packs.limits.get('glass')?.stopAboveCelsius).toBe(150);
  });
});

describe('limits of packs for different vehicles', () => {
  const first = pack('tarn-one', { vehicle: tarn, limits: [glue(100)] });
  const other = (vehicle: PackVehicle): Pack => pack('tarn-two', { vehicle, limits: [glue(120)] });
  const stopOf = (packs: readonly Pack[], of?: CoveredVehicle): number | string | undefined => {
    const resolved = resolvePacks(packs, undefined, of);
    return resolved.ok ? resolved.packs.limits.get('glass')?.stopAboveCelsius : resolved.sentence;
  };

  test.each<[string, PackVehicle]>([
    ['another maker', { ...tarn, maker: 'Oberholt' }],
    ['another model', { ...tarn, models: ['Mere'] }],
    ['the next generation', { ...tarn, years: { from: 2023, to: 2025 } }],
  ])('%s is no layer over the first: neither loosens the other', (_name, vehicle) => {
    expect(stopOf([general, first, other(vehicle)], plan)).toBe(100);
    // Of no vehicle in particular the tightest counts, whichever comes first.
    expect(stopOf([general, first, other(vehicle)])).toBe(100);
    expect(stopOf([general, other(vehicle), first])).toBe(100);
  });

  test('packs that share one year are layers', () => {
    const shared = other({ ...tarn, years: { from: 2022, to: 2025 } });
    expect(stopOf([general, first, shared])).toContain('loosens the limit');
    const oneBody = pack('tarn-three', { vehicle: { ...tarn, bodies: ['wagon'] }, limits: [glue(120)] });
    expect(stopOf([general, first, oneBody])).toContain('loosens the limit');
  });

  test('packs for different bodies share no vehicle', () => {
    const wagon = pack('wagons', { vehicle: { ...tarn, bodies: ['wagon'] }, limits: [glue(100)] });
    const saloon = pack('saloons', { vehicle: { ...tarn, bodies: ['saloon'] }, limits: [glue(120)] });
    expect(stopOf([general, wagon, saloon], plan)).toBe(100);
    expect(stopOf([general, wagon, saloon], { ...plan, body: 'saloon' })).toBe(120);
  });
});
