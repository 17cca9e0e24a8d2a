import type { Fault } from './fault.ts';
import { bondedQuarter } from './faults-of-seams.ts';
import { batteryOut } from './faults-of-the-battery-out.ts';
import { coldRail } from './faults-of-work.ts';
import type { Change } from './one-change.ts';
import { releasedElectric, releasedRing } from './released.ts';

const refinished = '      - { do: refinish, step: 40, film: 0.16 mm, done: 2026-09-24 }\n';
/** Metal work and filler on the skin beside its seam, each with its day or its step. */
export const fillAndPull = (fill: string, pull: string): Change => [
  refinished,
  `      - { do: fill, ${fill} }\n      - { do: straighten, method: cold, cite: { reference: quarter, at: p. 17 }, ${pull} }\n${refinished}`,
];

export const dented = (cite: string): Change => [
  '    kind: traction battery\n    damage: { kind: none, found_by: seen }',
  `    kind: traction battery\n    damage: { kind: dent, found_by: seen${cite} }`,
];
export const tolerable = ', tolerable_by: { reference: hv, at: p. 30 }';

const fire = 'extinguisher: Two of 6 kg beside the bay, watch: 40 min';
export const fluids = (entries: string, plan = fire): Change => [fire, `${plan}, fluids: [${entries}]`];
export const nearTank = (entry: string): Change => [
  '          - { part: ring-l, treatment: stays, distance: 60 mm, path: joined }\n',
  `          - { part: ring-l, treatment: stays, distance: 60 mm, path: joined }\n          - { ${entry} }\n`,
];

/** What was done before the thing that undoes it, and what was never looked at after it. What is a fault is common practice. */
export const faultsOfWhatComesAfter: readonly Fault[] = [
  {
    plan: releasedElectric,
    severity: 'hold',
    name: 'a dented battery called sound, with a page on tolerable dents alone',
    changes: [
      dented(tolerable),
      ['checked: [connectors, enclosure, mounting, coolant]', 'checked: [connectors]'],
    ],
    rule: 'dented-battery-called-sound',
    on: 'battery_condition: sound',
  },
  {
    plan: releasedElectric,
    severity: 'hold',
    name: 'a dented battery called sound, without a page',
    changes: [dented('')],
    rule: 'dented-battery-called-sound',
    on: 'battery_condition: sound',
  },
  {
    plan: bondedQuarter,
    severity: 'hold',
    name: 'filled two days before the panel was pulled',
    changes: [fillAndPull('done: 2026-09-21', 'done: 2026-09-23')],
    rule: 'out-of-order',
    on: 'do: fill',
  },
  {
    plan: bondedQuarter,
    severity: 'hold',
    name: 'painted before the panel was pulled',
    changes: [fillAndPull('done: 2026-09-24', 'done: 2026-09-26')],
    rule: 'out-of-order',
    on: 'do: refinish, step: 40',
  },
  {
    plan: bondedQuarter,
    severity: 'hold',
    name: 'filled before the seam beside it was brazed',
    changes: [fillAndPull('done: 2026-09-21', 'done: 2026-09-21')],
    rule: 'out-of-order',
    on: 'do: fill',
  },
  {
    plan: bondedQuarter,
    severity: 'hold',
    name: 'filled at a step before the one that pulls the panel',
    changes: [fillAndPull('step: 24', 'step: 26')],
    rule: 'filled-before-the-metal-work',
    on: 'do: fill',
  },
  {
    plan: coldRail,
    severity: 'hold',
    name: 'painted at a step before the one that straightens the rail',
    changes: [
      [
        '      - do: straighten\n',
        '      - { do: refinish, step: 5, film: 0.1 mm }\n      - do: straighten\n',
      ],
    ],
    rule: 'filled-before-the-metal-work',
    on: 'do: refinish',
  },
  {
    plan: releasedRing,
    severity: 'stop',
    name: 'a tank emptied outdoors by no page, beside the seam',
    changes: [nearTank('item: fuel tank, treatment: emptied, distance: 120 mm, path: through air')],
    rule: 'fuel-or-gas-emptied-by-no-page',
    on: 'item: fuel tank',
  },
  {
    plan: releasedRing,
    severity: 'hold',
    name: 'a tank emptied outdoors by no page, and nobody says how far off',
    changes: [fluids('{ item: fuel tank, treatment: emptied, place: emptied and aired outdoors }')],
    rule: 'fuel-left-in-place',
    on: 'fire: {',
  },
  {
    plan: batteryOut,
    severity: 'hold',
    name: 'a battery whose state is said to be dented',
    changes: [['battery_condition: sound', 'battery_condition: dented']],
    rule: 'entry-unknown-word',
    on: 'battery_condition: dented',
  },
];
