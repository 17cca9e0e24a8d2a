import type { Fault } from './fault.ts';
import { electric, rail, ring, skin } from './one-change.ts';

const booth = (entries: string): readonly [string, string] => [
  'finish:\n',
  `finish:\n  bake: { ${entries} }\n`,
];
const inTheVehicle =
  'traction_battery: in the vehicle, battery_limit: { temperature: 60 °C, time: 45 min, cite: { reference: hv, at: p. 9 } }';
const outOfBooth = ['    battery_removed: true\n', ''] as const;
const seenPlanned = 'planned: Battery off and covered, key kept in the office.';
const belt = (more: string): readonly [string, string] => [
  'parts:\n',
  `parts:\n  - { id: belt, name: Front belt, kind: restraint unit, ${more} }\n`,
];

/** Steps that are stated in part, in the wrong words or against each other; fire, gas, lifting, restraint units. */
export const faultsOfMakingSafe: readonly Fault[] = [
  {
    name: 'the isolation neither planned nor done',
    plan: electric,
    changes: [['isolation: { planned: true, ', 'isolation: { ']],
    rule: 'high-voltage-not-isolated',
    severity: 'hold',
    on: 'isolation:',
  },
  {
    name: 'the proof neither planned nor done',
    plan: electric,
    changes: [
      ['proof_of_absence: { planned: true }', 'proof_of_absence: { cite: { reference: hv, at: p. 9 } }'],
    ],
    rule: 'absence-of-voltage-not-planned',
    severity: 'hold',
    on: 'proof_of_absence:',
  },
  {
    name: 'high voltage refused as a whole and planned in its parts',
    plan: electric,
    changes: [['  high_voltage:\n    planned: true\n', '  high_voltage:\n    planned: false\n']],
    rule: 'high-voltage-not-isolated',
    severity: 'hold',
    on: 'isolation:',
  },
  {
    name: 'the restraints neither planned nor done',
    plan: ring,
    changes: [['  restraints:\n    planned: true\n', '  restraints:\n']],
    rule: 'restraints-not-stated',
    severity: 'hold',
    on: 'restraints:\n',
  },
  {
    name: 'the batteries disconnected on a day that has not come',
    plan: ring,
    changes: [[seenPlanned, 'done: 2027-06-01']],
    rule: 'entry-dated-ahead',
    severity: 'hold',
    on: 'done: 2027-06-01',
  },
  ...['battery stays connected', 'Battery maintainer left on to keep memory', 'Will be skipped'].map(
    (words): Fault => ({
      name: `a step in words that refuse it: ${words}`,
      plan: ring,
      changes: [[seenPlanned, `planned: ${words}`]],
      rule: 'entry-wrong-kind',
      severity: 'hold',
      on: `planned: ${words}`,
    }),
  ),
  {
    name: 'isolated by somebody who is to be named',
    plan: electric,
    changes: [['name: L. Brandt', 'name: to be named']],
    rule: 'high-voltage-person-not-named',
    severity: 'hold',
    on: 'isolation:',
  },
  {
    name: 'isolated with no qualification yet',
    plan: electric,
    changes: [['qualification: high-voltage level 2', 'qualification: none yet']],
    rule: 'high-voltage-person-not-qualified',
    severity: 'hold',
    on: 'isolation:',
  },
  {
    name: 'a welded-in sill baked "off the vehicle"',
    plan: electric,
    changes: [
      outOfBooth,
      [
        '      - do: replace\n',
        '      - { do: bake, temperature: 80 °C, hold: 40 min, off_vehicle: true }\n      - do: replace\n',
      ],
    ],
    rule: 'bake-over-battery-limit',
    severity: 'stop',
    on: '- { do: bake',
  },
  {
    name: 'a bake without figures beside one that has them',
    plan: electric,
    changes: [
      outOfBooth,
      booth(`temperature: 55 °C, time: 40 min, ${inTheVehicle}`),
      ['      - do: replace\n', '      - { do: bake }\n      - do: replace\n'],
    ],
    rule: 'bake-over-battery-limit',
    severity: 'hold',
    on: '- { do: bake',
  },
  {
    name: 'two bakes that are together longer than the battery bears',
    plan: electric,
    changes: [
      outOfBooth,
      booth(`temperature: 60 °C, time: 40 min, ${inTheVehicle}`),
      [
        '      - do: replace\n',
        '      - { do: bake, temperature: 60 °C, hold: 20 min }\n      - do: replace\n',
      ],
    ],
    rule: 'bakes-together-longer-than-battery-limit',
    severity: 'hold',
    on: 'bake: {',
  },
  {
    name: 'paint dried by a lamp of which no temperature is stated',
    plan: electric,
    changes: [
      outOfBooth,
      ['      - do: replace\n', '      - { do: refinish, source: infra-red panel }\n      - do: replace\n'],
    ],
    rule: 'bake-over-battery-limit',
    severity: 'hold',
    on: '- { do: refinish',
  },
  {
    name: 'the battery out for the bake, and not out for the work',
    plan: electric,
    changes: [
      ['    battery_removed: true\n', '    battery_removed: false\n'],
      booth('temperature: 80 °C, time: 40 min, traction_battery: removed'),
    ],
    rule: 'bake-over-battery-limit',
    severity: 'hold',
    on: 'bake: {',
  },
  {
    name: 'the battery out by one word, and nobody takes it out',
    plan: skin,
    changes: [
      ['drive: combustion', 'drive: battery-electric'],
      [
        'parts:\n',
        'finish: { bake: { temperature: 80 °C, time: 40 min, traction_battery: removed } }\nmake_safe: { high_voltage: { battery_condition: sound } }\nparts:\n',
      ],
    ],
    rule: 'high-voltage-not-isolated',
    severity: 'stop',
    on: 'make_safe:',
  },
  {
    name: 'an electric vehicle is painted and nobody says how the paint dries',
    plan: skin,
    changes: [['drive: combustion', 'drive: battery-electric']],
    rule: 'paint-cure-not-stated',
    severity: 'hold',
    on: 'parts:',
  },
  {
    name: 'a gas vehicle is welded and no cylinder is mentioned',
    plan: ring,
    changes: [['drive: combustion', 'drive: [combustion, natural-gas]']],
    rule: 'gas-cylinder-not-mentioned',
    severity: 'hold',
    on: 'drive:',
  },
  {
    name: 'a fire watch of a second',
    plan: ring,
    changes: [['  low_voltage:\n', '  fire: { planned: true, watch: 1 s }\n  low_voltage:\n']],
    rule: 'fire-watch-of-the-job-too-short',
    severity: 'hold',
    on: 'fire:',
  },
  {
    name: 'the fuel tank removed beside the work, and left by the fire list',
    plan: ring,
    changes: [
      [
        '  low_voltage:\n',
        '  fire: { planned: true, fluids: [{ item: fuel tank, treatment: stays }] }\n  low_voltage:\n',
      ],
      ['        near: []\n', '        near: [{ item: fuel tank, distance: 400 mm, treatment: removed }]\n'],
    ],
    rule: 'fuel-lists-disagree',
    severity: 'hold',
    on: 'fire:',
  },
  {
    name: 'lifted on the sill to which the new ring is welded',
    plan: ring,
    changes: [['  low_voltage:\n', '  lifting: { planned: true, points: [sill-inner-l] }\n  low_voltage:\n']],
    rule: 'lifted-beside-the-work',
    severity: 'stop',
    on: 'lifting:',
  },
  {
    name: 'lifted on a kinked sill that nothing is done to',
    plan: skin,
    changes: [
      [
        'parts:\n',
        'make_safe: { lifting: { planned: true, points: [sill] } }\nparts:\n  - { id: sill, kind: sill, damage: { kind: kink, found_by: seen } }\n',
      ],
    ],
    rule: 'lifted-on-damaged-part',
    severity: 'hold',
    on: '- { id: sill',
  },
  {
    name: 'a deployed pretensioner refitted',
    plan: skin,
    changes: [belt('damage: { kind: deployed, found_by: seen }, operations: [{ do: remove and refit }]')],
    rule: 'deployed-unit-refitted',
    severity: 'stop',
    on: '- { id: belt',
  },
  {
    name: 'a second-hand pretensioner',
    plan: skin,
    changes: [
      belt('condition: recycled, damage: { kind: none, found_by: seen }, operations: [{ do: replace }]'),
    ],
    rule: 'second-hand-restraint-unit',
    severity: 'stop',
    on: '- { id: belt',
  },
  {
    name: 'a deployed unit listed as a part, and no list of what is replaced',
    plan: skin,
    changes: [
      belt('damage: { kind: deployed, found_by: seen }, operations: [{ do: replace, extent: whole }]'),
    ],
    rule: 'deployed-without-replacement-list',
    severity: 'stop',
    on: 'parts:',
  },
  {
    name: 'heat read by a probe that is long out of calibration',
    plan: rail,
    changes: [['means: temperature crayon', 'means: contact probe, calibration_due: 2020-01-01']],
    rule: 'heat-instrument-overdue',
    severity: 'hold',
    on: 'measured_by:',
  },
  {
    name: 'a rail cooled with a wet cloth',
    plan: rail,
    changes: [['cooling: still air', 'cooling: wet cloth']],
    rule: 'heat-quenched',
    severity: 'hold',
    on: 'cooling:',
  },
];
