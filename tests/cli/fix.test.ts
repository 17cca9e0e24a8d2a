import { mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { ring } from '../one-change.ts';
import { runPlanish } from './run-planish.ts';
import type { RunResult } from './run-planish.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'planish-fix-'));
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

const misspelt = ring.replace('    thickness: 1.4 mm', '    thicknes: 1.4 mm # as read');
const mended = ring.replace('    thickness: 1.4 mm', '    thickness: 1.4 mm # as read');
const file = (name = 'plan.yaml'): string => path.join(folder, name);
const write = (text: string | Uint8Array, name?: string): void => {
  writeFileSync(file(name), text);
};
const read = (name?: string): string => readFileSync(file(name), 'utf8');
const fix = (...args: readonly string[]): RunResult =>
  runPlanish(['check', '--as-of', '2026-10-21', '--quiet', '--fix', ...args]);

test('without a terminal what would be mended is shown, nothing is written, and the plan is judged as it stands', () => {
  write(misspelt);
  const result = fix(file());
  expect(result.status).toBe(1);
  expect(result.stderr).toContain('is        thicknes: 1.4 mm # as read\n');
  expect(result.stderr).toContain('mend      thickness: 1.4 mm # as read\n');
  expect(result.stderr).toContain('--yes');
  expect(result.stdout).toContain('held');
  expect(read()).toBe(misspelt);
});

test('with --yes it is shown, written, and the mended plan is judged', () => {
  write(misspelt);
  const result = fix('--yes', file());
  expect(result.stderr).toContain('1 key to mend');
  expect(result.status).toBe(0);
  expect(read()).toBe(mended);
  expect(readdirSync(folder)).toEqual(['plan.yaml']);
  const again = fix('--yes', file());
  expect(again.stderr).toBe('planish: No key needs mending that planish is sure of.\n');
  expect(read()).toBe(mended);
});

test('CR LF and a byte order mark stay', () => {
  const whole = (text: string): string => `\uFEFF${text.replaceAll('\n', '\r\n')}`;
  write(whole(misspelt));
  expect(fix('--yes', file()).status).toBe(0);
  expect(read()).toBe(whole(mended));
});

test('of a folder only plans are mended, each told by its name', () => {
  mkdirSync(file('jobs'));
  write(misspelt, 'jobs/a.yaml');
  write(misspelt, 'jobs/b.yaml');
  write('scenario: {}\nthicknes: 1 mm\n', 'jobs/key.yaml');
  write('a: [\n', 'jobs/broken.yaml');
  const result = fix('--yes', file('jobs'));
  expect(result.stderr).toContain('a.yaml: 1 key to mend');
  expect(result.stderr).toContain('b.yaml: 1 key to mend');
  expect(read('jobs/a.yaml')).toBe(mended);
  expect(read('jobs/key.yaml')).toBe('scenario: {}\nthicknes: 1 mm\n');
  // The broken one is told by the check.
  expect(result.status).toBe(2);
});

test('a line wider than the screen is cut round the key', () => {
  write(
    ring
      .replace(
        'clear_within: 300 mm\n        earth_clamp: On the side',
        'clear_within: 300 mm\n        earth-clamp: On the side',
      )
      .replace('{ fitted', '{ fitted')
      .replace('- { part: ring-l, planned: true, primer', '- { part: ring-l, planned: true, primerr'),
  );
  for (const line of fix(file()).stderr.split('\n')) expect(line.length).toBeLessThanOrEqual(90);
  expect(fix(file()).stderr).toContain('primerr');
});

describe('a signed plan is refused', () => {
  test.each([
    'sign_off: { by: { name: B. Ohm, role: lead }, date: 2026-10-20 }',
    'signature: { date: 2026-10-20 }',
  ])('%s', (line) => {
    write(`${misspelt}${line}\n`);
    const result = fix('--yes', file());
    expect(result.status).toBe(2);
    expect(result.stderr).toContain('bears a signature');
    expect(read()).toBe(`${misspelt}${line}\n`);
  });
});

describe('bad input', () => {
  test('standard input', () => {
    const result = runPlanish(['check', '--fix', '--yes', '-'], { input: misspelt });
    expect(result.status).toBe(2);
    expect(result.stderr).toContain('standard input is none');
  });
  test('--yes alone', () => {
    write(misspelt);
    const result = runPlanish(['check', '--yes', file()]);
    expect(result.status).toBe(2);
    expect(result.stderr).toContain('--fix');
  });
  test.each([
    ['--shard', '1/2'],
    ['--changed-since', 'HEAD'],
  ])('%s, which judges a part only', (...part) => {
    write(misspelt);
    const result = runPlanish(['check', '--fix', '--yes', ...part, file()]);
    expect(result.status).toBe(2);
    expect(result.stderr).toContain('leave');
    expect(read()).toBe(misspelt);
  });
  test('UTF-16 is judged, and left alone', () => {
    const bytes = Buffer.from(`\uFEFF${misspelt}`, 'utf16le');
    write(bytes);
    fix('--yes', file());
    expect(readFileSync(file()).equals(bytes)).toBe(true);
  });
});
