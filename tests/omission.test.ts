import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { isMap, isSeq, parseDocument } from 'yaml';
import type { Document } from 'yaml';
import { changed } from './one-change.ts';
import { judgeText, ruleIds } from './judge-text.ts';

// Silence is never the better answer: whatever is left out of a plan with heat, one that was not cleared does not become so. A stop may
// become a hold, since what is not known is asked.

const read = (name: string): string => readFileSync(`examples/plans/${name}.yaml`, 'utf8');
const rail = read('rail-heated-near-pillar');
const ring = read('ring-replaced-whole');

const near = '{ part: a-pillar-r, distance: 10 mm, path: joined }';
const at = (distance: string, more = ''): readonly [string, string] => [
  near,
  near.replace('10 mm', distance).replace(' }', `${more} }`),
];
const beside = (entry: string): readonly [string, string] => [
  near,
  `${near.replace('10 mm', '80 mm')}\n          - ${entry}`,
];
/** The ring stays on the vehicle, sound, 60 mm from the seam in the skin. */
const ringStays = [
  ['direct: [side-panel-l, ring-l]', 'direct: [side-panel-l]'],
  ['treatment: stays, distance: 60 mm', 'distance: 60 mm'],
  [
    ring.slice(
      ring.indexOf('    damage: { kind: kink, found_by: outer panel cut back'),
      ring.indexOf('  - id: sill-inner-l'),
    ),
    '    damage: { kind: none, found_by: seen }\n\n',
  ],
] as const;

/** Each is stopped or held by its heat, with the changes that make it so. */
const plans: readonly (readonly [string, string])[] = [
  ['the rail of the examples', rail],
  ['a pillar near its limit', changed(rail, [at('36 mm')])],
  ['heated twice', changed(rail, [at('38 mm'), ['times: 1', 'times: 2']])],
  ['a short flange', changed(rail, [at('38 mm'), ['free_end: runs on', 'free_end: 43 mm']])],
  [
    'adhesive beside it',
    changed(rail, [beside('{ item: structural adhesive, distance: 60 mm, path: same sheet }')]),
  ],
  [
    'wax before a flame',
    changed(rail, [
      beside('{ item: cavity wax, distance: 150 mm, path: same sheet }'),
      ['source: induction', 'source: torch'],
    ]),
  ],
  [
    'adhesive that is only called renewed',
    changed(rail, [
      beside('{ item: structural adhesive, distance: 5 mm, path: same sheet, treatment: renewed }'),
    ]),
  ],
  ['an aluminium neighbour', changed(rail, [at('52 mm'), ['grade: 22MnB5+AS150', 'grade: EN AW-7075-T6']])],
  ['a neighbour that is cast', changed(rail, [at('60 mm'), ['grade: 22MnB5+AS150', 'grade: EN AC-43500']])],
  [
    'a bake too hot for what is held',
    changed(rail, [
      at('80 mm'),
      ['finish:\n', 'finish:\n  bake: { planned: true, temperature: 110 °C, time: 30 min }\n'],
    ]),
  ],
  [
    'a lamp on adhesive',
    changed(rail, [
      at('80 mm'),
      [
        '        clear_within: 300 mm\n',
        '        clear_within: 300 mm\n      - { do: bake, step: 20, source: infra-red panel, temperature: 95 °C, hold: 40 min, cite: { reference: rail, at: p. 9 }, near: [{ item: structural adhesive, distance: 0 mm, path: same sheet }] }\n',
      ],
    ]),
  ],
  [
    'glass beside a grinder',
    changed(rail, [
      at('80 mm'),
      [
        '        clear_within: 300 mm\n',
        '        clear_within: 300 mm\n      - { do: grind, step: 20, cite: { reference: rail, at: p. 9 }, near: [{ item: glass, distance: 20 mm, path: through air }], clear_within: 300 mm }\n',
      ],
    ]),
  ],
  [
    'a slow seam on thin sheet',
    changed(ring, [
      ...ringStays,
      [
        'voltage: 16 V, current: 60 A, travel_speed: 8 mm/s',
        'voltage: 12 V, current: 70 A, travel_speed: 1.5 mm/s',
      ],
    ]),
  ],
  ['a seam near the ring', changed(ring, [...ringStays, ['distance: 60 mm', 'distance: 30 mm']])],
];

/** Where the plan speaks of heat: the material of parts, their operations, and the bake. */
const materialKeys = new Set(['thickness', 'grade', 'class', 'strength', 'grade_from', 'operations']);

/** The list itself is a statement of what is there, and so is the bake; to leave all of it out is to write another plan. */
const statements = new Set(['near', 'bake', 'operations']);

type Path = readonly (string | number)[];

function pathsOf(document: Document.Parsed): readonly Path[] {
  const found: Path[] = [];
  const walk = (node: unknown, path: Path): void => {
    if (isMap(node)) {
      for (const { key, value } of node.items) {
        const inner = [...path, String(key)];
        if (!statements.has(String(key))) found.push(inner);
        walk(value, inner);
      }
    }
    if (isSeq(node)) node.items.forEach((item, index) => walk(item, [...path, index]));
  };
  const parts: unknown = document.get('parts');
  if (isSeq(parts)) {
    parts.items.forEach((part, index) => {
      if (!isMap(part)) return;
      for (const { key, value } of part.items) {
        const name = String(key);
        if (!materialKeys.has(name)) continue;
        const path = ['parts', index, name];
        if (!statements.has(name)) found.push(path);
        if (name === 'operations') walk(value, path);
      }
    });
  }
  walk(document.getIn(['finish', 'bake']), ['finish', 'bake']);
  return found;
}

function without(text: string, path: Path): string {
  const document = parseDocument(text);
  document.deleteIn(path);
  return document.toString({ lineWidth: 0 });
}

describe('a plan that its heat stops or holds', () => {
  test.each(plans)(
    '%s: no key that is left out clears it',
    (_name, text) => {
      expect(judgeText(text).verdict).not.toBe('cleared');
      const paths = pathsOf(parseDocument(text));
      expect(paths.length).toBeGreaterThan(15);
      const cleared = paths.filter((path) => judgeText(without(text, path)).verdict === 'cleared');
      expect(cleared.map((path) => path.join('.'))).toEqual([]);
    },
    60_000,
  );
});

describe('near misses of these plans stay cleared', () => {
  test.each<readonly [string, string]>([
    ['the pillar 40 mm away, on sheet that runs on', changed(rail, [at('40 mm')])],
    ['heated twice, 60 mm away', changed(rail, [at('60 mm'), ['times: 1', 'times: 2']])],
    ['a short flange, far enough', changed(rail, [at('100 mm'), ['free_end: runs on', 'free_end: 110 mm']])],
    [
      'wax before an inductor',
      changed(rail, [beside('{ item: cavity wax, distance: 150 mm, path: same sheet }')]),
    ],
    [
      'adhesive renewed as a page says',
      changed(rail, [
        beside(
          '{ item: structural adhesive, distance: 5 mm, path: same sheet, treatment: renewed, cite: { reference: rail, at: p. 9 } }',
        ),
      ]),
    ],
    [
      'an aluminium neighbour, 80 mm away',
      changed(rail, [at('80 mm'), ['grade: 22MnB5+AS150', 'grade: EN AW-7075-T6']]),
    ],
    [
      'a bake as refinish is made for',
      changed(rail, [
        at('80 mm'),
        ['finish:\n', 'finish:\n  bake: { planned: true, temperature: 60 °C, time: 40 min }\n'],
      ]),
    ],
    [
      'glass under a blanket beside a grinder',
      changed(rail, [
        at('80 mm'),
        [
          '        clear_within: 300 mm\n',
          '        clear_within: 300 mm\n      - { do: grind, step: 20, cite: { reference: rail, at: p. 9 }, near: [{ item: glass, distance: 20 mm, path: through air, treatment: shielded }], clear_within: 300 mm }\n',
        ],
      ]),
    ],
    ['a seam 60 mm from the ring', changed(ring, ringStays)],
  ])('%s', (_name, text) => {
    expect(ruleIds(judgeText(text))).toEqual([]);
  });
});
