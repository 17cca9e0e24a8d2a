import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, expect, test } from 'vitest';
import { dictionary } from '../../src/cli/dictionary.ts';
import { loadPackFolder } from '../../src/packs/load-pack.ts';

const folders: string[] = [];
afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});

const manifest = 'pack: mine\nformat: 1\nfacts: 1\nversion: 1.0.0\nreleased: false\ntitle: Über alles Maß\n';
const limits =
  'pack: mine\nlimits:\n  - { victim: airbag, hold_above: 80 °C, source: { practice: common } }\n';

function digestOf(files: Readonly<Record<string, string>>, link?: string): string {
  const folder = mkdtempSync(path.join(tmpdir(), 'planish-digest-'));
  folders.push(folder);
  for (const [name, text] of Object.entries(files)) writeFileSync(path.join(folder, name), text);
  if (link !== undefined) symlinkSync('pack.yaml', path.join(folder, link));
  const loaded = loadPackFolder(folder, dictionary);
  if (!loaded.ok) throw new Error(loaded.faults.map(({ sentence }) => sentence).join('\n'));
  return loaded.pack.digest;
}

const plain = { 'pack.yaml': manifest, 'limits.yaml': limits };

// The canonical form put together by hand: files by name; name, LF, length in bytes, LF, text. `ß`, `Ü` and `°` have two bytes
// each in UTF-8, so the lengths are not those of the strings.
const canonical = `limits.yaml\n${String(limits.length + 1)}\n${limits}pack.yaml\n${String(manifest.length + 2)}\n${manifest}`;

test('the digest of a folder is that of its canonical form, by node:crypto and by sha256sum', () => {
  const byNode = createHash('sha256').update(canonical, 'utf8').digest('hex');
  const bySystem = spawnSync('sha256sum', { input: canonical, encoding: 'utf8' }).stdout.slice(0, 64);
  expect(byNode).toBe(bySystem);
  expect(digestOf(plain)).toBe(`sha256:${byNode}`);
});

test.each<readonly [string, Readonly<Record<string, string>>]>([
  ['CR LF at the ends of lines', { ...plain, 'limits.yaml': limits.replaceAll('\n', '\r\n') }],
  ['a byte order mark', { ...plain, 'pack.yaml': `\uFEFF${manifest}` }],
  ['a list of releases beside it', { ...plain, 'releases.yaml': 'anything: 1\n' }],
  ['a file that is no topic', { ...plain, 'README.md': 'Read me.\n' }],
])('%s does not change it', (_name, files) => {
  expect(digestOf(files)).toBe(digestOf(plain));
});

test('a link is no part of it', () => {
  expect(digestOf(plain, 'link.yaml')).toBe(digestOf(plain));
});

test.each<readonly [string, Readonly<Record<string, string>>]>([
  ['another limit', { ...plain, 'limits.yaml': limits.replace('80', '81') }],
  ['a comment', { ...plain, 'limits.yaml': `${limits}# So agreed.\n` }],
  ['a file of another name', { 'pack.yaml': manifest, 'limit.yaml': limits }],
  ['one file less', { 'pack.yaml': manifest }],
])('%s changes it', (_name, files) => {
  expect(digestOf(files)).not.toBe(digestOf(plain));
});
