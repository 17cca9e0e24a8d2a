import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { expect, test } from 'vitest';
import { dictionary } from '../../src/cli/dictionary.ts';
import { loadPackFolder } from '../../src/packs/load-pack.ts';
import type { PackLoading } from '../../src/packs/load-pack.ts';
import { ruleIds, judgeText } from '../judge-text.ts';
import { wholeJob } from '../faults-of-the-whole-job.ts';
import { changed } from '../one-change.ts';

function withPack<T>(orders: string, use: (folder: string) => T): T {
  const folder = mkdtempSync(path.join(tmpdir(), 'planish-order-'));
  try {
    writeFileSync(
      path.join(folder, 'pack.yaml'),
      'pack: mine\nformat: 1\nfacts: 1\nversion: 1.1.0\nreleased: false\ntitle: Mine\n',
    );
    writeFileSync(path.join(folder, 'orders.yaml'), `pack: mine\norders:\n${orders}`);
    return use(folder);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function sentencesOf(loaded: PackLoading): readonly string[] {
  if (loaded.ok) return [];
  return loaded.faults.map(({ line, column, sentence }) => `${String(line)}:${String(column)} ${sentence}`);
}

function unpinned(text: string): string {
  return text.replace(/^rules:.*\n/mu, '');
}

const source = 'source: { practice: common }';

test.each([
  [
    'of a thing before itself',
    `  - { first: bake, then: bake, ${source} }\n`,
    ['3:26 `bake` cannot come before itself.'],
  ],
  [
    'that stands there already',
    `  - { first: bake, then: road test, ${source} }\n  - { first: bake, then: road test, ${source} }\n`,
    ['4:5 `bake` before `road test` stands in this pack already.'],
  ],
  [
    'that ends before it begins',
    `  - { first: bake, then: road test, since: 1.1.0, until: 1.0.0, ${source} }\n`,
    ['3:58 The order ends with 1.0.0, which does not come after 1.1.0.'],
  ],
])('an order %s is refused', (_name, orders, expected) => {
  withPack(orders, (folder) => {
    expect(sentencesOf(loadPackFolder(folder, dictionary))).toEqual(expected);
  });
});

test('an order of an unknown thing is refused with the nearest known one', () => {
  withPack(`  - { first: bak, then: road test, ${source} }\n`, (folder) => {
    expect(sentencesOf(loadPackFolder(folder, dictionary)).join()).toContain('`bake`');
  });
});

test('an order of a shop is added to those of the packs under it, and held', () => {
  const late = changed(wholeJob, [
    ['bake: { planned: true, done: 2026-10-08', 'bake: { planned: true, done: 2026-10-12'],
  ]);
  withPack(`  - { first: bake, then: wheel alignment, ${source}, note: A warm body moves. }\n`, (folder) => {
    const found = judgeText(unpinned(late), folder).findings.map(({ finding }) => finding);
    expect(found.filter(({ rule }) => rule === 'out-of-order').map(({ message }) => message)).toEqual([
      'The wheel alignment is dated 2026-10-10T14:00, before what has to come first: the bake (2026-10-12). A warm body moves.',
    ]);
    expect(ruleIds(judgeText(unpinned(wholeJob), folder))).toEqual([]);
  });
  expect(ruleIds(judgeText(late))).not.toContain('out-of-order');
});
