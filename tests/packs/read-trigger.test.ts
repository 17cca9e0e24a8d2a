import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { dictionary } from '../../src/cli/dictionary.ts';
import { builtInPacks } from '../../src/generated/built-in-packs.ts';
import { loadPackFolder } from '../../src/packs/load-pack.ts';
import type { PackLoading } from '../../src/packs/load-pack.ts';
import { resolvePacks } from '../../src/packs/layers/resolve-packs.ts';
import { ruleIds, judgeText } from '../judge-text.ts';
import { wholeJob } from '../faults-of-the-whole-job.ts';
import { changed } from '../one-change.ts';

function withPack<T>(triggers: string, use: (folder: string) => T, manifest = ''): T {
  const folder = mkdtempSync(path.join(tmpdir(), 'planish-trigger-'));
  try {
    writeFileSync(
      path.join(folder, 'pack.yaml'),
      `pack: mine\nformat: 1\nfacts: 1\nversion: 1.1.0\nreleased: false\ntitle: Mine\n${manifest}`,
    );
    writeFileSync(path.join(folder, 'checks.yaml'), `pack: mine\ntriggers:\n${triggers}`);
    return use(folder);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function sentencesOf(loaded: PackLoading): readonly string[] {
  if (loaded.ok) return [];
  return loaded.faults.map(({ line, column, sentence }) => `${String(line)}:${String(column)} ${sentence}`);
}

const source = 'source: { practice: common }';

test.each([
  [
    'of no kind of part',
    `  - { asks_for: road test, kinds: [subfrme], ${source} }\n`,
    '3:36 `subfrme` is no kind of part. Nearest known: `subframe`.',
  ],
  [
    'for what no part holds',
    `  - { asks_for: road test, holds: [sensr], ${source} }\n`,
    '3:36 `sensr` is nothing that a part holds. Nearest known: `sensor`.',
  ],
  [
    'of nothing at all',
    `  - { asks_for: road test, ${source} }\n`,
    '3:5 A trigger says `kinds` or `holds` of parts, or the `work`, and not both.',
  ],
  [
    'of parts and of work',
    `  - { asks_for: road test, kinds: [subframe], work: [wheels aligned], ${source} }\n`,
    '3:5 A trigger says `kinds` or `holds` of parts, or the `work`, and not both.',
  ],
  [
    'of work that befell a part',
    `  - { asks_for: road test, work: [wheels aligned], was: [hit], ${source} }\n`,
    '3:52 `was` goes with `kinds` or `holds`.',
  ],
  [
    'with a sensor for a drive on the road',
    `  - { asks_for: road test, sensor: [radar], kinds: [subframe], ${source} }\n`,
    '3:28 `sensor` goes with `asks_for: sensor calibration`.',
  ],
  [
    'that asks for nothing known',
    `  - { asks_for: rode test, kinds: [subframe], ${source} }\n`,
    '3:17 This is not one of the words known here: scan after the repair, wheel alignment, sensor calibration, restraint completion, road test, hold point, structural release. Nearest known: `road test`.',
  ],
  [
    'for a hold point, and not for which',
    `  - { asks_for: hold point, work: [structure joined], ${source} }\n`,
    '3:5 `point` goes with `asks_for: hold point`, and that with a `point`.',
  ],
  [
    'for a road test, and yet for a point',
    `  - { asks_for: road test, point: flange before closing, work: [structure joined], ${source} }\n`,
    '3:5 `point` goes with `asks_for: hold point`, and that with a `point`.',
  ],
  [
    'that stands there already, its words in another order',
    `  - { asks_for: road test, kinds: [subframe, wheel], ${source} }\n  - { asks_for: road test, kinds: [wheel, subframe], ${source} }\n`,
    '4:5 A trigger of this pack asks for the same check for the same reason already.',
  ],
  [
    'that ends before it begins',
    `  - { asks_for: road test, kinds: [subframe], since: 1.1.0, until: 1.0.0, ${source} }\n`,
    '3:68 The trigger ends with 1.0.0, which does not come after 1.1.0.',
  ],
])('a trigger %s is refused at its place', (_name, yaml, expected) => {
  withPack(yaml, (folder) => {
    expect(sentencesOf(loadPackFolder(folder, dictionary))).toEqual([expected]);
  });
});

test.each([
  [
    'for another sensor',
    'asks_for: sensor calibration, sensor: [radar], kinds: [wheel]',
    'asks_for: sensor calibration, sensor: [camera], kinds: [wheel]',
  ],
  [
    'for what else befell',
    'asks_for: road test, kinds: [wheel], was: [hit]',
    'asks_for: road test, kinds: [wheel], was: [taken off]',
  ],
  [
    'in the version after',
    'asks_for: road test, kinds: [wheel], until: 1.1.0',
    'asks_for: road test, kinds: [wheel], since: 1.1.0',
  ],
])('two triggers are no repetition: %s', (_name, one, other) => {
  withPack(`  - { ${one}, ${source} }\n  - { ${other}, ${source} }\n`, (folder) => {
    expect(sentencesOf(loadPackFolder(folder, dictionary))).toEqual([]);
  });
});

describe('the triggers of a shop', () => {
  const night = `  - { asks_for: sensor calibration, sensor: [night vision], kinds: [bumper cover], was: [taken off], ${source} }\n`;

  test('are added to those of the packs under it', () => {
    withPack(night, (folder) => {
      const loaded = loadPackFolder(folder, dictionary);
      if (!loaded.ok) throw new Error(sentencesOf(loaded).join('\n'));
      const alone = resolvePacks(builtInPacks(), undefined);
      const both = resolvePacks([...builtInPacks(), loaded.pack], undefined);
      if (!alone.ok || !both.ok) throw new Error('the packs do not resolve');
      expect(both.packs.triggers).toHaveLength(alone.packs.triggers.length + 1);
    });
  });

  test('hold a plan that says nothing of the sensor, and let one go that does', () => {
    const answered = changed(wholeJob, [
      [
        '    - { sensor: front radar,',
        '    - { sensor: night vision, kind: not fitted }\n    - { sensor: front radar,',
      ],
    ]);
    withPack(night, (folder) => {
      expect(ruleIds(judgeText(unpinned(wholeJob), folder))).toContain('calibration-missing');
      expect(ruleIds(judgeText(unpinned(answered), folder))).toEqual([]);
    });
  });

  test('ask for hold points of the shop’s own, which a plan answers by their name', () => {
    const doors = `  - { asks_for: hold point, point: Doors hung before paint, work: [structural work], ${source} }\n`;
    const answered = changed(wholeJob, [
      [
        'hold_points:\n',
        'hold_points:\n  - { point: other, name: doors hung before paint, done: 2026-10-06, by: { name: B. Ohm } }\n',
      ],
    ]);
    withPack(doors, (folder) => {
      expect(ruleIds(judgeText(unpinned(wholeJob), folder))).toContain('hold-point-missing');
      expect(ruleIds(judgeText(unpinned(answered), folder))).toEqual([]);
    });
  });

  test('are in the digest of the version that holds them, without their history', () => {
    const later = night.replace(' }\n', ' }\n').replace(`, ${source}`, `, since: 1.1.0, ${source}`);
    withPack(later, (folder) => {
      const loaded = loadPackFolder(folder, dictionary);
      if (!loaded.ok) throw new Error(sentencesOf(loaded).join('\n'));
      expect(loaded.canonicalForm('1.0.0', 1)).not.toContain('triggers');
      expect(loaded.canonicalForm('1.1.0', 1)).toContain(
        '"triggers":[{"asks_for":"sensor calibration","kinds":["bumper cover"],"sensor":["night vision"],"source":{"practice":"common"},"was":["taken off"]}]',
      );
    });
  });
});

/** The general pack at any version, and every other pack that is here. */
function unpinned(text: string): string {
  return text.replace(/^rules:.*\n/mu, '');
}

test('each version of the general pack has its own triggers', () => {
  const sensors = (pin: string): readonly string[] => {
    const resolved = resolvePacks(builtInPacks(), [pin]);
    if (!resolved.ok) throw new Error(resolved.sentence);
    return resolved.packs.triggers
      .filter(({ asksFor }) => asksFor === 'sensor calibration')
      .map(({ sensor }) => sensor[0] ?? 'any');
  };
  expect(sensors('general@2.0.0')).toEqual(['any', 'any']);
  expect(sensors('general@3.0.0')).toContain('radar');
});
