import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { parse } from 'csv-parse/sync';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { hostileTexts } from '../report/hostile-texts.ts';
import { readXml } from '../report/read-xml.ts';
import { runPlanish } from './run-planish.ts';

// Each starts other programs, which takes long on a busy machine.
vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });

// From the file to each form, through the command line: whatever a plan and its path hold, every form stays whole.
const folderName = 'jobs "of" <the> & shop, =1+1 ::error';
let folder = '';

beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'planish-hostile-'));
  mkdirSync(path.join(folder, folderName));
  // Control characters and the like a plan may not hold at all; tests/plan has them.
  const given = hostileTexts.filter(
    (text) => text.length < 1000 && !/[\p{Cf}\p{Surrogate}\u2028\u2029]|(?!\n)\p{Cc}/u.test(text),
  );
  const quoted = (text: string): string => JSON.stringify(text);
  const parts = given.map(
    (text, index) =>
      `  - {id: ${quoted(`${String(index)}${text}`)}, name: ${quoted(text)}, kind: ${quoted(text)}, grade: ${quoted(text)}, damage: {kind: kink, found_by: ${quoted(text)}}, operations: [{do: section, extent: ${quoted(text)}, cite: {reference: ${quoted(text)}, at: ${quoted(text)}}}]}`,
  );
  const plan = `format: 1\nstage: start\nvehicle: {maker: "::error::x", model: "##vso[a]b", vin: "=1+1"}\nparts:\n${parts.join('\n')}\n`;
  writeFileSync(path.join(folder, folderName, 'a.yaml'), plan);
  // No YAML, with a command in the line that is quoted.
  writeFileSync(path.join(folder, folderName, 'b.yaml'), 'format: 1\n"::add-mask::x": [\n');
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

const written = (form: string): string => {
  const args = ['check', '--as-of', '2026-10-21', '--max-findings', '0', '--format', form, folderName];
  const { status, stdout, stderr } = runPlanish(args, { folder });
  expect({ status, stderr }).toEqual({ status: 2, stderr: '' });
  return stdout;
};

const judged = (): { readonly findings: readonly object[] } => {
  const report = JSON.parse(written('json')) as {
    readonly plans: readonly { readonly findings: readonly object[] }[];
  };
  const [first] = report.plans;
  if (first === undefined) throw new Error('no plan');
  return first;
};

test('JSON, NDJSON, SARIF and GitLab’s list are JSON with every finding in it', () => {
  const { findings } = judged();
  expect(findings.length).toBeGreaterThan(20);
  const [line] = written('ndjson').split('\n');
  expect(JSON.parse(line ?? '')).toMatchObject({ findings });
  const sarif = JSON.parse(written('sarif')) as {
    readonly runs: readonly { readonly results: readonly object[] }[];
  };
  expect(sarif.runs[0]?.results.length).toBe(findings.length + 1);
  expect((JSON.parse(written('gitlab')) as readonly object[]).length).toBe(findings.length + 1);
});

test('JUnit is XML of two suites, CSV rows of one length', () => {
  expect(readXml(written('junit')).children).toHaveLength(2);
  const rows = parse(written('csv'), { record_delimiter: '\r\n' });
  expect(rows).toHaveLength(judged().findings.length + 2);
});

test('text and Markdown move no cursor and give no host a command', () => {
  for (const form of ['text', 'markdown']) {
    for (const line of written(form).split('\n')) {
      expect(line).not.toMatch(/[\p{Cc}\p{Cf}\u2028\u2029]/u);
      expect(line).not.toMatch(/^\s*::|##\[|##vso\[/u);
    }
  }
});

test('annotations are commands of planish alone, one line each', () => {
  const count = judged().findings.length + 1;
  const github = written('github')
    .trimEnd()
    .split(/\r\n|\r|\n/u);
  expect(github).toHaveLength(count);
  for (const line of github) expect(line).toMatch(/^::(?:error|warning|notice) file=/u);
  const azure = written('azure')
    .trimEnd()
    .split(/\r\n|\r|\n/u);
  expect(azure).toHaveLength(count);
  for (const line of azure) expect(line).toMatch(/^##vso\[task\.logissue type=(?:error|warning);/u);
});
