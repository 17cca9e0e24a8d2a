import { describe, expect, test } from 'vitest';
import { judgeText, ruleIds } from './judge-text.ts';
import { changed, electric, lineOf, rail, ring, ringCite, ringOperation, skin } from './one-change.ts';
import type { Change } from './one-change.ts';

// Each plan here is a plan that is cleared, with exactly one thing wrong. No such plan may come out cleared; each near miss
// beside it must. What is a fault is common practice of the trade; the rules name their sources.

interface Fault {
  readonly name: string;
  readonly plan: string;
  readonly changes: readonly Change[];
  readonly rule: string;
  readonly severity: 'stop' | 'hold';
  /** Text that stands on the line of the finding. */
  readonly on?: string;
}

const faults: readonly Fault[] = [
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
  })),
  {
    name: 'extent of the replacement left out',
    plan: ring,
    changes: [[ringOperation, 'do: replace\n        step: 20']],
    rule: 'section-press-hardened',
    severity: 'hold',
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
  },
  // Papers.
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
  },
  {
    name: 'a document of another model',
    plan: ring,
    changes: [['model: Tarn, bodies: [wagon], years', 'model: Tarn Estate, bodies: [wagon], years']],
    rule: 'citation-of-other-model',
    severity: 'stop',
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
  },
  ...(['general guidance', 'training', 'memory', 'last job'] as const).map((kind) => ({
    name: `only ${kind} is cited`,
    plan: ring,
    changes: [['- id: ring\n    kind: maker procedure', `- id: ring\n    kind: ${kind}`]] as const,
    rule: 'general-text-as-permission',
    severity: 'stop' as const,
  })),
  {
    name: 'coverage of the document not stated',
    plan: ring,
    changes: [['    covers: { maker: Corvane, model: Tarn, bodies: [wagon], years: 2020-2022 }\n', '']],
    rule: 'citation-coverage-unclear',
    severity: 'hold',
  },
  {
    name: 'revision and day of publication missing',
    plan: ring,
    changes: [['    revision: D\n    published: 2021-02-01\n', '']],
    rule: 'revision-missing',
    severity: 'hold',
  },
  {
    name: 'not looked up',
    plan: ring,
    changes: [['    looked_up: 2026-10-06\n    looked_up_by', '    looked_up_by']],
    rule: 'look-up-not-dated',
    severity: 'hold',
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
  },
  {
    name: 'looked up for another job',
    plan: ring,
    changes: [['for_job: K-2207', 'for_job: K-1999']],
    rule: 'looked-up-for-another-job',
    severity: 'hold',
  },
  {
    name: 'no place in the document',
    plan: ring,
    changes: [[ringCite, 'cite: { reference: ring }']],
    rule: 'citation-place-missing',
    severity: 'hold',
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
  },
  {
    name: 'the heat not measured',
    plan: rail,
    changes: [['        measured_by: { means: temperature crayon, place: middle of the heated zone }\n', '']],
    rule: 'heat-not-measured',
    severity: 'hold',
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
  },
  {
    name: 'indirect damage not stated',
    plan: ring,
    changes: [['    found: none found\n', '']],
    rule: 'indirect-damage-not-stated',
    severity: 'hold',
  },
  // Make safe.
  {
    name: 'no battery disconnected',
    plan: ring,
    changes: [['batteries: [12 V]', 'batteries: []']],
    rule: 'welding-with-battery-connected',
    severity: 'stop',
  },
  {
    name: 'the auxiliary battery left on',
    plan: ring,
    changes: [['fitted: [12 V]', 'fitted: [12 V, auxiliary]']],
    rule: 'welding-with-battery-connected',
    severity: 'stop',
  },
  {
    name: 'the 48 V battery of a mild hybrid left on',
    plan: ring,
    changes: [['drive: combustion', 'drive: mild-hybrid']],
    rule: 'welding-with-battery-connected',
    severity: 'stop',
  },
  {
    name: 'an undeployed unit stays at the ring',
    plan: ring,
    changes: [
      [
        'state: undeployed, treatment: removed, step: 2 }\n      - { unit: belt',
        'state: undeployed, treatment: stays }\n      - { unit: belt',
      ],
    ],
    rule: 'work-at-fitted-restraint-unit',
    severity: 'stop',
  },
  {
    name: 'an undeployed unit taken off after the work',
    plan: ring,
    changes: [
      [
        'at: ring-l, state: undeployed, treatment: removed, step: 2 }',
        'at: ring-l, state: undeployed, treatment: removed, step: 30 }',
      ],
    ],
    rule: 'work-at-fitted-restraint-unit',
    severity: 'stop',
  },
  // High voltage, bake.
  {
    name: 'no isolation',
    plan: electric,
    changes: [[/isolation: .*\n/u.exec(electric)?.[0] ?? '', '\n']],
    rule: 'high-voltage-not-isolated',
    severity: 'stop',
  },
  {
    name: 'isolation by no document',
    plan: electric,
    changes: [[', cite: { reference: hv, at: p. 3-8 }', '']],
    rule: 'high-voltage-isolation-uncited',
    severity: 'hold',
  },
  {
    name: 'isolation by a person without qualification',
    plan: electric,
    changes: [[', qualification: high-voltage level 2', '']],
    rule: 'high-voltage-person-not-qualified',
    severity: 'hold',
  },
  {
    name: 'the absence of voltage not to be proved',
    plan: electric,
    changes: [['    proof_of_absence: { planned: true }\n', '']],
    rule: 'absence-of-voltage-not-planned',
    severity: 'hold',
  },
  {
    name: 'the absence of voltage not proved at release',
    plan: electric,
    changes: [['stage: start', 'stage: release']],
    rule: 'absence-of-voltage-not-proved',
    severity: 'stop',
  },
  {
    name: 'bake above the limit of the battery',
    plan: electric,
    changes: [
      ['    battery_removed: true\n', ''],
      [
        'finish:\n',
        'finish:\n  bake: { temperature: 61 °C, time: 30 min, traction_battery: in the vehicle, battery_limit: { temperature: 61 °C, cite: { reference: hv, at: p. 9 } } }\n',
      ],
    ],
    rule: 'bake-over-battery-limit',
    severity: 'stop',
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
  })),
];

describe('one thing wrong is found, on its line, and never cleared', () => {
  test.each([
    ['ring', ring],
    ['rail', rail],
    ['skin', skin],
    ['electric sill', electric],
  ])('the %s plan itself is cleared', (_name, plan) => {
    expect(ruleIds(judgeText(plan))).toEqual([]);
  });

  test.each(faults.map((fault) => [fault.name, fault] as const))('%s', (_name, fault) => {
    const text = changed(fault.plan, fault.changes);
    const report = judgeText(text);
    const found = report.findings.filter(({ finding }) => finding.rule === fault.rule);
    expect(found.map(({ finding }) => finding.severity)).toContain(fault.severity);
    expect(report.verdict).toBe(fault.severity === 'stop' ? 'stopped' : report.verdict);
    expect(['held', 'stopped']).toContain(report.verdict);
    if (fault.on !== undefined)
      expect(found.map(({ place }) => place.line)).toContain(lineOf(text, fault.on));
  });
});
