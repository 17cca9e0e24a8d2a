import { spawnSync } from 'node:child_process';
import {
  chmodSync,
  chownSync,
  cpSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { createHash } from 'node:crypto';
import { tmpdir } from 'node:os';
import path from 'node:path';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { loadFound } from '../../src/cli/judging/given-packs.ts';
import { packCache } from '../../src/cli/judging/pack-cache.ts';
import type { Pack } from '../../src/packs/pack.ts';
import type { FoundPack } from '../../src/packs/sources/read-packed.ts';
import { readPackSources } from '../../src/packs/sources/read-pack-sources.ts';
import { runPlanish } from './run-planish.ts';
import type { RunResult } from './run-planish.ts';

let home = '';
let rules = '';
beforeEach(() => {
  home = mkdtempSync(path.join(tmpdir(), 'planish-cache-'));
  rules = path.join(home, 'rules');
  cpSync('examples/rules', rules, { recursive: true });
});
afterEach(() => {
  rmSync(home, { recursive: true, force: true });
});

const entries = (): string => path.join(home, 'planish', 'packs');
const files = (): readonly string[] => readdirSync(entries()).map((name) => path.join(entries(), name));
const plan = path.resolve('examples/plans/ring-end-piece-by-drawn-cut.yaml');
const args = (): readonly string[] => [
  ...['check', '--as-of', '2026-10-21', '--format', 'json', '--rules', rules, plan],
];
const run = (more: Readonly<Record<string, string>> = {}): RunResult =>
  runPlanish(args(), { env: { XDG_CACHE_HOME: home, ...more } });
const uncached = (): RunResult => run({ PLANISH_CACHE: 'off' });

function found(): readonly FoundPack[] {
  const answer = readPackSources(rules, process.cwd());
  if (!answer.ok) throw new Error(answer.sentence);
  return answer.packs;
}

function loaded(one: FoundPack): Pack {
  const { pack, lines } = loadFound(one);
  if (pack === undefined) throw new Error(lines.join('\n'));
  return pack;
}

const cache = (build = 'one'): ReturnType<typeof packCache> => packCache({ XDG_CACHE_HOME: home }, build);

describe('a kept pack', () => {
  test('is the pack that is loaded anew, to the last value', () => {
    for (const one of found()) {
      cache().keep(one, loaded(one));
      expect(cache().read(one)).toStrictEqual(loaded(one));
    }
    expect(found().length).toBe(3);
  });

  test('gives the same report to the byte, the first time and after', () => {
    const expected = uncached();
    expect([expected.status, expected.stderr]).toEqual([0, '']);
    expect(run()).toEqual(expected);
    expect(files()).toHaveLength(3);
    expect(run()).toEqual(expected);
  });

  test('is really read: one whose digest was made to fit is believed', () => {
    run();
    const [file] = files().filter((name) => readFileSync(name, 'utf8').includes('"corvane-tarn"'));
    if (file === undefined) throw new Error('not kept');
    const [head = '', body = ''] = readFileSync(file, 'utf8').split('\n');
    const key = head.split(' ')[2] ?? '';
    const other = body
      .replace('"provisions":[', '"provisions":[]')
      .replace(/"provisions":\[\].*?"parts":/u, '"provisions":[],"parts":');
    expect(other).not.toBe(body);
    const digest = createHash('sha256').update(key).update(other).digest('hex');
    writeFileSync(file, `planish pack ${key} ${digest}\n${other}`);
    expect(run().stdout).not.toBe(uncached().stdout);
  });

  test('is not kept when a fault was told, and told again each time', () => {
    writeFileSync(path.join(rules, 'amsel-shop', 'house.yaml'), 'pack: amsel-shop\nruels: []\n');
    const first = run();
    expect(first.status).toBe(2);
    expect(run()).toEqual(first);
    // The two sound ones beside it are kept.
    expect(files()).toHaveLength(2);
  });

  test.each([
    ['another build', 'two', (one: FoundPack) => one],
    ['another place', 'one', (one: FoundPack) => ({ ...one, where: 'elsewhere' })],
    [
      'one letter more in a file',
      'one',
      (one: FoundPack) => ({
        ...one,
        files: { ...one.files, files: one.files.files.map((file) => ({ ...file, text: `${file.text} ` })) },
      }),
    ],
    [
      'a file less',
      'one',
      (one: FoundPack) => ({ ...one, files: { ...one.files, files: one.files.files.slice(1) } }),
    ],
  ])('does not stand for %s', (_name, build, change) => {
    const [one] = found();
    if (one === undefined) throw new Error('no pack');
    cache().keep(one, loaded(one));
    expect(cache().read(one)).toBeDefined();
    expect(cache(build).read(change(one))).toBeUndefined();
  });
});

describe('a hostile or broken cache never changes what a run says', () => {
  const spoiled: readonly (readonly [string, () => void])[] = [
    [
      'a file cut short',
      () => {
        each((file, bytes) => {
          writeFileSync(file, bytes.subarray(0, 200));
        });
      },
    ],
    [
      'an empty file',
      () => {
        each((file) => {
          writeFileSync(file, '');
        });
      },
    ],
    ['a file of another pack under its name', swapped],
    [
      'a file that others may write',
      () => {
        each((file) => {
          chmodSync(file, 0o666);
        });
      },
    ],
    [
      'a folder that others may write',
      () => {
        chmodSync(entries(), 0o777);
      },
    ],
    [
      'a folder in the place of a file',
      () => {
        each((file) => {
          rmSync(file);
          mkdirSync(file);
        });
      },
    ],
    [
      'a link in the place of a file',
      () => {
        each((file) => {
          cpSync(file, `${file}.x`);
          rmSync(file);
          symlinkSync(`${file}.x`, file);
        });
      },
    ],
    [
      'a link in the place of the folder',
      () => {
        cpSync(entries(), `${entries()}-x`, { recursive: true });
        rmSync(entries(), { recursive: true });
        symlinkSync(`${entries()}-x`, entries());
      },
    ],
    [
      'a file in the place of the folder',
      () => {
        rmSync(entries(), { recursive: true });
        writeFileSync(entries(), '');
      },
    ],
    [
      'a pipe in the place of a file',
      () => {
        each((file) => {
          rmSync(file);
          spawnSync('mkfifo', [file]);
        });
      },
    ],
  ];

  test.each(spoiled)('%s', (_name, spoil) => {
    const expected = uncached();
    run();
    spoil();
    expect(run()).toEqual(expected);
    expect(run()).toEqual(expected);
  });

  test.skipIf(process.getuid?.() !== 0)('files or a folder of another owner', () => {
    const [one] = found();
    if (one === undefined) throw new Error('no pack');
    const keep = (): void => {
      cache().keep(one, loaded(one));
    };
    keep();
    each((file) => {
      chownSync(file, 12_345, 12_345);
    });
    expect(cache().read(one)).toBeUndefined();
    keep();
    expect(cache().read(one)).toBeDefined();
    chownSync(entries(), 12_345, 12_345);
    expect(cache().read(one)).toBeUndefined();
  });

  test('any byte that is flipped, anywhere', () => {
    const [one] = found();
    if (one === undefined) throw new Error('no pack');
    cache().keep(one, loaded(one));
    const [file = ''] = files();
    const bytes = readFileSync(file);
    fc.assert(
      fc.property(fc.nat(bytes.length - 1), fc.integer({ min: 1, max: 255 }), (at, flip) => {
        const other = Buffer.from(bytes);
        other[at] = (other[at] ?? 0) ^ flip;
        writeFileSync(file, other);
        expect(cache().read(one)).toBeUndefined();
      }),
      { numRuns: 300 },
    );
  });

  test.each([
    ['no folder can be made', { XDG_CACHE_HOME: '/proc/nowhere' }],
    ['its path is not absolute', { XDG_CACHE_HOME: 'here', HOME: '/nowhere' }],
    ['there is no home', { XDG_CACHE_HOME: '', HOME: '/proc/nowhere' }],
  ])('%s', (_name, env) => {
    expect(runPlanish(args(), { env })).toEqual(uncached());
  });
});

test('PLANISH_CACHE=off neither reads nor writes', () => {
  uncached();
  expect(readdirSync(home)).toEqual(['rules']);
});

test('the folder does not grow without end', () => {
  const [one] = found();
  if (one === undefined) throw new Error('no pack');
  const pack = loaded(one);
  for (let n = 0; n < 80; n += 1) cache().keep({ ...one, where: String(n) }, pack);
  expect(files().length).toBeLessThanOrEqual(64);
  expect(cache().read({ ...one, where: '79' })).toBeDefined();
});

function each(act: (file: string, bytes: Buffer) => void): void {
  for (const file of files()) act(file, readFileSync(file));
}

function swapped(): void {
  const [one = '', two = ''] = files();
  const [a, b] = [readFileSync(one), readFileSync(two)];
  writeFileSync(one, b);
  writeFileSync(two, a);
}
