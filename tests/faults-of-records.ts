import type { Fault } from './fault.ts';
import { electric, rail, ring } from './one-change.ts';
import { releasedRing, ringDone } from './released-ring.ts';

const ringLookUp = '    looked_up: 2026-10-06\n    looked_up_by';
const hvLookUp = /document: HVM-ILX-0010[^]*?for_job: K-2219/u.exec(electric)?.[0] ?? '';
const safeLookUp = /document: SRM-TRN-0100[^]*?for_job: K-2207/u.exec(ring)?.[0] ?? '';
const hold = { severity: 'hold' } as const;

/** What is looked up beside the operations, and what the record says of days and numbers. */
export const faultsOfRecords: readonly Fault[] = [
  // Documents for what is no sheet metal.
  ...(
    [
      ['bears no revision', '    revision: C\n', '', 'revision-by-date-only', 'document: HVM-ILX-0010'],
      [
        'bears no look-up day',
        '    looked_up: 2026-10-20\n',
        '',
        'look-up-not-dated',
        'document: HVM-ILX-0010',
      ],
      [
        'is that of the last job',
        'for_job: K-2219',
        'for_job: K-1001',
        'looked-up-for-another-job',
        'for_job: K-1001',
      ],
    ] as const
  ).map(([name, from, to, rule, on]): Fault => ({
    ...hold,
    name: `the document of the high-voltage isolation ${name}`,
    plan: electric,
    changes: [[hvLookUp, hvLookUp.replace(from, to)]],
    rule,
    // A finding about the whole reference stands on its first line.
    on: on.startsWith('document') ? '- id: hv' : on,
  })),
  {
    ...hold,
    name: 'the high-voltage isolation without the page',
    plan: electric,
    changes: [['cite: { reference: hv, at: p. 3-8 }', 'cite: { reference: hv }']],
    rule: 'place-in-document-missing',
    on: 'cite: { reference: hv }',
  },
  {
    ...hold,
    name: 'the wait of the restraints without the page',
    plan: ring,
    changes: [['wait_cite: { reference: safe, at: section 3 }', 'wait_cite: { reference: safe }']],
    rule: 'place-in-document-missing',
    on: 'wait_cite: { reference: safe }',
  },
  {
    ...hold,
    name: 'the wait of the restraints by a page of two years ago',
    plan: ring,
    changes: [[safeLookUp, safeLookUp.replace('looked_up: 2026-10-06', 'looked_up: 2024-01-10')]],
    rule: 'looked-up-before-the-job',
    on: 'looked_up: 2024-01-10',
  },
  {
    ...hold,
    name: 'the battery’s limit in the bake without the page',
    plan: electric,
    changes: [
      ['    battery_removed: true\n', ''],
      [
        'finish:\n',
        'finish:\n  bake: { temperature: 60 °C, time: 45 min, traction_battery: in the vehicle, battery_limit: { temperature: 60 °C, time: 45 min, cite: { reference: hv } } }\n',
      ],
    ],
    rule: 'place-in-document-missing',
    on: 'bake: {',
  },
  {
    ...hold,
    name: 'what a structural part is made of, without the page',
    plan: rail,
    changes: [['grade_from: { reference: rail, at: p. 3 }', 'grade_from: { reference: rail }']],
    rule: 'place-in-document-missing',
    on: 'grade_from: { reference: rail }',
  },
  // Days.
  {
    ...hold,
    name: 'a page published after it was looked up',
    plan: ring,
    changes: [['published: 2021-02-01', 'published: 2026-10-12']],
    rule: 'published-after-look-up',
    on: 'published: 2026-10-12',
  },
  {
    ...hold,
    name: 'looked up after the measurement that follows the work, the work undated',
    plan: releasedRing,
    changes: [[ringLookUp, ringLookUp.replace('10-06', '10-16')], ringDone],
    rule: 'looked-up-after-the-work',
    on: 'looked_up: 2026-10-16',
  },
  {
    ...hold,
    name: 'structural work undated at the release',
    plan: releasedRing,
    changes: [ringDone],
    rule: 'structural-work-not-dated',
    on: 'do: replace\n',
  },
  {
    ...hold,
    name: 'looked up after the signature',
    plan: `${ring}sign_off: { by: { name: B. Ohm, role: workshop lead }, date: 2026-10-07 }\n`,
    changes: [[ringLookUp, ringLookUp.replace('10-06', '10-08')]],
    rule: 'looked-up-after-the-signature',
    on: 'looked_up: 2026-10-08',
  },
  {
    ...hold,
    name: 'the number of the job left out, against which the look-up counts',
    plan: ring,
    changes: [['  number: K-2207\n', '']],
    rule: 'looked-up-before-the-job',
    on: 'job:',
  },
  {
    ...hold,
    name: 'signed with holds that somebody accepted by phone',
    plan: releasedRing,
    changes: [['open_holds: none', 'open_holds: "two, accepted by phone"']],
    rule: 'signature-tells-of-holds',
    on: 'sign_off:',
  },
  {
    ...hold,
    name: 'another revision signed',
    plan: releasedRing,
    changes: [
      ['  number: K-2207\n', '  number: K-2207\n  revision: C\n'],
      ['open_holds: none', 'open_holds: none, plan_revision: A'],
    ],
    rule: 'signed-other-revision',
    on: 'sign_off:',
  },
  {
    ...hold,
    name: 'a permit of the author, spelt otherwise',
    plan: `${ring}deviations:\n  - { rule: look-up-not-dated, by: { name: R Amsel, role: estimator }, reason: fine, date: 2026-10-10, expires: 2026-12-01 }\n`,
    changes: [[ringLookUp, '    looked_up_by']],
    rule: 'deviation-by-the-author',
    on: '- { rule:',
  },
  {
    ...hold,
    name: 'built four years before its model year',
    plan: ring,
    changes: [['  model_year: 2021\n', '  model_year: 2021\n  build_date: 2017-03-01\n']],
    rule: 'build-date-outside-model-year',
    on: 'build_date: 2017-03-01',
  },
  // Inside the cavities.
  {
    ...hold,
    name: 'cavity wax never done',
    plan: releasedRing,
    changes: [['ring-l, planned: true, done: 2026-10-14', 'ring-l, planned: true']],
    rule: 'closed-section-protection-not-recorded',
    on: '{ part: ring-l, planned',
  },
  {
    ...hold,
    name: 'cavity wax before the weld',
    plan: releasedRing,
    changes: [['ring-l, planned: true, done: 2026-10-14', 'ring-l, planned: true, done: 2026-10-08']],
    rule: 'closed-section-protected-before-heat',
    on: '{ part: ring-l, planned',
  },
  ...(
    [
      ['not planned', 'ring-l, planned: true', 'ring-l, planned: false'],
      [
        'none',
        'ring-l, planned: true, primer: Two-part epoxy, wax: Through',
        'ring-l, primer: none, wax: none, note: Through',
      ],
    ] as const
  ).map(([name, from, to]): Fault => ({
    ...hold,
    name: `cavity wax ${name}`,
    plan: ring,
    changes: [[from, to]],
    rule: 'closed-section-unprotected',
    on: '- id: ring-l\n',
  })),
  // What a part is made of, and where a second-hand one comes from.
  {
    ...hold,
    name: 'a grade by magnet with a document named beside it',
    plan: ring,
    changes: [
      [
        'grade: 22MnB5+AS150\n    grade_from: { reference: ring, at: p. 4 }',
        'grade: 22MnB5+AS150\n    grade_from: { by: magnet, reference: ring }',
      ],
    ],
    rule: 'material-by-hint-only',
    on: 'grade_from: { by: magnet',
  },
  ...(
    [
      [
        'told in words that leave it open',
        'damage: None of the rear is straight',
        'second-hand-part-history-in-words',
      ],
      ['the vehicle itself', 'damage: none, vin: 0CVBAB2BZM0002207', 'second-hand-part-of-this-vehicle'],
    ] as const
  ).map(([name, entries, rule]): Fault => ({
    ...hold,
    name: `a donor that is ${name}`,
    plan: ring,
    changes: [secondHand(entries)],
    rule,
    on: 'donor:',
  })),
  {
    name: 'a donor that was damaged at this part',
    plan: ring,
    changes: [secondHand('at_this_part: damaged')],
    rule: 'second-hand-part-damaged',
    severity: 'stop',
    on: 'donor:',
  },
];

/** The ring from a donor of the same kind; the entries come last and may state a number of their own. */
export function secondHand(entries: string): readonly [string, string] {
  const vin = entries.includes('vin:') ? '' : 'vin: 0CVBAB2BZM0009999, ';
  return [
    '    one_piece: true\n',
    `    one_piece: true\n    condition: recycled\n    donor: { ${vin}maker: Corvane, model: Tarn, body: wagon, model_year: 2021, cite: { reference: ring, at: p. 2 }, ${entries} }\n`,
  ];
}
