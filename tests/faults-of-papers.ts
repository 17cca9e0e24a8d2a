import type { Fault } from './fault.ts';
import { ring, ringCite } from './one-change.ts';

/** What the work rests on, who signed it, and what somebody accepted. */
export const faultsOfPapers: readonly Fault[] = [
  {
    name: 'no citation',
    plan: ring,
    changes: [[`        ${ringCite}\n`, '']],
    rule: 'structural-operation-uncited',
    severity: 'stop',
    on: 'do: replace',
  },
  {
    name: 'a document of another model year',
    plan: ring,
    changes: [['bodies: [wagon], years: 2020-2022', 'bodies: [wagon], years: 2015-2020']],
    rule: 'citation-of-other-year',
    severity: 'stop',
    on: ringCite,
  },
  {
    name: 'a document of another body',
    plan: ring,
    changes: [['bodies: [wagon], years: 2020-2022', 'bodies: [saloon], years: 2020-2022']],
    rule: 'citation-of-other-body',
    severity: 'stop',
    on: ringCite,
  },
  {
    name: 'a document of another model',
    plan: ring,
    changes: [['model: Tarn, bodies: [wagon], years', 'model: Tarn Estate, bodies: [wagon], years']],
    rule: 'citation-of-other-model',
    severity: 'stop',
    on: ringCite,
  },
  {
    name: 'a document of another maker',
    plan: ring,
    changes: [
      [
        'maker: Corvane, model: Tarn, bodies: [wagon], years',
        'maker: Velden, model: Tarn, bodies: [wagon], years',
      ],
    ],
    rule: 'citation-of-other-maker',
    severity: 'stop',
    on: ringCite,
  },
  ...(['general guidance', 'training', 'memory', 'last job'] as const).map((kind) => ({
    name: `only ${kind} is cited`,
    plan: ring,
    changes: [['- id: ring\n    kind: maker procedure', `- id: ring\n    kind: ${kind}`]] as const,
    rule: 'general-text-as-permission',
    severity: 'stop' as const,
    on: ringCite,
  })),
  {
    name: 'coverage of the document not stated',
    plan: ring,
    changes: [['    covers: { maker: Corvane, model: Tarn, bodies: [wagon], years: 2020-2022 }\n', '']],
    rule: 'citation-coverage-unclear',
    severity: 'hold',
    on: ringCite,
  },
  {
    name: 'revision and day of publication missing',
    plan: ring,
    changes: [['    revision: D\n    published: 2021-02-01\n', '']],
    rule: 'revision-missing',
    severity: 'hold',
    on: '- id: ring\n',
  },
  {
    name: 'not looked up',
    plan: ring,
    changes: [['    looked_up: 2026-10-06\n    looked_up_by', '    looked_up_by']],
    rule: 'look-up-not-dated',
    severity: 'hold',
    on: '- id: ring\n',
  },
  {
    name: 'looked up before the job was opened',
    plan: ring,
    changes: [['    looked_up: 2026-10-06\n    looked_up_by', '    looked_up: 2026-10-04\n    looked_up_by']],
    rule: 'looked-up-before-the-job',
    severity: 'hold',
    on: 'looked_up: 2026-10-04',
  },
  {
    name: 'looked up after the work',
    plan: ring,
    changes: [[ringCite, `${ringCite}\n        done: 2026-10-05`]],
    rule: 'looked-up-after-the-work',
    severity: 'hold',
    on: 'looked_up: 2026-10-06',
  },
  {
    name: 'looked up for another job',
    plan: ring,
    changes: [['for_job: K-2207', 'for_job: K-1999']],
    rule: 'looked-up-for-another-job',
    severity: 'hold',
    on: 'for_job: K-1999',
  },
  {
    name: 'no place in the document',
    plan: ring,
    changes: [[ringCite, 'cite: { reference: ring }']],
    rule: 'citation-place-missing',
    severity: 'hold',
    on: 'cite: { reference: ring }',
  },
  // Sign-off and deviations.
  {
    name: 'signed with a stop open',
    plan: `${ring}sign_off: { by: { name: P. Falk, role: shop manager }, date: 2026-10-20 }\n`,
    changes: [
      ['kind: kink, found_by', 'kind: crack, found_by'],
      [`        ${ringCite}\n`, ''],
    ],
    rule: 'signed-with-stop-open',
    severity: 'stop',
    on: 'sign_off:',
  },
  ...(
    [
      [
        'for a stop',
        'rule: structural-operation-uncited, part: ring-l',
        'date: 2026-10-10, expires: 2026-12-01',
        'deviation-on-a-stop',
        'stop',
      ],
      [
        'that matches nothing',
        'rule: citation-place-missing, part: sill-inner-l',
        'date: 2026-10-10, expires: 2026-12-01',
        'deviation-matches-nothing',
        'hold',
      ],
    ] as const
  ).map(([name, what, dates, rule, severity]) => ({
    name: `a deviation ${name}`,
    plan: `${ring}deviations:\n  - { ${what}, by: { name: P. Falk, role: shop manager }, reason: agreed, ${dates} }\n`,
    changes: [[`        ${ringCite}\n`, '']] as const,
    rule,
    severity,
    on: '- { rule:',
  })),
];
