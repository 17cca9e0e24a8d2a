import { readFileSync } from 'node:fs';
import type { Fault } from './fault.ts';
import { ring } from './one-change.ts';

/** A front rail of aluminium, bonded and riveted, from intake to release. */
export const bondedRail = readFileSync('examples/plans/aluminium-rail-bonded.yaml', 'utf8');

const hold = { plan: bondedRail, severity: 'hold' } as const;
const stop = { plan: bondedRail, severity: 'stop' } as const;

/** Written by a reader who knows the trade and not the code. What is a fault is common practice. */
export const faultsOfTheBondedRail: readonly Fault[] = [
  {
    ...stop,
    name: 'documents: the page is that of the roadster',
    changes: [['bodies: [coupe]', 'bodies: [roadster]']],
    rule: 'citation-of-other-body',
    on: 'cite: { reference: rail, at: p. 6-19 }',
  },
  {
    ...hold,
    name: 'documents: looked up before it was published',
    changes: [['published: 2022-09-30', 'published: 2026-09-30']],
    rule: 'published-after-look-up',
    on: '- { id: rail',
  },
  {
    ...stop,
    name: 'make safe: the wait is shorter than the page asks',
    changes: [['wait: 15 min', 'wait: 5 min']],
    rule: 'restraint-wait-too-short',
    on: 'wait: 5 min',
  },
  {
    ...hold,
    name: 'make safe: a mild hybrid whose 48 V battery nobody disconnects',
    changes: [['drive: combustion', 'drive: mild-hybrid']],
    rule: 'mild-hybrid-battery-left-connected',
    on: 'low_voltage:',
  },
  {
    ...hold,
    name: 'damage: a kink that nobody looked at',
    changes: [['kind: kink, found_by: measured', 'kind: kink, found_by: not looked at']],
    rule: 'damage-found-by-not-looking',
    on: 'found_by: not looked at',
  },
  {
    ...hold,
    name: 'damage: the tower was not seen',
    changes: [
      [
        'thickness: 3 mm\n    damage: { kind: none, found_by: measured }',
        'thickness: 3 mm\n    damage: { kind: not yet seen }',
      ],
    ],
    rule: 'structure-not-seen',
    on: 'damage: { kind: not yet seen }',
  },
  {
    ...hold,
    name: 'part: second-hand, and nothing is said of its donor',
    changes: [['condition: new\n    damage: { kind: kink', 'condition: recycled\n    damage: { kind: kink']],
    rule: 'second-hand-part-unproved',
    on: '- id: rail-l',
  },
  {
    ...stop,
    name: 'joint: ordinary pull rivets',
    changes: [['kind: structural, diameter', 'kind: ordinary, diameter']],
    rule: 'pull-rivet-in-structure',
    on: 'kind: ordinary',
  },
  {
    ...stop,
    name: 'joint: rivets in the holes of the old ones',
    changes: [['old_holes: beside them', 'old_holes: used again']],
    rule: 'rivet-hole-used-again',
    on: 'old_holes: used again',
  },
  {
    ...stop,
    name: 'joint: rivets 10 mm from the edge',
    changes: [['edge: 14 mm', 'edge: 10 mm']],
    rule: 'rivet-edge-close',
    on: 'edge: 10 mm',
  },
  {
    ...stop,
    name: 'joint: the rivet is too short for the stack',
    changes: [['grip_to: 7 mm', 'grip_to: 5 mm']],
    rule: 'stack-outside-grip',
    on: 'grip_to: 5 mm',
  },
  {
    ...hold,
    name: 'joint: 16 of 18 rivets were set',
    changes: [['count_done: 18', 'count_done: 16']],
    rule: 'fasteners-set-not-recorded',
    on: 'count_done: 16',
  },
  {
    ...hold,
    name: 'adhesive: out of date',
    changes: [['expires: 2027-01-31', 'expires: 2026-08-31']],
    rule: 'adhesive-out-of-date',
    on: 'expires: 2026-08-31',
  },
  {
    ...stop,
    name: 'adhesive: closed after its open time',
    changes: [['closed_after: 25 min', 'closed_after: 75 min']],
    rule: 'adhesive-past-open-time',
    on: 'closed_after: 75 min',
  },
  {
    ...hold,
    name: 'adhesive: cured before the joint was made',
    changes: [['cured: 2026-09-08T10:00', 'cured: 2026-09-06T10:00']],
    rule: 'cured-before-joined',
    on: 'cured: 2026-09-06T10:00',
  },
  {
    ...hold,
    name: 'adhesive: driven before it had cured',
    changes: [['cured: 2026-09-08T10:00', 'cured: 2026-09-15T18:00']],
    rule: 'loaded-before-cure',
    on: 'cured: 2026-09-15T18:00',
  },
  {
    ...hold,
    name: 'aluminium: worked with the tools of steel',
    changes: [['own_tools: true', 'own_tools: false']],
    rule: 'aluminium-without-own-tools',
    on: 'own_tools: false',
  },
  {
    ...hold,
    name: 'aluminium: bare rivets',
    changes: [[', coating: zinc flake', '']],
    rule: 'fastener-coating-not-named',
    on: 'fastener: {',
  },
  {
    ...stop,
    name: 'bolts: those of the beam are used again',
    changes: [['one_time: renewed', 'one_time: used again']],
    rule: 'one-time-bolts-used-again',
    on: 'one_time: used again',
  },
  {
    ...hold,
    name: 'protection: sealed before the rail was in',
    changes: [
      ['sealer: { planned: true, done: 2026-09-08T16:00', 'sealer: { planned: true, done: 2026-09-04T16:00'],
    ],
    rule: 'sealed-before-the-joint',
    on: 'done: 2026-09-04T16:00',
  },
  {
    ...hold,
    name: 'refinish: a radar looks through the cover, and no page tells how thick the paint may be',
    changes: [['radar_behind: false', 'radar_behind: true']],
    rule: 'film-before-radar-uncited',
    on: 'do: refinish',
  },
  {
    ...hold,
    name: 'calibration: the steering angle before the wheels are set',
    changes: [['done: 2026-09-15T14:00', 'done: 2026-09-15T09:00']],
    rule: 'out-of-order',
    on: 'done: 2026-09-15T09:00',
  },
  {
    ...hold,
    name: 'alignment: not required, by no page',
    changes: [['result: within range\n    cite: { reference: wheels, at: p. 5 }', 'result: not required']],
    rule: 'check-not-recorded',
    on: 'alignment:',
  },
  {
    ...hold,
    name: 'scan: the one before the repair is dated after it',
    changes: [['scan_before: { done: 2026-09-02', 'scan_before: { done: 2026-09-08']],
    rule: 'scan-before-after-the-work',
    on: 'scan_before:',
  },
  {
    ...stop,
    plan: ring,
    name: 'restraints: the pretensioner in the ring comes off after the skin on it is welded',
    changes: [
      [
        'name: Front belt left, at: ring-l, state: undeployed, treatment: removed, step: 2',
        'name: Front belt left, at: ring-l, state: undeployed, treatment: removed, step: 15',
      ],
    ],
    rule: 'pyrotechnic-beside-hot-work',
    on: 'part: ring-l, treatment: stays',
  },
  {
    ...hold,
    name: 'joint: no rivet set on trial',
    changes: [['            coupon: { result: passed, date: 2026-09-04 }\n', '']],
    rule: 'no-rivet-set-on-trial',
    on: '- to: tower-l',
  },
  {
    ...hold,
    name: 'joint: the trial piece has no result',
    changes: [['coupon: { result: passed, date: 2026-09-04 }', 'coupon: planned']],
    rule: 'rivet-set-on-trial-without-result',
    on: 'coupon: planned',
  },
  {
    ...hold,
    name: 'part: named left, and its side is stated as right',
    changes: [['kind: strut tower\n    side: left', 'kind: strut tower\n    side: right']],
    rule: 'part-named-for-the-other-side',
    on: 'side: right',
  },
];
