import { describe, expect, test } from 'vitest';
import type { Limit, Pack, Provision } from '../../src/packs/pack.ts';
import { readProvidedOperation } from '../../src/packs/reading/read-provision.ts';
import { resolvePacks } from '../../src/packs/layers/resolve-packs.ts';
import { rulesInForce } from '../../src/packs/versions/rules-in-force.ts';
import { compareVersions, readVersion } from '../../src/packs/versions/semantic-version.ts';
import { fitsRange } from '../../src/packs/versions/version-range.ts';
import { rule } from '../judge/invented-pack.ts';

function pack(name: string, given: Partial<Pack> = {}): Pack {
  return {
    name,
    version: '1.0.0',
    released: false,
    title: name,
    format: 1,
    facts: 1,
    rules: [],
    limits: [],
    allowances: [],
    reaches: [],
    windows: [],
    provisions: [],
    digest: `sha256:${name}`,
    ...given,
  };
}

function limit(stopAboveCelsius: number): Limit {
  return { victim: 'glass', stopAboveCelsius, source: { practice: 'common' } };
}

function provision(given: Partial<Provision>): Provision {
  return {
    part: 'door ring',
    years: { from: 2020, to: 2022 },
    document: 'BRM-TRN-3120',
    shall: [],
    shallNot: [{ do: 'section' }],
    may: [],
    conditions: [],
    ...given,
  };
}

const general = pack('general', { limits: [limit(150)] });

describe('layers', () => {
  test('general first, then as pinned, then what was given besides', () => {
    const resolved = resolvePacks(
      [pack('shop'), pack('tarn', { version: '2026.1.0' }), general],
      ['tarn@2026', 'general@1'],
    );
    expect(resolved.ok && resolved.packs.layers.map(({ name }) => name)).toEqual(['general', 'tarn', 'shop']);
  });

  test.each([
    [
      'absent',
      ['trn@1'],
      'asks for the pack `trn@1`, which is not here; give its folder with --rules. Nearest known: `tarn`.',
    ],
    ['of another version', ['tarn@2'], 'asks for `tarn@2`; here is tarn 1.0.0.'],
    ['of another minor version', ['tarn@1.1'], 'asks for `tarn@1.1`; here is tarn 1.0.0.'],
    ['not readable', ['tarn@spring'], '`tarn@spring` is not a pack with a version'],
  ])('a pin that is %s leaves the plan unjudged', (_name, pins, said) => {
    const resolved = resolvePacks([general, pack('tarn')], pins);
    expect(resolved.ok ? '' : resolved.sentence).toContain(said);
  });

  test('one rule id in two packs is refused', () => {
    const one = rule({ id: 'same', judges: 'part', when: [] });
    const resolved = resolvePacks(
      [pack('general', { rules: [one] }), pack('tarn', { rules: [one] })],
      undefined,
    );
    expect(resolved.ok ? '' : resolved.sentence).toContain('both have a rule `same`');
  });

  test('a later pack may tighten a limit and never loosen it', () => {
    const tighter = resolvePacks([general, pack('tarn', { limits: [limit(120)] })], undefined);
    expect(tighter.ok && tighter.packs.limits.get('glass')?.stopAboveCelsius).toBe(120);
    const looser = resolvePacks([general, pack('tarn', { limits: [limit(151)] })], undefined);
    expect(looser.ok ? '' : looser.sentence).toContain('loosens the limit');
  });

  test('a later pack may tighten a tolerance and never loosen it; without one nobody states it', () => {
    const of = (mm: number): Partial<Pack> => ({
      tolerances: [{ of: 'point', atMostMm: mm, source: { practice: 'common' } }],
    });
    const tolerance = (first: Partial<Pack>, second: Partial<Pack>): unknown => {
      const resolved = resolvePacks([pack('general', first), pack('tarn', second)], undefined);
      return resolved.ok ? resolved.packs.tolerances.get('point') : resolved.sentence;
    };
    expect(tolerance(of(3), of(2))).toBe(2);
    expect(tolerance(of(3), {})).toBe(3);
    expect(tolerance({}, of(5))).toBe(5);
    expect(tolerance({}, {})).toBeUndefined();
    expect(tolerance(of(3), of(3.1))).toContain('loosens the tolerance of `point`');
  });

  test('a thing that only the later pack limits is limited, and what it leaves out stays', () => {
    const tarn = pack('tarn', {
      limits: [
        { victim: 'glass', holdAboveCelsius: 90, source: { practice: 'common' } },
        { victim: 'sealer', stopAboveCelsius: 100, source: { practice: 'common' } },
      ],
    });
    const resolved = resolvePacks([tarn, general], undefined);
    expect(resolved.ok && resolved.packs.limits.get('glass')).toMatchObject({
      holdAboveCelsius: 90,
      stopAboveCelsius: 150,
    });
    expect(resolved.ok && resolved.packs.limits.get('sealer')?.stopAboveCelsius).toBe(100);
  });

  test.each([
    ['a higher hold', { holdAboveCelsius: 81 }],
    ['a longer time', { timeAbove: { celsius: 80, atMostSeconds: 601 } }],
    ['a time from a higher temperature on', { timeAbove: { celsius: 81, atMostSeconds: 600 } }],
  ])('%s is looser', (_name, given) => {
    const source = { practice: 'common' };
    const first = {
      victim: 'glass',
      holdAboveCelsius: 80,
      timeAbove: { celsius: 80, atMostSeconds: 600 },
      source,
    };
    const resolved = resolvePacks(
      [
        pack('general', { limits: [first] }),
        pack('tarn', { limits: [{ victim: 'glass', source, ...given }] }),
      ],
      undefined,
    );
    expect(resolved.ok ? '' : resolved.sentence).toContain('loosens the limit for `glass`');
  });

  test('statements of the maker hold for the bodies of the pack unless they name their own', () => {
    const tarn = pack('tarn', {
      version: '2026.1.0',
      vehicle: { maker: 'Corvane', models: ['Tarn'], bodies: ['wagon'] },
      provisions: [provision({}), provision({ bodies: ['saloon'] })],
    });
    const resolved = resolvePacks([general, tarn], undefined);
    expect(resolved.ok && resolved.packs.makers).toMatchObject([
      {
        pack: 'tarn 2026.1.0',
        maker: 'Corvane',
        models: ['Tarn'],
        statements: [{ bodies: ['wagon'] }, { bodies: ['saloon'] }],
      },
    ]);
  });

  test('a pack of which a part would be lost is refused', () => {
    const noVehicle = resolvePacks([general, pack('tarn', { provisions: [provision({})] })], undefined);
    expect(noVehicle.ok ? '' : noVehicle.sentence).toContain('names no vehicle');
    const noVersion = resolvePacks([general, pack('tarn', { version: 'spring' })], undefined);
    expect(noVersion.ok ? '' : noVersion.sentence).toContain('The version of the pack tarn cannot be read');
  });

  test('a pack given twice alike is one; with other content it is refused', () => {
    const alike = resolvePacks([general, pack('tarn'), pack('tarn')], undefined);
    expect(alike.ok && alike.packs.layers.map(({ name }) => name)).toEqual(['general', 'tarn']);
    const other = resolvePacks([general, pack('tarn'), pack('tarn', { digest: 'sha256:other' })], undefined);
    expect(other.ok ? '' : other.sentence).toBe(
      'The pack tarn 1.0.0 was given more than once, with different content.',
    );
  });

  test('of the rules of a layer those of its version are in force', () => {
    const rules = [
      { ...rule({ id: 'old', judges: 'part', when: [] }), until: '1.1.0' },
      { ...rule({ id: 'new', judges: 'part', when: [] }), since: '1.1.0' },
    ];
    const resolved = resolvePacks([pack('general', { version: '1.1.0', rules })], ['general@1.1']);
    expect(resolved.ok && resolved.packs.layers[0]?.rules.map(({ id }) => id)).toEqual(['new']);
  });

  test('without the general pack nothing is judged', () => {
    expect(resolvePacks([pack('tarn')], undefined).ok).toBe(false);
  });
});

test('a version holds the rules from their since up to their until', () => {
  const rules = [
    rule({ id: 'a', judges: 'part', when: [] }),
    { ...rule({ id: 'b', judges: 'part', when: [] }), since: '1.1.0' },
    { ...rule({ id: 'c', judges: 'part', when: [] }), until: '1.1.0' },
  ];
  expect(rulesInForce(rules, '1.0.0').map(({ id }) => id)).toEqual(['a', 'c']);
  expect(rulesInForce(rules, '1.1.0').map(({ id }) => id)).toEqual(['a', 'b']);
});

describe('versions', () => {
  test.each([
    ['1', true],
    ['1.2', true],
    ['1.2.3', true],
    ['1.2.4', false],
    ['2', false],
    ['', undefined],
    ['x', true],
    ['spring', undefined],
    ['1.2.3.4', undefined],
    ['01', undefined],
  ])('1.2.3 fits %s: %s', (range, fits) => {
    expect(fitsRange([1, 2, 3], range)).toBe(fits);
  });

  test('compare by number, not by letter', () => {
    expect(compareVersions([1, 10, 0], [1, 9, 0])).toBeGreaterThan(0);
    expect(readVersion('2026.1.0')).toEqual([2026, 1, 0]);
    expect(readVersion('1.0')).toBeUndefined();
  });
});

test.each([
  ['replace whole', { do: 'replace', extent: 'whole' }],
  ['replace part at B', { do: 'replace', extent: 'part', at: 'B' }],
  ['section at C 2', { do: 'section', at: 'C 2' }],
  ['butt weld', { do: 'butt weld' }],
  ['splice', undefined],
  ['section at B at C', undefined],
  ['whole', undefined],
])('%s', (text, operation) => {
  expect(readProvidedOperation(text, ['replace', 'section', 'butt weld'])).toEqual(operation);
});
