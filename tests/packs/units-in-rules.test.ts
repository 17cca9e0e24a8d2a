import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, describe, expect, test } from 'vitest';
import { dictionary } from '../../src/cli/dictionary.ts';
import { loadPackFolder } from '../../src/packs/load-pack.ts';

const folders: string[] = [];
afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});

function load(limit: string): ReturnType<typeof loadPackFolder> {
  const folder = mkdtempSync(path.join(tmpdir(), 'planish-units-'));
  folders.push(folder);
  writeFileSync(
    path.join(folder, 'pack.yaml'),
    'pack: mine\nformat: 1\nfacts: 1\nversion: 1.0.0\nreleased: false\ntitle: A pack\n',
  );
  writeFileSync(
    path.join(folder, 'heat.yaml'),
    `pack: mine
rules:
  - id: a-rule
    topic: heat
    since: 1.0.0
    judges: operation
    severity: stop
    from: draft
    when: { operation.temperature: { above: ${limit} } }
    message: Too hot.
    instead: Colder.
    why: It softens.
    source: { practice: common }
    cases: { finds: [{ operation.temperature: 900 °C }], passes: [{ operation.temperature: 20 °C }] }
`,
  );
  return loadPackFolder(folder, dictionary);
}

describe('the limit of a rule is read with its unit', () => {
  test.each([
    ['650 °C', 650],
    ['1202 °F', 650],
    ['923.15 K', 650],
  ])('%s', (limit, celsius) => {
    const loaded = load(limit);
    const line = loaded.ok ? loaded.pack.rules[0]?.when[0] : undefined;
    expect(line?.test).toEqual({ range: { above: expect.closeTo(celsius, 9) } });
  });
});

describe('and is refused at its place when it cannot be', () => {
  test.each([
    ['650 °X', 'the nearest known one is °C'],
    ['650 celsus', 'unknown unit "celsus": write °C, °F or K'],
    ['650 mm', 'is a length, but a temperature is needed'],
    ['650', 'has no unit: write °C, °F or K'],
  ])('%s', (limit, said) => {
    const loaded = load(limit);
    const faults = loaded.ok ? [] : loaded.faults;
    expect(faults.map(({ file, line, column }) => [path.basename(file), line, column])).toEqual([
      ['heat.yaml', 9, 45],
    ]);
    expect(faults[0]?.sentence).toContain(said);
  });
});
