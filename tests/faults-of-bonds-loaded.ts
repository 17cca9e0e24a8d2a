import type { Fault } from './fault.ts';
import { bondedRail } from './faults-of-the-bonded-rail.ts';
import { wholeJob } from './faults-of-the-whole-job.ts';

const hold = { plan: bondedRail, severity: 'hold' } as const;
const stop = { plan: bondedRail, severity: 'stop' } as const;
const beam = 'tightened: 2026-09-11 }\n        done: 2026-09-11';
const coupon = 'coupon: { result: passed, date: 2026-09-04 }';

/**
 * What is hung on a bond, what its coupon and its rivets tell, and what an earlier repair left behind. The rail is bonded on 7 September
 * at ten and cures for 24 hours. Written by a reader who knows the trade; what is a fault is common practice.
 */
export const faultsOfBondsLoaded: readonly Fault[] = [
  {
    ...hold,
    name: 'the beam is bolted to a rail that was bonded in the morning',
    changes: [[beam, 'tightened: 2026-09-07T15:00 }\n        done: 2026-09-07T15:00']],
    rule: 'loaded-before-cure',
    on: 'cured: 2026-09-08T10:00',
  },
  {
    ...hold,
    name: 'the beam goes on before the bond bears handling',
    changes: [
      [beam, 'tightened: 2026-09-07T15:00 }\n        done: 2026-09-07T15:00'],
      ['cured: 2026-09-08T10:00, ', 'cured: 2026-09-08T10:00, handling_time: 6 h, '],
    ],
    rule: 'loaded-before-cure',
    on: 'cured: 2026-09-08T10:00',
  },
  {
    ...hold,
    name: 'the coupon is torn on the day of a joint that cures for 24 hours',
    changes: [[coupon, 'coupon: { result: passed, date: 2026-09-07 }']],
    rule: 'bond-coupon-of-the-day',
    on: 'coupon: {',
  },
  {
    ...hold,
    name: 'the coupon is bonded and torn on one day',
    changes: [[coupon, 'coupon: { result: passed, bonded: 2026-09-04T09:00, date: 2026-09-04 }']],
    rule: 'bond-coupon-torn-wet',
    on: 'coupon: {',
  },
  {
    ...hold,
    name: 'the rail is only bonded, and its coupon shows rivets',
    changes: [
      ['            method: adhesive and rivet\n', '            method: adhesive\n'],
      [coupon, 'coupon: { result: passed, date: 2026-09-04, shows: rivets only }'],
    ],
    rule: 'bond-coupon-without-bond',
    on: 'coupon: {',
  },
  {
    ...stop,
    name: 'rivets of bare steel',
    changes: [['coating: zinc flake', 'coating: bare steel']],
    rule: 'bare-fastener-in-aluminium',
    on: 'coating: bare steel',
  },
  {
    ...stop,
    name: 'the coating of the rivets is none',
    changes: [['coating: zinc flake', 'coating: none']],
    rule: 'bare-fastener-in-aluminium',
    on: 'coating: none',
  },
  {
    ...hold,
    name: 'what stands as the coating of the rivets names none',
    changes: [['coating: zinc flake', 'coating: as delivered']],
    rule: 'fastener-coating-not-named',
    on: 'coating: as delivered',
  },
  {
    ...hold,
    plan: wholeJob,
    name: 'the apron was spliced two years ago, and nobody looked',
    changes: [
      [
        'earlier_repairs: none known',
        "earlier_repairs: 'left front corner welded elsewhere in 2024, apron spliced'",
      ],
    ],
    rule: 'earlier-repair-not-looked-at',
    on: 'earlier_repairs:',
  },
  {
    ...hold,
    plan: wholeJob,
    name: 'the apron was welded before, and is called sound by nothing',
    changes: [
      [
        'earlier_repairs: none known',
        "earlier_repairs: [{ part: apron-l, what: flange welded, when: '2024', state: sound }]",
      ],
    ],
    rule: 'earlier-repair-not-looked-at',
    on: 'earlier_repairs:',
  },
  {
    ...stop,
    plan: wholeJob,
    name: 'the apron was spliced badly, and the new rail is welded to it',
    changes: [
      [
        'earlier_repairs: none known',
        "earlier_repairs: [{ part: apron-l, what: spliced over filler, when: '2024', state: not sound, found_by: cut back }]",
      ],
    ],
    rule: 'earlier-repair-unsound-left',
    on: 'earlier_repairs:',
  },
];
