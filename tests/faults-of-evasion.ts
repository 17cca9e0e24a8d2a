import type { Fault } from './fault.ts';
import { electric, rail, ring, ringCite, ringOperation } from './one-change.ts';

const ringSpots = `            method: resistance spot
            form: flange
            flange_coat: factory coat left whole
            sheets: [ring-l, sill-inner-l]`;
const near = 'distance: 60 mm, path: same sheet }';
const isolation =
  'isolation: { planned: true, wait: 5 min, wait_asked: 5 min, by: { name: L. Brandt, qualification: high-voltage level 2 }, cite: { reference: hv, at: p. 3-8 } }';

/** Work under a milder word, claims that nothing in the plan bears out, blanks in the place of answers. */
export const faultsOfEvasion: readonly Fault[] = [
  {
    name: 'a kinked rail heated',
    plan: rail,
    changes: [['kind: bend', 'kind: kink']],
    rule: 'damaged-metal-worked-over',
    severity: 'stop',
    on: '- do: heat',
  },
  ...['bake', 'refinish', 'bond'].map((word) => ({
    name: `a torch at 600 °C under the word ${word}`,
    plan: ring,
    changes: [
      [
        `      - ${ringOperation}`,
        `      - { do: ${word}, step: 19, source: torch, temperature: 600 °C, hold: 60 s, times: 1, ${ringCite} }\n      - ${ringOperation}`,
      ],
    ] as const,
    rule: 'heat-press-hardened',
    severity: 'stop' as const,
    on: `- { do: ${word}`,
  })),
  {
    name: 'a neighbour removed by no operation',
    plan: rail,
    changes: [[near, 'distance: 5 mm, path: same sheet, treatment: removed }']],
    rule: 'neighbour-too-hot',
    severity: 'hold',
    on: 'distance: 5 mm',
  },
  {
    name: 'a neighbour renewed by no operation',
    plan: rail,
    changes: [[near, 'distance: 5 mm, path: same sheet, treatment: renewed }']],
    rule: 'neighbour-too-hot',
    severity: 'hold',
    on: 'distance: 5 mm',
  },
  {
    name: 'an airbag beside the heat that is to be renewed',
    plan: rail,
    changes: [
      [near, `${near}\n          - { item: airbag, distance: 50 mm, path: joined, treatment: renewed }`],
    ],
    rule: 'pyrotechnic-beside-hot-work',
    severity: 'stop',
    on: 'item: airbag',
  },
  {
    name: 'another part of the same ring welded to the new one',
    plan: ring,
    changes: [
      ['            sheets: [ring-l, sill-inner-l]', '            sheets: [ring-l, ring-rest]'],
      [
        '  - id: sill-inner-l\n',
        '  - { id: ring-rest, name: Rest of the ring, kind: door ring, side: left, structural: true }\n  - id: sill-inner-l\n',
      ],
    ],
    rule: 'joint-within-one-piece',
    severity: 'stop',
    on: 'to: sill-inner-l',
  },
  {
    name: 'a ring listed as a reinforcement of softer steel and replaced in part',
    plan: ring,
    changes: [
      ['kind: door ring', 'kind: reinforcement'],
      ['grade: 22MnB5+AS150', 'grade: HC340LA'],
      [ringOperation, 'do: replace\n        step: 20\n        extent: part\n        at: B'],
    ],
    rule: 'one-piece-ring-replaced-in-part',
    severity: 'stop',
    on: '- do: replace\n        step: 20',
  },
  {
    name: 'a joint whose other side is not said',
    plan: ring,
    changes: [
      ['          - to: sill-inner-l\n            method', '          - method'],
      ['            sheets: [ring-l, sill-inner-l]', '            sheets: [ring-l]'],
    ],
    rule: 'unlike-metals-arc-welded',
    severity: 'hold',
    on: 'method: resistance spot',
  },
  {
    name: 'no spot at all',
    plan: ring,
    changes: [['            count: 56', '            count: 0']],
    rule: 'entry-outside-the-range',
    severity: 'hold',
    on: 'count: 0',
  },
  {
    name: 'an undamaged rail straightened',
    plan: rail,
    changes: [
      ['damage: { kind: bend, found_by: measured }', 'damage: { kind: none, found_by: seen }'],
      ['- do: heat', '- do: straighten\n        method: with heat'],
    ],
    rule: 'nothing-to-straighten',
    severity: 'hold',
    on: '- do: straighten',
  },
  {
    name: 'a revision of one dash',
    plan: ring,
    changes: [['    revision: D\n    published: 2021-02-01\n', '    revision: "-"\n']],
    rule: 'revision-missing',
    severity: 'hold',
    on: 'revision: "-"',
  },
  {
    name: 'a revision of one dash beside a day of publication',
    plan: ring,
    changes: [['    revision: D\n', '    revision: "-"\n']],
    rule: 'revision-by-date-only',
    severity: 'hold',
    on: 'revision: "-"',
  },
  {
    name: 'a place of one question mark',
    plan: ring,
    changes: [[ringCite, 'cite: { reference: ring, at: "?" }']],
    rule: 'citation-place-missing',
    severity: 'hold',
    on: 'cite: { reference: ring, at: "?" }',
  },
  {
    name: 'the battery listed, neither planned nor done',
    plan: ring,
    changes: [['    planned: Battery off and covered, key kept in the office.\n', '']],
    rule: 'welding-with-battery-connected',
    severity: 'hold',
    on: 'low_voltage:',
  },
  {
    name: 'the battery planned to stay on, in words',
    plan: ring,
    changes: [
      [
        'planned: Battery off and covered, key kept in the office.',
        'planned: No, the battery stays connected.',
      ],
    ],
    rule: 'welding-with-battery-connected',
    severity: 'hold',
    on: 'low_voltage:',
  },
  {
    name: '400 V read where the circuit should be dead',
    plan: electric,
    changes: [
      [
        'proof_of_absence: { planned: true }',
        'proof_of_absence: { planned: true, meter_proved_before: true, reading: 400 V, meter_proved_after: true }',
      ],
    ],
    rule: 'voltage-still-there',
    severity: 'stop',
    on: 'reading: 400 V',
  },
  {
    name: 'the isolation after the work',
    plan: electric,
    changes: [
      [isolation, isolation.replace('planned: true', 'done: 2026-10-21T10:00')],
      ['- do: replace', '- do: replace\n        done: 2026-10-21T09:00'],
    ],
    rule: 'high-voltage-step-out-of-order',
    severity: 'stop',
    on: 'done: 2026-10-21T10:00',
  },
  {
    name: 'a joint that rests on a page of the years before',
    plan: ring,
    changes: [
      [
        'references:\n',
        'references:\n  - { id: old, kind: maker procedure, document: BRM-TRN-2120, revision: A, covers: { maker: Corvane, model: Tarn, bodies: [wagon], years: 2015-2019 }, looked_up: 2026-10-06, for_job: K-2207 }\n',
      ],
      [ringSpots, `${ringSpots}\n            cite: { reference: old, at: p. 3 }`],
    ],
    rule: 'joint-cited-elsewhere',
    severity: 'hold',
    on: 'cite: { reference: old, at: p. 3 }',
  },
  {
    name: 'a document that covers two hundred years',
    plan: ring,
    changes: [['bodies: [wagon], years: 2020-2022', 'bodies: [wagon], years: 1900-2099']],
    rule: 'coverage-too-wide',
    severity: 'hold',
    on: 'years: 1900-2099',
  },
  {
    name: 'a limit of the maker that the heat breaks',
    plan: rail,
    changes: [['limit: { temperature: 650 °C', 'limit: { temperature: 550 °C']],
    rule: 'heat-over-page-limit',
    severity: 'stop',
    on: 'temperature: 600 °C',
  },
  {
    name: 'high-strength steel heated without the maker’s figure',
    plan: rail,
    changes: [
      [
        '        limit: { temperature: 650 °C, time: 90 s, times: 2, cite: { reference: rail, at: p. 8 } }\n',
        '',
      ],
    ],
    rule: 'heat-high-strength-without-figure',
    severity: 'hold',
    on: 'temperature: 600 °C',
  },
  {
    name: 'a deviation for what a stop hangs on',
    plan: rail,
    changes: [
      [near, 'path: same sheet }'],
      [
        'finish:\n',
        'deviations:\n  - { rule: neighbour-too-hot, part: rail-r, by: { name: P. Falk, role: shop manager }, reason: far enough, date: 2026-10-20, expires: 2026-12-01 }\nfinish:\n',
      ],
    ],
    rule: 'deviation-on-an-open-question',
    severity: 'hold',
    on: 'rule: neighbour-too-hot',
  },
  {
    name: 'nothing is proposed for a damaged ring',
    plan: ring,
    changes: [
      [
        / {4}operations:\n {6}- do: replace\n {8}step: 20[\s\S]*?(?=\n {2}- id: sill-inner-l)/u.exec(
          ring,
        )?.[0] ?? '',
        '    operations: []\n',
      ],
    ],
    rule: 'structural-damage-left',
    severity: 'hold',
    on: 'kind: kink',
  },
];
