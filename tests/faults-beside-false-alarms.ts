import type { Fault } from './fault.ts';
import { rail } from './one-change.ts';
import type { Change } from './one-change.ts';

const pillar = '- { part: a-pillar-r, distance: 60 mm, path: same sheet }';

/** One more neighbour of the heated rail. */
export const neighbour = (entry: string): Change => [pillar, `${pillar}\n          - ${entry}`];

/** The fault beside each good plan that was once held or stopped without cause (near-misses-of-false-alarms.test.ts). */
export const faultsBesideFalseAlarms: readonly Fault[] = [
  ...[
    '{ item: glass, distance: 30 mm, path: through air, treatment: shielded }',
    '{ item: low-voltage battery, distance: 90 mm, path: through air, treatment: shielded }',
    '{ item: refrigerant line, distance: 90 mm, path: through air, treatment: shielded }',
  ].map((entry): Fault => ({
    name: `only shielded beside a heat: ${entry}`,
    plan: rail,
    severity: 'hold',
    changes: [neighbour(entry)],
    rule: 'shield-not-cited',
    on: entry,
  })),
  {
    name: 'glass behind a shield, on the metal that is heated',
    plan: rail,
    severity: 'stop',
    changes: [neighbour('{ item: glass, distance: 30 mm, path: joined, treatment: shielded }')],
    rule: 'neighbour-too-hot',
    on: '{ item: glass',
  },
];
