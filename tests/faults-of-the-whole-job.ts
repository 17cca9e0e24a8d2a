import { readFileSync } from 'node:fs';
import type { Fault } from './fault.ts';

/** A plan from intake to release that is cleared: hit, made safe, welded, measured, painted, checked, signed. */
export const wholeJob = readFileSync('examples/plans/front-corner-released.yaml', 'utf8');

const plan = wholeJob;
const hold = { plan, severity: 'hold' } as const;
const stop = { plan, severity: 'stop' } as const;

/** Lines of the plan that are taken out or changed, each a step of the job. */
const scanBefore = / {2}scan_before: .*\n/u.exec(wholeJob)?.[0] ?? '';
const radar = / {4}- \{ sensor: front radar, .*\n/u.exec(wholeJob)?.[0] ?? '';
const fasteners = / {8}fasteners: .*reference: link.*\n/u.exec(wholeJob)?.[0] ?? '';
const indirect = / {2}indirect: .*\n/u.exec(wholeJob)?.[0] ?? '';
const sealer = / {2}sealer: .*\n/u.exec(wholeJob)?.[0] ?? '';
const kept = / {2}kept: .*\n/u.exec(wholeJob)?.[0] ?? '';

/** Twenty plans with one thing wrong anywhere from intake to release. What is a fault is common practice of the trade. */
export const faultsOfTheWholeJob: readonly Fault[] = [
  {
    ...hold,
    name: '1 intake: the battery was disconnected before the job was opened',
    changes: [['done: 2026-10-01T08:00, batteries', 'done: 2026-09-01T08:00, batteries']],
    rule: 'done-before-the-job',
    on: 'done: 2026-09-01T08:00',
  },
  {
    ...hold,
    name: '2 intake: what hit the vehicle is not said',
    changes: [['  impact: Left front corner, at a slant.\n', '']],
    rule: 'impact-not-stated',
    on: 'damage:\n  direct:',
  },
  {
    ...hold,
    name: '3 intake: a part that was hit directly is said to be sound',
    changes: [['direct: [cover, beam, rail-l, link-l]', 'direct: [cover, beam, rail-l, link-l, apron-l]']],
    rule: 'part-hit-directly-said-sound',
    on: 'damage: { kind: none, found_by: measured }',
  },
  {
    ...hold,
    name: '4 intake: no word of damage away from the blow',
    changes: [[indirect, '']],
    rule: 'indirect-damage-not-stated',
    on: 'damage:\n  impact:',
  },
  {
    ...hold,
    name: '5 make safe: the codes not read before the work',
    changes: [[scanBefore, '']],
    rule: 'scan-before-missing',
    on: 'verify:',
  },
  {
    ...hold,
    name: '6 make safe: restraints in hand five minutes after the battery came off',
    changes: [['done: 2026-10-01T08:30', 'done: 2026-10-01T08:05']],
    rule: 'restraint-wait-not-over',
    on: 'done: 2026-10-01T08:05',
  },
  {
    ...hold,
    name: '7 make safe: the voltage proved while capacitors still held it',
    changes: [['done: 2026-10-01T09:30', 'done: 2026-10-01T09:03']],
    rule: 'voltage-proved-before-the-wait',
    on: 'proof_of_absence:',
  },
  {
    ...stop,
    name: '8 make safe: lifted on the sill that is replaced',
    changes: [['points: [sill-r]', 'points: [rail-l]']],
    rule: 'lifted-on-worked-part',
    on: 'points: [rail-l]',
  },
  {
    ...stop,
    name: '9 restraints: their wiring spliced',
    changes: [['    control_unit: replaced\n', '    control_unit: replaced\n    wiring: spliced\n']],
    rule: 'restraint-wiring-spliced',
    on: 'wiring: spliced',
  },
  {
    ...stop,
    name: '10 parts: a second-hand rail cut out with a flame',
    changes: [
      [
        '    condition: new\n    damage: { kind: kink',
        '    condition: recycled\n    donor: { vin: 0CVBAB3DZP0009999, maker: Corvane, model: Ilex, body: saloon, model_year: 2023, at_this_part: sound, taken_off: cut out with a flame, cite: { reference: rail, at: p. 6 } }\n    damage: { kind: kink',
      ],
    ],
    rule: 'second-hand-part-flame-cut',
    on: 'taken_off: cut out with a flame',
  },
  {
    ...hold,
    name: '11 welding: the flange left bare inside',
    changes: [['flange_coat: factory coat left whole', 'flange_coat: bare']],
    rule: 'flange-left-bare',
    on: 'flange_coat: bare',
  },
  {
    ...stop,
    name: '12 welding: a plate over the seam',
    changes: [['        step: 20\n', '        step: 20\n        added_metal: Plate of 2 mm over the seam\n']],
    rule: 'added-metal-not-in-procedure',
    on: 'added_metal:',
  },
  {
    ...hold,
    name: '13 measuring: the fit measured after the weld',
    changes: [['before_welding: 2026-10-03', 'before_welding: 2026-10-06']],
    rule: 'fit-checked-too-late',
    on: 'before_welding:',
  },
  {
    ...hold,
    name: '14 corrosion: no sealer',
    changes: [[sealer, '']],
    rule: 'sealer-not-stated',
    on: 'finish:',
  },
  {
    ...hold,
    name: '15 corrosion: wax before the bake',
    changes: [['planned: true, done: 2026-10-09, primer', 'planned: true, done: 2026-10-07, primer']],
    rule: 'inside-protected-before-bake',
    on: '{ part: rail-l, planned',
  },
  {
    ...stop,
    name: '16 refinish: more paint before the radar than its page lets be',
    changes: [['film: 0.14 mm', 'film: 0.24 mm']],
    rule: 'film-before-radar-over-limit',
    on: 'film: 0.24 mm',
  },
  {
    ...hold,
    name: '17 assembly: no word of bolts that are used once',
    changes: [[fasteners, '']],
    rule: 'one-time-bolts-not-stated',
    on: '- do: replace\n        extent: whole\n        cite: { reference: link',
  },
  {
    ...hold,
    name: '18 checks: the cover came off and the radar is not calibrated',
    changes: [[radar, '']],
    rule: 'calibration-missing',
    on: 'calibrations:',
  },
  {
    ...hold,
    name: '19 checks: the steering angle set before the wheels',
    changes: [['done: 2026-10-12T10:00', 'done: 2026-10-10T11:00']],
    rule: 'out-of-order',
    on: 'done: 2026-10-10T11:00',
  },
  {
    ...hold,
    name: '20 release: signed by somebody of no stated competence',
    changes: [[', qualification: body structure level 3', '']],
    rule: 'signer-without-qualification',
    on: 'sign_off:',
  },
  {
    ...hold,
    name: '21 record: nothing is kept',
    changes: [[kept, '']],
    rule: 'record-not-kept',
    on: 'record:\n  where:',
  },
  {
    ...stop,
    name: '22 release: the insulation too low',
    changes: [['insulation: 950 Ω/V', 'insulation: 450 Ω/V']],
    rule: 'insulation-below-limit',
    on: 'insulation: 450',
  },
];
