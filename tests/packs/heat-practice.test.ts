import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, describe, expect, test } from 'vitest';
import { dictionary } from '../../src/cli/dictionary.ts';
import { builtInPacks } from '../../src/generated/built-in-packs.ts';
import { loadPackFolder } from '../../src/packs/load-pack.ts';
import type { Pack } from '../../src/packs/pack.ts';
import { resolvePacks } from '../../src/packs/layers/resolve-packs.ts';

const folders: string[] = [];
afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true });
});

function load(topic: string): ReturnType<typeof loadPackFolder> {
  const folder = mkdtempSync(path.join(tmpdir(), 'planish-pack-'));
  folders.push(folder);
  writeFileSync(
    path.join(folder, 'pack.yaml'),
    'pack: own\nformat: 1\nfacts: 1\nversion: 1.0.0\nreleased: false\ntitle: A shop\n',
  );
  writeFileSync(path.join(folder, 'heat.yaml'), `pack: own\n${topic}\n`);
  return loadPackFolder(folder, dictionary);
}

function packOf(topic: string): Pack {
  const loaded = load(topic);
  if (!loaded.ok) throw new Error(loaded.faults.map(({ sentence }) => sentence).join('\n'));
  return loaded.pack;
}

const source = 'source: { practice: common }';

describe('what packs say of measuring and of reach', () => {
  // Handbook heat.md section 8: contact or crayon 20 K, infra-red on a prepared spot 30 K; design: 25 mm round a spot.
  test('the general pack holds the figures of common practice', () => {
    const resolved = resolvePacks(builtInPacks(), undefined);
    if (!resolved.ok) throw new Error(resolved.sentence);
    const { allowanceKelvin, reachMm } = resolved.packs.practice;
    expect(Object.fromEntries(allowanceKelvin)).toEqual({
      'temperature crayon': 20,
      'contact probe': 20,
      'infra-red on a prepared spot': 30,
      none: 30,
    });
    expect(Object.fromEntries(reachMm)).toEqual({ 'resistance spot': 25 });
  });

  test('a later pack may ask for more, of the one that it names', () => {
    const own = packOf(
      `allowances: [{ measured_by: contact probe, add: 35 K, ${source} }]\nreaches: [{ from: resistance spot, within: 2 in, ${source} }]`,
    );
    const resolved = resolvePacks([...builtInPacks(), own], undefined);
    if (!resolved.ok) throw new Error(resolved.sentence);
    const { allowanceKelvin, reachMm } = resolved.packs.practice;
    expect(allowanceKelvin.get('contact probe')).toBe(35);
    expect(allowanceKelvin.get('temperature crayon')).toBe(20);
    expect(reachMm.get('resistance spot')).toBeCloseTo(50.8, 9);
  });

  test.each([
    `allowances: [{ measured_by: contact probe, add: 5 K, ${source} }]`,
    `reaches: [{ from: resistance spot, within: 10 mm, ${source} }]`,
  ])('a later pack that asks for less is refused: %s', (topic) => {
    const resolved = resolvePacks([...builtInPacks(), packOf(topic)], undefined);
    expect(resolved).toMatchObject({ ok: false, sentence: expect.stringContaining('may only tighten it') });
  });

  test.each([
    [
      `allowances: [{ measured_by: crayons, add: 20 K, ${source} }]`,
      'no word of the fact operation.measured_by',
    ],
    [`allowances: [{ measured_by: none, add: 20 mm, ${source} }]`, '20 mm'],
    [`allowances: [{ measured_by: none, add: -20 K, ${source} }]`, 'negative'],
    [`reaches: [{ from: spot, within: 25 mm, ${source} }]`, 'no word of the fact exposure.from'],
    [`reaches: [{ from: resistance spot, within: 25 K, ${source} }]`, '25 K'],
    [`allowances: [{ measured_by: none, add: 20 K }]`, 'source'],
    [
      `allowances: [{ measured_by: none, add: 20 K, ${source} }, { measured_by: none, add: 30 K, ${source} }]`,
      'an allowance in this pack already',
    ],
  ])('a slip is told: %s', (topic, sentence) => {
    const loaded = load(topic);
    expect(loaded.ok).toBe(false);
    expect(!loaded.ok && loaded.faults.map((fault) => fault.sentence).join(' ')).toContain(sentence);
  });
});
