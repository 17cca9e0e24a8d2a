import { mkdtempSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, describe, expect, test } from 'vitest';
import { dictionary } from '../../src/cli/dictionary.ts';
import { loadGivenPacks } from '../../src/cli/judging/given-packs.ts';
import { builtInPacks } from '../../src/generated/built-in-packs.ts';
import { loadPackFolder } from '../../src/packs/load-pack.ts';
import { resolvePacks } from '../../src/packs/layers/resolve-packs.ts';
import type { Resolution } from '../../src/packs/layers/resolve-packs.ts';

const folders: string[] = [];
afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});

function folderOf(name: string, head: string, items: string): string {
  const above = mkdtempSync(path.join(tmpdir(), 'planish-layer-'));
  folders.push(above);
  const folder = path.join(above, name);
  mkdirSync(folder);
  writeFileSync(
    path.join(folder, 'pack.yaml'),
    `pack: ${name}\nformat: 1\nfacts: 1\nversion: 1.0.0\ntitle: ${name}\n${head}`,
  );
  writeFileSync(path.join(folder, 'all.yaml'), `pack: ${name}\n${items}`);
  return folder;
}

/** The general pack and those of these folders. */
function resolved(...given: readonly string[]): Resolution {
  const loaded = loadGivenPacks(given);
  if (!loaded.ok) throw new Error(loaded.lines.join('\n'));
  return resolvePacks([...builtInPacks(), ...loaded.packs], undefined);
}

function refusal(...given: readonly string[]): string {
  const answer = resolved(...given);
  if (answer.ok) return 'not refused';
  const { place, sentence } = answer;
  if (place === undefined) return `no place: ${sentence}`;
  return `${path.basename(place.file)} ${String(place.line)}:${String(place.column)} ${sentence}`;
}

const raise = (rule: string, to: string): string =>
  `raises:\n  - { rule: ${rule}, to: ${to}, why: So decided., source: { practice: common } }\n`;
const glass = (stop: string): string =>
  `limits:\n  - { victim: glass, stop_above: ${stop}, source: { practice: common } }\n`;
const market = 'layer: market\nmarkets: [european-union]\n';
const vehicle = 'vehicle: { maker: Corvane, models: [Tarn] }\n';

describe('general, market, vehicle, shop', () => {
  test('lie in this order, however they are given', () => {
    const answer = resolved(
      folderOf('house', '', glass('140 °C')),
      folderOf('tarn', vehicle, glass('145 °C')),
      folderOf('local', market, glass('150 °C')),
    );
    expect(answer.ok && answer.packs.layers.map(({ name }) => name)).toEqual([
      'general',
      'local',
      'tarn',
      'house',
    ]);
    expect(answer.ok && answer.packs.limits.get('glass')?.stopAboveCelsius).toBe(140);
  });

  test('a market pack is set aside for a vehicle of another market, and counts where the plan does not say', () => {
    const loaded = loadGivenPacks([
      folderOf('local', 'layer: market\nmarkets: [united-states]\n', raise('look-up-aged', 'hold')),
    ]);
    const packs = [...builtInPacks(), ...(loaded.ok ? loaded.packs : [])];
    const layersFor = (of: string | undefined): readonly string[] => {
      const answer = resolvePacks(packs, undefined, of === undefined ? {} : { market: of });
      return answer.ok ? answer.packs.layers.map(({ name }) => name) : [];
    };
    expect(layersFor('united-states')).toEqual(['general', 'local']);
    expect(layersFor('north-america')).toEqual(['general', 'local']);
    expect(layersFor(undefined)).toEqual(['general', 'local']);
    expect(layersFor('japan')).toEqual(['general']);
  });
});

describe('a later layer raises a rule', () => {
  test('and the finding says by whom', () => {
    const answer = resolved(folderOf('house', '', raise('look-up-aged', 'hold')));
    const rule = answer.ok
      ? answer.packs.layers[0]?.rules.find(({ id }) => id === 'look-up-aged')
      : undefined;
    expect(rule?.severity).toBe('hold');
    expect(rule?.why).toMatch(/Raised from a note to a hold by pack house 1\.0\.0: So decided\.$/u);
  });

  test('the higher of two counts', () => {
    const answer = resolved(
      folderOf('local', market, raise('look-up-aged', 'stop')),
      folderOf('house', '', raise('look-up-aged', 'hold')),
    );
    const rule = answer.ok
      ? answer.packs.layers[0]?.rules.find(({ id }) => id === 'look-up-aged')
      : undefined;
    expect(rule?.severity).toBe('stop');
  });

  test('that has ended: nothing is in force to be raised', () => {
    expect(resolved(folderOf('house', '', raise('section-ultra-high-strength-held', 'stop'))).ok).toBe(true);
  });
});

describe('loosening is refused, with its place', () => {
  test.each<readonly [string, string, string, string]>([
    [
      'a shop that lowers a stop',
      '',
      raise('section-press-hardened', 'hold'),
      'all.yaml 3:5 `section-press-hardened` is a stop already; the pack mine may raise it and not make it a hold.',
    ],
    [
      'a shop that leaves a hold as it is',
      '',
      raise('look-up-too-old', 'hold'),
      'all.yaml 3:5 `look-up-too-old` is a hold already',
    ],
    [
      'a market that lowers a stop',
      market,
      raise('section-press-hardened', 'hold'),
      'all.yaml 3:5 `section-press-hardened` is a stop already',
    ],
    [
      'a rule that nobody has',
      '',
      raise('look-up-to-old', 'stop'),
      'all.yaml 3:5 No pack below mine has a rule `look-up-to-old`. Nearest known: `look-up-too-old`',
    ],
    [
      'a shop with a higher limit',
      '',
      glass('151 °C'),
      'all.yaml 3:5 The pack mine loosens the limit for `glass`; a later pack may only tighten it.',
    ],
    [
      'a market with a higher limit',
      market,
      glass('151 °C'),
      'all.yaml 3:5 The pack mine loosens the limit for `glass`',
    ],
    [
      'a vehicle pack with a higher limit',
      vehicle,
      glass('151 °C'),
      'all.yaml 3:5 The pack mine loosens the limit for `glass`',
    ],
  ])('%s', (_name, head, items, expected) => {
    expect(refusal(folderOf('mine', head, items))).toContain(expected);
  });

  test('at the limit of the layer below nothing is loosened', () => {
    expect(resolved(folderOf('mine', '', glass('150 °C'))).ok).toBe(true);
  });

  test.each<readonly [string, string, string]>([
    ['may', 'may: [section at B]', 'shop'],
    ['shall', 'shall: [replace part at B]', 'shop'],
    ['may', 'may: [section at B]', 'market'],
  ])('a statement that permits (%s), in a layer that is not the maker’s: %s, %s', (_word, says, layer) => {
    const head = `layer: ${layer}\n${layer === 'market' ? 'markets: [japan]\n' : ''}${vehicle}`;
    const items = `provisions:\n  - { part: door ring, years: 2021, document: D, revision: A, ${says} }\n`;
    const loaded = loadPackFolder(folderOf('mine', head, items), dictionary);
    const told = loaded.ok
      ? []
      : loaded.faults.map(
          (fault) =>
            `${path.basename(fault.file)} ${String(fault.line)}:${String(fault.column)} ${fault.sentence}`,
        );
    expect(told).toEqual([
      `all.yaml 3:5 The pack mine is of the ${layer} layer and may forbid, not permit: what the maker’s document permits belongs into a vehicle pack.`,
    ]);
  });

  test('a shop may forbid', () => {
    const items =
      'provisions:\n  - { part: door ring, years: 2021, document: House rule, revision: A, shall_not: [section] }\n';
    expect(resolved(folderOf('mine', `layer: shop\n${vehicle}`, items)).ok).toBe(true);
  });

  test('a pack that calls itself general does not take the place of the one that comes with planish', () => {
    expect(refusal(folderOf('general', '', glass('300 °C')))).toBe(
      'pack.yaml 1:7 The pack general comes with planish; a pack of one’s own has another name.',
    );
    expect(resolved('rules/general').ok).toBe(true);
  });

  test('an id of the general pack, even of a rule that ended, is taken', () => {
    const items = `rules:
  - id: section-ultra-high-strength-held
    topic: section
    since: 1.0.0
    judges: operation
    severity: note
    from: draft
    when: { operation.do: section }
    message: 'x'
    instead: 'y'
    why: z.
    source: { practice: common }
    cases: { finds: [{ operation.do: section }], passes: [{ operation.do: heat }] }
`;
    expect(refusal(folderOf('mine', '', items))).toBe(
      'all.yaml 3:9 The packs general and mine both have a rule `section-ultra-high-strength-held`.',
    );
  });
});

test('the example layers fit over each other', () => {
  const answer = resolved('examples/rules');
  expect(answer.ok && answer.packs.layers.map(({ name }) => name)).toEqual([
    'general',
    'eu-body-repair',
    'corvane-tarn',
    'amsel-shop',
  ]);
});
