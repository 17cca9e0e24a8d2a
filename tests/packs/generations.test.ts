import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, describe, expect, test } from 'vitest';
import { factsOf } from '../facts/facts-of.ts';
import { judgeText, ruleIds } from '../judge-text.ts';
import { changed } from '../one-change.ts';
import type { Change } from '../one-change.ts';

// The failure that planish exists to prevent: what was right on the body before is done on this one, because nobody looked the
// procedure up. Two generations of one invented model; the cut at B is drawn for the first, and forbidden on the second.

const pack = 'examples/rules/corvane-tarn';
const oldBody = readFileSync('examples/plans/ring-end-piece-by-drawn-cut.yaml', 'utf8');
const newBody = readFileSync('examples/plans/ring-replaced-whole.yaml', 'utf8').replace(
  'rules: [general@3]',
  'rules: [general@3, corvane-tarn@2026]',
);

const folders: string[] = [];
afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});

function packOf(text: string): string {
  const folder = mkdtempSync(path.join(tmpdir(), 'planish-generation-'));
  folders.push(folder);
  writeFileSync(
    path.join(folder, 'pack.yaml'),
    'pack: corvane-tarn\nformat: 1\nfacts: 1\nversion: 2026.1.0\ntitle: Tarn\nvehicle: { maker: Corvane, models: [Tarn] }\n',
  );
  writeFileSync(path.join(folder, 'all.yaml'), `pack: corvane-tarn\n${text}`);
  return folder;
}

const stopsOf = (text: string, folder?: string): readonly string[] =>
  ruleIds(judgeText(text, folder), ['stop']);
const holdsOf = (text: string, folder?: string): readonly string[] =>
  ruleIds(judgeText(text, folder), ['hold']);

const becomesNew: readonly Change[] = [
  ['model_year: 2018', 'model_year: 2021'],
  ['0CVBAB2BZJ0002209', '0CVBAB2BZM0002209'],
];

describe('two generations of one model', () => {
  test('the drawn cut on the old body, by its own document, is lifted by that document and cleared', () => {
    const report = judgeText(oldBody, pack);
    expect(report.verdict).toBe('cleared');
    expect(report.lifted.map(({ rule, by }) => [rule, by])).toContainEqual([
      'section-press-hardened',
      'BRM-TRN-1120, revision C, p. 20-26, in pack corvane-tarn 2026.1.0',
    ]);
  });

  test('the same plan on the new body is stopped by the data of the pack', () => {
    const report = judgeText(changed(oldBody, becomesNew), pack);
    expect(report.verdict).toBe('stopped');
    expect(report.lifted).toEqual([]);
    const stops = ruleIds(report, ['stop']);
    // `replace part at B` is neither the whole ring that shall be replaced nor free of a weld that shall not be made.
    expect(stops).toEqual(
      expect.arrayContaining([
        'provision-requires-otherwise',
        'section-press-hardened',
        'citation-of-other-year',
      ]),
    );
  });

  test('written as a section, the new body’s own document forbids it in so many words', () => {
    const section = readFileSync('examples/plans/ring-sectioned-by-old-document.yaml', 'utf8');
    expect(stopsOf(section, pack)).toContain('provision-forbids');
    expect(stopsOf(section)).not.toContain('provision-forbids');
  });

  test('the whole ring on the new body, by its own document, is cleared', () => {
    expect(judgeText(newBody, pack).verdict).toBe('cleared');
  });

  test('the other way round: the new body’s document is no permission on the old body', () => {
    const back = changed(newBody, [
      ['model_year: 2021', 'model_year: 2018'],
      ['0CVBAB2BZM', '0CVBAB2BZJ'],
    ]);
    expect(stopsOf(back, pack)).toContain('citation-of-other-year');
  });

  test('without the pack the cut on the old body is stopped, and the finding prints what to type in', () => {
    const report = judgeText(oldBody.replace(', corvane-tarn@2026', ''));
    const found = report.findings.find(({ finding }) => finding.rule === 'section-press-hardened');
    expect(found?.finding.severity).toBe('stop');
    expect(found?.finding.instead).toContain('document: "BRM-TRN-1120", revision: "C"');
  });

  test('the version of before knows nothing of the new body', () => {
    const section = readFileSync('examples/plans/ring-sectioned-by-old-document.yaml', 'utf8').replace(
      'rules: [general@3]',
      'rules: [general@3, corvane-tarn@2025]',
    );
    const report = judgeText(section, pack);
    expect(ruleIds(report, ['stop'])).not.toContain('provision-forbids');
    expect(report.packs?.find((one) => one.pack === 'corvane-tarn')).toBeUndefined();
    expect(report.setAside?.map(({ name, version }) => [name, version])).toEqual([
      ['corvane-tarn', '2025.1.0'],
    ]);
  });
});

describe('a newer revision in the pack', () => {
  const statements = (newer: string): string => `provisions:
  - { part: door ring, years: 2015-2019, document: BRM-TRN-1120, revision: C, published: 2016-03-10, page: p. 20-26, may: [replace part at B], conditions: [insert of 30 mm each side, coupon before the weld] }
  - { part: door ring, years: 2015-2019, document: BRM-TRN-1120, revision: D, published: 2019-05-02, page: p. 20-26, ${newer} }
`;

  test('that permits the same is a hold', () => {
    const folder = packOf(statements('may: [replace part at B]'));
    expect(stopsOf(oldBody, folder)).toEqual([]);
    expect(holdsOf(oldBody, folder)).toContain('pack-knows-newer-revision');
  });

  test('that forbids it is a stop', () => {
    const folder = packOf(statements('shall_not: [replace part]'));
    expect(stopsOf(oldBody, folder)).toContain('provision-forbids');
  });

  test('a document that another one took the place of permits nothing, and is told with its successor', () => {
    const replaced = `${statements('may: [replace part at C]').split('\n').slice(0, 2).join('\n')}
documents:
  - { document: BRM-TRN-1120, superseded_by: { document: BRM-TRN-1121, revision: A } }
  - { document: BRM-TRN-1121, revision: A, superseded_by: { document: BRM-TRN-1121, revision: B, published: 2020-01-09 } }
`;
    const report = judgeText(oldBody, packOf(replaced));
    expect(ruleIds(report, ['stop'])).toContain('section-press-hardened');
    expect(ruleIds(report, ['hold'])).toEqual(
      expect.arrayContaining(['document-superseded', 'permission-not-in-force']),
    );
    const told = report.findings.find(({ finding }) => finding.rule === 'document-superseded');
    expect(told?.finding.message).toBe(
      'BRM-TRN-1120 revision C was replaced by BRM-TRN-1121, revision B, published 2020-01-09.',
    );
  });
});

describe('the parts of the pack', () => {
  const ring = '    grade: 22MnB5+AS150\n';

  test('complete what the plan leaves out: the steel is known, and from where', () => {
    const silent = newBody.replace(ring, '').replace(/\n {4}grade_from: \{ reference: ring[^\n]*/u, '');
    expect(silent).not.toBe(newBody);
    const cut = silent.replace('extent: whole', 'extent: part\n        at: B');
    const report = judgeText(cut, pack);
    const found = report.findings.find(({ finding }) => finding.rule === 'section-press-hardened');
    expect(found?.finding.severity).toBe('stop');
    expect(found?.finding.facts.find(({ name }) => name === 'part.class')).toMatchObject({
      value: 'press-hardened',
      from: 'table',
      note: expect.stringContaining('BRM-TRN-3000, revision A, p. 6, in pack corvane-tarn 2026.1.0'),
    });
  });

  test('contradict a weaker steel, and the stronger one is judged', () => {
    const mild = changed(newBody, [[ring, '    grade: DC04\n']]);
    expect(holdsOf(mild, pack)).toContain('material-differs-from-pack');
    const cut = mild.replace('extent: whole', 'extent: part\n        at: B');
    expect(stopsOf(cut, pack)).toContain('section-press-hardened');
  });

  test('a steel of the same family under another name is no contradiction', () => {
    expect(holdsOf(changed(newBody, [[ring, '    grade: 22MnB5\n']]), pack)).not.toContain(
      'material-differs-from-pack',
    );
  });

  test.each([
    ['1.2 mm', true],
    ['1.26 mm', false],
    ['1.5 mm', false],
  ])('a ring of %s against 1.4 mm: told is %s', (thickness, told) => {
    const plan = newBody.replace(/(id: ring-l[^]*?thickness: )1\.4 mm/u, `$1${thickness}`);
    expect(plan).not.toBe(newBody);
    expect(holdsOf(plan, pack).includes('thickness-differs-from-pack')).toBe(told);
  });

  test('a ring said to be several pieces is one piece, and the contradiction is told', () => {
    const plan = changed(newBody, [['    one_piece: true\n', '    one_piece: false\n']]);
    expect(holdsOf(plan, pack)).toContain('one-piece-differs-from-pack');
  });

  test('the layer under a torn panel that the plan does not list is asked for', () => {
    const begin = newBody.indexOf('  - id: ring-l\n');
    const end = newBody.indexOf('\n  - id: ', begin + 1);
    const without = (newBody.slice(0, begin) + newBody.slice(end + 1)).replace(/\n {4}over: ring-l/u, '');
    expect(holdsOf(without, pack)).toContain('layer-of-pack-not-mentioned');
    expect(holdsOf(newBody, pack)).not.toContain('layer-of-pack-not-mentioned');
  });

  describe('for a range of identification numbers', () => {
    const sill = (vin: string): string =>
      newBody
        .replace(/vin: 0CVBAB2BZM\d+/u, vin)
        .replace(/(id: sill-inner-l[^]*?)\n {4}grade: HC340LA/u, '$1\n    grade: HC340LA');

    test.each([
      ['before the change', 'vin: 0CVBAB2BZM0004999', false],
      ['the first one changed', 'vin: 0CVBAB2BZM0005000', true],
      ['the last one changed', 'vin: 0CVBAB2BZM0009999', true],
    ])('%s', (_name, vin, told) => {
      expect(holdsOf(sill(vin), pack).includes('material-differs-from-pack')).toBe(told);
    });

    const entry = {
      part: 'sill',
      years: { from: 2021, to: 2021 },
      document: 'BRM-5',
      revision: 'A',
      under: [],
    };
    const parts = [
      { ...entry, grade: 'HC340LA' },
      { ...entry, grade: 'HCT980X', vins: { from: '0CVBAB2BZM0005000', to: '0CVBAB2BZM0009999' } },
    ];
    const plan = (vin: string): string =>
      `vehicle: { maker: Corvane, model: Tarn, body: wagon, model_year: 2021${vin} }\nparts: [{ id: sill, kind: sill }]\n`;

    test.each([
      [', vin: 0CVBAB2BZM0000001', 'high-strength'],
      [', vin: 0CVBAB2BZM0005001', 'ultra-high-strength'],
    ])('a part of which nothing is stated is completed%s: %s', (vin, strengthClass) => {
      expect(factsOf(plan(vin), { parts }).value('part.class')).toBe(strengthClass);
    });

    test('without a number nothing is completed: it may be the stronger sheet', () => {
      expect(factsOf(plan(''), { parts }).value('part.class')).toMatch(/^\? Neither grade nor strength/u);
    });
  });
});
