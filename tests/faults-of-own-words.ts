import type { Fault } from './fault.ts';
import { ring } from './one-change.ts';
import type { Change } from './one-change.ts';
import { batteryOut } from './faults-of-the-battery-out.ts';
import { wholeJob } from './faults-of-the-whole-job.ts';

// What a hostile author writes so that nothing is found: words that begin well, numbers that nobody can check, and silence.

const hold = { plan: wholeJob, severity: 'hold' } as const;
const holdOut = { plan: batteryOut, severity: 'hold' } as const;

/** The row of the rail: the first joint of the plan. */
const row = (from: string, to: string): Change => [from, to];
const fire = / {2}fire: .*\n/u.exec(wholeJob)?.[0] ?? '';
const lifting = / {2}lifting: .*\n/u.exec(wholeJob)?.[0] ?? '';
const units = / {4}units:\n(?: {6}- .*\n)+/u.exec(wholeJob)?.[0] ?? '';
const skin = batteryOut.slice(batteryOut.indexOf('  - id: skin-r'), batteryOut.indexOf('  - id: sill-r'));
const sillWork = batteryOut.slice(
  batteryOut.indexOf('    operations:', batteryOut.indexOf('  - id: sill-r')),
  batteryOut.indexOf('  - id: sill-l'),
);
const inSkin = (from: string, to: string): Change => [skin, skin.replace(from, to)];

export const faultsOfOwnWords: readonly Fault[] = [
  ...[
    'No isolation between battery and body',
    'nothing works',
    'none, except the isolation fault',
    'none known before; warning lit',
  ].map((words) => ({
    ...hold,
    name: `faults left: ${words}`,
    changes: [row('faults: none', `faults: '${words}'`)],
    rule: 'high-voltage-faults-unclear',
    on: 'faults:',
  })),
  ...['none, except the coupon', 'none; coupon of the sill still open', 'none open besides the scan'].map(
    (words) => ({
      ...hold,
      name: `open holds: ${words}`,
      changes: [row('open_holds: none', `open_holds: '${words}'`)],
      rule: 'signature-tells-of-holds',
      on: 'open_holds:',
    }),
  ),
  {
    ...hold,
    name: 'a rail held by one spot, the factory said to have made one',
    changes: [
      row(
        'factory_count: 24\n            count: 32\n            count_done: 32',
        'factory_count: 1\n            count: 1\n            count_done: 1',
      ),
    ],
    rule: 'member-held-by-few',
    on: 'joints:',
  },
  {
    ...hold,
    name: 'a rail held by three spots, the factory said to have made two',
    changes: [
      row(
        'factory_count: 24\n            count: 32\n            count_done: 32',
        'factory_count: 2\n            count: 3\n            count_done: 3',
      ),
    ],
    rule: 'member-held-by-few',
    on: 'joints:',
  },
  {
    ...hold,
    name: 'a bracket of the structure held by two plugs',
    changes: [
      row('kind: front rail\n', 'kind: reinforcement\n'),
      row(
        'factory_count: 24\n            count: 32\n            count_done: 32',
        'factory_count: 2\n            count: 3\n            count_done: 3',
      ),
    ],
    rule: 'structure-held-by-three',
    on: 'joints:',
  },
  {
    ...hold,
    name: 'one spot for 24, by a page that is said to ask for one',
    changes: [
      row(
        '            count: 32\n            count_done: 32',
        '            count: 1\n            count_done: 1\n            pattern: { count: 1, cite: { reference: rail, at: p. 14 } }',
      ),
    ],
    rule: 'pattern-far-below-factory',
    on: 'pattern:',
  },
  ...['200 mm', '320 mm', '2000 mm'].map((pitch) => ({
    ...hold,
    name: `spots of structure ${pitch} apart`,
    changes: [row('pitch: 32 mm', `pitch: ${pitch}`)],
    rule: 'joints-far-apart',
    on: `pitch: ${pitch}`,
  })),
  {
    ...hold,
    name: 'spots 60 mm apart, and nothing said of the factory’s',
    changes: [row('pitch: 32 mm', 'pitch: 60 mm')],
    rule: 'factory-pitch-not-stated',
    on: 'pitch: 60 mm',
  },
  {
    ...hold,
    name: 'nothing said of fire',
    changes: [[fire, '']],
    rule: 'fire-precautions-not-stated',
    on: 'make_safe:',
  },
  {
    ...hold,
    name: 'nothing said of lifting',
    changes: [[lifting, '']],
    rule: 'lifting-points-not-stated',
    on: 'make_safe:',
  },
  {
    ...hold,
    name: 'no list of restraint units',
    changes: [[units, '']],
    rule: 'restraint-units-not-listed',
    on: 'restraints:',
  },
  {
    ...hold,
    name: 'a radar calibrated by no page',
    changes: [row(', cite: { reference: assist, at: p. 9 }', '')],
    rule: 'calibrated-by-no-page',
    on: 'sensor: front radar',
  },
  {
    ...hold,
    name: 'nothing looked at when the voltage went on again',
    changes: [row('    checked: [connectors, enclosure, mounting, coolant]\n', '')],
    rule: 're-commissioning-looked-at-nothing',
    on: 'high_voltage:\n    done:',
  },
  {
    ...hold,
    name: 'no wait for the restraints, and none asked',
    changes: [row('wait: 10 min\n    wait_asked: 10 min', 'wait: 0 s\n    wait_asked: 0 s')],
    rule: 'restraint-wait-not-credible',
    on: 'wait: 0 s',
  },
  {
    ...hold,
    name: 'no wait for the capacitors, and none asked',
    changes: [row('wait: 10 min, wait_asked: 5 min', 'wait: 0 s, wait_asked: 0 s')],
    rule: 'isolation-wait-not-credible',
    on: 'wait: 0 s',
  },
  {
    ...hold,
    name: 'two millimetres of paint before a radar, 20 let be',
    changes: [row('film: 0.14 mm\n        film_limit: 0.2 mm', 'film: 2 mm\n        film_limit: 20 mm')],
    rule: 'film-limit-not-credible',
    on: 'film_limit:',
  },
  {
    plan: wholeJob,
    severity: 'stop',
    name: 'live cables in the zone of the weld',
    changes: [
      row(
        '    battery_condition: sound\n',
        '    battery_condition: sound\n    cables_in_zone: two, live, in the weld zone\n',
      ),
    ],
    rule: 'cables-live-in-the-zone',
    on: 'cables_in_zone:',
  },
  {
    ...hold,
    name: 'cables in the zone of the weld, left in place',
    changes: [
      row(
        '    battery_condition: sound\n',
        '    battery_condition: sound\n    cables_in_zone: two orange cables, left in place\n',
      ),
    ],
    rule: 'cable-left-in-the-zone',
    on: 'cables_in_zone:',
  },
  {
    ...hold,
    name: 'a scan that was made and was not possible',
    changes: [row('scan_after: { done', 'scan_after: { not_possible: takes no current, done')],
    rule: 'scan-said-not-possible',
    on: 'scan_after:',
  },
  {
    ...hold,
    name: 'a rail joined to itself',
    changes: [row('- to: apron-l', '- to: rail-l')],
    rule: 'entry-names-itself',
    on: '- to: rail-l',
  },
  {
    ...hold,
    name: 'a rail under itself',
    changes: [
      row(
        '    condition: new\n    damage: { kind: kink',
        '    under: rail-l\n    condition: new\n    damage: { kind: kink',
      ),
    ],
    rule: 'entry-names-itself',
    on: 'under: rail-l',
  },
  {
    ...holdOut,
    name: 'a skin and a sill that hide each other',
    changes: [row('    over: sill-r\n', '    over: sill-r\n    under: sill-r\n')],
    rule: 'entry-names-itself',
    on: 'under: sill-r',
  },
  {
    ...hold,
    name: 'a zero point that is named twice',
    changes: [row('zero_points: [Z1, Z2, Z3, Z4]', 'zero_points: [Z1, Z1, Z2, Z3, Z4]')],
    rule: 'entry-listed-twice',
    on: 'zero_points:',
  },
  {
    ...holdOut,
    name: 'the sill replaced twice',
    changes: [
      [
        sillWork,
        sillWork.trimEnd() +
          sillWork.replace('    operations:', '').replace('step: 20', 'step: 21').trimEnd() +
          '\n\n',
      ],
    ],
    rule: 'entry-listed-twice',
    on: '- do: replace\n        step: 21',
  },
  {
    ...hold,
    name: '3200 spots made of 32',
    changes: [row('count_done: 32', 'count_done: 3200')],
    rule: 'joints-made-far-more',
    on: 'count_done:',
  },
  {
    ...hold,
    name: 'spots 900 mm from the edge',
    changes: [row('edge: 9 mm\n            overlap: 18 mm', 'edge: 900 mm\n            overlap: 1800 mm')],
    rule: 'spot-edge-not-credible',
    on: 'edge: 900 mm',
  },
  {
    ...hold,
    name: 'nothing sensitive for 900 m around',
    changes: [row('clear_within: 300 mm', 'clear_within: 900 m')],
    rule: 'clear-distance-not-credible',
    on: 'clear_within:',
  },
  {
    ...holdOut,
    name: 'one spot of thirty on the sill skin',
    changes: [inSkin('count: 36\n            count_done: 36', 'count: 1\n            count_done: 1')],
    rule: 'row-of-skin-short',
    on: 'count: 1\n',
  },
  {
    ...holdOut,
    name: 'the sill skin never fitted',
    changes: [[skin, skin.replaceAll(/^ {8,12}done: .*\n/gmu, '')]],
    rule: 'skin-not-recorded-done',
    on: '- do: replace\n        step: 30',
  },
  {
    ...holdOut,
    name: 'nobody counted the spots of the skin',
    changes: [inSkin('            count_done: 36\n', '')],
    rule: 'joints-of-skin-not-recorded',
    on: 'count: 36',
  },
  {
    ...holdOut,
    name: 'no coupon for the skin',
    changes: [
      inSkin(
        'coupon: { result: passed, date: 2026-09-15, nugget: 4.8 mm, failure: button }',
        'coupon: planned',
      ),
    ],
    rule: 'coupon-of-skin-not-passed',
    on: 'coupon: planned',
  },
  {
    ...holdOut,
    name: 'the sill out through a skin that nobody opens',
    changes: [[skin, skin.slice(0, skin.indexOf('    operations:')) + '\n']],
    rule: 'replaced-under-closed-layer',
    on: 'under: skin-r',
  },
  {
    ...holdOut,
    name: 'the skin on before the sill is in',
    changes: [inSkin('step: 30', 'step: 10')],
    rule: 'skin-on-before-the-layer',
    on: 'step: 10',
  },
  {
    ...holdOut,
    name: 'the steps say one order and the days another',
    changes: [row('step: 20\n', 'step: 31\n')],
    rule: 'step-against-its-day',
    on: 'step: 30',
  },
  {
    ...hold,
    name: 'a rail joined to apron and floor, welded to the apron alone',
    changes: [
      row(
        '    condition: new\n    damage: { kind: kink',
        '    joined_to: [apron-l, floor]\n    condition: new\n    damage: { kind: kink',
      ),
    ],
    rule: 'neighbour-not-joined',
    on: 'joined_to:',
  },
  {
    ...hold,
    name: 'a rear radar that answers for the one behind the front cover',
    changes: [row('sensor: front radar', 'sensor: rear corner radar')],
    rule: 'calibration-missing',
    on: 'calibrations:',
  },
  ...['omitted', 'to be done later', 'not used', 'None in stock, next week'].map((words) => ({
    ...hold,
    name: `cavity wax: ${words}`,
    changes: [row('wax: Through the drawn holes after all heat', `wax: '${words}'`)],
    rule: 'closed-section-unprotected',
    on: '- id: rail-l',
  })),
  {
    ...hold,
    name: 'primed with nothing',
    changes: [row('product: Two-part epoxy }', 'product: not used }')],
    rule: 'bared-metal-primer-not-recorded',
    on: 'primer: { planned',
  },
  {
    ...hold,
    name: 'sealed nowhere',
    changes: [row('places: Rail to apron and every seam that was opened', 'places: nowhere')],
    rule: 'sealer-not-recorded',
    on: 'sealer:',
  },
  {
    severity: 'hold',
    plan: ring,
    name: 'control units: no',
    changes: [row('control_units: None within 300 mm of the current path.', 'control_units: no')],
    rule: 'earth-clamp-and-units-not-stated',
    on: '- do: section',
  },
  {
    ...hold,
    name: 'a signature whose qualification has run out',
    changes: [
      row(
        'role: workshop lead, qualification: body structure level 3',
        'role: workshop lead, qualification: expired 2019',
      ),
    ],
    rule: 'signer-without-qualification',
    on: 'sign_off:',
  },
];

/** What looks like one of these and is none. */
export const nearMissesOfOwnWords: readonly (readonly [
  name: string,
  plan: string,
  changes: readonly Change[],
])[] = [
  ['no fault left, in two words', wholeJob, [row('faults: none', 'faults: None left.')]],
  ['no hold open, all answered', wholeJob, [row('open_holds: none', 'open_holds: none; all answered')]],
  [
    'a rail of nine joints by the page that shows nine',
    wholeJob,
    [
      row(
        'factory_count: 24\n            count: 32\n            count_done: 32',
        'factory_count: 7\n            factory_count_from: { reference: rail, at: p. 9 }\n            count: 10\n            count_done: 10',
      ),
    ],
  ],
  ['spots 50 mm apart', wholeJob, [row('pitch: 32 mm', 'pitch: 50 mm')]],
  [
    'spots 60 mm apart, as the factory’s are',
    wholeJob,
    [row('pitch: 32 mm', 'pitch: 60 mm\n            factory_pitch: 55 mm')],
  ],
  [
    'a minute waited, as an old page asks',
    wholeJob,
    [row('wait: 10 min, wait_asked: 5 min', 'wait: 5 min, wait_asked: 1 min')],
  ],
  ['a film of half a millimetre let be', wholeJob, [row('film_limit: 0.2 mm', 'film_limit: 0.5 mm')]],
  ...['none', 'two, unplugged and laid aside', 'Isolated, proved dead and tied back'].map(
    (words) =>
      [
        `cables in the zone: ${words}`,
        wholeJob,
        [
          row(
            '    battery_condition: sound\n',
            `    battery_condition: sound\n    cables_in_zone: '${words}'\n`,
          ),
        ],
      ] as const,
  ),
  ['a spot more than planned', wholeJob, [row('count_done: 32', 'count_done: 34')]],
  ['looked around for 11 m', wholeJob, [row('clear_within: 300 mm', 'clear_within: 11 m')]],
  [
    'a neighbour that is welded on, and one that is bolted',
    wholeJob,
    [
      row(
        '    condition: new\n    damage: { kind: kink',
        '    joined_to: [apron-l, link-l, cover]\n    condition: new\n    damage: { kind: kink',
      ),
    ],
  ],
  ['a radar whose name says no end', wholeJob, [row('sensor: front radar', 'sensor: radar')]],
  [
    'as many spots on the skin as the factory',
    batteryOut,
    [inSkin('count: 36\n            count_done: 36', 'count: 30\n            count_done: 30')],
  ],
  ['the skin and the sill at one step', batteryOut, [inSkin('step: 30', 'step: 20')]],
  ['the skin over the sill and the sill under the skin', batteryOut, []],
  [
    'a wax that begins like a no',
    wholeJob,
    [row('wax: Through the drawn holes after all heat', 'wax: No-drip wax no. 4')],
  ],
  [
    'no control unit near, in a sentence',
    wholeJob,
    [
      row(
        'control_units: Unplugged in the engine bay.',
        'control_units: None within 300 mm of the current path.',
      ),
    ],
  ],
];
