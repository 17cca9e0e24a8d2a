import { describe, expect, test } from 'vitest';
import {
  camera,
  cameraAs,
  coldWords,
  fired,
  glassWithCamera,
  postCut,
  ringCovers,
  ringRow,
  ringTitled,
} from './faults-of-evidence.ts';
import { sectionedPost } from './faults-of-seams.ts';
import { coldRail } from './faults-of-work.ts';
import { judgeText, ruleIds } from './judge-text.ts';
import { changed, ring, ringOperation } from './one-change.ts';
import type { Change } from './one-change.ts';

// Each lies close to a fault of faults-of-evidence.ts and is right; it stays cleared. Common practice of the trade.

type NearMiss = readonly [name: string, plan: string, changes: readonly Change[]];

const grade = 'grade: 22MnB5+AS150\n    grade_from: { reference: ring, at: p. 4 }';

const nearMisses: readonly NearMiss[] = [
  ...['maker document', 'hardness test'].map((by): NearMiss => [
    `a grade from its page, by ${by}`,
    ring,
    [[grade, grade.replace('p. 4', `p. 4, by: ${by}`)]],
  ]),
  [
    'a grade read off the part',
    ring,
    [[grade, 'grade: 22MnB5+AS150\n    grade_from: { by: marking on part }']],
  ],
  ...['whole', 'the whole ring', 'All of it'].map((zone): NearMiss => [
    `replaced whole, zone: ${zone}`,
    ring,
    [[ringOperation, `${ringOperation}\n        zone: ${zone}`]],
  ]),
  ['the mark with a word on where it is', sectionedPost, [['at: K1', 'at: K1, below the belt, no further']]],
  ['a zone that bears a name', sectionedPost, [postCut('        zone: lower end\n')]],
  ...[
    'Pulled cold, no heat used',
    'The torch was not used; a glue tab warmed for the skin',
    'Cold, in the warm shop',
    'Sealer softened with the heat gun, then pulled cold',
    'Heat shield removed first',
    'Heating hose unclipped, sleeves shrunk with hot air',
  ].map((text): NearMiss => [`straightened cold: ${text}`, coldRail, [coldWords('note', text)]]),
  ...[
    'Door ring, replacement, model years 2017 to 2019 and 2020 to 2022',
    'Door ring, replacement, from model year 2020',
    'Door ring, replacement, edition 2019',
    'Door ring, replacement (as of 2019-05-04)',
    'Door ring to ISO 14732:2013',
    'Wagon and saloon: door ring, replacement',
    'Door ring, replacement, estate',
    'Door ring, replacement (not saloon)',
    'Door ring, replacement, Europe',
    'Door ring, replacement, worldwide',
    'B-pillar and side panel',
    'Side panel, roof and tailgate',
    'Body structure: tailgate opening',
    'Door opening, replacement',
    'Body welding, rear',
    'Ring with front door hinges',
  ].map((title): NearMiss => [`titled: ${title}`, ring, [ringTitled(title)]]),
  [
    'a pattern from a document on joints at large',
    changed(ring, [['title: Side panel outer, part replacement', 'title: Body structure, joining']]),
    [
      ringRow(
        'pattern: { count: 56, pitch: 33 mm, method: resistance spot, cite: { reference: skin, at: p. 5 } }',
      ),
    ],
  ],
  [
    'a pattern and a joint from the page of the ring',
    ring,
    [
      ringRow(
        'cite: { reference: ring, at: p. 5 }\n            pattern: { count: 56, pitch: 33 mm, method: resistance spot, cite: { reference: ring, at: p. 5 } }',
      ),
    ],
  ],
  [
    'a camera that needs none, by its page',
    glassWithCamera,
    [cameraAs('kind: not required, disturbed: glass, cite: { reference: camera, at: p. 2 }')],
  ],
  [
    'no camera behind a windscreen without one, by the page of the vehicle',
    glassWithCamera,
    [
      cameraAs('kind: not fitted, cite: { reference: camera, at: p. 1 }'),
      ['Windscreen with camera bracket', 'Windscreen without camera bracket'],
    ],
  ],
  [
    'a camera at the other end that is not fitted',
    glassWithCamera,
    [[camera, `${camera}\n    - { sensor: rear camera, kind: not fitted }`]],
  ],
  [
    'a tolerance of 8 mm that the cited page states',
    ring,
    [
      [
        '  uncertainty: 0.5 mm\n',
        '  uncertainty: 0.5 mm\n  tolerance: 8 mm\n  tolerance_cite: { reference: ring, at: p. 21 }\n  tolerance_of_page: 8 mm\n',
      ],
    ],
  ],
  ...[
    'Bracket at the strut tower',
    'Sill trim holder',
    'Hose clip, front rail',
    'Strut tower brace cover',
  ].map((name): NearMiss => [
    `a bracket: ${name}`,
    ring,
    [
      [
        '  - id: floor\n',
        `  - { id: piece, name: '${name}', kind: bracket, structural: false, damage: { kind: none, found_by: seen } }\n  - id: floor\n`,
      ],
    ],
  ]),
  ['a curtain airbag that fired and is replaced', ring, fired('replaced')],
  [
    'a document for the market of the vehicle',
    ring,
    [[ringCovers, ringCovers.replace(' }', ', markets: [united-kingdom, european-union] }')]],
  ],
];

test('the glass with its camera is cleared as it stands', () => {
  expect(ruleIds(judgeText(glassWithCamera))).toEqual([]);
});

describe('what is near to weak evidence and is none stays cleared', () => {
  test.each(nearMisses)('%s', (_name, plan, changes) => {
    expect(ruleIds(judgeText(changed(plan, changes)))).toEqual([]);
  });
});
