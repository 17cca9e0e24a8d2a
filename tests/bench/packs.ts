// What rule packs cost: `npm run bench -- packs`. Ratios of two commands, run in turn; never part of the tests.
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { parse, stringify } from 'yaml';
import { tell } from './tell.ts';

const root = path.resolve(import.meta.dirname, '../..');
const planish = path.join(root, 'bin/planish.js');
const work = mkdtempSync(path.join(tmpdir(), 'planish-bench-packs-'));
const day = ['--as-of', '2026-10-21'];

// Node reads extra certificates at each start, which would flatter every ratio.
const env = { ...process.env, NO_COLOR: '1', XDG_CACHE_HOME: path.join(work, 'cache') };
Reflect.deleteProperty(env, 'NODE_EXTRA_CA_CERTS');
Reflect.deleteProperty(env, 'PLANISH_CACHE');
const uncached = { ...env, PLANISH_CACHE: 'off' };

interface Command {
  readonly args: readonly string[];
  readonly env: NodeJS.ProcessEnv;
}

try {
  const packs = path.join(work, 'packs');
  const count = writePacks(packs, 400);
  const plan = 'examples/bench/200-lines.yaml';
  const alone: Command = { args: [planish, 'check', ...day, plan], env };
  const layered: Command = { args: [planish, 'check', ...day, '--rules', packs, plan], env };
  compare(`cold, 3 layers of ${String(count)} rules : general alone`, '≤ 1.3', 31, layered, alone);
  compare('the same without the cache', '', 11, { ...layered, env: uncached }, alone);

  const plans = [
    'door-skin-cosmetic',
    'electric-sill',
    'ring-replaced-whole',
    'ring-sectioned-by-old-document',
  ]
    .concat(['student-plan'])
    .map((name) => readFileSync(path.join(root, `examples/plans/${name}.yaml`), 'utf8'));
  const archive = path.join(work, 'archive');
  mkdirSync(archive);
  for (let n = 0; n < 10_000; n += 1)
    writeFileSync(
      path.join(archive, `plan-${String(n).padStart(5, '0')}.yaml`),
      `${plans[n % plans.length] ?? ''}# copy ${String(n)}\n`,
    );
  const both = ['--from', 'general@1.0', '--to', 'general@2', ...day, archive];
  compare(
    '10,000 plans, recheck between two versions : check',
    '≤ 1.3',
    1,
    { args: [planish, 'recheck', ...both], env },
    { args: [planish, 'check', '--quiet', ...day, archive], env },
  );
} finally {
  rmSync(work, { recursive: true, force: true });
}

/** A market pack, a vehicle pack and a shop pack with rules as long as those of the general pack; gives how many. */
function writePacks(folder: string, count: number): number {
  const heads = [
    { pack: 'bench-market', layer: 'market', markets: ['european-union'] },
    { pack: 'bench-vehicle', vehicle: { maker: 'Corvane', models: ['Tarn'], years: '2000-2030' } },
    { pack: 'bench-shop', layer: 'shop' },
  ];
  const rules = generalRules().slice(0, count);
  const each = Math.ceil(rules.length / heads.length);
  for (const [index, head] of heads.entries()) {
    const at = path.join(folder, head.pack);
    mkdirSync(at, { recursive: true });
    const manifest = { ...head, format: 1, facts: 1, version: '1.0.0', title: 'For the bench' };
    writeFileSync(path.join(at, 'pack.yaml'), stringify(manifest));
    const own = rules.slice(index * each, (index + 1) * each);
    writeFileSync(path.join(at, 'rules.yaml'), stringify({ pack: head.pack, rules: own }));
  }
  return rules.length;
}

function generalRules(): readonly object[] {
  return readdirSync(path.join(root, 'rules/general')).flatMap((name) => {
    const file: { readonly rules?: readonly Readonly<Record<string, unknown>>[] } = parse(
      readFileSync(path.join(root, 'rules/general', name), 'utf8'),
    );
    return (file.rules ?? []).map(({ until: _, replaced_by: _by, ...rule }) => ({
      ...rule,
      id: `bench-${String(rule['id'])}`,
      since: '1.0.0',
    }));
  });
}

/** The two in turn, each once before it counts; the ratio is the median of the ratios of neighbouring runs. */
function compare(what: string, asked: string, runs: number, one: Command, other: Command): void {
  milliseconds(one);
  milliseconds(other);
  const pairs = Array.from({ length: runs }, () => [milliseconds(one), milliseconds(other)] as const);
  const ratio = median(pairs.map(([a, b]) => a / b));
  const times = `${median(pairs.map(([a]) => a)).toFixed(0)} ms against ${median(pairs.map(([, b]) => b)).toFixed(0)} ms`;
  tell(what, ratio, asked, times);
}

function milliseconds({ args, env: environment }: Command): number {
  const started = process.hrtime.bigint();
  const { status, stderr } = spawnSync(process.execPath, args, {
    cwd: root,
    env: environment,
    encoding: 'utf8',
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  // What could not be judged was not measured.
  if (status !== 0 && status !== 1) throw new Error(`${args.join(' ')}: ${stderr}`);
  return Number(process.hrtime.bigint() - started) / 1e6;
}

function median(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[values.length >> 1] ?? Number.NaN;
}
