import { createHash } from 'node:crypto';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { rail } from '../one-change.ts';
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

describe('planish packs release', () => {
  const release = (...more: readonly string[]) =>
    packs(
      'release',
      at('house'),
      '--date',
      '2026-10-05',
      '--as-of',
      '2026-10-21',
      '--reason',
      'What: it is',
      ...more,
    );
  const next = (version: string, severity: string): void => {
    edit(at('house', 'pack.yaml'), 'version: 1.0.0', `version: ${version}`);
    const rule = readFileSync(at('house', 'house.yaml'), 'utf8')
      .replace(/^[^]*rules:\n/u, 'pack: house\nrules:\n')
      .replace('house-no-torch-on-structure', 'house-torch-again')
      .replace('since: 1.0.0', `since: ${version}`)
      .replace('severity: hold', `severity: ${severity}`);
    writeFileSync(at('house', 'more.yaml'), rule);
  };
  beforeEach(() => {
    packs('new', at('house'));
  });

  test('the digest is the SHA-256 of what `packs canonical` prints', () => {
    expect(release().status).toBe(0);
    const text = readFileSync(at('house', 'releases.yaml'), 'utf8');
    const canonical = packs('canonical', at('house'), '1.0.0').stdout;
    expect(text).toContain(`digest: sha256:${createHash('sha256').update(canonical).digest('hex')}\n`);
    expect(packs('check', at('house')).status).toBe(0);
    expect(packs('--rules', at('house')).stdout).toContain('\nhouse 1.0.0\n');
  });

  test('a second release is added below the first, and comments stay', () => {
    release();
    edit(at('house', 'releases.yaml'), '# What', '# Mine. What');
    next('1.1.0', 'hold');
    expect([release().status, readdirSync(at('house'))]).toEqual([
      0,
      ['house.yaml', 'more.yaml', 'pack.yaml', 'releases.yaml'],
    ]);
    const text = readFileSync(at('house', 'releases.yaml'), 'utf8');
    expect(text).toMatch(/^# Mine[^]*version: 1\.0\.0[^]*version: 1\.1\.0/u);
    expect(packs('check', at('house')).status).toBe(0);
  });

  test.each([
    ['a stop in a minor version', '1.1.0', 'stop', 'which a minor version does not'],
    ['a hold in a patch', '1.0.1', 'hold', 'which a patch version does not'],
  ])('%s is refused, and nothing is written', (_name, version, severity, sentence) => {
    release();
    const before = readFileSync(at('house', 'releases.yaml'), 'utf8');
    next(version, severity);
    const { status, stdout, stderr } = release();
    expect([status, stdout]).toEqual([2, '']);
    expect(stderr).toContain(sentence);
    expect(stderr).toContain('A major one, 2.0.0, may.');
    expect(readFileSync(at('house', 'releases.yaml'), 'utf8')).toBe(before);
  });

  test('a stop in a major version, a failing case, what is released already, an older day, a changed release', () => {
    release();
    expect(release().stderr).toContain('is released already');
    next('2.0.0', 'stop');
    edit(at('house', 'more.yaml'), 'source: induction', 'source: torch');
    expect([release().status, release().stderr]).toEqual([2, expect.stringContaining('comes out as found')]);
    edit(
      at('house', 'more.yaml'),
      '- { part.structural: true, operation.source: torch }',
      '- { part.structural: true, operation.source: induction }',
    );
    expect(packs('release', at('house'), '--date', '2026-10-04', '--reason', 'r').stderr).toContain(
      'lies before',
    );
    edit(at('house', 'house.yaml'), 'Use induction', 'Always use induction');
    expect(release().stderr).toContain('A released version never changes');
    edit(at('house', 'house.yaml'), 'Always use induction', 'Use induction');
    expect(release().status).toBe(0);
  });

  test('--plans: a patch whose rule finds more than the one it replaces keeps itself back', () => {
    release();
    writeFileSync(at('plan.yaml'), rail);
    edit(at('house', 'pack.yaml'), 'version: 1.0.0', 'version: 1.0.1');
    const rules = readFileSync(at('house', 'house.yaml'), 'utf8');
    const ended = rules.replace(
      'since: 1.0.0',
      'since: 1.0.0\n    until: 1.0.1\n    replaced_by: house-heat',
    );
    const wider = rules
      .replace(/^[^]*rules:\n/u, '')
      .replace('house-no-torch-on-structure', 'house-heat')
      .replace('since: 1.0.0', 'since: 1.0.1')
      .replaceAll('torch', 'induction')
      .replace('source: induction }\n      asks', 'source: torch }\n      asks');
    writeFileSync(at('house', 'house.yaml'), `${ended}${wider}`);
    const { status, stderr } = release('--plans', at('plan.yaml'));
    expect([status, stderr]).toEqual([
      2,
      expect.stringContaining('cleared by 1.0.0 and held by 1.0.1, which a patch version does not do.'),
    ]);
    expect(release('--plans', at('nothing-here')).status).toBe(2);
    edit(at('house', 'pack.yaml'), 'version: 1.0.1', 'version: 1.1.0');
    writeFileSync(at('house', 'house.yaml'), `${ended}${wider}`.replaceAll('1.0.1', '1.1.0'));
    expect(release('--plans', at('plan.yaml')).status).toBe(0);
  });
});
