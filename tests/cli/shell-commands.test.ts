import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { commandTree } from '../../src/cli/shell/command-tree.ts';
import { program } from '../../src/cli/program.ts';
import { runPlanish } from './run-planish.ts';

// Each starts other programs, which takes long on a busy machine.
vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'planish-shell-'));
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

const tree = commandTree(program());
const isThere = (tool: string): boolean =>
  spawnSync(tool, ['--version'], { stdio: 'ignore' }).error === undefined;

function script(shell: string): string {
  const { status, stdout } = runPlanish(['completion', shell]);
  expect(status).toBe(0);
  const file = path.join(folder, `completion.${shell}`);
  writeFileSync(file, stdout);
  return file;
}

function run(command: string, args: readonly string[]): string {
  const { status, stdout, stderr } = spawnSync(command, args, { cwd: folder, encoding: 'utf8' });
  expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
  return stdout;
}

describe('help', () => {
  test.each(['', ...tree.commands.map(({ name }) => name)])('of `planish %s` teaches by examples', (name) => {
    const { status, stdout } = runPlanish([...(name === '' ? [] : [name]), '--help']);
    expect(status).toBe(0);
    expect(stdout).toContain('Examples:\n  ');
    expect(stdout.split('\n').filter((line) => line.length > 80)).toEqual([]);
    expect(stdout).not.toMatch(/default: (?:false|\[\])/u);
    const { commands } = tree;
    const entry = commands.find((one) => one.name === name) ?? tree;
    for (const { flags, description } of entry.options) {
      expect(stdout).toContain(flags);
      expect(description).not.toBe('');
    }
  });
});

describe('the manual', () => {
  const text = runPlanish(['man']).stdout;

  test('tells every command, option, form and note of the help', () => {
    const plain = text.replaceAll('\\-', '-').replaceAll('\\e', '\\').replaceAll('\\&', '');
    for (const { name, options, notes } of tree.commands) {
      expect(plain).toContain(`.SS ${name}\n`);
      for (const { flags } of options) expect(plain).toContain(`.B ${flags}\n`);
      for (const line of notes.split('\n')) expect(plain).toContain(line);
    }
  });

  test.skipIf(!isThere('mandoc'))('mandoc finds no fault in it', () => {
    const file = path.join(folder, 'planish.1');
    writeFileSync(file, text);
    const { stdout } = spawnSync('mandoc', ['-Tlint', '-W', 'warning', file], { encoding: 'utf8' });
    // A date would make two builds differ.
    expect(stdout.split('\n').filter((line) => line !== '' && !line.includes('missing date'))).toEqual([]);
  });
});

describe('completion', () => {
  test('another shell is refused', () => {
    expect(runPlanish(['completion', 'csh'])).toMatchObject({ status: 2, stdout: '' });
  });

  test.skipIf(!isThere('bash'))('bash: commands, options of the command, choices, and file names', () => {
    const file = script('bash');
    writeFileSync(path.join(folder, 'two words.yaml'), '');
    const complete = (...words: readonly string[]): readonly string[] => {
      const list = words.map((word) => `'${word}'`).join(' ');
      const said = run('bash', [
        '--norc',
        '-c',
        `compopt() { :; }; source '${file}'; COMP_WORDS=(${list}); COMP_CWORD=${String(words.length - 1)}; _planish; printf '%s\\n' "\${COMPREPLY[@]}"`,
      ]);
      return said.trim().split('\n').toSorted();
    };
    expect(complete('planish', 'm')).toEqual(
      ['man', 'mark', 'merge'].filter((name) => tree.commands.some((one) => one.name === name)),
    );
    expect(complete('planish', 'check', '--sh')).toEqual(['--shard']);
    expect(complete('planish', 'check', '--format', 's')).toEqual(['sarif']);
    expect(complete('planish', 'heat', '--format', 'c')).toEqual(['csv']);
    expect(complete('planish', 'check', 'two')).toEqual(['two words.yaml']);
  });

  test.skipIf(!isThere('zsh'))('zsh: reads, and defines what completes', () => {
    const file = script('zsh');
    run('zsh', ['-f', '-n', file]);
    const said = run('zsh', [
      '-f',
      '-c',
      `autoload -U compinit; compinit -D -u; source '${file}'; print $_comps[planish]`,
    ]);
    expect(said.trim()).toBe('_planish');
  });

  test.skipIf(!isThere('fish'))('fish: commands, options and choices, with what they mean', () => {
    const file = script('fish');
    const complete = (line: string): readonly string[] =>
      run('fish', ['--no-config', '-c', `source '${file}'; complete -C '${line}'`])
        .trim()
        .split('\n');
    expect(complete('planish merg')).toEqual([expect.stringMatching(/^merge\tmake one report/u)]);
    expect(complete('planish check --form')).toEqual([
      expect.stringMatching(/^--format\tform of the report/u),
    ]);
    expect(complete('planish check --format sa')).toEqual([expect.stringMatching(/^sarif\t/u)]);
  });

  test.skipIf(!isThere('shellcheck'))('shellcheck finds no fault in the script for bash', () => {
    run('shellcheck', ['-s', 'bash', script('bash')]);
  });
});
