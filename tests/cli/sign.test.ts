import {
  chmodSync,
  lstatSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { electric, ring } from '../one-change.ts';
import { releasedRing } from '../released.ts';
import { runPlanish } from './run-planish.ts';
import type { RunResult } from './run-planish.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'planish-sign-'));
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

const who = ['--by', 'B. Ohm', '--role', 'workshop lead'];
const file = (): string => path.join(folder, 'plan.yaml');
const write = (text: string | Uint8Array): void => {
  writeFileSync(file(), text);
};
const read = (): string => readFileSync(file(), 'utf8');
const sign = (...more: readonly string[]): RunResult =>
  runPlanish(['sign', '--as-of', '2026-10-21', ...who, ...more, file()]);
const check = (...more: readonly string[]): RunResult =>
  runPlanish(['check', '--as-of', '2026-10-21', ...more, file()]);

const unsignedRelease = releasedRing.replace(/sign_off:\n {2}by: .*\n {2}date: .*\n/u, '');

describe('a plan that is cleared', () => {
  test('gets a signature at its end and nothing else is changed', () => {
    write(ring);
    const result = sign();
    expect(result.stderr).toBe('');
    expect(result.status).toBe(0);
    expect(read().startsWith(ring)).toBe(true);
    expect(read().slice(ring.length)).toMatch(
      /^sign_off:\n {2}by: \{ name: B\. Ohm, role: workshop lead \}\n {2}date: 2026-10-21\n {2}open_holds: none\n {2}digests:\n {4}plan: sha256:[0-9a-f]{64}\n {4}planish: \d+\.\d+\.\d+\n {4}facts: \d+\n {4}packs:\n {6}- \{ pack: general, version: \d+\.\d+\.\d+, digest: sha256:[0-9a-f]{64} \}\n$/u,
    );
    expect(result.stdout).toContain('do not show who signed');
    expect(check().status).toBe(0);
    expect(check().stdout).not.toContain('signature-without-digest');
  });

  test('for release is signed too, under a qualification and a day before', () => {
    write(unsignedRelease);
    const result = sign('--qualification', 'Master: body, no. 7', '--date', '2026-10-20');
    expect(result.stderr).toBe('');
    expect(read()).toContain('qualification: "Master: body, no. 7"');
    expect(read()).toContain('date: 2026-10-20');
    expect(check().stdout).toContain('CLEARED');
  });

  test('that has a revision is signed with it', () => {
    write(ring.replace('number: K-2207', 'number: K-2207\n  revision: 1.10'));
    expect(sign().status).toBe(0);
    expect(read()).toContain('plan_revision: "1.10"');
    expect(check().status).toBe(0);
  });

  test('keeps CR LF, a byte order mark, its permissions, and the link that leads to it', () => {
    const text = `\uFEFF${ring.replaceAll('\n', '\r\n')}`;
    const real = path.join(folder, 'real.yaml');
    writeFileSync(real, text);
    chmodSync(real, 0o640);
    symlinkSync(real, file());
    expect(sign().status).toBe(0);
    expect(lstatSync(file()).isSymbolicLink()).toBe(true);
    expect(statSync(real).mode & 0o777).toBe(0o640);
    const after = readFileSync(real, 'utf8');
    expect(after.startsWith(text)).toBe(true);
    expect(after.slice(text.length)).not.toMatch(/[^\r]\n/u);
    expect(check().status).toBe(0);
  });

  test('without a line end at its end is signed', () => {
    write(ring.trimEnd());
    expect(sign().status).toBe(0);
    expect(check().status).toBe(0);
  });
});

describe('an edit after the signature', () => {
  const isHeld = (): void => {
    const result = check();
    expect(result.status).toBe(1);
    expect(result.stdout.replace(/\s+/gu, ' ')).toContain('The plan was changed after it was signed');
    expect(result.stdout).toContain('edited-after-signature');
  };

  test.each<readonly [string, string, string]>([
    ['of a value', 'count: 56', 'count: 57'],
    ['of what nothing judges', 'at a right angle', 'at a slant'],
    ['of the signer', 'name: B. Ohm', 'name: C. Ohm'],
  ])('%s is found', (_what, from, to) => {
    write(ring);
    expect(sign().status).toBe(0);
    expect(read()).toContain(from);
    write(read().replace(from, to));
    isHeld();
  });

  test('in a comment, or of the order of keys, is none', () => {
    write(ring);
    expect(sign().status).toBe(0);
    write(
      `# Printed for the wall.\n${read().replace('  maker: Corvane\n  model: Tarn\n', '  model: Tarn\n  maker: Corvane\n')}`,
    );
    expect(check().status).toBe(0);
  });

  test('stays found when the digest is mistyped, and is told as not known when it is taken out', () => {
    write(ring);
    expect(sign().status).toBe(0);
    const signed = read();
    write(signed.replace(/plan: sha256:[0-9a-f]{64}/u, 'plan: sha256:none'));
    isHeld();
    write(signed.replace(/ {2}digests:[^]*$/u, ''));
    expect(check().status).toBe(0);
    expect(check().stdout).toContain('signature-without-digest');
  });

  test('is answered by signing again', () => {
    write(ring);
    expect(sign().status).toBe(0);
    write(read().replace('at a right angle', 'at a slant'));
    const before = read();
    const refused = sign();
    expect(refused.status).toBe(2);
    expect(refused.stderr).toContain('--again');
    expect(read()).toBe(before);
    expect(sign('--again', '--by', 'C. Volt').status).toBe(0);
    expect(read().match(/sign_off:/gu)).toHaveLength(1);
    expect(read()).toContain('C. Volt');
    expect(check().status).toBe(0);
  });

  test('a signature in the middle of the plan is replaced where it stands', () => {
    write(releasedRing);
    expect(sign('--again', '--qualification', 'Master, body').status).toBe(0);
    const [before = '', after = ''] = releasedRing.split(/sign_off:\n {2}by: .*\n {2}date: .*\n/u);
    expect(read().startsWith(before)).toBe(true);
    expect(read().endsWith(after)).toBe(true);
    expect(check().stdout).toContain('CLEARED');
  });
});

describe('the packs of a signature', () => {
  const rules = ['--rules', 'examples/rules/corvane-tarn'];

  test('that are not here any more are a hold, and one that came since a note', () => {
    write(ring);
    expect(sign(...rules).status).toBe(0);
    expect(check(...rules).status).toBe(0);
    const without = check();
    expect(without.status).toBe(1);
    expect(without.stdout.replace(/\s+/gu, ' ')).toContain('do not judge it here: corvane-tarn 2026.1.0');
    write(ring);
    expect(sign().status).toBe(0);
    const more = check(...rules);
    expect(more.status).toBe(0);
    expect(more.stdout.replace(/\s+/gu, ' ')).toContain('corvane-tarn 2026.1.0 now, not then');
  });

  test('of another version, or another content, are a note', () => {
    write(ring);
    expect(sign().status).toBe(0);
    const other = read().replace(/version: \d+\.\d+\.\d+/u, 'version: 1.0.1');
    write(other);
    expect(check().stdout.replace(/\s+/gu, ' ')).toContain('general 1.0.1 then,');
    // The packs are under the digest of the plan: whoever changes them there is found.
    expect(check().status).toBe(1);
  });
});

describe('a plan that is not cleared is not signed', () => {
  test.each<readonly [string, string, number]>([
    ['with a hold', electric.replace('proof_of_absence: { planned: true }', 'note: none'), 1],
    ['with a stop', readFileSync('examples/plans/ring-sectioned-by-old-document.yaml', 'utf8'), 1],
    ['a draft', ring.replace('stage: start', 'stage: draft'), 1],
    ['not a plan', 'note: 1\n', 2],
    ['not YAML', 'a: [\n', 2],
    ['two documents', `${ring}---\n${ring}`, 2],
    ['ended by a mark', `${ring}...\n`, 2],
    ['in braces', '{ format: 1, vehicle: {}, parts: [] }\n', 2],
  ])('%s', (_what, text, status) => {
    write(text);
    const result = sign();
    expect(result.status).toBe(status);
    expect(result.stderr.trim().split('\n')).toHaveLength(1);
    expect(result.stderr).not.toMatch(/\n\s+at /u);
    expect(read()).toBe(text);
    expect(readdirSync(folder)).toEqual(['plan.yaml']);
  });

  test('dated ahead of the day of judging', () => {
    write(ring);
    expect(sign('--date', '2026-10-22').status).toBe(1);
    expect(read()).toBe(ring);
  });

  test.each([
    ['?', 2],
    ['', 2],
    ['  ', 2],
    ['n/a', 1],
    ['a\u001bb', 2],
  ])('by %j', (name, status) => {
    write(ring);
    expect(sign('--by', name).status).toBe(status);
    expect(read()).toBe(ring);
  });
});

describe('bad input', () => {
  const one = (result: RunResult, word: string): void => {
    expect(result.status).toBe(2);
    expect(result.stderr.trim().split('\n')).toHaveLength(1);
    expect(result.stderr).toContain(word);
    expect(result.stdout).toBe('');
  };

  test('nobody named', () => {
    write(ring);
    one(runPlanish(['sign', file()]), '--by');
  });
  test('no such file', () => {
    one(sign(), 'no such file');
  });
  test('a folder', () => {
    one(runPlanish(['sign', ...who, folder]), 'folder');
  });
  test('standard input', () => {
    one(runPlanish(['sign', ...who, '-'], { input: ring }), 'Standard input');
  });
  test('UTF-16', () => {
    write(Buffer.from(`\uFEFF${ring}`, 'utf16le'));
    one(sign(), 'UTF-8');
  });
  test('no such day', () => {
    write(ring);
    const result = sign('--date', '2026-02-30');
    expect(result.status).toBe(2);
    expect(read()).toBe(ring);
  });
});

test('what --canonical prints has the digest as its sha256sum', () => {
  write(ring);
  expect(sign().status).toBe(0);
  const { stdout, status } = runPlanish(['sign', '--canonical', file()]);
  expect(status).toBe(0);
  expect(stdout).toMatch(/^\{"damage":.*\}\n$/u);
  expect(stdout).not.toContain('"plan":"sha256');
});
