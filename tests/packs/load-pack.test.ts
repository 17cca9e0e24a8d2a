import { mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, describe, expect, test } from 'vitest';
import { dictionary } from '../../src/cli/dictionary.ts';
import { checkCases } from '../../src/judge/check-cases.ts';
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
      'pack.yaml 2:9 This planish reads packs of format 1; this one has format 2.',
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

  const forVehicle = `${manifest}vehicle: { maker: Corvane, models: [Tarn] }\n`;

  test.each([
    [
      'limit for an unknown thing',
      'limits:\n  - { victim: airbagg, hold_above: 80 °C, source: { practice: common } }\n',
      '3:15 `airbagg` is nothing that heat is judged at. Nearest known: `airbag`.',
    ],
    [
      'limits whose ends cross',
      'limits:\n  - { victim: airbag, hold_above: 90 °C, stop_above: 80 °C, source: { practice: common } }\n',
      '3:35 The hold begins above the stop: the two ends cross.',
    ],
    [
      'limit that limits nothing',
      'limits:\n  - { victim: airbag, source: { practice: common } }\n',
      '3:5 A limit says `hold_above`, `stop_above` or `time_above`.',
    ],
    [
      'two limits for one thing',
      'limits:\n  - { victim: airbag, hold_above: 80 °C, source: { practice: common } }\n  - { victim: airbag, hold_above: 90 °C, source: { practice: common } }\n',
      '4:15 `airbag` has a limit in this pack already.',
    ],
    [
      'source that names none',
      'limits:\n  - { victim: airbag, hold_above: 80 °C, source: { page: p. 3 } }\n',
      '3:42 A source names a `standard`, a `document`, or `practice: common`.',
    ],
    [
      'statement about an unknown part',
      'provisions:\n  - { part: door rign, years: 2021, document: D, revision: A, shall: [replace whole] }\n',
      '3:13 `door rign` is not a kind of part. Nearest known: `door ring`.',
    ],
    [
      'statement for a side that no part has',
      'provisions:\n  - { part: door ring, sides: [lft], years: 2021, document: D, revision: A, shall_not: [section] }\n',
      '3:32 `lft` is not a side: left, right, centre; left out, the statement holds for all. Nearest known: `left`.',
    ],
    [
      'statement with an unknown operation',
      'provisions:\n  - { part: door ring, years: 2021, document: D, revision: A, may: [sectoin at B] }\n',
      '3:69 `sectoin at B` is not an operation, such as `replace whole` or `section at B`. Nearest known: `section`.',
    ],
    [
      'crossed years',
      'provisions:\n  - { part: door ring, years: 2022-2020, document: D, revision: A, may: [section at B] }\n',
      '3:31 "2022-2020" begins after it ends: write 2020-2022 if that is meant.',
    ],
    [
      'statement that says nothing',
      'provisions:\n  - { part: door ring, years: 2021, document: D, revision: A }\n',
      '3:5 A statement says what `shall`, `shall_not` or `may` be done.',
    ],
    [
      'statement without revision or day',
      'provisions:\n  - { part: door ring, years: 2021, document: D, may: [section at B] }\n',
      '3:5 A statement needs the revision of its document, or its day of publication.',
    ],
  ])('%s', (_name, yaml, expected) => {
    expect(faultsOf({ 'pack.yaml': forVehicle, 'more.yaml': `pack: mine\n${yaml}` })).toEqual([
      `more.yaml ${expected}`,
    ]);
  });

  test('a good limit and a good statement load beside them', () => {
    const more =
      'pack: mine\nlimits:\n  - { victim: airbag, hold_above: 80 °C, stop_above: 80 °C, source: { practice: common } }\nprovisions:\n  - { part: door ring, sides: [left], years: 2020-2022, document: D, revision: A, may: [section at B] }\n';
    const loaded = loadPackFolder(pack({ 'pack.yaml': forVehicle, 'more.yaml': more }), dictionary);
    expect(loaded).toMatchObject({
      ok: true,
      pack: {
        limits: [{ victim: 'airbag', holdAboveCelsius: 80, stopAboveCelsius: 80 }],
        provisions: [
          {
            part: 'door ring',
            sides: ['left'],
            years: { from: 2020, to: 2022 },
            may: [{ do: 'section', at: 'B' }],
          },
        ],
      },
    });
  });

  // What is passed over in silence is a rule that nobody misses: each of these would let a bad plan through.
  test.each<readonly [string, Readonly<Record<string, string>>, readonly string[]]>([
    [
      'statements of a pack for no vehicle',
      {
        'pack.yaml': manifest,
        'a.yaml':
          'pack: mine\nprovisions:\n  - { part: door ring, years: 2021, document: D, revision: A, shall_not: [section] }\n',
      },
      [
        'a.yaml 2:1 Statements of a maker need the `vehicle` in pack.yaml; without it they would bind no plan.',
      ],
    ],
    [
      'a file with another ending',
      { 'pack.yaml': manifest, 'heat.yml': goodRule },
      ['heat.yml 1:1 Files of a pack end in .yaml; this one would not be read.'],
    ],
    [
      'a second pack in the folder',
      { 'pack.yaml': manifest, 'z.yaml': manifest },
      ['z.yaml 2:1 Only pack.yaml says `format`; a folder holds one pack.'],
    ],
    [
      'a rule of a version to come',
      { 'pack.yaml': manifest, 'heat.yaml': goodRule.replace('since: 1.0.0', 'since: 11.0.0') },
      ['heat.yaml 5:12 The rule begins with 11.0.0 and the pack is 1.0.0: it would not judge.'],
    ],
    [
      'a rule replaced and still in force',
      {
        'pack.yaml': manifest,
        'heat.yaml': goodRule.replace('since: 1.0.0', 'since: 1.0.0\n    replaced_by: b'),
      },
      ['heat.yaml 6:5 A rule that another one replaces has an `until`.'],
    ],
    [
      'a rule replaced by one that is not there',
      {
        'pack.yaml': manifest,
        'heat.yaml': goodRule.replace(
          'since: 1.0.0',
          'since: 1.0.0\n    until: 2.0.0\n    replaced_by: b-rule',
        ),
      },
      ['heat.yaml 7:18 The pack has no rule `b-rule`. Nearest known: `a-rule`.'],
    ],
    [
      'rules in pack.yaml',
      { 'pack.yaml': goodRule },
      [
        'pack.yaml 1:1 `format` is missing here: pack.yaml says what the pack is, and topic files hold its rules.',
      ],
    ],
    [
      'a name that no plan could pin',
      { 'pack.yaml': manifest.replace('mine', 'mine@2') },
      ['pack.yaml 1:7 The name of a pack has lower-case letters, digits and single hyphens between them.'],
    ],
    [
      'a fact in a text that is printed as it stands',
      {
        'pack.yaml': manifest,
        'heat.yaml': goodRule.replace('why: It softens.', "why: '{part.name} softens.'"),
      },
      ['heat.yaml 14:10 `why` is printed as it stands; facts are filled into `message` and `instead` only.'],
    ],
    [
      'a known topic with two letters swapped',
      { 'pack.yaml': manifest, 'heat.yaml': goodRule.replace('severity: stop', 'severity: sotp') },
      ['heat.yaml 7:15 This is not one of the words known here: stop, hold, note. Nearest known: `stop`.'],
    ],
    [
      'an empty when',
      {
        'pack.yaml': manifest,
        'heat.yaml': goodRule.replace(
          'when:\n      operation.do: heat\n      operation.temperature: { above: 650 °C }',
          'when: {}',
        ),
      },
      ['heat.yaml 9:11 Something is missing here: too little is written.'],
    ],
    [
      'an exception of one line that is the rule, its words in another order',
      {
        'pack.yaml': manifest,
        'heat.yaml': goodRule.replace(
          'operation.do: heat\n      operation.temperature: { above: 650 °C }',
          'operation.do: [heat, weld]\n    unless: { operation.do: [weld, heat] }',
        ),
      },
      ['heat.yaml 11:5 `unless` asks the same as `when`: the rule could never find anything.'],
    ],
  ])('%s', (_name, files, expected) => {
    expect(faultsOf(files)).toEqual(expected);
  });

  test('a format to come is told in one sentence, whatever else stands there', () => {
    const files = {
      'pack.yaml': `${manifest.replace('format: 1', 'format: 2')}novel: 3\n`,
      'heat.yaml': goodRule.replace('operation.do', 'operation.novel'),
    };
    expect(faultsOf(files)).toEqual([
      'pack.yaml 2:9 This planish reads packs of format 1; this one has format 2.',
    ]);
  });

  test('a slip in the form of one rule does not hide what is wrong in the next, nor a bad file the others', () => {
    const second = goodRule
      .replace('pack: mine\nrules:\n', '')
      .replace('a-rule', 'b-rule')
      .replace('operation.do: heat\n', 'operation.doo: heat\n');
    const files = {
      'pack.yaml': manifest,
      'a.yaml': goodRule.replace('severity: stop', 'severty: stop') + second,
      'b.yaml': 'rules: [\n',
      'c.yaml': 'pack: mine\0\n',
    };
    expect(faultsOf(files).map((fault) => fault.split(' ', 2).join(' '))).toEqual([
      'c.yaml 1:11',
      'a.yaml 3:5',
      'a.yaml 7:5',
      'a.yaml 26:7',
      'b.yaml 1:8',
    ]);
  });

  test('a file of nothing but faults is told in time', () => {
    const scalars = `pack: mine\nrules: [${'1,'.repeat(200_000)}1]\n`;
    expect(faultsOf({ 'pack.yaml': manifest, 'a.yaml': scalars })).toEqual([
      'a.yaml 2:8 More stands here than a pack ever takes: at most 1000 entries.',
    ]);
    const keys = Array.from({ length: 900 }, (_, index) => `k${String(index)}: 1\n`).join('');
    const faults = faultsOf({ 'pack.yaml': manifest, 'a.yaml': `pack: mine\n${keys}` });
    expect(faults).toHaveLength(101);
    expect(faults.at(-1)).toBe('a.yaml 102:1 More faults follow in this file.');
  }, 10_000);

  test.each([
    [
      'no folder',
      path.join(tmpdir(), 'planish-no-such-folder'),
      'There is no such folder, or it cannot be read.',
    ],
  ])('%s', (_name, folder, expected) => {
    const loaded = loadPackFolder(folder, dictionary);
    expect(loaded.ok ? [] : loaded.faults.map(({ sentence }) => sentence)).toEqual([expected]);
  });

  test('a pack.yaml that is a link is told', () => {
    const folder = pack({ 'heat.yaml': goodRule });
    const elsewhere = pack({ 'pack.yaml': manifest });
    symlinkSync(path.join(elsewhere, 'pack.yaml'), path.join(folder, 'pack.yaml'));
    const loaded = loadPackFolder(folder, dictionary);
    expect(loaded.ok ? [] : loaded.faults.map(({ sentence }) => sentence)).toEqual([
      'This is a link. The files of a pack lie in its folder, so that its digest speaks for them.',
    ]);
  });

  test('a pack that is too large is refused before it is read', () => {
    const comment = `# ${'x'.repeat(3 * 1024 * 1024)}\n`;
    const files = { 'a.yaml': comment, 'b.yaml': comment, 'c.yaml': comment, 'pack.yaml': manifest };
    expect(faultsOf(files)).toEqual(['c.yaml 1:1 With this file the pack is larger than 8 MiB.']);
  });

  test('links are told one by one, those that lead round as well', () => {
    const folder = pack({ 'pack.yaml': manifest });
    symlinkSync('/etc/hostname', path.join(folder, 'link.yaml'));
    symlinkSync(folder, path.join(folder, 'loop.yaml'));
    symlinkSync('ring.yaml', path.join(folder, 'ring.yaml'));
    const loaded = loadPackFolder(folder, dictionary);
    const told = loaded.ok ? [] : loaded.faults.map(({ file, sentence }) => [path.basename(file), sentence]);
    const sentence =
      'This is a link. The files of a pack lie in its folder, so that its digest speaks for them.';
    expect(told).toEqual(['link.yaml', 'loop.yaml', 'ring.yaml'].map((name) => [name, sentence]));
  });

  test.each([
    [
      'a near miss that is found',
      '650 °C }]',
      '700 °C }]',
      'case 1 of `passes` comes out as found.',
      '18:16',
    ],
    ['a find that passes', '651 °C }]', '600 °C }]', 'case 1 of `finds` comes out as passed.', '17:15'],
    [
      'a near miss that cannot be told',
      'passes: [{ operation.do: heat, operation.temperature: 650 °C }]',
      'passes: [{ operation.do: heat }]',
      'case 1 of `passes` comes out as unknown (operation.temperature).',
      '18:16',
    ],
    [
      'a question that is answered',
      '      passes:',
      '      asks: [{ operation.do: heat }, { operation.do: section }]\n      passes:',
      'case 2 of `asks` comes out as passed.',
      '18:38',
    ],
  ])('%s does not prove its rule', (_name, from, to, expected, at) => {
    expect(goodRule).toContain(from);
    const folder = pack({ 'pack.yaml': manifest, 'heat.yaml': goodRule.replace(from, to) });
    const loaded = loadPackFolder(folder, dictionary);
    const failed = loaded.ok ? checkCases(loaded.pack, loaded.placeOfCase) : [];
    expect(failed.map(({ sentence }) => sentence)).toEqual([
      `The rule \`a-rule\` does not prove itself: ${expected}`,
    ]);
    expect(failed.map(({ place }) => `${String(place?.line)}:${String(place?.column)}`)).toEqual([at]);
    expect(failed[0]?.place?.file).toBe(path.join(folder, 'heat.yaml'));
  });
});

test.each(['rules/general', 'examples/rules/corvane-tarn'])('%s loads and proves itself', (folder) => {
  const loaded = loadPackFolder(folder, dictionary);
  expect(loaded.ok ? [] : loaded.faults).toEqual([]);
  expect(loaded.ok && checkCases(loaded.pack, loaded.placeOfCase)).toEqual([]);
  expect(loaded.ok && loaded.pack.rules.length + loaded.pack.provisions.length).toBeGreaterThan(0);
});
