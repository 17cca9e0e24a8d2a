import { createHash } from 'node:crypto';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { builtInPacks } from '../../src/generated/built-in-packs.ts';
import { runPlanish } from './run-planish.ts';

const packs = (...args: readonly string[]) => runPlanish(['packs', ...args]);
let folder = '';
const at = (...names: readonly string[]): string => path.join(folder, ...names);
const edit = (file: string, from: string, to: string): void => {
  const text = readFileSync(file, 'utf8');
  if (!text.includes(from)) throw new Error(`${file} does not hold: ${from}`);
  writeFileSync(file, text.replace(from, to));
};
beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'planish-packs-'));
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

describe('planish packs', () => {
  test('names what is installed: versions, digests, makers, models and years', () => {
    const { status, stdout, stderr } = packs('--rules', 'examples/rules');
    expect([status, stderr]).toEqual([0, '']);
    expect(stdout).toContain('For Corvane Tarn, 2015-2022; before 2026.1.0: Corvane Tarn, 2015-2019');
    for (const { version, digest } of builtInPacks()[0]?.releases ?? [])
      expect(stdout).toContain(`  ${version}\n    ${digest}\n`);
    expect(stdout.split('\n').filter((line) => [...line].length > 80)).toEqual([]);
    const json: { readonly packs: readonly { readonly pack: string }[] } = JSON.parse(
      packs('--rules', 'examples/rules', '--format', 'json').stdout,
    );
    expect(json.packs.map(({ pack }) => pack)).toEqual([
      'general',
      'amsel-shop',
      'corvane-tarn',
      'eu-body-repair',
    ]);
    expect(json.packs[2]).toMatchObject({
      vehicle: { maker: 'Corvane', models: ['Tarn'], years: { from: 2015, to: 2022 } },
    });
  });

  test('a bad pack is told beside the good ones; a mistyped command has its nearest', () => {
    const bad = packs('--rules', 'no-such-pack');
    expect([bad.status, bad.stdout.startsWith('general ')]).toEqual([2, true]);
    expect(packs('chek').stderr).toBe('planish: `packs` has no command `chek`. Nearest known: check.\n');
  });
});

describe('planish packs check', () => {
  test('tells every fault at once with file, line and column, and the cases that fail', () => {
    packs('new', at('house'));
    edit(
      at('house', 'house.yaml'),
      'operation.source: torch }\n    message',
      'operation.sorce: torch }\n    message',
    );
    edit(at('house', 'pack.yaml'), 'version: 1.0.0', 'version: one');
    const { status, stdout } = packs('check', at('house'));
    expect(status).toBe(2);
    expect(stdout).toContain(`${at('house', 'house.yaml')}:12:36: There is no fact \`operation.sorce\`.`);
    expect(stdout).toContain(`${at('house', 'pack.yaml')}:5:10: A version is three numbers`);
  });

  test('a case that comes out otherwise', () => {
    packs('new', at('house'));
    edit(at('house', 'house.yaml'), 'source: induction', 'source: torch');
    const { status, stdout } = packs('check', at('house'));
    expect([status, stdout]).toEqual([2, expect.stringContaining('case 2 of `passes` comes out as found')]);
    expect(stdout).toMatch(/house\.yaml:\d+:\d+: /u);
  });

  test('says how many cases ran', () => {
    const { status, stdout } = packs('check', 'examples/rules/amsel-shop');
    expect([status, stdout]).toEqual([0, 'amsel-shop 1.0.0: 1 rule, 5 cases run.\nNothing is wrong.\n']);
  });
});

describe('planish packs new', () => {
  test('writes a pack that loads, and overwrites nothing without --force', () => {
    expect(packs('new', at('house')).status).toBe(0);
    expect(packs('check', at('house')).status).toBe(0);
    writeFileSync(at('house', 'house.yaml'), 'mine');
    const again = packs('new', at('house'));
    expect([again.status, again.stderr.split('\n').length]).toEqual([2, 2]);
    expect(readFileSync(at('house', 'house.yaml'), 'utf8')).toBe('mine');
    expect(readdirSync(at('house')).sort()).toEqual(['house.yaml', 'pack.yaml']);
    expect(packs('new', '--force', at('house')).status).toBe(0);
    expect(packs('check', at('house')).status).toBe(0);
    expect(packs('new', at('Bad_Name')).status).toBe(2);
    expect(existsSync(at('Bad_Name'))).toBe(false);
  });

  // The old body's document permits the cut at B (examples/rules/corvane-tarn); a plan for the old body that the general pack stops.
  const plan = 'examples/plans/ring-sectioned-by-old-document.yaml';
  const oldBody = (): string => {
    const text = readFileSync(plan, 'utf8').replace('model_year: 2021', 'model_year: 2018');
    writeFileSync(at('plan.yaml'), text);
    return at('plan.yaml');
  };
  const stops = (...more: readonly string[]): readonly string[] => {
    const { stdout } = runPlanish([
      'check',
      '--as-of',
      '2026-10-21',
      '--format',
      'json',
      ...more,
      at('plan.yaml'),
    ]);
    const report: {
      readonly plans: readonly {
        readonly findings: readonly { readonly rule: string; readonly severity: string }[];
      }[];
    } = JSON.parse(stdout);
    return (report.plans[0]?.findings ?? [])
      .filter(({ severity }) => severity === 'stop')
      .map(({ rule }) => rule);
  };

  test('--from a plan: what it would need is asked, lifts nothing, and lifts once a named person filled it in', () => {
    oldBody();
    const alone = stops();
    expect(alone).toContain('section-press-hardened');
    const made = packs('new', '--from', at('plan.yaml'), at('corvane'));
    expect([made.status, made.stderr]).toEqual([0, '']);
    const file = at('corvane', 'provisions.yaml');
    expect(readFileSync(file, 'utf8')).toContain(
      "operation: section at B\n    says: '?'\n    filled_by: '?'\n",
    );
    expect(packs('check', at('corvane')).stdout).toContain('lifts nothing: section at B, door ring');
    expect(stops('--rules', at('corvane'))).toEqual(alone);

    // The word alone, without a name, is refused: nobody read the document.
    edit(file, "says: '?'", 'says: may');
    const unnamed = packs('check', at('corvane'));
    expect([unnamed.status, unnamed.stdout]).toEqual([
      2,
      expect.stringContaining('without a name nothing is permitted'),
    ]);

    edit(file, "filled_by: '?'", 'filled_by: P. Falk');
    expect(packs('check', at('corvane')).status).toBe(0);
    expect(stops('--rules', at('corvane'))).not.toContain('section-press-hardened');
  });

  test('each file names the schema for editors, as seen from where it lies', () => {
    packs('new', at('house'));
    for (const file of ['pack.yaml', 'house.yaml']) {
      const [line = ''] = readFileSync(at('house', file), 'utf8').split('\n');
      const way = /^# yaml-language-server: \$schema=(\S+)$/u.exec(line)?.[1] ?? '';
      expect(path.resolve(at('house'), way)).toBe(path.resolve('schemas/pack.draft-07.schema.json'));
    }
  });

  test('--from a plan that asks for the very pack that is to be written', () => {
    oldBody();
    edit(at('plan.yaml'), 'rules: [', 'rules: [corvane@1, ');
    expect(runPlanish(['check', at('plan.yaml')]).status).toBe(2);
    const made = packs('new', '--from', at('plan.yaml'), at('corvane'));
    expect([made.status, made.stderr]).toEqual([0, '']);
    expect(readFileSync(at('corvane', 'provisions.yaml'), 'utf8')).toContain('operation: section at B\n');
  });

  test('--from a plan without a year says what is missing', () => {
    writeFileSync(at('plan.yaml'), readFileSync(plan, 'utf8').replace(/^ {2}model_year: .*\n/mu, ''));
    const { status, stderr } = packs('new', '--from', at('plan.yaml'), at('corvane'));
    expect([status, stderr.split('\n').length]).toEqual([2, 2]);
    expect(existsSync(at('corvane'))).toBe(false);
  });
});

describe('planish packs canonical', () => {
  test('of the pack that comes with planish, by its name: its SHA-256 is the digest of the release', () => {
    for (const { version, digest } of builtInPacks()[0]?.releases ?? []) {
      const { stdout } = packs('canonical', 'general', version);
      expect(`sha256:${createHash('sha256').update(stdout).digest('hex')}`).toBe(digest);
    }
  }, 60_000);
});

describe('planish packs diff', () => {
  test('says which weld setting is new', () => {
    const { stdout } = packs('diff', 'examples/rules/amsel-shop', 'general');
    expect(stdout).toMatch(/added +weld setting for (?:bare|zinc-coated) sheet over [\d.]+ to [\d.]+ mm\n/u);
  });

  test('a hold that another rule made a stop is raised; what is new is added', () => {
    const { status, stdout } = packs('diff', 'general@1', 'general@2');
    expect(status).toBe(0);
    expect(stdout.replaceAll(/\s+/gu, ' ')).toContain(
      'raised section-ultra-high-strength: stop, takes the place of section-ultra-high-strength-held (hold)',
    );
    expect(stdout).toMatch(/added +lifted-beside-the-work: stop/u);
    expect(packs('diff', 'general', 'general').stdout).toContain('nothing that judges differs');
  });

  test('statements of the maker, and a version that is not there', () => {
    const tarn = 'examples/rules/corvane-tarn';
    const words = packs('diff', `${tarn}@2025.1.0`, tarn).stdout.replaceAll(/\s+/gu, ' ');
    expect(words).toMatch(/added door ring, 2020-2022: shall replace whole/u);
    const none = packs('diff', 'general@7', tarn);
    expect([none.status, none.stdout]).toEqual([2, '']);
    expect(none.stderr).toContain('general has no such version; it has 1.0.0, 1.1.0, 2.0.0');
  });
});
