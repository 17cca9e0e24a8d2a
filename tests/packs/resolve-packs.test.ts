import { describe, expect, test } from 'vitest';
import type { Limit, Pack } from '../../src/packs/pack.ts';
import { readProvidedOperation } from '../../src/packs/read-provision.ts';
import { resolvePacks } from '../../src/packs/resolve-packs.ts';
import { rulesInForce } from '../../src/packs/rules-in-force.ts';
import { compareVersions, fitsRange, readVersion } from '../../src/packs/semantic-version.ts';
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
    provisions: [],
    digest: `sha256:${name}`,
    ...given,
  };
}

function limit(stopAboveCelsius: number): Limit {
  return { victim: 'glass', stopAboveCelsius, source: { practice: 'common' } };
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
    ['x', undefined],
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
