import type { Fault } from './fault.ts';
import { bondedRail } from './faults-of-the-bonded-rail.ts';

const hold = { plan: bondedRail, severity: 'hold' } as const;
const onAdhesive = 'adhesive: { product';

/** The rail is bonded on 7 September at ten, has cured on the 8th at ten, and is measured on the 12th. Common practice. */
export const faultsOfCuring: readonly Fault[] = [
  {
    ...hold,
    name: 'measured on the day on which it was bonded',
    changes: [['after: 2026-09-12\n', 'after: 2026-09-07\n']],
    rule: 'measured-before-cure',
    on: onAdhesive,
  },
  {
    ...hold,
    name: 'measured an hour before the cure that is recorded',
    changes: [['after: 2026-09-12\n', 'after: 2026-09-08T09:00\n']],
    rule: 'measured-before-cure',
    on: onAdhesive,
  },
  {
    ...hold,
    name: 'measured 23 hours after the bond, where the cure takes 24 and nobody wrote when it was over',
    changes: [
      ['cured: 2026-09-08T10:00, ', ''],
      ['after: 2026-09-12\n', 'after: 2026-09-08T09:00\n'],
    ],
    rule: 'measured-before-cure',
    on: onAdhesive,
  },
  {
    ...hold,
    name: 'measured before the bond bears handling',
    changes: [
      ['cured: 2026-09-08T10:00, ', 'handling_time: 6 h, '],
      ['after: 2026-09-12\n', 'after: 2026-09-07T15:30\n'],
    ],
    rule: 'measured-before-cure',
    on: onAdhesive,
  },
  {
    ...hold,
    name: 'measured two days after the bond, and nobody wrote how long it cures',
    changes: [
      ['cure: 24 h at 23 °C, cured: 2026-09-08T10:00', 'cure: by its data sheet'],
      ['after: 2026-09-12\n', 'after: 2026-09-09\n'],
    ],
    rule: 'cure-not-told-at-measuring',
    on: onAdhesive,
  },
  {
    ...hold,
    name: 'an adhesive that cures in the booth, and nobody wrote when it was in it',
    changes: [['cure: 24 h at 23 °C, cured: 2026-09-08T10:00', 'cure: 30 min at 80 °C']],
    rule: 'cure-not-told-at-measuring',
    on: onAdhesive,
  },
  {
    ...hold,
    name: 'cured in two hours, where it takes a day',
    changes: [['cured: 2026-09-08T10:00', 'cured: 2026-09-07T12:00']],
    rule: 'cured-too-soon',
    on: 'cured: 2026-09-07T12:00',
  },
  {
    ...hold,
    name: 'driven within the day that it cures, and nobody wrote when it was over',
    changes: [
      ['cured: 2026-09-08T10:00, ', ''],
      ['road_test: { done: 2026-09-15T16:00', 'road_test: { done: 2026-09-08T08:00'],
    ],
    rule: 'loaded-before-cure',
    on: onAdhesive,
  },
  {
    ...hold,
    name: 'on the ramp for the alignment before it had cured',
    changes: [['  alignment:\n    done: 2026-09-15T10:00', '  alignment:\n    done: 2026-09-08T09:00']],
    rule: 'loaded-before-cure',
    on: 'cured: 2026-09-08T10:00',
  },
];
