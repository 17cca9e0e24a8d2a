import { expect, test } from 'vitest';
import { FaultList } from '../../src/packs/reading/fault-list.ts';
import { readTolerance } from '../../src/packs/reading/read-tolerance.ts';
import { loadPackFolder } from '../../src/packs/load-pack.ts';
import { dictionary } from '../../src/cli/dictionary.ts';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';

const source = { practice: 'common' } as const;

test('a length in any unit, in mm', () => {
  const list = new FaultList({ path: 'a.yaml', text: '' }, undefined);
  expect(readTolerance({ of: 'point', at_most: '0.3 cm', source }, '', list)).toEqual({
    of: 'point',
    atMostMm: 3,
    source,
  });
  expect(list.faults).toEqual([]);
});

test.each([
  [
    'no length',
    '  - { of: point, at_most: 3 °C, source: { practice: common } }\n',
    '3:27 "3 °C" is a temperature, but a length is needed, a number with mm, cm, m, µm or in.',
  ],
  [
    'of nothing that is measured',
    '  - { of: pint, at_most: 3 mm, source: { practice: common } }\n',
    '3:11 This is not one of the words known here: point, opening. Nearest known: `point`.',
  ],
  [
    'two for one thing',
    '  - { of: point, at_most: 3 mm, source: { practice: common } }\n  - { of: point, at_most: 2 mm, source: { practice: common } }\n',
    '4:11 `point` has a tolerance in this pack already.',
  ],
])('a tolerance that is %s is refused at its place', (_name, yaml, expected) => {
  const folder = mkdtempSync(path.join(tmpdir(), 'planish-tolerance-'));
  try {
    writeFileSync(
      path.join(folder, 'pack.yaml'),
      'pack: mine\nformat: 1\nfacts: 1\nversion: 1.0.0\nreleased: false\ntitle: Mine\n',
    );
    writeFileSync(path.join(folder, 'measure.yaml'), `pack: mine\ntolerances:\n${yaml}`);
    const loaded = loadPackFolder(folder, dictionary);
    expect(
      loaded.ok
        ? []
        : loaded.faults.map(({ line, column, sentence }) => `${String(line)}:${String(column)} ${sentence}`),
    ).toEqual([expected]);
  } finally {
    rmSync(folder, { recursive: true });
  }
});
