import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { loadPackFolder } from '../../src/packs/load-pack.ts';
import { dictionary } from '../../src/cli/dictionary.ts';
import { rulesInForce } from '../../src/packs/versions/rules-in-force.ts';
import { runPlanish } from './run-planish.ts';

const rules = (...args: readonly string[]) => runPlanish(['rules', ...args]);
const loaded = loadPackFolder('rules/general', dictionary);
const inForce = loaded.ok ? rulesInForce(loaded.pack.rules, loaded.pack.version) : [];

interface Page {
  readonly id: string;
  readonly severity: string;
  readonly topic: string;
  readonly why: string;
  readonly in_force: boolean;
  readonly replaced_by?: string;
  readonly raised?: object;
  readonly cases: { readonly finds: readonly object[] };
}
const pages = (stdout: string): readonly Page[] => {
  const answer: { readonly rules: readonly Page[] } = JSON.parse(stdout);
  return answer.rules;
};

test('the list names every rule in force with its severity, under its topic, at 80 columns', () => {
  const { status, stdout, stderr } = rules();
  expect([status, stderr]).toEqual([0, '']);
  expect(inForce.length).toBeGreaterThan(300);
  const lines = stdout.split('\n');
  for (const { id, severity } of inForce) expect(lines).toContain(`  ${severity.toUpperCase()} ${id}`);
  expect(lines.filter((line) => [...line].length > 80)).toEqual([]);
  expect(stdout).not.toContain('section-ultra-high-strength-held');
});

test('a topic lists its rules and no others', () => {
  const ids = pages(rules('--format', 'json', 'butt-weld').stdout).map(({ id }) => id);
  expect(ids).toEqual(inForce.filter(({ topic }) => topic === 'butt-weld').map(({ id }) => id));
  expect(pages(rules('--format', 'json', 'section').stdout).every(({ topic }) => topic === 'section')).toBe(
    true,
  );
});

test('one rule’s page has everything that its file says', () => {
  const rule = inForce.find(({ id }) => id === 'section-press-hardened');
  const { status, stdout } = rules('section-press-hardened');
  const words = stdout.replaceAll(/\s+/gu, ' ');
  expect(status).toBe(0);
  expect(words).toContain(rule?.why.replaceAll(/\s+/gu, ' ') ?? 'no such rule');
  for (const title of [
    'Finds',
    'Why',
    'Instead',
    'Source',
    'Found when all of these hold',
    'Not found when',
    'Cases that it finds',
    'Cases that it lets pass',
    'Cases in which it asks',
  ])
    expect(stdout).toContain(title);
  expect(words).toContain('since 1.0.0');
  expect(words).toContain('Strength class: press-hardened (part.class)');
  const [page] = pages(rules('--format', 'json', 'section-press-hardened').stdout);
  expect(page?.cases).toEqual(rule?.cases);
});

test('a range stands there as the file writes it', () => {
  const file = readFileSync('rules/general/heat.yaml', 'utf8');
  expect(file).toMatch(/aluminium-7xxx-heated-over-120\n[^]*?above: 120 °C/u);
  expect(rules('aluminium-7xxx-heated-over-120').stdout.replaceAll(/\s+/gu, ' ')).toContain(
    'more than 120 °C',
  );
});

test('an old id is answered with what took its place', () => {
  const { status, stdout } = rules('section-ultra-high-strength-held');
  expect(status).toBe(0);
  expect(stdout.replaceAll(/\s+/gu, ' ')).toContain(
    'section-ultra-high-strength-held ended with general 2.0.0; section-ultra-high-strength took its place.',
  );
  const [page] = pages(rules('--format', 'json', 'section-ultra-high-strength-held').stdout);
  expect([page?.in_force, page?.replaced_by]).toEqual([false, 'section-ultra-high-strength']);
});

test('a misspelt word is answered with the nearest, a strange one with where to look', () => {
  const near = rules('secton');
  expect([near.status, near.stdout]).toEqual([2, '']);
  expect(near.stderr).toBe('planish: There is no rule and no topic `secton`. Nearest known: `section`.\n');
  // The names of the topics are for the packs to say.
  expect(rules('zzzzzzzzzz').stderr).toMatch(
    /^planish: There is no rule and no topic `zzzzzzzzzz`\. The topics are (?:[a-z-]+, )+heat, (?:[a-z-]+, )+weld-setup\.\n$/u,
  );
});

test('--rules adds packs, and tells what a layer above raises', () => {
  const house = readFileSync('examples/rules/amsel-shop/house.yaml', 'utf8');
  const own = /- id: (\S+)/u.exec(house)?.[1] ?? '';
  const raised = /- rule: (\S+)/u.exec(house)?.[1] ?? '';
  const all = pages(rules('--rules', 'examples/rules/amsel-shop', '--format', 'json').stdout);
  expect(all.map(({ id }) => id)).toContain(own);
  expect(all.find(({ id }) => id === raised)?.raised).toMatchObject({ by: 'amsel-shop' });
  const bad = rules('--rules', 'no-such-pack');
  expect([bad.status, bad.stdout, bad.stderr.split('\n').length]).toEqual([2, '', 2]);
});

test('Markdown: a table of the list, headings of a page, nothing of a rule is markup', () => {
  const list = rules('--format', 'markdown', 'section').stdout.split('\n');
  expect(list[0]).toBe('| Rule | Severity | Topic | Pack | Finds |');
  expect(list.filter((line) => line.startsWith('| section-')).length).toBeGreaterThan(3);
  const page = rules('--format', 'markdown', 'section-press-hardened').stdout;
  expect(page).toMatch(/^# section-press-hardened\n/u);
  expect(page).toContain('part.cuts\\_part\\_way'.replace('part.', 'operation.'));
});
