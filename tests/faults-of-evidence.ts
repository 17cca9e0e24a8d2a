import { readFileSync } from 'node:fs';
import { sectionedPost } from './faults-of-seams.ts';
import { coldRail } from './faults-of-work.ts';
import type { Fault } from './fault.ts';
import { ring, ringCite, ringOperation } from './one-change.ts';

const hold = { severity: 'hold' } as const;

/** A windscreen with a camera behind it, before the work. */
export const glassWithCamera = readFileSync('tests/plans/glass-with-camera.yaml', 'utf8');
export const camera =
  '{ sensor: front camera, kind: static, disturbed: glass, planned: true, cite: { reference: camera, at: p. 2-6 } }';
export const cameraAs = (entry: string): readonly [string, string] => [
  camera,
  `{ sensor: front camera, ${entry} }`,
];

export const coldWords = (key: string, text: string): readonly [string, string] => [
  '        method: cold\n',
  `        method: cold\n        ${key}: "${text}"\n`,
];
export const ringTitled = (title: string): readonly [string, string] => [
  'title: Door ring, replacement',
  `title: '${title}'`,
];
export const ringRow = (entry: string): readonly [string, string] => [
  '            factory_count: 42\n',
  `            ${entry}\n            factory_count: 42\n`,
];
export const fired = (treatment: string): readonly (readonly [string, string])[] => [
  [
    'name: Curtain airbag left, at: ring-l, state: undeployed, treatment: removed',
    `name: Curtain airbag left, at: ring-l, state: deployed, treatment: ${treatment}`,
  ],
  [
    '    deployed: false\n',
    '    deployed: true\n    replacement_list: { reference: safe, at: section 9 }\n    belts_checked: All five looked at and pulled through, in order\n    wiring: untouched\n    control_unit: replaced\n    control_unit_cite: { reference: safe, at: section 8 }\n',
  ],
  [
    'hold_points:\n',
    'hold_points:\n  - { point: restraint wiring before the trim, by: { name: B. Ohm, role: workshop lead } }\n',
  ],
];
export const ringCovers = 'covers: { maker: Corvane, model: Tarn, bodies: [wagon], years: 2020-2022 }';
export const postCut = (text: string): readonly [string, string] => [
  '        at: K1\n',
  `        at: K1\n${text}`,
];

/** What a plan rests on that does not bear it, and words that say less or more than the key beside them. Common practice. */
export const faultsOfEvidence: readonly Fault[] = [
  ...['magnet', 'spark', 'file', 'memory'].map((by): Fault => ({
    ...hold,
    plan: ring,
    name: `a grade by ${by}, with a page beside it`,
    changes: [
      [
        'grade: 22MnB5+AS150\n    grade_from: { reference: ring, at: p. 4 }',
        `grade: 22MnB5+AS150\n    grade_from: { reference: ring, at: p. 4, by: ${by} }`,
      ],
    ],
    rule: 'material-by-hint-only',
    on: `by: ${by}`,
  })),
  ...['lower third only', 'from the pillar foot 250 mm up', 'sill section'].map((zone): Fault => ({
    ...hold,
    plan: ring,
    name: `replaced whole, and of it: ${zone}`,
    changes: [[ringOperation, `${ringOperation}\n        zone: ${zone}`]],
    rule: 'section-press-hardened',
    on: 'extent: whole',
  })),
  ...[
    'cut 60 mm nearer the belt, the kink reaches past K1',
    '40 mm over the mark',
    'one bend further up',
  ].map((zone): Fault => ({
    ...hold,
    plan: sectionedPost,
    name: `cut at the mark, and in words: ${zone}`,
    changes: [postCut(`        zone: ${zone}\n`)],
    rule: 'cut-beside-its-mark',
    on: `zone: ${zone}`,
  })),
  {
    ...hold,
    plan: sectionedPost,
    name: 'cut at the mark plus 60 mm',
    changes: [['        at: K1\n', '        at: K1 plus 60 mm\n']],
    rule: 'cut-beside-its-mark',
    on: 'at: K1 plus',
  },
  ...(
    [
      ['note', 'The sheet is warmed with the heat gun before pulling.'],
      ['note', 'Warm it up with the induction tool till hand hot, then pull'],
      ['reason', 'Pulled cold, with a little heat from the burner at the crease'],
      ['note', 'Hot air on the fold, 10 minutes'],
      ['zone', 'middle of the fold, heated'],
    ] as const
  ).map(([key, text]): Fault => ({
    ...hold,
    plan: coldRail,
    name: `straightened cold, ${key}: ${text}`,
    changes: [coldWords(key, text)],
    rule: 'straightened-cold-and-warmed',
    on: `${key}: "${text}`,
  })),
  // The ring's vehicle is a wagon of 2021, built for the European Union.
  ...[
    'Door ring, replacement, model years 2017 to 2019',
    'Door ring, replacement (from model year 2022)',
    'Door ring 2017-2019, replacement',
    'Door ring up to 2019, replacement',
    'Door ring, replacement, 2022 onwards',
    'Saloon: door ring, replacement',
    'Door ring, coupé and convertible',
    'Door ring, replacement (North America)',
    'Door ring, replacement, Australia and Japan',
  ].map((title): Fault => ({
    ...hold,
    plan: ring,
    name: `titled: ${title}`,
    changes: [ringTitled(title)],
    rule: 'document-titled-for-another-vehicle',
    on: `title: '${title}`,
  })),
  ...['Tailgate, replacement', 'Rear rail, end section', 'Front door: skin', 'Windscreen, renewing it'].map(
    (title): Fault => ({
      ...hold,
      plan: ring,
      name: `a ring by the page titled: ${title}`,
      changes: [ringTitled(title)],
      rule: 'cited-document-of-another-part',
      on: ringCite,
    }),
  ),
  {
    severity: 'stop',
    plan: ring,
    name: 'a document for another market',
    changes: [[ringCovers, ringCovers.replace(' }', ', markets: [north-america] }')]],
    rule: 'vehicle-outside-cited-range',
    on: ringCite,
  },
  {
    ...hold,
    plan: ring,
    name: 'a document for one market, and the market of the vehicle left out',
    changes: [
      [ringCovers, ringCovers.replace(' }', ', markets: [european-union] }')],
      ['  market: european-union\n', ''],
    ],
    rule: 'citation-coverage-unclear',
    on: ringCite,
  },
  // A joint and a pattern lean on a page of their own; it has to be one of body work on this part.
  ...(
    [
      ['safe', 'about restraints'],
      ['skin', 'of the skin above it'],
    ] as const
  ).map(([reference, what]): Fault => ({
    ...hold,
    plan: ring,
    name: `the pattern of a joint from the document ${what}`,
    changes: [
      ringRow(
        `pattern: { count: 56, pitch: 33 mm, method: resistance spot, cite: { reference: ${reference}, at: p. 5 } }`,
      ),
    ],
    rule: 'pattern-uncited',
    on: 'pattern: {',
  })),
  {
    ...hold,
    plan: ring,
    name: 'a joint from the document on restraints',
    changes: [ringRow('cite: { reference: safe, at: p. 5 }')],
    rule: 'joint-cited-from-other-matter',
    on: 'cite: { reference: safe, at: p. 5 }',
  },
  {
    ...hold,
    plan: ring,
    name: 'a skin said to be cosmetic by the document on restraints',
    changes: [
      [
        '    structural: false\n    over: ring-l',
        '    structural: false\n    cosmetic_by: { reference: safe, at: p. 5 }\n    over: ring-l',
      ],
    ],
    rule: 'page-borrowed-from-another-matter',
    on: 'cosmetic_by: { reference: safe',
  },
  // Units that fired, and nothing new in their place: asked for before work begins.
  ...['stays', 'removed'].map((treatment): Fault => ({
    ...hold,
    plan: ring,
    name: `a curtain airbag that fired: ${treatment}`,
    changes: [...fired(treatment)],
    rule: 'deployed-unit-not-replaced',
    on: 'unit: curtain airbag',
  })),
  {
    ...hold,
    plan: glassWithCamera,
    name: 'a calibration that is not planned, with the page that tells how it is made',
    changes: [
      cameraAs('kind: static, disturbed: glass, planned: false, cite: { reference: camera, at: p. 2-6 }'),
    ],
    rule: 'checks-not-planned',
    on: 'verify:',
  },
  ...['kind: not required', 'kind: not required, disturbed: glass'].map((entry): Fault => ({
    ...hold,
    plan: glassWithCamera,
    name: `a camera behind new glass without a page: ${entry}`,
    changes: [cameraAs(entry)],
    rule: 'check-waived-without-page',
    on: entry,
  })),
  {
    ...hold,
    plan: glassWithCamera,
    name: 'a camera that is not fitted behind glass with its bracket',
    changes: [cameraAs('kind: not fitted')],
    rule: 'sensor-said-not-fitted',
    on: 'kind: not fitted',
  },
  {
    ...hold,
    plan: glassWithCamera,
    name: 'no sensor fitted, and a procedure for the camera listed',
    changes: [
      [camera, '{ sensor: none fitted }'],
      ['Windscreen with camera bracket', 'Windscreen'],
    ],
    rule: 'sensor-said-not-fitted',
    on: 'sensor: none fitted',
  },
  {
    ...hold,
    plan: glassWithCamera,
    name: 'a calibration that hangs on a lamp',
    changes: [
      cameraAs(
        'kind: static, disturbed: glass, planned: if the lamp comes on, cite: { reference: camera, at: p. 2-6 }',
      ),
    ],
    rule: 'entry-wrong-kind',
    on: 'if the lamp comes on',
  },
  {
    ...hold,
    plan: ring,
    name: 'a control unit that is reset after units fired, by no page',
    changes: [
      ...fired('replaced'),
      [
        '    control_unit: replaced\n    control_unit_cite: { reference: safe, at: section 8 }\n',
        '    control_unit: reset\n',
      ],
    ],
    rule: 'restraint-control-unit-without-page',
    on: 'control_unit: reset',
  },
  {
    ...hold,
    plan: ring,
    name: 'the document of the ring withdrawn, by its note',
    changes: [
      [
        'title: Door ring, replacement',
        'title: Door ring, replacement\n    note: withdrawn in March; revision E is in the portal',
      ],
    ],
    rule: 'document-told-outdated',
    on: 'withdrawn in March',
  },
  {
    ...hold,
    plan: ring,
    name: 'the ring by the table of contents',
    changes: [[ringCite, ringCite.replace(/at: [^}]*/u, 'at: contents ')]],
    rule: 'citation-place-missing',
    on: 'at: contents',
  },
  // Tolerances by a page that is not said to allow them.
  ...(
    [
      ['by a page that is cited without its number', 'tolerance_cite: { reference: ring, at: p. 21 }'],
      [
        'by a page that states less',
        'tolerance_cite: { reference: ring, at: p. 21 }\n  tolerance_of_page: 8 mm',
      ],
    ] as const
  ).map(([what, entry]): Fault => ({
    ...hold,
    plan: ring,
    name: `a tolerance of 12 mm ${what}`,
    changes: [['  uncertainty: 0.5 mm\n', `  uncertainty: 0.5 mm\n  tolerance: 12 mm\n  ${entry}\n`]],
    rule: 'tolerance-wider-than-any-page',
    on: 'tolerance: 12 mm',
  })),
  // A piece of the structure under the name of a bracket.
  ...['Strut tower reinforcement, left', 'A-post foot', 'Rear rail extension'].map((name): Fault => ({
    ...hold,
    plan: ring,
    name: `listed as a bracket that is not structural: ${name}`,
    changes: [
      [
        '  - id: floor\n',
        `  - { id: piece, name: '${name}', kind: bracket, structural: false, grade: HC260LA, grade_from: { reference: ring, at: p. 4 }, thickness: 1.2 mm, damage: { kind: none, found_by: measured } }\n  - id: floor\n`,
      ],
    ],
    rule: 'crash-part-called-cosmetic',
    on: 'id: piece',
  })),
];
