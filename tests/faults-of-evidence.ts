import { sectionedPost } from './faults-of-seams.ts';
import { coldRail } from './faults-of-work.ts';
import type { Fault } from './fault.ts';
import { ring, ringCite, ringOperation } from './one-change.ts';

const hold = { severity: 'hold' } as const;

export const coldWords = (key: string, text: string): readonly [string, string] => [
  '        method: cold\n',
  `        method: cold\n        ${key}: "${text}"\n`,
];
export const ringTitled = (title: string): readonly [string, string] => [
  'title: Door ring, replacement',
  `title: '${title}'`,
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
];
