import { mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { parse, stringify } from 'yaml';
import { dictionary } from '../../src/cli/dictionary.ts';
import { judgeSource } from '../../src/cli/judging/judge-source.ts';
import { rememberingLapSolver, rememberingStripSolver } from '../../src/facts/heat/strip-solver.ts';
import { builtInPacks } from '../../src/generated/built-in-packs.ts';
import { loadPackFolder } from '../../src/packs/load-pack.ts';
import type { PackLoading } from '../../src/packs/load-pack.ts';
import type { Pack } from '../../src/packs/pack.ts';
import { compareVersions, readVersion } from '../../src/packs/versions/semantic-version.ts';
import { readDate } from '../../src/quantity/iso-date.ts';
import { planAsJson } from '../../src/report/plan-json.ts';
import { shielded } from '../recheck/archive.ts';

// Today's files of the general pack must give last year's verdict to the byte. Held against them is the pack as it was in the year
// of each release: a folder from which all that came later is taken out, so that nothing of the history is left in it.

const versions = ['1.0.0', '1.1.0'];
const loadings = new Map<string, PackLoading>();
let root = '';

interface Dated {
  readonly since?: string;
  readonly until?: string;
}

function isThere({ since, until }: Dated, version: string): boolean {
  const at = readVersion(version);
  const [begins, ends] = [readVersion(since ?? '0.0.0'), readVersion(until ?? '9999.0.0')];
  if (at === undefined || begins === undefined || ends === undefined) throw new Error('no version');
  return compareVersions(begins, at) <= 0 && compareVersions(at, ends) < 0;
}

/** Writes the pack as it was: without what began later, and with what ended later as if it went on. */
function writeAsItWas(version: string): string {
  const folder = path.join(root, version, 'general');
  mkdirSync(folder, { recursive: true });
  for (const name of readdirSync('rules/general')) {
    const file: Record<string, unknown> = parse(readFileSync(path.join('rules/general', name), 'utf8'));
    const was = Object.fromEntries(
      Object.entries(file).map(([key, value]) => {
        if (key === 'version') return [key, version];
        if (!Array.isArray(value)) return [key, value];
        if (key === 'releases')
          return [
            key,
            value.slice(0, value.findIndex((one: { version: string }) => one.version === version) + 1),
          ];
        const there = value.filter((one: Dated) => isThere(one, version));
        return [key, there.map(({ until: _, replaced_by: _by, ...one }: Record<string, unknown>) => one)];
      }),
    );
    const isEmpty = Object.keys(was).length === 2 && Array.isArray(was['rules']) && was['rules'].length === 0;
    if (!isEmpty) writeFileSync(path.join(folder, name), stringify(was));
  }
  return folder;
}

beforeAll(() => {
  root = mkdtempSync(path.join(tmpdir(), 'planish-reproduced-'));
  for (const version of versions) loadings.set(version, loadPackFolder(writeAsItWas(version), dictionary));
});
afterAll(() => {
  rmSync(root, { recursive: true, force: true });
});

const solveStrip = rememberingStripSolver();
const solveLap = rememberingLapSolver();

function bytesBy(packs: readonly Pack[], text: string, version: string): string {
  const day = readDate('2026-10-21');
  if (!day.ok) throw new Error(day.reason);
  const run = {
    packs,
    dictionary,
    asOfDay: day.day,
    solveStrip,
    solveLap,
    resolved: new Map(),
  };
  const pinned = `${text.replace(/^rules:.*$/mu, '')}\nrules: [general@${version}]\n`;
  const answer = judgeSource(run, 'plan.yaml', new TextEncoder().encode(pinned), true);
  if (answer.kind !== 'plan') throw new Error(answer.kind);
  const { packs: used = [], ...report } = answer.report;
  // That a newer release is here is news of today and no part of the verdict.
  const then = used.map(({ newer: _, ...pack }) => pack);
  return JSON.stringify(planAsJson({ ...report, packs: then }), null, 2);
}

const plans = [
  ...readdirSync('examples/plans').map(
    (name) => [name, readFileSync(`examples/plans/${name}`, 'utf8')] as const,
  ),
  ['shielded', shielded] as const,
];

describe.each(versions)('general %s', (version) => {
  test('is the pack as it was, with the digest of its release', () => {
    const loaded = loadings.get(version);
    if (loaded === undefined) throw new Error('not loaded');
    expect(
      loaded.ok ? [] : loaded.faults.map(({ file, line, sentence }) => [path.basename(file), line, sentence]),
    ).toEqual([]);
    if (!loaded.ok) return;
    const released = builtInPacks()[0]?.releases?.find((one) => one.version === version);
    expect([loaded.pack.digest, loaded.pack.released]).toEqual([released?.digest, true]);
    expect(loaded.pack.rules.some(({ until }) => until !== undefined)).toBe(false);
  });

  test.each(plans)(
    'gives the report of %s to the byte, from today’s files as from those of then',
    (_name, text) => {
      const loaded = loadings.get(version);
      if (loaded === undefined) throw new Error('not loaded');
      if (!loaded.ok) throw new Error('not loaded');
      const then = bytesBy([loaded.pack], text, version);
      expect(bytesBy(builtInPacks(), text, version)).toBe(then);
      expect(then).toContain(`"version": "${version}"`);
    },
  );
});

test('the reports of the releases differ where the trade changed', () => {
  const [one, two] = ['1.0.0', '1.1.0'].map((version) => bytesBy(builtInPacks(), shielded, version));
  expect([one?.includes('"verdict": "cleared"'), two?.includes('"verdict": "held"')]).toEqual([true, true]);
});
