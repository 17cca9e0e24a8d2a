import { spawnSync } from 'node:child_process';
import {
  chmodSync,
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, beforeEach, describe, expect, test, vi } from 'vitest';
import { parse } from 'yaml';

// Each starts other programs, which takes long on a busy machine.
vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });

const recipes = path.resolve('examples/ci');
const bin = path.resolve('bin/planish.js');
let top = '';
let shop = '';

const recipe = (name: string): string => readFileSync(path.join(recipes, name), 'utf8');
const isThere = (tool: string): boolean =>
  spawnSync(tool, ['--version'], { stdio: 'ignore' }).error === undefined;

beforeAll(() => {
  top = mkdtempSync(path.join(tmpdir(), 'planish-ci-'));
  // The commands of the recipes, for a machine without a registry.
  for (const [name, body] of [
    ['planish', `exec "${process.execPath}" "${bin}" "$@"`],
    ['npx', `[ "$1" = --no-install ] && shift && exec "$@"`],
    ['npm', 'exit 0'],
  ] as const) {
    mkdirSync(path.join(top, 'bin'), { recursive: true });
    writeFileSync(path.join(top, 'bin', name), `#!/bin/sh\n${body}\n`);
    chmodSync(path.join(top, 'bin', name), 0o755);
  }
});
beforeEach(() => {
  rmSync(path.join(top, 'shop'), { recursive: true, force: true });
  shop = path.join(top, 'shop');
  mkdirSync(shop);
  cpSync('examples/plans', path.join(shop, 'jobs'), { recursive: true });
  cpSync('examples/rules/corvane-tarn', path.join(shop, 'rules/corvane-tarn'), { recursive: true });
});
afterAll(() => {
  rmSync(top, { recursive: true, force: true });
});

interface Ended {
  readonly status: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

function sh(
  command: string,
  env: Readonly<Record<string, string>> = {},
  args: readonly string[] = [],
): Ended {
  const { status, stdout, stderr } = spawnSync('bash', ['-eo', 'pipefail', '-c', command, 'bash', ...args], {
    cwd: shop,
    encoding: 'utf8',
    env: {
      PATH: `${path.join(top, 'bin')}:${process.env['PATH'] ?? ''}`,
      HOME: top,
      ...env,
    },
  });
  return { status, stdout, stderr };
}

function git(...args: readonly string[]): void {
  const { status, stderr } = spawnSync(
    'git',
    ['-c', 'user.name=t', '-c', 'user.email=t@t.example', ...args],
    {
      cwd: shop,
      encoding: 'utf8',
    },
  );
  if (status !== 0) throw new Error(stderr);
}

const heldPlan = (): string => readFileSync('examples/plans/electric-sill.yaml', 'utf8');
const shopFile = (name: string): string => readFileSync(path.join(shop, name), 'utf8');
const expected = parse(readFileSync('examples/expected.yaml', 'utf8')) as {
  readonly as_of: string;
  readonly plans: Readonly<Record<string, { readonly verdict: string }>>;
};
const day = expected.as_of;
const verdicts = Object.values(expected.plans).map(({ verdict }) => verdict);
/** What all examples come to, as it is stated by hand: `7 plans, 3 stopped, 1 held, 3 cleared`. */
const total = [
  `${String(verdicts.length)} plans`,
  ...['stopped', 'not judged', 'held', 'cleared']
    .map((verdict) => [verdicts.filter((one) => one === verdict).length, verdict] as const)
    .filter(([count]) => count > 0)
    .map(([count, verdict]) => `${String(count)} ${verdict}`),
].join(', ');

describe('github-workflow.yaml', () => {
  interface Step {
    readonly name?: string;
    readonly run?: string;
    readonly uses?: string;
  }
  interface Workflow {
    readonly permissions: unknown;
    readonly jobs: Readonly<Record<string, { readonly steps: readonly Step[]; readonly needs?: string }>>;
  }
  const workflow = (): Workflow => parse(recipe('github-workflow.yaml')) as Workflow;
  const command = (job: string, name?: string): string => {
    const steps = workflow().jobs[job]?.steps ?? [];
    const step = steps.find((one) => (name === undefined ? one.run !== undefined : one.name === name));
    return step?.run ?? 'exit 99';
  };

  test('asks for no more than it needs, pins its actions, and puts no expression into a command', () => {
    expect(workflow().permissions).toEqual({ contents: 'read' });
    const steps = Object.values(workflow().jobs).flatMap((job) => job.steps);
    for (const { uses, run } of steps) {
      if (uses !== undefined) expect(uses).toMatch(/^[\w-]+\/[\w/-]+@v\d+$/u);
      expect(run ?? '').not.toContain('${{');
    }
  });

  test('a pull request: what was changed is judged, shown beside its line, and the status comes through', () => {
    git('init', '-q', '-b', 'main');
    git('add', '.');
    git('commit', '-qm', 'one');
    git('update-ref', 'refs/remotes/origin/main', 'HEAD');
    git('checkout', '-qb', 'work');
    writeFileSync(path.join(shop, 'jobs/new.yaml'), heldPlan());
    const env = { BASE: 'origin/main', GITHUB_STEP_SUMMARY: path.join(shop, 'page.md') };
    const result = sh(command('changed', 'check what was changed'), env);
    expect(result.status).toBe(1);
    expect(result.stdout).toMatch(/^::warning file=jobs\/new\.yaml,line=\d+/u);
    expect(result.stdout).not.toContain('student-plan');
    expect(shopFile('page.md')).toContain('## planish: 1 plan, 1 held');
    expect(JSON.parse(shopFile('planish.sarif'))).toMatchObject({ version: '2.1.0' });
  });

  test('every night: four parts, one report, the status of the worst; a lost part is 2', () => {
    const output = path.join(shop, 'output');
    expect(sh(command('day'), { GITHUB_OUTPUT: output }).status).toBe(0);
    expect(readFileSync(output, 'utf8')).toMatch(/^day=\d{4}-\d{2}-\d{2}\n$/u);
    for (const part of ['1', '2', '3', '4'])
      expect(sh(command('part', 'check one part'), { DAY: day, PART: part }).status).toBe(0);
    const env = { GITHUB_STEP_SUMMARY: path.join(shop, 'page.md') };
    expect(sh(command('all', 'one report'), env).status).toBe(1);
    expect(shopFile('page.md')).toContain(`## planish: ${total}`);
    for (const name of ['summary.md', 'all.ndjson', 'part-2.ndjson']) rmSync(path.join(shop, name));
    expect(sh(command('all', 'one report'), env).status).toBe(2);
  });

  test('a part that judged nothing fails', () => {
    rmSync(path.join(shop, 'rules'), { recursive: true });
    expect(sh(command('part', 'check one part'), { DAY: day, PART: '1' }).status).not.toBe(0);
  });
});

describe('gitlab-ci.yaml', () => {
  interface Pipeline {
    readonly part: { readonly parallel: number; readonly script: readonly string[] };
    readonly all: { readonly script: readonly string[]; readonly artifacts: { readonly reports: object } };
  }

  test('four parts and one report; the status of the worst comes through', () => {
    const { part, all } = parse(recipe('gitlab-ci.yaml')) as Pipeline;
    for (let index = 1; index <= part.parallel; index += 1) {
      const env = {
        CI_PIPELINE_CREATED_AT: `${day}T23:59:58Z`,
        CI_NODE_INDEX: String(index),
        CI_NODE_TOTAL: String(part.parallel),
      };
      expect(sh(part.script.join('\n'), env)).toMatchObject({ status: 0 });
    }
    const result = sh(all.script.join('\n'));
    expect(result.status).toBe(1);
    expect(result.stdout).toContain(total.replace(', ', ': '));
    expect(all.artifacts.reports).toEqual({ codequality: 'code-quality.json', junit: 'junit.xml' });
    expect(JSON.parse(shopFile('code-quality.json'))).not.toEqual([]);
    expect(shopFile('junit.xml')).toContain('</testsuites>');
  });
});

describe('pre-commit-config.yaml', () => {
  interface Config {
    readonly repos: readonly {
      readonly hooks: readonly { readonly entry: string; readonly files: string }[];
    }[];
  }
  const hook = (): { readonly entry: string; readonly files: string } => {
    const [first] = (parse(recipe('pre-commit-config.yaml')) as Config).repos[0]?.hooks ?? [];
    if (first === undefined) throw new Error('no hook');
    return first;
  };

  test('takes plans and nothing else, and fails on a stopped one', () => {
    const files = new RegExp(hook().files, 'u');
    expect(
      ['jobs/a.yaml', 'jobs/x/b.yml', 'rules/pack.yaml', 'jobs/a.txt'].map((name) => files.test(name)),
    ).toEqual([...[true, true, false, false]]);
    expect(sh(`${hook().entry} --as-of 2026-10-21 jobs/ring-replaced-whole.yaml`).status).toBe(0);
    expect(sh(`${hook().entry} --as-of 2026-10-21 jobs/student-plan.yaml`).status).toBe(1);
  });

  test.skipIf(!isThere('pre-commit'))('pre-commit itself takes it and stops the commit', () => {
    git('init', '-q', '-b', 'main');
    writeFileSync(path.join(shop, '.pre-commit-config.yaml'), recipe('pre-commit-config.yaml'));
    git('add', '.');
    const env = { PRE_COMMIT_HOME: path.join(top, 'pre-commit') };
    expect(sh('pre-commit validate-config .pre-commit-config.yaml', env)).toMatchObject({ status: 0 });
    const { status, stdout } = sh('pre-commit run planish', env);
    expect(status).toBe(1);
    expect(stdout).toContain('jobs/student-plan.yaml');
  });
});

describe('machines beside each other', () => {
  test.skipIf(!isThere('parallel'))(
    'parallel-hosts.sh: two machines that are this one; a part that fails is told',
    () => {
      const script = path.join(recipes, 'parallel-hosts.sh');
      const result = sh('"$@"', { DAY: day }, [script, '5', 'jobs', 'rules', '--sshlogin', '1/:']);
      expect(result.status).toBe(1);
      expect(result.stdout).toContain(`jobs: ${total}`);
      const lost = sh('"$@"', { DAY: day }, [script, '5', 'jobs', 'rules', '--filter', '{}!=3']);
      expect(lost.status).toBe(2);
      expect(lost.stdout).toContain('Of 5 parts of the job the report of part 3 is not there.');
    },
  );

  const places = (): Readonly<Record<string, string>> => ({
    DAY: day,
    PLANS: path.join(shop, 'jobs'),
    RULES: path.join(shop, 'rules'),
    PARTS: path.join(shop, 'parts'),
  });

  test('array-job.sh: each task its part, by the variables of the engine', () => {
    mkdirSync(path.join(shop, 'parts'));
    for (let task = 1; task <= 3; task += 1) {
      const engine = { SLURM_ARRAY_TASK_ID: String(task), SLURM_ARRAY_TASK_COUNT: '3' };
      const { status } = sh('"$@"', { ...places(), ...engine }, [path.join(recipes, 'array-job.sh')]);
      expect([0, 1]).toContain(status);
    }
    const result = sh('planish merge --quiet --summary parts/*.ndjson');
    expect(result.status).toBe(1);
    expect(result.stdout).toContain(total);
  });

  // Needs a running Slurm: slurmctld, slurmd and munge of Debian, as PLANISH_SLURM=1 says.
  test.skipIf(process.env['PLANISH_SLURM'] === undefined)('array-job.sh in Slurm itself', () => {
    mkdirSync(path.join(shop, 'parts'));
    const script = path.join(recipes, 'array-job.sh');
    expect(sh('"$@"', places(), ['sbatch', '--wait', '--array=1-4', '--export=ALL', script]).status).not.toBe(
      null,
    );
    expect(readdirSync(path.join(shop, 'parts'))).toHaveLength(4);
    expect(sh('planish merge --quiet --summary parts/*.ndjson').stdout).toContain(total);
  });

  test.skipIf(!isThere('shellcheck'))('shellcheck finds no fault', () => {
    const scripts = readdirSync(recipes).filter((name) => name.endsWith('.sh'));
    const { status, stdout } = spawnSync('shellcheck', scripts, { cwd: recipes, encoding: 'utf8' });
    expect({ status, stdout }).toEqual({ status: 0, stdout: '' });
  });
});

describe('Containerfile', () => {
  const lines = (): readonly (readonly [string, string])[] =>
    recipe('Containerfile')
      .replaceAll('\\\n', ' ')
      .split('\n')
      .filter((line) => line !== '' && !line.startsWith('#'))
      .map((line) => [line.slice(0, line.indexOf(' ')), line.slice(line.indexOf(' ') + 1)]);

  test('pins its base, fetches nothing by address, and ends as a user that is not root', () => {
    const [first] = lines();
    expect(first).toEqual(['FROM', expect.stringMatching(/^[\w./-]+:\d[\w.-]*$/u)]);
    expect(
      lines().every(([word]) =>
        ['FROM', 'COPY', 'RUN', 'USER', 'WORKDIR', 'ENTRYPOINT', 'CMD'].includes(word),
      ),
    ).toBe(true);
    expect(lines().findLast(([word]) => word === 'USER')).toEqual(['USER', 'node']);
    for (const [word, rest] of lines())
      if (word === 'ENTRYPOINT' || word === 'CMD') expect(Array.isArray(JSON.parse(rest))).toBe(true);
  });

  const hasEngine = spawnSync('docker', ['info'], { stdio: 'ignore' }).status === 0;
  test.skipIf(!hasEngine)('is built and run without network', () => {
    const packed = spawnSync('npm', ['pack', '--silent', '--pack-destination', shop], { encoding: 'utf8' });
    expect(packed.status).toBe(0);
    const built = spawnSync('docker', [
      'build',
      '-t',
      'planish-test',
      '-f',
      path.join(recipes, 'Containerfile'),
      shop,
    ]);
    expect(built.status).toBe(0);
    const run = spawnSync('docker', ['run', '--rm', '--network=none', 'planish-test', '--version']);
    expect(run.status).toBe(0);
  });
});

describe('an archive of reports', () => {
  /** Two months: in September the student's plan was judged twice, in October all. */
  function archive(): void {
    const lines = [
      ['2026-09-29', 'jobs/student-plan.yaml'],
      ['2026-09-30', 'jobs/student-plan.yaml'],
      ['2026-10-21', 'jobs'],
    ].map(
      ([day = '', what = '']) =>
        sh(`planish check --as-of ${day} --rules rules --format ndjson ${what} || true`).stdout,
    );
    writeFileSync(path.join(shop, 'reports.ndjson'), lines.join(''));
  }

  /** Counted here from the same lines, without SQL. */
  function counted(): readonly string[] {
    const plans = new Map<string, Set<string>>();
    for (const line of shopFile('reports.ndjson').trim().split('\n')) {
      const {
        as_of: day,
        file,
        findings,
      } = JSON.parse(line) as {
        readonly as_of: string;
        readonly file: string;
        readonly findings: readonly { readonly rule: string; readonly severity: string }[];
      };
      for (const { rule, severity } of findings) {
        if (severity !== 'stop') continue;
        const key = `${day.slice(0, 7)} ${rule}`;
        plans.set(key, (plans.get(key) ?? new Set()).add(file));
      }
    }
    const most = new Map<string, number>();
    for (const [key, { size }] of plans)
      most.set(key.slice(0, 7), Math.max(most.get(key.slice(0, 7)) ?? 0, size));
    return [...plans]
      .filter(([key, { size }]) => size === most.get(key.slice(0, 7)))
      .map(([key, { size }]) => `${key} ${String(size)}`)
      .toSorted();
  }

  test.skipIf(!isThere('sqlite3'))('SQLite tells which rule stops most, by month', () => {
    archive();
    const query = recipe('stops-by-month.sqlite.sql').replace(
      '.mode box',
      '.mode list\n.separator " " "\\n"',
    );
    writeFileSync(path.join(shop, 'query.sql'), query);
    const { status, stdout, stderr } = sh('sqlite3 < query.sql');
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(stdout.trim().split('\n')).toEqual(counted());
  });

  test.skipIf(!isThere('duckdb'))('DuckDB tells the same', () => {
    archive();
    const { status, stdout } = sh(`duckdb -list -noheader -separator ' ' < "$1"`, {}, [
      path.join(recipes, 'stops-by-month.duckdb.sql'),
    ]);
    expect(status).toBe(0);
    expect(stdout.trim().split('\n')).toEqual(counted());
  });
});

test('every recipe is in the list, and every file of the list is there', () => {
  const listed = [...recipe('README.md').matchAll(/^\| (`.*?) +\|/gmu)].flatMap(([, cell = '']) =>
    [...cell.matchAll(/`([^`]+)`/gu)].map(([, name = '']) => name),
  );
  expect(listed.toSorted()).toEqual(
    readdirSync(recipes)
      .filter((name) => name !== 'README.md')
      .toSorted(),
  );
  expect(existsSync(path.join(recipes, 'README.md'))).toBe(true);
});
