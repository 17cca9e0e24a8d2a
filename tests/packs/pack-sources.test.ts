import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { gzipSync } from 'node:zlib';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { loadFound } from '../../src/cli/judging/given-packs.ts';
import { readPackSources } from '../../src/packs/sources/read-pack-sources.ts';

let work = '';
beforeEach(() => {
  work = mkdtempSync(path.join(tmpdir(), 'planish-source-'));
});
afterEach(() => {
  rmSync(work, { recursive: true, force: true });
});

const source = 'examples/rules/corvane-tarn';
const inFolder = digestsOf(source, '.');

function digestsOf(given: string, from: string): readonly string[] {
  const found = readPackSources(given, from);
  if (!found.ok) return [found.sentence];
  return found.packs.map((one) => {
    const { pack, lines } = loadFound(one);
    return pack?.digest ?? lines.join('\n');
  });
}

function run(command: string, args: readonly string[], cwd: string): void {
  const { status, stderr } = spawnSync(command, args, { cwd, encoding: 'utf8' });
  if (status !== 0) throw new Error(stderr);
}

const manifest = 'pack: mine\nformat: 1\nfacts: 1\nversion: 1.0.0\ntitle: A pack\n';

/** A tar archive put together by hand after POSIX.1-1988, ustar. */
function tar(
  entries: readonly {
    readonly name: string;
    readonly type?: string;
    readonly text?: string;
    readonly link?: string;
  }[],
): Buffer {
  const blocks = entries.flatMap(({ name, type = '0', text = '', link = '' }) => {
    const header = Buffer.alloc(512);
    header.write(name, 0, 'utf8');
    header.write('0000644\0', 100);
    header.write(`${Buffer.byteLength(text).toString(8).padStart(11, '0')}\0`, 124);
    header.write('        ', 148);
    header.write(type, 156);
    header.write(link, 157);
    header.write('ustar\0', 257);
    header.write('00', 263);
    const sum = header.reduce((all, byte) => all + byte, 0);
    header.write(`${sum.toString(8).padStart(6, '0')}\0 `, 148);
    const body = Buffer.alloc(Math.ceil(Buffer.byteLength(text) / 512) * 512);
    body.write(text);
    return [header, body];
  });
  return Buffer.concat([...blocks, Buffer.alloc(1024)]);
}

function packed(entries: Parameters<typeof tar>[0]): string {
  const file = path.join(work, 'mine.tgz');
  writeFileSync(file, gzipSync(tar(entries)));
  return file;
}

test('a link among packs that leads nowhere is told: a pack may be meant, and plans judged without it could pass', () => {
  cpSync(source, path.join(work, 'corvane-tarn'), { recursive: true });
  symlinkSync('other', path.join(work, '.#editor'));
  expect(digestsOf('.', work)).toEqual(inFolder);
  symlinkSync('gone', path.join(work, 'house'));
  expect(digestsOf('.', work)).toEqual(['house: this link leads nowhere, and a pack may be meant.']);
});

describe('a packed file is the same pack as its folder', () => {
  test.each(['--format=gnu', '--format=ustar', '--format=pax'])('made by tar %s', (format) => {
    const file = path.join(work, 'pack.tgz');
    run('tar', ['-czf', file, format, '-C', path.dirname(path.resolve(source)), 'corvane-tarn'], work);
    expect(digestsOf(file, '.')).toEqual(inFolder);
  });

  test('made by npm pack, with what a package holds beside it', () => {
    const folder = path.join(work, 'package');
    cpSync(source, folder, { recursive: true });
    writeFileSync(
      path.join(folder, 'package.json'),
      '{"name":"tarn-pack","version":"2026.1.0","license":"MIT"}',
    );
    writeFileSync(path.join(folder, 'README.md'), 'Read me.');
    run('npm', ['pack', '--silent', '--ignore-scripts', '--offline'], folder);
    expect(digestsOf(path.join(folder, 'tarn-pack-2026.1.0.tgz'), '.')).toEqual(inFolder);
  });

  test('with a very long path in front of it', () => {
    const deep = path.join(work, ...Array.from({ length: 4 }, () => 'a'.repeat(60)));
    mkdirSync(deep, { recursive: true });
    cpSync(source, path.join(deep, 'tarn'), { recursive: true });
    for (const format of ['gnu', 'pax']) {
      const file = path.join(work, `${format}.tar`);
      run('tar', ['-cf', file, `--format=${format}`, '-C', work, 'a'.repeat(60)], work);
      expect(digestsOf(file, '.')).toEqual(inFolder);
    }
  });
});

describe('a packed file that is not to be trusted is refused as a whole', () => {
  const good = { name: 'mine/pack.yaml', text: manifest };

  test('the same by hand is read', () => {
    expect(digestsOf(packed([{ name: 'mine/', type: '5' }, good]), '.')[0]).toMatch(/^sha256:/u);
  });

  test.each([
    [
      'a path that climbs out',
      [good, { name: 'mine/../../etc/heat.yaml', text: 'x' }],
      'the path `mine/../../etc/heat.yaml` leads out of it',
    ],
    [
      'a path from the root',
      [good, { name: '/etc/heat.yaml', text: 'x' }],
      'the path `/etc/heat.yaml` leads out of it',
    ],
    ['a path of another system', [good, { name: 'C:\\heat.yaml', text: 'x' }], 'leads out of it'],
    [
      'a symbolic link',
      [good, { name: 'mine/heat.yaml', type: '2', link: '/etc/passwd' }],
      '`mine/heat.yaml` is a link or a device, not a file',
    ],
    [
      'a hard link',
      [good, { name: 'mine/heat.yaml', type: '1', link: 'mine/pack.yaml' }],
      '`mine/heat.yaml` is a link or a device, not a file',
    ],
    [
      'a device',
      [good, { name: 'mine/heat.yaml', type: '3' }],
      '`mine/heat.yaml` is a link or a device, not a file',
    ],
    ['one path twice', [good, good], '`mine/pack.yaml` stands in it twice'],
    ['no pack', [{ name: 'mine/README.md', text: 'x' }], 'holds no rule pack'],
    [
      'a long name that climbs out',
      [
        good,
        { name: '././@LongLink', type: 'L', text: 'mine/../../../heat.yaml\0' },
        { name: 'heat.yaml', text: 'x' },
      ],
      'leads out of it',
    ],
    [
      'a pax path that climbs out',
      [good, { name: 'pax', type: 'x', text: '24 path=../../heat.yaml\n' }, { name: 'heat.yaml', text: 'x' }],
      'leads out of it',
    ],
  ])('%s', (_name, entries, expected) => {
    expect(digestsOf(packed(entries), '.')[0]).toContain(expected);
  });

  test('a header with a flipped bit', () => {
    const bytes = tar([good]);
    bytes[3] = (bytes[3] ?? 0) ^ 1;
    const file = path.join(work, 'mine.tar');
    writeFileSync(file, bytes);
    expect(digestsOf(file, '.')[0]).toContain('it is no tar archive, or it is damaged');
  });

  test('half of it', () => {
    const file = path.join(work, 'mine.tar');
    writeFileSync(file, tar([good]).subarray(0, 550));
    expect(digestsOf(file, '.')[0]).toContain('it ends in the middle of a file');
    const squeezed = path.join(work, 'mine.tgz');
    writeFileSync(squeezed, gzipSync(tar([good])).subarray(0, 60));
    expect(digestsOf(squeezed, '.')[0]).toContain('is damaged: it cannot be unfolded');
  });

  test('a small file that unfolds to a large one', () => {
    const file = packed([good, { name: 'mine/zeros.bin', text: '0'.repeat(17 * 1024 * 1024) }]);
    expect(readFileSync(file).length).toBeLessThan(100_000);
    expect(digestsOf(file, '.')[0]).toContain('unfolds to more than 16 MiB');
  });

  test('50 MB of text', () => {
    const file = path.join(work, 'large.yaml');
    mkdirSync(path.join(work, 'large'));
    writeFileSync(path.join(work, 'large', 'pack.yaml'), manifest);
    writeFileSync(path.join(work, 'large', 'heat.yaml'), `# ${'x'.repeat(50 * 1024 * 1024)}\n`);
    writeFileSync(file, '');
    expect(digestsOf(path.join(work, 'large'), '.')[0]).toContain('larger than 8 MiB');
    expect(digestsOf(file, '.')[0]).toContain(
      'a pack is a folder with a pack.yaml, a packed file (.tgz) or an npm package.',
    );
  });
});

describe('an npm package by its name', () => {
  function install(name: string): string {
    const folder = path.join(work, 'node_modules', name);
    mkdirSync(path.dirname(folder), { recursive: true });
    cpSync(source, folder, { recursive: true });
    writeFileSync(
      path.join(folder, 'package.json'),
      JSON.stringify({ name, version: '1.0.0', main: 'index.js' }),
    );
    // Were it run, the test would not come back.
    writeFileSync(path.join(folder, 'index.js'), 'process.exit(3);');
    return folder;
  }

  test.each(['tarn-pack', '@amsel/tarn-pack'])('%s, from a folder below', (name) => {
    install(name);
    const below = path.join(work, 'jobs', '2026');
    mkdirSync(below, { recursive: true });
    expect(digestsOf(name, below)).toEqual(inFolder);
  });

  test('a folder of that name comes first', () => {
    install('tarn-pack');
    mkdirSync(path.join(work, 'tarn-pack'));
    writeFileSync(path.join(work, 'tarn-pack', 'pack.yaml'), manifest);
    expect(digestsOf('tarn-pack', work)).not.toEqual(inFolder);
  });

  test.each([
    ['no-such-pack', 'node_modules holds no such package'],
    ['../tarn-pack', 'no rule pack lies here'],
  ])('%s: %s', (name, expected) => {
    expect(digestsOf(name, work)[0]).toContain(expected);
  });

  test('a ring of links is told', () => {
    symlinkSync('ring', path.join(work, 'ring'));
    expect(digestsOf('ring', work)[0]).toMatch(/is it a ring of links\?$/u);
  });
});
