import { describe, expect, test } from 'vitest';
import { judgeText, ruleIds } from './judge-text.ts';
import { changed } from './one-change.ts';
import type { Change } from './one-change.ts';

// A hinge, a sensor, a condenser, a bumper bracket are bolted, other brackets are welded; the kind does not tell. Common practice of the
// trade, from memory.

const hinge = `format: 1
stage: start
job: { number: Z-1, opened: 2026-10-12, written_by: { name: P. Dunlin, role: estimator }, as_received: { mileage: 88120 km, warning_lamps: none, works: everything } }
vehicle: { maker: Brannoch, model: Sedge, body: hatchback, model_year: 2019, model_year_from: plate, vin: 0BRAA1ZZZKX004411, read_from: plate in the windscreen, confirmed_at: stamp at the right strut tower, market: european-union, drive: combustion, earlier_repairs: none known }
references:
  - { id: r, kind: maker procedure, document: BR-1, revision: B, published: 2019-03-01, covers: { maker: Brannoch, model: Sedge, bodies: [all], years: 2018-2020 }, looked_up: 2026-10-13, for_job: Z-1 }
damage: { impact: parking, direct: [c], indirect: { looked_at: [gaps, rails], found: none found } }
verify: { scan_before: { planned: true }, scan_after: { planned: true }, calibrations: [{ sensor: none fitted }] }
parts:
  - { id: c, name: "Bonnet hinge left", kind: other, structural: false, cosmetic_by: { reference: r, at: p. 1 }, condition: new, damage: { kind: bend, found_by: seen }, operations: [{ do: replace, extent: whole, cite: { reference: r, at: p. 2 }, fasteners: { one_time: renewed, cite: { reference: r, at: p. 2 } }, planned: true }] }
`;
const fasteners = ', fasteners: { one_time: renewed, cite: { reference: r, at: p. 2 } }';
const bracket: Change = ['kind: other', 'kind: bracket'];

const neighbour: Change = [
  'parts:\n',
  'parts:\n  - { id: d, name: Left fender, kind: fender, class: mild, thickness: 0.8 mm, damage: { kind: none, found_by: seen } }\n',
];

const judged = (changes: readonly Change[]): readonly string[] => ruleIds(judgeText(changed(hinge, changes)));
const severities = (changes: readonly Change[]): readonly string[] =>
  judgeText(changed(hinge, changes))
    .findings.filter(({ finding }) => finding.rule === 'welding-with-battery-connected')
    .map(({ finding }) => finding.severity);

describe('what is bolted is not welded', () => {
  test.each<readonly [string, readonly Change[]]>([
    ['a hinge with bolts that are renewed', []],
    ['a bracket with bolts that are renewed', [bracket]],
    [
      'a bolt as the joint',
      [
        [fasteners, ', joints: [{ to: d, method: bolt }]'],
        ['kind: other', 'kind: other, class: mild, thickness: 1.2 mm'],
        neighbour,
      ],
    ],
    [
      'a composite',
      [
        [fasteners, ''],
        ['kind: other', 'kind: other, class: composite'],
      ],
    ],
  ])('%s stays cleared', (_name, changes) => {
    expect(judged(changes)).toEqual([]);
  });
});

describe('what may be welded is not cleared', () => {
  test.each<readonly [string, readonly Change[]]>([
    ['nothing said', [[fasteners, '']]],
    ['a bracket, nothing said', [[fasteners, ''], bracket]],
    ['no bolts of one use, which is true of a weld too', [[fasteners, ', fasteners: { one_time: none }']]],
  ])('one hold asks: %s', (_name, changes) => {
    expect(judged(changes).filter((rule) => rule !== 'bolts-not-stated')).toEqual([
      'welding-with-battery-connected',
    ]);
    expect(severities(changes)).toEqual(['hold']);
  });

  test.each<readonly [string, readonly Change[]]>([
    ['it carries crash load', [['structural: false', 'structural: true']]],
    ['its name says a weld', [['Bonnet hinge left', 'Welded bonnet hinge left']]],
    ['it is welded back', [[fasteners, ', joints: [{ method: plug weld }]']]],
    ['another kind', [['kind: other', 'kind: reinforcement']]],
  ])('the stop stays: %s', (_name, changes) => {
    expect(severities(changes)).toEqual(['stop']);
  });

  test('only its maker calls a bracket cosmetic, bolted or not; of a unit without a kind that is bolted on whole nobody asks it', () => {
    const own: Change = ['cosmetic_by: { reference: r, at: p. 1 }, ', ''];
    expect(judged([own, bracket])).toEqual(['cosmetic-by-own-word']);
    expect(judged([own])).toEqual([]);
    const cut: Change = ['extent: whole', 'extent: part, at: the foot'];
    expect(judged([own, cut])).toContain('cosmetic-by-own-word');
  });
});
