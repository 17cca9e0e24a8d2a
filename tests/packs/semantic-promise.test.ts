import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { keepsPromise } from '../../src/judge/keeps-promise.ts';
import { builtInPacks } from '../../src/generated/built-in-packs.ts';
import type { History, Pack, PackPart, Rule, Trigger } from '../../src/packs/pack.ts';
import { brokenPromises, stepBetween } from '../../src/packs/versions/semantic-promise.ts';
import { readVersion } from '../../src/packs/versions/semantic-version.ts';
import type { PlanReport } from '../../src/report/plan-report.ts';
import { faultsOfEvasion } from '../faults-of-evasion.ts';
import { faultsOfMakingSafe } from '../faults-of-making-safe.ts';
import { faultsOfMeasuring } from '../faults-of-measuring.ts';
import { faultsOfPapers } from '../faults-of-papers.ts';
import { faultsOfRecords } from '../faults-of-records.ts';
import { faultsOfRelease } from '../faults-of-release.ts';
import { faultsOfSafety } from '../faults-of-safety.ts';
import { faultsOfTheWholeJob } from '../faults-of-the-whole-job.ts';
import { faultsOfWork } from '../faults-of-work.ts';
import { judgeText, ruleIds } from '../judge-text.ts';
import { rule } from '../judge/invented-pack.ts';
import { changed, electric, rail, ring, skin } from '../one-change.ts';

// Patch, minor, major: what each promises stands in the description of `version` in schemas/pack.schema.json.

const general = builtInPacks().find(({ name }) => name === 'general');
const versions = (general?.releases ?? []).map(({ version }) => version);

const faults = [...faultsOfWork, ...faultsOfPapers, ...faultsOfSafety, ...faultsOfMakingSafe]
  .concat([
    ...faultsOfRelease,
    ...faultsOfMeasuring,
    ...faultsOfRecords,
    ...faultsOfEvasion,
    ...faultsOfTheWholeJob,
  ])
  .map((fault) => [fault.name, changed(fault.plan, fault.changes)] as const);
const examples = readdirSync('examples/plans').map(
  (name) => [name, readFileSync(`examples/plans/${name}`, 'utf8')] as const,
);
// What the versions differ in, each on a plan that is cleared without it.
const ultra = changed(ring, [['grade: 22MnB5+AS150', 'strength: 1000 MPa']]);
const own: readonly (readonly [string, string])[] = [
  ['ring', ring],
  ['rail', rail],
  ['skin', skin],
  ['electric', electric],
  ['ultra-high-strength ring', ultra],
];
const corpus = [...examples, ...own, ...faults];

/** The plan judged by one version: pinned to it, whatever it pinned before. */
function judgedBy(version: string, text: string): PlanReport {
  const unpinned = text.replace(/^rules:.*$/mu, '');
  return judgeText(`${unpinned}\nrules: [general@${version}]\n`);
}

describe('the releases of the general pack keep what their numbers promise', () => {
  test('there is a patch or minor and a major among them', () => {
    expect(versions.length).toBeGreaterThanOrEqual(3);
    expect(general === undefined ? ['no pack'] : brokenPromises(general)).toEqual([]);
  });

  test.each(versions.slice(1).map((version, index) => [versions[index] ?? '', version] as const))(
    'from %s to %s, on every plan of examples and tests',
    (before, after) => {
      const [from, to] = [readVersion(before), readVersion(after)];
      if (from === undefined || to === undefined) throw new Error('no version');
      const step = stepBetween(from, to);
      const broken = corpus.filter(
        ([, text]) => !keepsPromise(step, judgedBy(before, text).verdict, judgedBy(after, text).verdict),
      );
      expect(broken.map(([name]) => name)).toEqual([]);
      // A plan that nothing judges keeps every promise.
      const unjudged = corpus.filter(([, text]) => judgedBy(after, text).verdict === 'not judged');
      expect([corpus.length > 150, unjudged.map(([name]) => name)]).toEqual([true, []]);
    },
    300_000,
  );
});

describe('the releases differ as a trade does', () => {
  test('a plan without anything that changed comes out the same in all', () => {
    for (const version of versions)
      expect([version, judgedBy(version, skin).verdict]).toEqual([version, 'cleared']);
  });

  test('a cut through ultra-high-strength steel was held, and is stopped', () => {
    const section = changed(readFileSync('examples/plans/ring-sectioned-by-old-document.yaml', 'utf8'), [
      ['grade: 22MnB5+AS150', 'strength: 1000 MPa'],
    ]);
    expect(ruleIds(judgedBy('1.0.0', section), ['hold'])).toContain('section-ultra-high-strength-held');
    expect(ruleIds(judgedBy('1.0.0', section), ['stop'])).not.toContain('section-ultra-high-strength');
    expect(ruleIds(judgedBy('2.0.0', section), ['stop'])).toContain('section-ultra-high-strength');
    expect(ruleIds(judgedBy('2.0.0', section), ['hold'])).not.toContain('section-ultra-high-strength-held');
  });
});

describe('a promise that is broken is told', () => {
  const zero = `sha256:${'0'.repeat(64)}`;
  const released = (version: string): NonNullable<Pack['releases']>[number] => ({
    version,
    date: '2026-01-01',
    facts: 1,
    digest: zero,
    reasons: [],
  });
  const pack = (next: string, given: Partial<Pack>): Pack => ({
    name: 'mine',
    version: next,
    released: false,
    title: 'A pack',
    format: 1,
    facts: 1,
    rules: [],
    limits: [],
    allowances: [],
    reaches: [],
    windows: [],
    provisions: [],
    digest: zero,
    releases: [released('1.0.0')],
    ...given,
  });
  const begun = (severity: Rule['severity'], since: string): Rule => ({
    ...rule({ id: 'new', judges: 'part', when: [] }),
    severity,
    since,
  });
  const old = (severity: Rule['severity'], until: string): Rule => ({
    ...rule({ id: 'old', judges: 'part', when: [] }),
    severity,
    until,
    replacedBy: 'new',
  });
  const source = { practice: 'common' };

  const partOf = (grade: string, given: Partial<PackPart>): PackPart => ({
    part: 'door ring',
    years: { from: 2020, to: 2022 },
    document: 'OBM-1',
    grade,
    under: [],
    ...given,
  });
  const check = (since: string): Trigger => ({
    asksFor: 'road test',
    ...{ sensor: [], kinds: [], holds: [], named: [], unlessNamed: [], was: [], work: ['structural work'] },
    since,
    source,
  });

  test.each<readonly [string, Pack, number]>([
    ['a note in a patch', pack('1.0.1', { rules: [begun('note', '1.0.1')] }), 0],
    ['a hold in a patch', pack('1.0.1', { rules: [begun('hold', '1.0.1')] }), 1],
    [
      'a hold in a patch in place of one',
      pack('1.0.1', { rules: [begun('hold', '1.0.1'), old('hold', '1.0.1')] }),
      0,
    ],
    ['a hold in a minor', pack('1.1.0', { rules: [begun('hold', '1.1.0')] }), 0],
    ['a stop in a minor', pack('1.1.0', { rules: [begun('stop', '1.1.0')] }), 1],
    [
      'a stop in a minor in place of a hold',
      pack('1.1.0', { rules: [begun('stop', '1.1.0'), old('hold', '1.1.0')] }),
      1,
    ],
    [
      'a stop in a minor in place of a stop',
      pack('1.1.0', { rules: [begun('stop', '1.1.0'), old('stop', '1.1.0')] }),
      0,
    ],
    ['a stop in a major', pack('2.0.0', { rules: [begun('stop', '2.0.0')] }), 0],
    ['a stop that was always there', pack('1.1.0', { rules: [begun('stop', '1.0.0')] }), 0],
    [
      'a rule raised to a stop in a minor',
      pack('1.1.0', { raises: [{ rule: 'x', to: 'stop', since: '1.1.0', why: 'So.', source }] }),
      1,
    ],
    [
      'an allowance that only general stated, in a minor',
      pack('1.1.0', { layer: 'shop', allowances: [{ means: 'none', kelvin: 40, since: '1.1.0', source }] }),
      1,
    ],
    [
      'the first allowance of general, without which nothing is known of the heat',
      pack('1.1.0', {
        layer: 'general',
        allowances: [{ means: 'none', kelvin: 40, since: '1.1.0', source }],
      }),
      0,
    ],
    ['a stronger steel in a minor', pack('1.1.0', { parts: [partOf('22MnB5', { since: '1.1.0' })] }), 1],
    ['a stronger steel in a major', pack('2.0.0', { parts: [partOf('22MnB5', { since: '2.0.0' })] }), 0],
    [
      'the same steel by a newer revision, in a patch',
      pack('1.0.1', {
        parts: [
          partOf('22MnB5', { revision: 'A', until: '1.0.1' }),
          partOf('22MnB5', { revision: 'B', since: '1.0.1' }),
        ],
      }),
      0,
    ],
    [
      'what completed plans is gone in a patch',
      pack('1.0.1', { parts: [partOf('DC04', { until: '1.0.1' })] }),
      1,
    ],
    [
      'what completed plans is gone in a minor',
      pack('1.1.0', { parts: [partOf('DC04', { until: '1.1.0' })] }),
      0,
    ],
    [
      'a document superseded in a minor',
      pack('1.1.0', { documents: [{ document: 'OBM-1', by: { document: 'OBM-2' }, since: '1.1.0' }] }),
      1,
    ],
    ['one more check asked for in a patch', pack('1.0.1', { triggers: [check('1.0.1')] }), 1],
    ['one more check asked for in a minor', pack('1.1.0', { triggers: [check('1.1.0')] }), 0],
  ])('%s', (_name, one, count) => {
    expect(brokenPromises(one)).toHaveLength(count);
  });

  type Numbered = readonly (History & { readonly number: number; readonly source: typeof source })[];

  /** Rows of a table of a pack, by the number that they state. */
  const tables: Readonly<Record<string, (rows: Numbered) => Partial<Pack>>> = {
    'limit in °C': (rows) => ({
      limits: rows.map(({ number, ...row }) => ({ victim: 'glass', stopAboveCelsius: number, ...row })),
    }),
    'allowance in K': (rows) => ({
      allowances: rows.map(({ number, ...row }) => ({ means: 'temperature crayon', kelvin: number, ...row })),
    }),
    'reach in mm': (rows) => ({
      reaches: rows.map(({ number, ...row }) => ({ from: 'resistance spot', mm: number, ...row })),
    }),
    'tolerance in mm': (rows) => ({
      tolerances: rows.map(({ number, ...row }) => ({ of: 'point', atMostMm: number, ...row })),
    }),
  };

  // More heat is allowed, less is added, heat reaches less far, more may be out: nobody asks for more.
  test.each([
    ['limit in °C', 150, 160],
    ['allowance in K', 20, 19],
    ['reach in mm', 25, 24],
    ['tolerance in mm', 3, 3.1],
  ] as const)(
    'a %s may be loosened from %d to %d in a patch; tightened back only in a major',
    (what, strict, loose) => {
      const between = (before: number, after: number, next: string): Pack =>
        pack(
          next,
          tables[what]?.([
            { number: before, until: next, source },
            { number: after, since: next, source },
          ]) ?? {},
        );
      expect(brokenPromises(between(strict, loose, '1.0.1'))).toEqual([]);
      expect(brokenPromises(between(loose, strict, '1.0.1'))).toHaveLength(1);
      expect(brokenPromises(between(loose, strict, '1.1.0'))).toHaveLength(1);
      expect(brokenPromises(between(loose, strict, '2.0.0'))).toEqual([]);
    },
  );

  test.each([
    ['patch', 'held', 'held', true],
    ['patch', 'cleared', 'held', false],
    ['minor', 'cleared', 'held', true],
    ['minor', 'held', 'stopped', false],
    ['minor', 'stopped', 'cleared', true],
    ['major', 'cleared', 'stopped', true],
    ['major', 'cleared', 'not judged', false],
  ] as const)('%s: from %s to %s is %s', (step, before, after, keeps) => {
    expect(keepsPromise(step, before, after)).toBe(keeps);
  });
});
