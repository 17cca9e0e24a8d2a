import type { Fault } from './fault.ts';
import { bondedRail } from './faults-of-the-bonded-rail.ts';
import { wholeJob } from './faults-of-the-whole-job.ts';

const hold = { plan: wholeJob, severity: 'hold' } as const;

/** Checks that later work undoes, and words that say another thing than the list beside them. Common practice. */
export const faultsOfUndoneChecks: readonly Fault[] = [
  {
    ...hold,
    name: 'the cover goes on in front of a radar that is calibrated already',
    changes: [
      ['replace, extent: whole, done: 2026-10-09 }', 'replace, extent: whole, done: 2026-10-12T15:00 }'],
    ],
    rule: 'out-of-order',
    on: '- { sensor: front radar',
  },
  {
    ...hold,
    name: 'a procedure of many pages is called a single sheet',
    changes: [['document: BRM-ILX-2200,', 'document: BRM-ILX-2200, single_sheet: true,']],
    rule: 'single-sheet-with-pages',
    on: '- { id: rail',
  },
  {
    ...hold,
    plan: bondedRail,
    name: 'a beam of aged aluminium is pulled straight',
    changes: [
      [
        'do: replace\n        step: 40\n        extent: whole',
        'do: straighten\n        step: 40\n        method: cold',
      ],
    ],
    rule: 'straighten-heat-treated-aluminium',
    on: '- do: straighten',
  },
  {
    ...hold,
    plan: bondedRail,
    name: 'a beam is pulled that is bent by its kind and kinked by its words',
    changes: [
      [
        'do: replace\n        step: 40\n        extent: whole',
        'do: straighten\n        step: 40\n        method: cold',
      ],
      [
        'damage: { kind: bend, found_by: seen }',
        "damage: { kind: bend, found_by: seen, extent: 'kinked at its left end' }",
      ],
    ],
    rule: 'damage-words-graver-than-its-kind',
    on: 'kinked at its left end',
  },
];
