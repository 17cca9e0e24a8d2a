import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { expect, test } from 'vitest';
import { runPlanish } from '../cli/run-planish.ts';
import { dictionary } from '../../src/cli/dictionary.ts';
import { checkCases } from '../../src/judge/check-cases.ts';
import { builtInPacks } from '../../src/generated/built-in-packs.ts';
import { loadPackFolder } from '../../src/packs/load-pack.ts';
import type { PackLoading } from '../../src/packs/load-pack.ts';
import { resolvePacks } from '../../src/packs/layers/resolve-packs.ts';
import { brokenPromises } from '../../src/packs/versions/semantic-promise.ts';

const readme = readFileSync('rules/README.md', 'utf8');
const blocks = [...readme.matchAll(/```yaml\n([^]*?)```/gu)].map(([, text = '']) => text);

function load(leftOut: readonly string[], digest?: string): PackLoading {
  const folder = mkdtempSync(path.join(tmpdir(), 'planish-readme-'));
  try {
    for (const text of blocks) {
      const name = /^# file: (\S+)$/mu.exec(text)?.[1] ?? 'unnamed.yaml';
      const written = digest === undefined ? text : text.replace(/sha256:[0-9a-f]{64}/u, digest);
      if (!leftOut.includes(name)) writeFileSync(path.join(folder, name), written);
    }
    return loadPackFolder(folder, dictionary);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

test('the pack of the guide loads, proves itself and lies over the general pack', () => {
  const loaded = load(['releases.yaml']);
  expect(loaded.ok ? [] : loaded.faults).toEqual([]);
  if (!loaded.ok) return;
  expect(checkCases(loaded.pack)).toEqual([]);
  expect(loaded.pack.rules).toHaveLength(2);
  const resolved = resolvePacks([...builtInPacks(), loaded.pack], ['oberholt-mere@1.1']);
  expect(resolved.ok && resolved.packs.layers.map(({ name }) => name)).toEqual(['general', 'oberholt-mere']);
  expect(brokenPromises(loaded.pack)).toEqual([]);
});

test('its list of releases is of the right form; only the digest is made up', () => {
  const loaded = load([]);
  const told = loaded.ok ? [] : loaded.faults.map(({ sentence }) => sentence);
  expect(told).toHaveLength(1);
  const digest = /^The files give (sha256:[0-9a-f]{64}) for 1\.0\.0\./u.exec(told[0] ?? '')?.[1];
  expect(digest).toBeDefined();
  expect(load([], digest).ok).toBe(true);
});

test('the commands of the ten minutes run, in their order, in an empty folder', () => {
  const section = /## A rule, its cases[^]*?(?=\n## )/u.exec(readme)?.[0] ?? '';
  const commands = [...section.matchAll(/```sh\n([^]*?)```/gu)].flatMap(([, text = '']) =>
    text.trim().split('\n'),
  );
  expect(commands.length).toBeGreaterThan(4);
  const folder = mkdtempSync(path.join(tmpdir(), 'planish-guide-'));
  try {
    for (const command of commands) {
      const words = [...command.matchAll(/"([^"]*)"|(\S+)/gu)].map(
        ([, quoted, word]) => quoted ?? word ?? '',
      );
      expect(words.shift()).toBe('planish');
      const { status, stderr } = runPlanish(words, { folder });
      expect([command, status, stderr]).toEqual([command, 0, '']);
    }
    const again = runPlanish(['packs', 'diff', 'house@1.0.0', 'house'], { folder });
    expect([again.status, again.stdout]).toEqual([0, expect.stringContaining('nothing that judges differs')]);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});

test('what nobody has read takes part in nothing; what a named person filled in does', () => {
  const loaded = load(['releases.yaml']);
  if (!loaded.ok) throw new Error('the pack does not load');
  expect(loaded.pack.open?.map(({ part, operation }) => [part, operation])).toEqual([
    ['sill', 'section at B'],
  ]);
  const sills = loaded.pack.provisions.filter(({ part }) => part === 'sill');
  expect(sills.map(({ may, years }) => [may, years.from])).toEqual([[[{ do: 'section', at: 'B' }], 2022]]);
  expect(loaded.canonicalForm('1.1.0', 1)).not.toContain('"?"');
});
