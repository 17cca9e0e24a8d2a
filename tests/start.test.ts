import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';

const root = path.dirname(import.meta.dirname);
const cacheOf = (folder: string): string => path.join(folder, 'planish.bundle.cache');
const bundleOf = (folder: string): string => path.join(folder, 'planish.bundle.cjs');

let folder = '';
beforeEach(() => {
  folder = path.join(mkdtempSync(path.join(tmpdir(), 'planish start ')), 'bin');
  for (const file of ['package.json', 'planish.js', 'start.js']) {
    cpSync(path.join(root, 'bin', file), path.join(folder, file));
  }
});
afterEach(() => {
  rmSync(path.dirname(folder), { recursive: true });
});

/** The digest only has to differ from bundle to bundle here. */
function writeBundle(word: string): void {
  const code = `console.log(require('node:path').basename(__filename), '${word}', ...process.argv.slice(2));\n`;
  writeFileSync(bundleOf(folder), `${code}// sha256 ${word.padEnd(64, '0')}\n`);
}

function makeCache(): Buffer {
  const made = spawnSync(process.execPath, [path.join(root, '.build/code-cache.cjs'), bundleOf(folder)]);
  expect(made.status).toBe(0);
  return readFileSync(cacheOf(folder));
}

function start(...flags: readonly string[]): {
  readonly status: number | null;
  readonly stdout: string;
  readonly stderr: string;
} {
  const run = spawnSync(process.execPath, [...flags, path.join(folder, 'planish.js'), 'check', 'a b'], {
    encoding: 'utf8',
  });
  return { status: run.status, stdout: run.stdout, stderr: run.stderr };
}

const saying = (word: string): ReturnType<typeof start> => ({
  status: 0,
  stdout: `planish.bundle.cjs ${word} check a b\n`,
  stderr: '',
});

describe('bin/planish.js', () => {
  it('says what to run where there is no bundle, and leaves status 2', () => {
    const run = start();
    expect(run).toMatchObject({ status: 2, stdout: '' });
    expect(run.stderr).toMatch(/^planish: .* is not there\. .*npm ci.*npm run prepare\.\n$/u);
  });

  it('runs the bundle of the command steel where there is one, and for no other command', () => {
    writeBundle('one');
    const steel = (): string =>
      spawnSync(process.execPath, [path.join(folder, 'planish.js'), 'steel', 'DC04'], { encoding: 'utf8' })
        .stdout;
    expect(steel()).toBe('planish.bundle.cjs one steel DC04\n');
    const code = `console.log('its own', ...process.argv.slice(2));\n`;
    writeFileSync(path.join(folder, 'planish.bundle.steel.cjs'), `${code}// sha256 ${'s'.repeat(64)}\n`);
    expect(steel()).toBe('its own steel DC04\n');
    expect(start()).toEqual(saying('one'));
  });

  it('runs the bundle without a code cache', () => {
    writeBundle('one');
    expect(start()).toEqual(saying('one'));
  });

  it('runs the bundle with its code cache, also under flags that V8 made no cache for', () => {
    writeBundle('one');
    makeCache();
    expect(start()).toEqual(saying('one'));
    expect(start('--max-lazy')).toEqual(saying('one'));
  });

  it('takes the code from the cache and not from the bundle when both fit', () => {
    // Proves that the other cases here are about a cache that is really used: same length, same digest, other code.
    writeBundle('one');
    makeCache();
    const text = readFileSync(bundleOf(folder), 'utf8');
    writeFileSync(bundleOf(folder), text.replace("'one'", "'two'"));
    expect(start()).toEqual(saying('one'));
  });

  it('leaves the cache of another bundle of the same length alone', () => {
    writeBundle('one');
    makeCache();
    writeBundle('two');
    expect(start()).toEqual(saying('two'));
  });

  it.each([
    ['empty', (): Buffer => Buffer.alloc(0)],
    ['cut short', (cache: Buffer): Buffer => cache.subarray(0, cache.length - 8)],
    ['of another Node', (cache: Buffer): Buffer => Buffer.concat([Buffer.from('v0'), cache.subarray(2)])],
    ['of noise', (cache: Buffer): Buffer => Buffer.alloc(cache.length, 0x5a)],
  ])('runs the bundle where the cache is %s', (_name, spoil) => {
    writeBundle('one');
    writeFileSync(cacheOf(folder), spoil(makeCache()));
    expect(start()).toEqual(saying('one'));
  });

  it('runs the bundle whichever bit of the cache is flipped', () => {
    writeBundle('one');
    const cache = makeCache();
    for (let step = 0; step < 16; step++) {
      const spoiled = Buffer.from(cache);
      const at = Math.floor((step * cache.length) / 16);
      spoiled.writeUInt8(cache.readUInt8(at) ^ (1 << (step % 8)), at);
      writeFileSync(cacheOf(folder), spoiled);
      expect(start()).toEqual(saying('one'));
    }
  });
});
