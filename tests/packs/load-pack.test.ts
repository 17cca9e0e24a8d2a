import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, describe, expect, test } from 'vitest';
import { dictionary } from '../../src/cli/dictionary.ts';
import { checkCases } from '../../src/judge/check-cases.ts';
import { packDigest } from '../../src/packs/digest.ts';
import { loadPackFolder } from '../../src/packs/load-pack.ts';

const folders: string[] = [];
afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});

const manifest = 'pack: mine\nformat: 1\nfacts: 1\nversion: 1.0.0\nreleased: false\ntitle: A pack\n';
const goodRule = `pack: mine
rules:
  - id: a-rule
    topic: heat
    since: 1.0.0
    judges: operation
    severity: stop
    from: draft
    when:
      operation.do: heat
      operation.temperature: { above: 650 °C }
    message: '{part.name} at {operation.temperature}.'
    instead: Colder.
    why: It softens.
    source: { practice: common }
    cases:
      finds: [{ operation.do: heat, operation.temperature: 651 °C }]
      passes: [{ operation.do: heat, operation.temperature: 650 °C }]
`;

function pack(files: Readonly<Record<string, string | Uint8Array>>): string {
  const folder = mkdtempSync(path.join(tmpdir(), 'planish-pack-'));
  folders.push(folder);
  for (const [name, content] of Object.entries(files)) writeFileSync(path.join(folder, name), content);
  return folder;
}

function faultsOf(files: Readonly<Record<string, string | Uint8Array>>): readonly string[] {
  const loaded = loadPackFolder(pack(files), dictionary);
  if (loaded.ok) return [];
  return loaded.faults.map(
    ({ file, line, column, sentence }) =>
      `${path.basename(file)} ${String(line)}:${String(column)} ${sentence}`,
  );
}

test('a good pack loads and proves itself', () => {
  const loaded = loadPackFolder(pack({ 'pack.yaml': manifest, 'heat.yaml': goodRule }), dictionary);
  expect(loaded).toMatchObject({ ok: true, pack: { name: 'mine', rules: [{ id: 'a-rule' }] } });
  if (loaded.ok) expect(checkCases(loaded.pack)).toEqual([]);
});

describe('a pack that cannot be right is refused with the place of each fault', () => {
  const whenLine = 10;
  test.each<readonly [string, readonly [string, string], string]>([
    [
      'unknown fact',
      ['operation.do: heat\n', 'operation.doo: heat\n'],
      `heat.yaml ${String(whenLine)}:7 There is no fact \`operation.doo\`. Nearest known: \`operation.do\`.`,
    ],
    [
      'unknown word',
      ['operation.do: heat\n', 'operation.do: heatt\n'],
      `heat.yaml ${String(whenLine)}:21 \`heatt\` is not a word of this fact. Nearest known: \`heat\`.`,
    ],
    [
      'a fact of another sheet',
      ['operation.do: heat\n', 'joint.arc: true\n'],
      `heat.yaml ${String(whenLine)}:7 A rule that judges operation sheets cannot see \`joint.arc\`.`,
    ],
    [
      'a range on a word',
      ['operation.do: heat\n', 'operation.do: { above: 3 }\n'],
      `heat.yaml ${String(whenLine)}:21 A range is for counts and quantities; this fact has none.`,
    ],
    [
      'a crossed range',
      ['{ above: 650 °C }', '{ above: 650 °C, below: 600 °C }'],
      'heat.yaml 11:30 No value can lie in this range: its ends cross.',
    ],
    [
      'an empty range',
      ['{ above: 650 °C }', '{ above: 650 °C, max: 650 °C }'],
      'heat.yaml 11:30 No value can lie in this range: its ends cross.',
    ],
    ['a unit of another kind', ['{ above: 650 °C }', '{ above: 650 mm }'], 'heat.yaml 11:39'],
    ['a bare number', ['{ above: 650 °C }', '{ above: 650 }'], 'heat.yaml 11:39'],
    [
      'a word for yes or no',
      ['operation.do: heat\n', 'operation.hot: hot\n'],
      `heat.yaml ${String(whenLine)}:22 This fact is true or false, not \`hot\`.`,
    ],
    [
      'unknown kind of sheet',
      ['judges: operation', 'judges: operatoin'],
      'heat.yaml 6:13 `operatoin` is not a kind of fact sheet. Nearest known: `operation`.',
    ],
    [
      'unknown key',
      ['    why: It softens.', '    wyh: It softens.'],
      'heat.yaml 14:5 `wyh` is not a key that a pack has here. Nearest known: `why`.',
    ],
    [
      'unknown severity',
      ['severity: stop', 'severity: error'],
      'heat.yaml 7:15 This is not one of the words known here: stop, hold, note.',
    ],
    [
      'cases missing',
      [
        '    cases:\n      finds: [{ operation.do: heat, operation.temperature: 651 °C }]\n      passes: [{ operation.do: heat, operation.temperature: 650 °C }]\n',
        '',
      ],
      '`cases` is missing here.',
    ],
    [
      'a message that names no fact',
      ['{part.name} at', '{part.nmae} at'],
      'There is no fact `part.nmae`. Nearest known: `part.name`.',
    ],
    ['a bracket left open', ["'{part.name} at", "'{part.name} [at"], 'is not closed'],
    [
      'an end before the beginning',
      ['since: 1.0.0', 'since: 1.1.0\n    until: 1.1.0'],
      'heat.yaml 6:12 The rule ends with 1.1.0, which does not come after 1.1.0.',
    ],
    [
      'unless that asks what when asks',
      [
        "    message: '{part",
        "    unless: { operation.temperature: { above: 650 °C }, operation.do: heat }\n    message: '{part",
      ],
      'heat.yaml 12:5 `unless` asks the same as `when`: the rule could never find anything.',
    ],
  ])('%s', (_name, [from, to], expected) => {
    expect(goodRule).toContain(from);
    const faults = faultsOf({ 'pack.yaml': manifest, 'heat.yaml': goodRule.replace(from, to) });
    expect(faults.join('\n')).toContain(expected);
  });

  test('every fault at once', () => {
    const bad = goodRule
      .replace('operation.do: heat\n', 'operation.doo: heat\n')
      .replace('severity: stop', 'severity: stop')
      .replace('650 °C }\n    message', '650 }\n    message');
    expect(
      faultsOf({ 'pack.yaml': manifest.replace('facts: 1', 'facts: 9'), 'heat.yaml': bad }),
    ).toHaveLength(3);
  });

  test.each<readonly [string, Readonly<Record<string, string | Uint8Array>>, string]>([
    ['no pack.yaml', { 'heat.yaml': goodRule }, 'pack.yaml 1:1 A pack needs a pack.yaml'],
    [
      'unknown format',
      { 'pack.yaml': manifest.replace('format: 1', 'format: 2') },
      'pack.yaml 2:9 This planish reads packs of format 1.',
    ],
    [
      'another fact schema',
      { 'pack.yaml': manifest.replace('facts: 1', 'facts: 2') },
      'pack.yaml 3:8 The pack was written for fact schema 2',
    ],
    [
      'a version that is none',
      { 'pack.yaml': manifest.replace('1.0.0', 'spring') },
      'pack.yaml 4:10 A version is three numbers',
    ],
    [
      'a file of another pack',
      { 'pack.yaml': manifest, 'heat.yaml': goodRule.replace('pack: mine', 'pack: yours') },
      'belongs to pack `yours`',
    ],
    [
      'one id in two files',
      { 'pack.yaml': manifest, 'a.yaml': goodRule, 'b.yaml': goodRule },
      'b.yaml 3:9 The id `a-rule` is taken by a rule in a.yaml.',
    ],
    ['not YAML', { 'pack.yaml': manifest, 'a.yaml': 'rules: [\n' }, 'a.yaml'],
    ['not text', { 'pack.yaml': manifest, 'a.yaml': new Uint8Array([0, 1, 2, 255]) }, 'a.yaml'],
  ])('%s', (_name, files, expected) => {
    expect(faultsOf(files).join('\n')).toContain(expected);
  });

  test.each([
    [
      'limit for an unknown thing',
      'limits:\n  - { victim: airbagg, hold_above: 80 °C, source: { practice: common } }\n',
      '`airbagg` is nothing that heat is judged at. Nearest known: `airbag`.',
    ],
    [
      'limits whose ends cross',
      'limits:\n  - { victim: airbag, hold_above: 90 °C, stop_above: 80 °C, source: { practice: common } }\n',
      'The hold begins above the stop',
    ],
    [
      'statement about an unknown part',
      'provisions:\n  - { part: door rign, years: 2021, document: D, revision: A, shall: [replace whole] }\n',
      '`door rign` is not a kind of part. Nearest known: `door ring`.',
    ],
    [
      'statement with an unknown operation',
      'provisions:\n  - { part: door ring, years: 2021, document: D, revision: A, may: [splice at B] }\n',
      '`splice at B` is not an operation',
    ],
    [
      'crossed years',
      'provisions:\n  - { part: door ring, years: 2022-2020, document: D, revision: A, may: [section at B] }\n',
      'pack.yaml',
    ],
    [
      'statement that says nothing',
      'provisions:\n  - { part: door ring, years: 2021, document: D, revision: A }\n',
      'A statement says what',
    ],
    [
      'statement without revision or day',
      'provisions:\n  - { part: door ring, years: 2021, document: D, may: [section at B] }\n',
      'needs the revision',
    ],
  ])('%s', (name, yaml, expected) => {
    const faults = faultsOf({ 'pack.yaml': manifest, 'more.yaml': `pack: mine\n${yaml}` });
    expect(faults).not.toEqual([]);
    if (name !== 'crossed years') expect(faults.join('\n')).toContain(expected);
  });

  test('a link is passed over', () => {
    const folder = pack({ 'pack.yaml': manifest });
    symlinkSync('/etc/hostname', path.join(folder, 'link.yaml'));
    symlinkSync(folder, path.join(folder, 'loop.yaml'));
    expect(loadPackFolder(folder, dictionary).ok).toBe(true);
  });

  test('a rule whose near miss is found does not prove itself', () => {
    const loaded = loadPackFolder(
      pack({ 'pack.yaml': manifest, 'heat.yaml': goodRule.replace('650 °C }]', '700 °C }]') }),
      dictionary,
    );
    expect(loaded.ok && checkCases(loaded.pack).map(({ sentence }) => sentence)).toEqual([
      'The rule `a-rule` does not prove itself: case 1 of `passes` comes out as found.',
    ]);
  });
});

describe('digest', () => {
  test('of the canonical form, as sha256sum makes it', () => {
    const files = [
      { name: 'pack.yaml', text: 'pack: mine\n' },
      { name: 'heat.yaml', text: 'ä: 1\n' },
    ];
    // Sorted by name; name, LF, bytes of the text, LF, text.
    const canonical = 'heat.yaml\n6\nä: 1\npack.yaml\n11\npack: mine\n';
    const sum = spawnSync('sha256sum', { input: canonical, encoding: 'utf8' }).stdout.slice(0, 64);
    expect(packDigest(files)).toBe(`sha256:${sum}`);
  });

  test('line ends, byte order mark and the order of files do not change it; a comment does', () => {
    const files = [
      { name: 'b.yaml', text: 'a: 1\nb: 2\n' },
      { name: 'a.yaml', text: 'c: 3\n' },
    ];
    const same = [
      { name: 'a.yaml', text: '\uFEFFc: 3\r\n' },
      { name: 'b.yaml', text: 'a: 1\r\nb: 2\r\n' },
    ];
    expect(packDigest(same)).toBe(packDigest(files));
    expect(packDigest([{ name: 'a.yaml', text: 'c: 3 # x\n' }])).not.toBe(
      packDigest([{ name: 'a.yaml', text: 'c: 3\n' }]),
    );
  });
});
