import {
  chmodSync,
  copyFileSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { conformance, readPage } from '../report/read-page.ts';
import { runPlanish } from './run-planish.ts';

const plans = path.resolve('examples/plans');
const asOf = ['--as-of', '2026-10-21'];
let folder = '';

beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'planish-sheet-'));
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

const sheet = (args: readonly string[], input?: string) =>
  runPlanish(['sheet', ...asOf, ...args], { folder, ...(input === undefined ? {} : { input }) });
const good = path.join(plans, 'ring-replaced-whole.yaml');
const bad = path.join(plans, 'rail-heated-near-pillar.yaml');

describe('planish sheet', () => {
  test('writes one page that reads back, and says what stands on it', async () => {
    const { status, stdout, stderr } = sheet([good, '-o', 'page.html']);
    // How many notes is for the packs to say.
    expect([status, stdout.replace(/\d+ notes?/u, 'n notes'), stderr]).toEqual([
      0,
      'page.html: written. CLEARED: no stops, no holds, n notes.\n',
      '',
    ]);
    expect(readdirSync(folder)).toEqual(['page.html']);
    const page = readFileSync(path.join(folder, 'page.html'), 'utf8');
    expect(readPage(page).errors).toEqual([]);
    expect(await conformance(page)).toEqual([]);
  });

  test('the exit status is that of the plan, once the page is there', () => {
    expect(sheet([bad, '-o', 'page.html']).status).toBe(1);
    expect(readFileSync(path.join(folder, 'page.html'), 'utf8')).toContain('STOPPED');
    const draft = 'format: 1\nstage: draft\nvehicle: {}\nparts: [{ id: a, kind: sill }]\n';
    expect(sheet(['-', '-o', '-'], draft).status).toBe(0);
    expect(sheet(['--stage', 'start', '-', '-o', '-'], draft).status).toBe(1);
  });

  test('from standard input to standard output, the same bytes each time', () => {
    const text = readFileSync(bad, 'utf8');
    const one = sheet(['-', '-o', '-'], text);
    expect(one.stdout.startsWith('<!DOCTYPE html>')).toBe(true);
    expect(one.stdout).toContain('(standard input)');
    expect(sheet(['-', '--output', '-'], text).stdout).toBe(one.stdout);
  });

  test('a file that is there is replaced with --force alone', () => {
    writeFileSync(path.join(folder, 'page.html'), 'mine');
    const refused = sheet([good, '-o', 'page.html']);
    expect([refused.status, refused.stderr]).toEqual([
      2,
      'planish: page.html is there already; another name, or --force, writes it.\n',
    ]);
    expect(readFileSync(path.join(folder, 'page.html'), 'utf8')).toBe('mine');
    expect(sheet([good, '--force', '-o', 'page.html']).status).toBe(0);
    expect(readFileSync(path.join(folder, 'page.html'), 'utf8')).toContain('</html>');
  });

  test('a signed plan: what was signed, and that it was changed since', async () => {
    const file = path.join(folder, 'plan.yaml');
    copyFileSync(good, file);
    const signed = runPlanish(['sign', ...asOf, '--by', 'B. Ohm', '--role', 'workshop lead', file]);
    const digest = /Plan (sha256:[0-9a-f]{64})/u.exec(signed.stdout)?.[1] ?? 'not signed';
    const page = (): string => sheet([file, '-o', '-']).stdout;
    const words = (html: string): string =>
      readPage(html).elements.find(({ attributes }) => attributes['class'] === 'sign-off')?.text ?? '';

    expect(words(page())).toContain('The plan is as it was signed: its digest agrees.');
    expect(words(page())).toContain('The rule packs are those of the signature.');
    expect(page()).toContain(`The plan as signed: <code>${digest}</code>`);
    expect(page()).toMatch(/Pack general \d+\.\d+\.\d+: <code>sha256:[0-9a-f]{64}<\/code>/u);
    expect(await conformance(page())).toEqual([]);

    const text = readFileSync(file, 'utf8');
    writeFileSync(file, text.replace('thickness: 1.4 mm', 'thickness: 1.5 mm'));
    expect(words(page())).toContain('The plan was changed after it was signed.');
    expect(words(page())).not.toContain('its digest agrees');

    writeFileSync(file, text.replace('pack: general', 'pack: another'));
    expect(words(page())).toMatch(/Rule packs that it was signed by and that are not here: another \d/u);

    writeFileSync(file, text.replace(/ {2}digests:[^]*$/u, ''));
    expect(words(page())).toContain('The signature bears no digest');
  });

  test('the plan itself is never written over', () => {
    copyFileSync(good, path.join(folder, 'plan.yaml'));
    const { status, stderr } = sheet(['plan.yaml', '--force', '-o', './plan.yaml']);
    expect([status, stderr]).toEqual([
      2,
      'planish: plan.yaml is the plan itself; the page needs another name.\n',
    ]);
    expect(readFileSync(path.join(folder, 'plan.yaml'), 'utf8')).toBe(readFileSync(good, 'utf8'));
  });

  test.each([
    ['a folder that is not there', ['-o', 'none/page.html'], 'its folder is not there'],
    ['a folder', ['-o', '.'], '. is a folder.'],
    ['an empty name', ['-o', ''], 'an empty name is no file.'],
  ])('%s: one sentence, nothing left behind', (_what, where, said) => {
    const { status, stdout, stderr } = sheet([good, ...where]);
    expect([status, stdout, stderr.split('\n').length]).toEqual([2, '', 2]);
    expect(stderr).toContain(said);
    expect(readdirSync(folder)).toEqual([]);
  });

  test.runIf(process.getuid?.() !== 0)('a folder that may not be written to', () => {
    mkdirSync(path.join(folder, 'shut'));
    chmodSync(path.join(folder, 'shut'), 0o500);
    expect(sheet([good, '-o', 'shut/page.html']).stderr).toContain(
      'the permissions of its folder do not allow it',
    );
  });

  test.each([
    ['no such plan', 'none.yaml', undefined, /^planish: none\.yaml: /u],
    ['a folder as plan', '.', undefined, /^planish: \.: /u],
    ['no YAML', '-', 'format: 1\na: [\n', /^planish: \(standard input\), line \d+, column \d+: /u],
    ['no plan', '-', 'a: 1\n', /^planish: \(standard input\), line 1, column \d+: /u],
    ['a pack that nobody has', '-', 'format: 1\nrules: [none@1]\nvehicle: {}\nparts: []\n', /none/u],
  ])('%s: a sentence, no page, status 2', (_what, plan, input, said) => {
    const { status, stdout, stderr } = sheet([plan, '-o', 'page.html'], input);
    expect([status, stdout]).toEqual([2, '']);
    expect(stderr).toMatch(said);
    expect(stderr).not.toContain('    at ');
    expect(readdirSync(folder)).toEqual([]);
  });

  test('wrong usage is told: no output, two plans', () => {
    expect(sheet([good]).status).toBe(2);
    expect(sheet([good]).stderr).toContain('--output');
    expect(sheet([good, bad, '-o', 'page.html']).status).toBe(2);
  });

  test('help has examples', () => {
    const { status, stdout } = runPlanish(['sheet', '--help']);
    expect(status).toBe(0);
    expect(stdout).toContain('Examples:\n  planish sheet jobs/K-2207.yaml -o K-2207.html');
    for (const line of stdout.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
  });
});
