import { readFileSync } from 'node:fs';
import type { Fault } from './fault.ts';
import type { Change } from './one-change.ts';

const read = (name: string): string => readFileSync(`tests/plans/${name}.yaml`, 'utf8');

/** The end of a rear rail sectioned and the back panel replaced. */
export const railEnd = read('rail-end-and-back-panel');
/** A quarter panel replaced whole, with the window bonded into it, a wheel and its arm. */
export const quarterAndWindow = read('quarter-with-its-window');
/** Nothing but a windscreen, with the camera behind it. */
export const windscreenAlone = read('windscreen-alone');
/** The frame of an old pickup, pulled with heat by its page. */
export const framePulled = read('frame-pulled-with-heat');
/** Hail on a bonnet of aluminium. */
export const hailOnBonnet = read('hail-on-a-bonnet');

const hold = { severity: 'hold' } as const;
const quarterWhole = 'extent: whole\n        cite: { reference: side, at: p. 6-17 }';
const bondFaces = 'preparation: Scuffed and primed';
const glassMaterial =
  '        material: Glass adhesive G with the primer of its set, one hour until the car may be driven\n';
const cited = '        cite: { reference: side, at: p. 6-17 }';

export const quarterInPart = (at: string): Change => [quarterWhole, `extent: part\n${at}${cited}`];
export const railJoinedTo = (ids: string): Change => [
  "last 150 mm folded', short_radius: true }\n",
  `last 150 mm folded', short_radius: true }\n    joined_to: [${ids}]\n`,
];
export const earlier = (words: string): Change => [
  'earlier_repairs: none known',
  `earlier_repairs: '${words}'`,
];
export const primer = (product: string): Change => [
  'product: Two-part epoxy }\n  sealer',
  `product: '${product}' }\n  sealer`,
];
export const wax = (words: string): Change => [
  'wax: Through the drawn holes after all heat',
  `wax: '${words}'`,
];
export const railCutAt = (place: string): Change => [
  'at: cut line A\n        cite',
  `at: '${place}'\n        cite`,
];
export const railFolded = (words: string): Change => ["'last 150 mm folded'", `'${words}'`];
export const facesMade = (words: string): Change => [bondFaces, `preparation: '${words}'`];
export const readAt = (words: string): Change => [
  'place: In the middle of the heated strip',
  `place: '${words}'`,
];
export const program = (words: string): Change => ['program: steel 1', `program: ${words}`];
export const calibratedAt = (hour: string): Change => [
  'done: 2026-07-02T16:00, cite',
  `done: 2026-07-02T${hour}, cite`,
];
export const bonnetCracked: readonly Change[] = [
  [
    "damage: { kind: dent, found_by: seen, extent: 'seven dents of 5 to 20 mm', line_left: false }",
    'damage: { kind: crack, found_by: seen, extent: 30 mm at the edge }',
  ],
];
export const bonnetFilled: Change = [
  '{ do: straighten, method: cold, done: 2026-08-05 }',
  '{ do: fill, material: aluminium filler, done: 2026-08-05 }',
];
const whoReleased = 'structural_release: { done: 2026-08-25T14:30, by: { name: ';
export const releasedBy = (who: string): Change => [
  `${whoReleased}P. Dorn, role: workshop lead`,
  whoReleased + who,
];

/** Found by a reader who knows the trade and not the code; what is a fault is common practice. */
export const faultsOfOpenCutsAndPanes: readonly Fault[] = [
  {
    ...hold,
    plan: quarterAndWindow,
    name: 'a quarter panel replaced in part, and nowhere said where',
    changes: [quarterInPart('')],
    rule: 'cut-place-of-skin-not-stated',
    on: 'do: replace\n        step: 20',
  },
  {
    ...hold,
    plan: quarterAndWindow,
    name: 'a quarter panel cut at the C-pillar, and no joint there',
    changes: [quarterInPart('        at: cut line at the C-pillar\n')],
    rule: 'cut-of-skin-without-joint',
    on: 'at: cut line at the C-pillar',
  },
  {
    ...hold,
    plan: railEnd,
    name: 'the new end of a rail is joined to none of its neighbours',
    changes: [railJoinedTo('floor, back')],
    rule: 'neighbour-not-joined',
    on: 'joined_to: [floor, back]',
  },
  ...[
    'rear hit in 2024, right rear rail end and back panel replaced by another shop',
    '2022: rear rail right sectioned, elsewhere',
  ].map((words): Fault => ({
    severity: 'stop',
    plan: railEnd,
    name: `a rail sectioned again: ${words}`,
    changes: [earlier(words)],
    rule: 'second-cut-in-one-member',
    on: 'do: section',
  })),
  {
    ...hold,
    plan: windscreenAlone,
    name: 'nothing said of what bonds the windscreen',
    changes: [[glassMaterial, '']],
    rule: 'glass-with-nothing-told',
    on: 'do: replace',
  },
  {
    ...hold,
    plan: windscreenAlone,
    name: 'driven for its calibration twenty minutes after the windscreen went in',
    changes: [calibratedAt('10:20')],
    rule: 'driven-before-glass-holds',
    on: 'done: 2026-07-02T10:00',
  },
  {
    ...hold,
    plan: windscreenAlone,
    name: 'a second-hand windscreen',
    changes: [['condition: new', 'condition: recycled']],
    rule: 'second-hand-bonded-glass',
    on: 'condition: recycled',
  },
  {
    ...hold,
    plan: quarterAndWindow,
    name: 'a second-hand side window bonded in',
    changes: [
      [
        'kind: glass\n    side: left\n    condition: new',
        'kind: glass\n    side: left\n    condition: recycled',
      ],
    ],
    rule: 'second-hand-bonded-glass',
    on: 'condition: recycled',
  },
  {
    ...hold,
    plan: quarterAndWindow,
    name: 'a refurbished wheel',
    changes: [
      [
        'kind: wheel\n    side: left\n    condition: new',
        'kind: wheel\n    side: left\n    condition: refurbished',
      ],
    ],
    rule: 'refurbished-wheel',
    on: 'condition: refurbished',
  },
  ...['Zinc spray', 'Rust converter', 'Cold galvanizing from the can'].map((words): Fault => ({
    ...hold,
    plan: railEnd,
    name: `primed with: ${words}`,
    changes: [primer(words)],
    rule: 'primer-is-none',
    on: `product: '${words}'`,
  })),
  ...['Underseal from a spray can', 'stone chip, black'].map((words): Fault => ({
    ...hold,
    plan: railEnd,
    name: `waxed inside with: ${words}`,
    changes: [wax(words)],
    rule: 'closed-section-scantly-protected',
    on: '- { part: rail-r, planned',
  })),
  {
    ...hold,
    plan: quarterAndWindow,
    name: 'faces ground on Friday and bonded on Monday',
    changes: [facesMade('Ground on Friday, bonded on Monday')],
    rule: 'bond-faces-ill-prepared',
    on: 'Ground on Friday',
  },
  {
    ...hold,
    plan: hailOnBonnet,
    name: 'a crack in a bonnet filled and painted',
    changes: [...bonnetCracked, bonnetFilled],
    rule: 'crack-filled-over',
    on: 'do: fill',
  },
  ...['On the brake bracket beside the strip', 'Next to the heated zone, on bare metal'].map(
    (words): Fault => ({
      ...hold,
      plan: framePulled,
      name: `temperature read: ${words}`,
      changes: [readAt(words)],
      rule: 'heat-measured-beside',
      on: words,
    }),
  ),
  {
    ...hold,
    plan: railEnd,
    name: 'a program for aluminium on steel',
    changes: [program('aluminium 2')],
    rule: 'program-of-other-metal',
    on: 'program: aluminium 2',
  },
  ...['60 mm ahead of cut line A', 'Cut line A (20 mm behind the drawn line)'].map((words): Fault => ({
    ...hold,
    plan: railEnd,
    name: `cut at: ${words}`,
    changes: [railCutAt(words)],
    rule: 'cut-beside-its-mark',
    on: words,
  })),
  ...['folded as far as 120 mm ahead of cut line A', 'the fold runs past the cut line'].map(
    (words): Fault => ({
      ...hold,
      plan: railEnd,
      name: `damage of the cut rail: ${words}`,
      changes: [railFolded(words)],
      rule: 'damage-goes-on-beyond-cut',
      on: words,
    }),
  ),
  {
    ...hold,
    plan: quarterAndWindow,
    name: 'who welds a skin to a pillar releases the structure, beside a workshop lead',
    changes: [releasedBy('M. Tey, role: body technician')],
    rule: 'own-work-released-beside-a-second-person',
    on: 'structural_release: {',
  },
];
