import type { Fault } from './fault.ts';
import { changed, rail, ring, ringOperation } from './one-change.ts';

const ringOperationStart = '- do: replace\n        step: 20';

/** The rail straightened cold instead: nothing is heated, so nothing beside it is exposed. */
export const coldRail = changed(rail, [
  ['- do: heat', '- do: straighten\n        method: cold'],
  ['kind: bend, found_by: measured', 'kind: bend, short_radius: false, found_by: measured'],
  [
    `        source: induction
        temperature: 600 °C
        hold: 60 s
        times: 1
        measured_by: { means: temperature crayon, place: middle of the heated zone }
        limit: { temperature: 650 °C, time: 90 s, times: 2, cite: { reference: rail, at: p. 8 } }
        cooling: still air
`,
    '',
  ],
]);

/** What is done to which steel, how hot it gets, what the damage is. */
export const faultsOfWork: readonly Fault[] = [
  // Section, butt weld, heat on the strongest steel.
  ...(
    [
      ['sectioning', 'do: section\n        step: 20\n        at: B'],
      ['butt welding', 'do: butt weld\n        step: 20\n        at: B'],
      ['replacement in part', 'do: replace\n        step: 20\n        extent: part\n        at: B'],
    ] as const
  ).map(([name, to]) => ({
    name: `${name} of a press-hardened ring`,
    plan: ring,
    changes: [[ringOperation, to]] as const,
    rule: 'section-press-hardened',
    severity: 'stop' as const,
    on: to,
  })),
  {
    name: 'extent of the replacement left out',
    plan: ring,
    changes: [[ringOperation, 'do: replace\n        step: 20']],
    rule: 'section-press-hardened',
    severity: 'hold',
    on: ringOperationStart,
  },
  {
    name: 'sectioning of a dual-phase part',
    plan: ring,
    changes: [
      [ringOperation, 'do: section\n        step: 20\n        at: B'],
      ['grade: 22MnB5+AS150', 'grade: HCT780X'],
      ['kind: door ring', 'kind: b-pillar'],
    ],
    rule: 'section-advanced-high-strength',
    severity: 'stop',
    on: '- do: section\n        step: 20',
  },
  {
    name: 'sectioning of a martensitic part',
    plan: ring,
    changes: [
      [ringOperation, 'do: section\n        step: 20\n        at: B'],
      ['grade: 22MnB5+AS150', 'grade: CR1220Y1500T-MS'],
      ['kind: door ring', 'kind: b-pillar'],
    ],
    rule: 'section-ultra-high-strength',
    severity: 'stop',
    on: '- do: section\n        step: 20',
  },
  {
    name: 'partial replacement of a one-piece ring of softer steel',
    plan: ring,
    changes: [
      [ringOperation, 'do: replace\n        step: 20\n        extent: part\n        at: B'],
      ['grade: 22MnB5+AS150', 'grade: HC340LA'],
    ],
    rule: 'one-piece-ring-replaced-in-part',
    severity: 'stop',
    on: ringOperationStart,
  },
  {
    name: 'heating a press-hardened part',
    plan: rail,
    changes: [['grade: HC340LA', 'grade: 22MnB5+AS150']],
    rule: 'heat-press-hardened',
    severity: 'stop',
    on: 'do: heat',
  },
  {
    name: 'heating a dual-phase part',
    plan: rail,
    changes: [['grade: HC340LA', 'grade: HCT780X']],
    rule: 'heat-advanced-high-strength',
    severity: 'stop',
    on: '- do: heat',
  },
  {
    name: 'unknown steel heated',
    plan: rail,
    changes: [['    grade: HC340LA\n', '']],
    rule: 'structural-strength-unknown',
    severity: 'stop',
    on: 'do: heat',
  },
  {
    name: 'unknown steel cut',
    plan: ring,
    changes: [
      [ringOperation, 'do: section\n        step: 20\n        at: B'],
      ['    grade: 22MnB5+AS150\n', ''],
    ],
    rule: 'structural-strength-unknown',
    severity: 'stop',
    on: '- do: section\n        step: 20',
  },
  {
    name: 'unknown steel straightened',
    plan: rail,
    changes: [
      ['    grade: HC340LA\n', ''],
      ['- do: heat\n        step: 10', '- do: straighten\n        method: cold\n        step: 10'],
      ['        temperature: 600 °C\n', ''],
    ],
    rule: 'structural-strength-unknown',
    severity: 'stop',
    on: '- do: straighten',
  },
  {
    name: 'a kinked rail straightened',
    plan: rail,
    changes: [
      ['damage: { kind: bend, found_by: measured }', 'damage: { kind: kink, found_by: measured }'],
      ['- do: heat', '- do: straighten\n        method: with heat'],
    ],
    rule: 'straighten-kinked-torn-or-cracked',
    severity: 'stop',
    on: '- do: straighten',
  },
  // Heat limits.
  {
    name: 'heat over the limit of the class',
    plan: rail,
    changes: [['temperature: 600 °C', 'temperature: 651 °C']],
    rule: 'heat-over-650',
    severity: 'stop',
    on: 'temperature: 651 °C',
  },
  {
    name: 'heat held too long',
    plan: rail,
    changes: [['hold: 60 s', 'hold: 91 s']],
    rule: 'heat-held-too-long',
    severity: 'hold',
    on: 'hold: 91 s',
  },
  {
    name: 'heated three times',
    plan: rail,
    changes: [
      ['times: 1', 'times: 3'],
      ['hold: 60 s', 'hold: 10 s'],
    ],
    rule: 'heated-too-often',
    severity: 'hold',
    on: 'times: 3',
  },
  {
    name: 'the neighbour over its limit',
    plan: rail,
    changes: [['distance: 60 mm', 'distance: 10 mm']],
    rule: 'neighbour-too-hot',
    severity: 'stop',
    on: 'distance: 10 mm',
  },
  {
    name: 'distance to the neighbour left out',
    plan: rail,
    changes: [['distance: 60 mm, ', '']],
    rule: 'neighbour-too-hot',
    severity: 'hold',
    on: '- { part: a-pillar-r',
  },
  {
    name: 'a joined neighbour not listed',
    plan: rail,
    changes: [
      [
        '          - { part: a-pillar-r, distance: 60 mm, path: same sheet }\n',
        '          - { item: wiring, distance: 500 mm, path: same sheet }\n',
      ],
    ],
    rule: 'linked-neighbour-not-listed',
    severity: 'hold',
    on: '- do: heat',
  },
  {
    name: 'structural adhesive 40 mm from the heat',
    plan: rail,
    changes: [
      [
        '        near:\n',
        '        near:\n          - { item: structural adhesive, distance: 40 mm, path: same sheet }\n',
      ],
    ],
    rule: 'neighbour-too-hot',
    severity: 'stop',
    on: '- { item: structural adhesive',
  },
  {
    name: 'the heat not measured',
    plan: rail,
    changes: [['        measured_by: { means: temperature crayon, place: middle of the heated zone }\n', '']],
    rule: 'heat-not-measured',
    severity: 'hold',
    on: '- do: heat',
  },
  // Damage.
  {
    name: 'the layer under a torn skin not stated',
    plan: ring,
    changes: [
      ['    over: ring-l\n', ''],
      ['    under: side-panel-l\n', ''],
    ],
    rule: 'hidden-layer-not-stated',
    severity: 'hold',
    on: 'damage: { kind: tear',
  },
  {
    name: 'indirect damage not stated',
    plan: ring,
    changes: [['    found: none found\n', '']],
    rule: 'indirect-damage-not-stated',
    severity: 'hold',
    on: 'indirect:',
  },
  {
    name: 'butt welding of a martensitic part',
    plan: ring,
    changes: [
      [ringOperation, 'do: butt weld\n        step: 20\n        at: B'],
      ['grade: 22MnB5+AS150', 'grade: CR1220Y1500T-MS'],
      ['kind: door ring', 'kind: b-pillar'],
    ],
    rule: 'section-ultra-high-strength',
    severity: 'stop',
    on: '- do: butt weld',
  },
  {
    name: 'heating a martensitic part',
    plan: rail,
    changes: [['grade: HC340LA', 'grade: CR1220Y1500T-MS']],
    rule: 'heat-ultra-high-strength',
    severity: 'stop',
    on: '- do: heat',
  },
  ...(['tear', 'crack'] as const).map((kind) => ({
    name: `a rail with a ${kind} straightened`,
    plan: rail,
    changes: [
      ['damage: { kind: bend, found_by: measured }', `damage: { kind: ${kind}, found_by: measured }`],
      ['- do: heat', '- do: straighten\n        method: with heat'],
    ] as const,
    rule: 'straighten-kinked-torn-or-cracked',
    severity: 'stop' as const,
    on: '- do: straighten',
  })),
  {
    name: 'a press-hardened part straightened cold, which no statement of the maker permits',
    plan: coldRail,
    changes: [['grade: HC340LA', 'grade: 22MnB5+AS150']],
    rule: 'straighten-strong-steel-uncited',
    severity: 'stop',
    on: '- do: straighten',
  },
  {
    name: 'a press-hardened part straightened, cold or with heat not said',
    plan: coldRail,
    changes: [
      ['grade: HC340LA', 'grade: 22MnB5+AS150'],
      ['        method: cold\n', ''],
    ],
    rule: 'straighten-strong-steel-uncited',
    severity: 'stop',
    on: '- do: straighten',
  },
  {
    name: 'straightened, cold or with heat not said',
    plan: coldRail,
    changes: [['        method: cold\n', '']],
    rule: 'heat-over-650',
    severity: 'hold',
    on: '- do: straighten',
  },
  {
    name: 'straightened by an inductor whose temperature is left out',
    plan: rail,
    changes: [
      ['- do: heat', '- do: straighten'],
      ['        temperature: 600 °C\n', ''],
    ],
    rule: 'heat-over-650',
    severity: 'hold',
    on: '- do: straighten',
  },
  {
    name: 'a seam on a structural flange, the joints of the factory not stated',
    plan: ring,
    changes: [
      ['grade: 22MnB5+AS150', 'grade: HC340LA'],
      ['method: resistance spot', 'method: arc seam'],
      ['            factory_count: 42\n', ''],
    ],
    rule: 'seam-instead-of-joints',
    severity: 'hold',
    on: '- to: sill-inner-l',
  },
];
