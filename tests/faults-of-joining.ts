import { readFileSync } from 'node:fs';
import type { Fault } from './fault.ts';
import { bondedRail } from './faults-of-the-bonded-rail.ts';
import { wholeJob } from './faults-of-the-whole-job.ts';
import { changed } from './one-change.ts';

const sill = readFileSync('examples/plans/sill-with-battery-out.yaml', 'utf8');
const spots = wholeJob.slice(
  wholeJob.indexOf('            method: resistance spot\n'),
  wholeJob.indexOf(
    '            factory_adhesive: false\n            coupon: { result: passed, date: 2026-10-05',
  ),
);

/** The rail of the whole job cut at K1 and welded to its stub over an insert, as its page draws it. Cleared. */
export const seamedRail = changed(wholeJob, [
  [
    'extent: whole\n        cite: { reference: rail, at: p. 8-16 }',
    'extent: part\n        at: K1\n        cite: { reference: rail, at: p. 8-16 }',
  ],
  [
    spots,
    `            method: arc seam
            form: butt with insert
            sheets: [rail-l, apron-l]
            insert: { length_each_side: 30 mm, grade: HC340LA, thickness: 1.4 mm }
            gap: 2.5 mm
            filler: G3Si1
            gas: M21
            drawn: true
            settings: { voltage: 17 V, current: 90 A, travel_speed: 8 mm/s }
            cite: { reference: rail, at: p. 12 }
`,
  ],
  [
    '            factory_adhesive: false\n            coupon: { result: passed, date: 2026-10-05, nugget: 6 mm, failure: button }',
    '            coupon: { result: passed, date: 2026-10-05 }',
  ],
  ["qualification: 'resistance spot, steel'", "qualification: 'ISO 9606-1 135, steel'"],
]);

const spot = { plan: wholeJob, severity: 'hold' } as const;
const bond = { plan: bondedRail, severity: 'hold' } as const;
const seam = { plan: seamedRail, severity: 'hold' } as const;
const skin = { plan: sill, severity: 'hold' } as const;
const byRivet = '            method: adhesive and rivet\n            factory_method: adhesive and rivet\n';
const withMethod = (method: string): string =>
  `            method: ${method}\n            factory_method: ${method}\n`;

/** One thing wrong in a joint, from the handbook of joining. Written by a reader who knows the trade; common practice where no standard is named. */
export const faultsOfJoining: readonly Fault[] = [
  {
    ...spot,
    name: 'sealer between the sheets of the spots, by no page',
    changes: [['flange_coat: factory coat left whole', 'flange_coat: sealer']],
    rule: 'sealer-between-spots-uncited',
    on: 'flange_coat: sealer',
  },
  {
    ...spot,
    name: 'spots set where the old ones were drilled out',
    changes: [['            edge: 9 mm\n', '            edge: 9 mm\n            old_holes: used again\n']],
    rule: 'spots-on-old-holes',
    on: 'old_holes: used again',
  },
  {
    ...spot,
    name: 'one gap of 90 mm in a row of 32 mm',
    changes: [['pitch: 32 mm', 'pitch: 32 mm\n            widest_gap: 90 mm']],
    rule: 'factory-pitch-not-stated',
    on: 'widest_gap: 90 mm',
  },
  {
    ...seam,
    name: 'steel wire under argon alone',
    changes: [['gas: M21', 'gas: argon 4.6']],
    rule: 'inert-gas-on-steel-wire',
    on: 'gas: argon 4.6',
  },
  {
    ...seam,
    name: 'nitrogen for the seam',
    changes: [['gas: M21', 'gas: nitrogen']],
    rule: 'unfit-gas',
    on: 'gas: nitrogen',
  },
  {
    ...seam,
    name: 'tungsten in mixed gas',
    changes: [['method: arc seam', 'method: TIG seam']],
    rule: 'active-gas-on-tungsten',
    on: 'gas: M21',
  },
  {
    ...seam,
    name: 'six times the heat that the sheet takes',
    changes: [['current: 90 A, travel_speed: 8 mm/s', 'current: 200 A, travel_speed: 3 mm/s']],
    rule: 'arc-melts-too-wide',
    on: 'settings: {',
  },
  {
    ...seam,
    name: 'an arc that hardly warms the sheet',
    changes: [['current: 90 A, travel_speed: 8 mm/s', 'current: 20 A, travel_speed: 15 mm/s']],
    rule: 'arc-hardly-melts',
    on: 'settings: {',
  },
  {
    ...seam,
    name: 'sealer under the arc',
    changes: [['            gap: 2.5 mm\n', '            gap: 2.5 mm\n            flange_coat: sealer\n']],
    rule: 'sealer-under-arc',
    on: 'flange_coat: sealer',
  },
  {
    ...seam,
    name: 'stainless wire in a seam that no page draws',
    changes: [
      ['filler: G3Si1', 'filler: G 19 9 L Si'],
      ['drawn: true', 'drawn: false'],
    ],
    rule: 'stainless-wire-on-body-steel',
    on: 'filler: G 19 9',
  },
  {
    ...bond,
    severity: 'stop',
    name: 'aluminium under mixed gas',
    changes: [
      [byRivet, '            method: aluminium arc\n            filler: AlMg5\n            gas: M21\n'],
    ],
    rule: 'active-gas-on-aluminium',
    on: 'gas: M21',
  },
  {
    ...bond,
    name: 'the bond is to cure at 5 °C',
    changes: [['cure: 24 h at 23 °C', 'cure: 24 h at 5 °C']],
    rule: 'cure-too-cold',
    on: 'adhesive: {',
  },
  {
    ...bond,
    name: 'bonded without its rivets',
    changes: [['            method: adhesive and rivet\n', '            method: adhesive\n']],
    rule: 'bond-without-its-rivets',
    on: '            method: adhesive\n'.trim(),
  },
  {
    ...bond,
    name: 'how soon the bond was closed is not recorded',
    changes: [['closed_after: 25 min, ', '']],
    rule: 'closing-of-bond-not-recorded',
    on: 'adhesive: {',
  },
  {
    ...bond,
    name: 'rivets of 3 mm in sheet of 2.5 mm',
    changes: [['6.5, kind: structural, diameter: 6.5 mm', '3, kind: structural, diameter: 3 mm']],
    rule: 'rivet-thin-for-sheet',
    on: 'fastener: {',
  },
  {
    ...bond,
    name: 'self-piercing rivets through hardened steel, by a page on riveting in general',
    changes: [
      [byRivet, `${withMethod('self-piercing rivet')}            drawn: false\n`],
      ['grade: AlSi10MnMg', 'grade: 22MnB5'],
    ],
    rule: 'piercing-of-hardened-steel-not-drawn',
    on: 'method: self-piercing rivet',
  },
  {
    ...bond,
    name: 'flow-drill screws through hardened steel',
    changes: [
      [byRivet, `${withMethod('flow-drill screw')}            drawn: false\n`],
      ['grade: AlSi10MnMg', 'grade: 22MnB5'],
    ],
    rule: 'screw-drilled-through-hardened-steel',
    on: 'method: flow-drill screw',
  },
  {
    ...skin,
    name: 'skin: nobody counted the factory’s spots',
    changes: [['            factory_count: 30\n', '']],
    rule: 'rows-of-skin-not-told',
    on: '- to: sill-r',
  },
  {
    ...skin,
    name: 'skin: buttons of 3 mm',
    changes: [['nugget: 4.6 mm', 'nugget: 3 mm']],
    rule: 'spots-of-skin-too-small',
    on: 'nugget: 3 mm',
  },
  {
    ...skin,
    name: 'skin: spots 4 mm from the edge',
    changes: [['edge: 8 mm', 'edge: 4 mm']],
    rule: 'spots-of-skin-near-edge',
    on: 'edge: 4 mm',
  },
  {
    ...skin,
    name: 'skin: the coupon is torn two days after',
    changes: [['date: 2026-09-15, nugget: 4.8', 'date: 2026-09-18, nugget: 4.8']],
    rule: 'coupon-of-skin-tells-nothing',
    on: 'coupon: { result: passed, date: 2026-09-18',
  },
  {
    ...skin,
    name: 'skin: a gap of 80 mm where the factory had 40',
    changes: [
      ['pitch: 36 mm', 'pitch: 36 mm\n            widest_gap: 80 mm\n            factory_pitch: 40 mm'],
    ],
    rule: 'joints-of-skin-far-apart',
    on: 'widest_gap: 80 mm',
  },
  {
    ...skin,
    name: 'skin: the flange is welded bare',
    changes: [
      [
        'flange_coat: factory coat left whole\n            sheets: [skin-r',
        'flange_coat: bare\n            sheets: [skin-r',
      ],
    ],
    rule: 'flange-of-skin-left-bare',
    on: 'flange_coat: bare',
  },
  {
    ...skin,
    name: 'skin: plug welds on structure of 780 MPa',
    changes: [
      [
        'method: resistance spot\n            form: flange\n            flange_coat: factory coat left whole\n            sheets: [skin-r',
        'method: plug weld\n            form: flange\n            hole: 6 mm\n            sheets: [skin-r',
      ],
    ],
    rule: 'skin-arc-welded-to-advanced-steel',
    on: 'method: plug weld',
  },
];
