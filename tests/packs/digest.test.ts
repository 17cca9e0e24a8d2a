import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import fc from 'fast-check';
import { afterEach, describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { dictionary } from '../../src/cli/dictionary.ts';
import { builtInDigests, builtInPacks, builtInPacksWithCases } from '../../src/generated/built-in-packs.ts';
import { canonicalJson } from '../../src/plan/canonical-json.ts';
import { loadPackFolder } from '../../src/packs/load-pack.ts';
import { sourcePacks } from '../../.build/built-in-packs.ts';

const folders: string[] = [];
afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});

const manifest = 'pack: mine\nformat: 1\nfacts: 1\nversion: 1.1.0\ntitle: Über alles Maß\n';
const limits = `pack: mine
limits:
  - { victim: airbag, hold_above: 80 °C, source: { practice: common } }
  - { victim: glass, since: 1.1.0, stop_above: 150 °C, source: { practice: common } }
  - { victim: trim, until: 1.1.0, stop_above: 120 °C, source: { practice: common } }
`;
const plain = { 'pack.yaml': manifest, 'limits.yaml': limits };

function load(files: Readonly<Record<string, string>>) {
  const folder = mkdtempSync(path.join(tmpdir(), 'planish-digest-'));
  folders.push(folder);
  for (const [name, text] of Object.entries(files)) writeFileSync(path.join(folder, name), text);
  const loaded = loadPackFolder(folder, dictionary);
  if (!loaded.ok) throw new Error(loaded.faults.map(({ sentence }) => sentence).join('\n'));
  return loaded;
}

const digestOf = (files: Readonly<Record<string, string>>): string => load(files).pack.digest;

function sha256sum(text: string): string {
  const { stdout, status } = spawnSync('sha256sum', { input: text, encoding: 'utf8' });
  if (status !== 0) throw new Error('sha256sum is not there');
  return `sha256:${stdout.slice(0, 64)}`;
}

describe('the canonical form', () => {
  // Put together by hand after rules/README.md.
  const form =
    '{"facts":1,"format":1,"layer":"shop","limits":[{"hold_above":"80 °C","source":{"practice":"common"},"victim":"airbag"},{"source":{"practice":"common"},"stop_above":"150 °C","victim":"glass"}],"pack":"mine","version":"1.1.0"}\n';
  const before =
    '{"facts":1,"format":1,"layer":"shop","limits":[{"hold_above":"80 °C","source":{"practice":"common"},"victim":"airbag"},{"source":{"practice":"common"},"stop_above":"120 °C","victim":"trim"}],"pack":"mine","version":"1.0.0"}\n';

  test('is what was put together by hand, and the digest is its sha256sum', () => {
    const loaded = load(plain);
    expect(loaded.canonicalForm('1.1.0', 1)).toBe(form);
    expect(loaded.pack.digest).toBe(sha256sum(form));
  });

  test('of an older version holds what that version held', () => {
    expect(load(plain).canonicalForm('1.0.0', 1)).toBe(before);
  });

  test.each<readonly [string, Readonly<Record<string, string>>]>([
    ['CR LF at the ends of lines', { ...plain, 'limits.yaml': limits.replaceAll('\n', '\r\n') }],
    ['a byte order mark', { ...plain, 'pack.yaml': `\uFEFF${manifest}` }],
    ['a comment', { ...plain, 'limits.yaml': `${limits}# So agreed.\n` }],
    ['a file of another name', { 'pack.yaml': manifest, 'limit.yaml': limits }],
    ['a file that is no topic', { ...plain, 'README.md': 'Read me.\n' }],
    ['the title', { ...plain, 'pack.yaml': manifest.replace('Über alles', 'Nach') }],
    [
      'keys in another order',
      {
        ...plain,
        'limits.yaml': limits.replace(
          'victim: airbag, hold_above: 80 °C',
          'hold_above: 80 °C, victim: airbag',
        ),
      },
    ],
    [
      'the end of a limit in a version to come',
      { ...plain, 'limits.yaml': limits.replace('victim: airbag', 'victim: airbag, until: 3.0.0') },
    ],
  ])('does not change with %s', (_name, files) => {
    expect(digestOf(files)).toBe(digestOf(plain));
  });

  test.each<readonly [string, Readonly<Record<string, string>>]>([
    ['another limit', { ...plain, 'limits.yaml': limits.replace('80', '81') }],
    ['one file less', { 'pack.yaml': manifest }],
    ['another version', { ...plain, 'pack.yaml': manifest.replace('1.1.0', '1.2.0') }],
    ['another layer', { ...plain, 'pack.yaml': `${manifest}layer: market\nmarkets: [japan]\n` }],
  ])('changes with %s', (_name, files) => {
    expect(digestOf(files)).not.toBe(digestOf(plain));
  });
});

describe('JSON in the form of RFC 8785', () => {
  // Sections 3.2.2 and 3.2.3 of the RFC (from memory): keys by UTF-16 code units, numbers and texts as ECMAScript writes them.
  test('its example of sorting', () => {
    const keys = ['\u20ac', '\r', '\ufb33', '1', '\ud83d\ude00', '\u0080', '\u00f6'];
    const sorted = ['\r', '1', '\u0080', '\u00f6', '\u20ac', '\ud83d\ude00', '\ufb33'];
    const text = canonicalJson(Object.fromEntries(keys.map((key) => [key, 0])));
    expect(text).toBe(`{${sorted.map((key) => `${JSON.stringify(key)}:0`).join(',')}}`);
  });

  test('its example of numbers', () => {
    expect(canonicalJson([333333333.33333329, 1e30, 4.5, 2e-3, 0.000000000000000000000000001])).toBe(
      '[333333333.3333333,1e+30,4.5,0.002,1e-27]',
    );
  });

  test('what JSON does not have is refused', () => {
    expect(() => canonicalJson({ a: Number.NaN })).toThrow(RangeError);
  });

  test('any data comes back the same, whatever the order of its keys', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        const text = canonicalJson(value);
        expect(canonicalJson(JSON.parse(text))).toBe(text);
        expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(value)));
      }),
      { numRuns: 300 },
    );
  });
});

describe('a released version never changes', () => {
  const releases = (digest: string): string =>
    `pack: mine\nreleases:\n  - { version: 1.0.0, date: 2026-03-02, facts: 1, digest: '${digest}', reasons: [First.] }\n`;
  const digest = sha256sum(load(plain).canonicalForm('1.0.0', 1));
  const released = { ...plain, 'releases.yaml': releases(digest) };

  test('with its digest it loads, and the newer version is not released', () => {
    expect(load(released).pack).toMatchObject({
      version: '1.1.0',
      released: false,
      releases: [{ version: '1.0.0', digest }],
    });
  });

  test('the version of the last release is released', () => {
    const files = {
      'pack.yaml': manifest.replace('1.1.0', '1.0.0'),
      'limits.yaml': limits.replace('since: 1.1.0, ', ''),
    };
    const own = digestOf(files);
    expect(load({ ...files, 'releases.yaml': releases(own) }).pack.released).toBe(true);
  });

  test.each<readonly [string, Readonly<Record<string, string>>, string]>([
    [
      'a limit that was changed after it',
      { ...released, 'limits.yaml': limits.replace('80', '81') },
      'releases.yaml 3:59 The files give sha256:',
    ],
    [
      'a rule that was put into it',
      { ...released, 'limits.yaml': limits.replace('since: 1.1.0', 'since: 1.0.0') },
      'releases.yaml 3:59 The files give sha256:',
    ],
    [
      'a digest that is none',
      { ...plain, 'releases.yaml': releases(`sha256:${'g'.repeat(64)}`) },
      'releases.yaml 3:59 A digest is `sha256:` and 64 digits 0-9 and a-f.',
    ],
    [
      'a release of a version to come',
      { ...plain, 'releases.yaml': releases(digest).replace('1.0.0', '1.2.0') },
      'pack.yaml 4:10 releases.yaml goes to 1.2.0, which comes after 1.1.0.',
    ],
    [
      'a day that is none',
      { ...plain, 'releases.yaml': releases(digest).replace('2026-03-02', '2026-02-30') },
      'releases.yaml 3:29',
    ],
    [
      'a release of another pack',
      { ...plain, 'releases.yaml': releases(digest).replace('pack: mine', 'pack: yours') },
      'releases.yaml 1:7 This file belongs to pack `yours`, not to `mine`.',
    ],
    [
      'released by its own word',
      { ...plain, 'pack.yaml': `${manifest}released: true\n` },
      'pack.yaml 6:11 No release 1.1.0 with its digest stands in releases.yaml',
    ],
  ])('%s is told', (_name, files, expected) => {
    const folder = mkdtempSync(path.join(tmpdir(), 'planish-digest-'));
    folders.push(folder);
    for (const [name, text] of Object.entries(files)) writeFileSync(path.join(folder, name), text);
    const loaded = loadPackFolder(folder, dictionary);
    const told = loaded.ok
      ? []
      : loaded.faults.map(
          (fault) =>
            `${path.basename(fault.file)} ${String(fault.line)}:${String(fault.column)} ${fault.sentence}`,
        );
    expect(told.join('\n')).toContain(expected);
  });
});

describe('the packs that come with planish', () => {
  test('are those of the sources, and their digests those of releases.yaml', async () => {
    const built = builtInPacksWithCases();
    expect(built).toEqual(JSON.parse(JSON.stringify(await sourcePacks())));
    for (const { name, releases } of built) {
      const listed: { readonly releases: readonly { readonly version: string; readonly digest: string }[] } =
        parse(readFileSync(`rules/${name}/releases.yaml`, 'utf8'));
      expect(releases?.map(({ version, digest }) => [version, digest])).toEqual(
        listed.releases.map(({ version, digest }) => [version, digest]),
      );
      for (const { version, digest } of listed.releases) {
        expect(builtInDigests[digest]).toEqual({ pack: name, version });
      }
    }
  });

  test('every release has the sha256sum of what `planish packs canonical` prints', () => {
    const [general] = builtInPacks();
    expect(general?.releases?.length).toBeGreaterThanOrEqual(3);
    for (const { version, digest } of general?.releases ?? []) {
      const printed = spawnSync(
        process.execPath,
        ['bin/planish.js', 'packs', 'canonical', 'rules/general', version],
        {
          encoding: 'utf8',
          maxBuffer: 64 * 1024 * 1024,
        },
      );
      expect([version, printed.status, sha256sum(printed.stdout)]).toEqual([version, 0, digest]);
    }
  });
});
