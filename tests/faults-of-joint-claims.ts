import type { Fault } from './fault.ts';
import { pluggedRing } from './faults-of-joints.ts';
import { bondedQuarter, hemmedDoor, sectionedPost } from './faults-of-seams.ts';
import { batteryOut } from './faults-of-the-battery-out.ts';
import { ring } from './one-change.ts';
import type { Change } from './one-change.ts';

const hold = { plan: ring, severity: 'hold' } as const;

/** A distance to the edge, and the page that is said to ask for it. */
export const edgeByPage = (mm: string): Change => [
  'edge: 9 mm',
  `edge: ${mm}\n            pattern: { edge: ${mm}, cite: { reference: ring, at: p. 14 } }`,
];
/** A button, and the page that is said to ask for it. */
export const buttonByPage = (mm: string): Change => [
  'nugget: 6.2 mm',
  `nugget: ${mm}\n            pattern: { count: 56, nugget: ${mm}, cite: { reference: ring, at: p. 14 } }`,
];
/** A row of which the factory is said to have made few. */
export const fewInAll: Change = [
  'factory_count: 42\n            count: 56',
  'factory_count: 12\n            count: 16',
];
export const noWordOnAdhesive: Change = ['            factory_adhesive: false\n', ''];
const hemAdhesive = /factory_adhesive: true[\s\S]*?(?=record: B)/u.exec(hemmedDoor)?.[0] ?? '';

const coupon = 'coupon: { result: passed, date: 2026-09-14 }';
/** The ring bonded and spot welded, its faces prepared in these words. */
export const bondedRing = (preparation: string): readonly Change[] => [
  [
    'method: resistance spot',
    'method: adhesive and spot\n            factory_method: adhesive and spot\n            cite: { reference: ring, at: p. 14 }',
  ],
  [
    'factory_adhesive: false',
    `factory_adhesive: true\n            adhesive: { product: Two-part A, lot: L-1, expires: 2027-03-31, preparation: "${preparation}", open_time: 60 min, closed_after: 30 min, cure: 24 h at 20 °C }`,
  ],
];
/** The coupon of the seam of the post, of two sheets. */
export const postCoupon = (grade: string): Change => [
  coupon,
  `coupon: { result: passed, date: 2026-09-14, sheets: [{ grade: ${grade}, thickness: 1.5 mm }, { grade: ${grade}, thickness: 1.5 mm }] }`,
];
export const insertOf = (thickness: string): Change => [
  'insert: { length_each_side: 30 mm, grade: HC420LA, thickness: 1.5 mm }',
  `insert: { length_each_side: 30 mm, grade: HC420LA, thickness: ${thickness}, cite: { reference: post, at: p. 9 } }`,
];
/** A drilling on the inner sill, and why. */
export const drilled = (reason: string): Change => [
  '    grade: HC340LA\n    grade_from: { reference: ring, at: p. 4 }\n    thickness: 1.2 mm\n    damage: { kind: none, found_by: measured }\n',
  `    grade: HC340LA\n    grade_from: { reference: ring, at: p. 4 }\n    thickness: 1.2 mm\n    damage: { kind: none, found_by: measured }\n    operations:\n      - { do: drill, step: 15, reason: "${reason}", near: [], clear_within: 300 mm, cite: { reference: ring, at: p. 9 } }\n`,
];
export const productOf = (product: string): Change => ['product: Two-part epoxy B', `product: ${product}`];
export const cureOf = (cure: string): Change => ['cure: 24 h at 23 °C', `cure: ${cure}`];
export const waxOf = (words: string): Change => [
  'wax: Through the drawn holes after all heat',
  `wax: "${words}"`,
];

/** Joints that a claim, a page or silence lets through. Found by a reader who knows the trade; common practice. */
export const faultsOfJointClaims: readonly Fault[] = [
  {
    plan: ring,
    severity: 'stop',
    name: 'spots on the very edge, by a page',
    changes: [edgeByPage('5 mm')],
    rule: 'spot-edge-through-button',
    on: 'edge: 5 mm',
  },
  {
    ...hold,
    name: 'a button below any that is made, by a page',
    changes: [buttonByPage('3.6 mm')],
    rule: 'spot-button-below-any-page',
    on: 'nugget: 3.6 mm',
  },
  {
    ...hold,
    name: 'spots on the bend, by a page',
    changes: [edgeByPage('13 mm')],
    rule: 'spot-far-edge-close',
    on: 'edge: 13 mm',
  },
  {
    ...hold,
    plan: pluggedRing,
    name: 'plug holes that reach the edge, by a page',
    changes: [edgeByPage('4 mm')],
    rule: 'plug-hole-near-edge',
    on: 'edge: 4 mm',
  },
  {
    ...hold,
    name: 'a dozen factory spots on a whole ring, and no length of the flange',
    changes: [fewInAll],
    rule: 'member-of-few-without-length',
    on: 'factory_count: 12',
  },
  {
    ...hold,
    name: 'a dozen factory spots on a bonded ring, and no length of the flange',
    changes: [
      fewInAll,
      ['method: resistance spot', 'method: adhesive and spot'],
      [
        'factory_adhesive: false',
        'factory_adhesive: true\n            adhesive: { product: A, preparation: primed, cure: 24 h at 20 °C }',
      ],
    ],
    rule: 'member-of-few-without-length',
    on: 'factory_count: 12',
  },
  {
    ...hold,
    name: 'spots of a ring, and no word on adhesive between them',
    changes: [noWordOnAdhesive],
    rule: 'factory-adhesive-left-out',
    on: '- to: sill-inner-l',
  },
  {
    plan: ring,
    severity: 'stop',
    name: 'bare spots where the factory bonded and spot welded',
    changes: [['            factory_adhesive: false\n', '            factory_method: adhesive and spot\n']],
    rule: 'factory-adhesive-left-out',
    on: '- to: sill-inner-l',
  },
  {
    ...hold,
    plan: pluggedRing,
    name: 'plugs for spots, and no word on adhesive between them',
    changes: [noWordOnAdhesive],
    rule: 'factory-adhesive-left-out',
    on: '- to: sill-inner-l',
  },
  {
    ...hold,
    plan: hemmedDoor,
    name: 'a hem, and no word on adhesive in it',
    changes: [[hemAdhesive, '']],
    rule: 'factory-adhesive-of-skin-left-out',
    on: '- to: door-fl',
  },
  {
    ...hold,
    name: 'the coat of hardened sheet ground off before the spots',
    changes: bondedRing('AlSi ground off, both faces bright'),
    rule: 'hardened-coat-taken-off',
    on: 'preparation: "AlSi',
  },
  {
    ...hold,
    name: 'a bare flange under adhesive and spots in coated hardened sheet',
    changes: [
      ...bondedRing('wiped as p. 14'),
      [
        'flange_coat: factory coat left whole\n            sheets: [ring-l',
        'flange_coat: bare\n            sheets: [ring-l',
      ],
    ],
    rule: 'hardened-coat-taken-off',
    on: 'flange_coat: bare',
  },
  {
    ...hold,
    plan: sectionedPost,
    name: 'stainless wire in a seam that the page draws',
    changes: [['filler: G3Si1', 'filler: ER308LSi']],
    rule: 'stainless-wire-on-body-steel',
    on: 'filler: ER308LSi',
  },
  {
    ...hold,
    name: 'spots from one side, by the page of the joint',
    changes: [
      [
        'edge: 9 mm',
        'edge: 9 mm\n            access: one side\n            cite: { reference: ring, at: p. 14 }',
      ],
    ],
    rule: 'spot-from-one-side',
    on: 'access: one side',
  },
  {
    ...hold,
    plan: sectionedPost,
    name: 'a coupon of other sheets for a seam that lists none',
    changes: [postCoupon('DC04')],
    rule: 'coupon-of-other-sheets',
    on: 'sheets: [{ grade: DC04',
  },
  {
    ...hold,
    plan: sectionedPost,
    name: 'a coupon of a seam without its day',
    changes: [[coupon, 'coupon: passed']],
    rule: 'coupon-of-seam-not-dated',
    on: 'coupon: passed',
  },
  {
    ...hold,
    plan: sectionedPost,
    name: 'the factory’s zinc left under the arc',
    changes: [['gap: 2 mm', 'gap: 2 mm\n            flange_coat: factory coat left whole']],
    rule: 'coat-left-under-arc-of-structure',
    on: 'flange_coat: factory coat',
  },
  {
    ...hold,
    plan: sectionedPost,
    name: 'an insert of half the thickness, by a page of its own',
    changes: [insertOf('0.8 mm')],
    rule: 'insert-far-thinner',
    on: 'insert: { length',
  },
  {
    ...hold,
    name: 'an opening in the sill under the word drill',
    changes: [drilled('opening 70 mm by 120 mm for the pulling hook, closed again with a plate')],
    rule: 'opening-told-as-drilling',
    on: '- { do: drill',
  },
  {
    ...hold,
    plan: bondedQuarter,
    name: 'a bond cured under a lamp as in the paint oven',
    changes: [cureOf('20 min at 190 °C with the infra-red lamp')],
    rule: 'cure-of-the-paint-oven',
    on: 'cure: 20 min',
  },
  {
    ...hold,
    plan: bondedQuarter,
    name: 'a skin bonded with silicone',
    changes: [productOf('silicone sealant')],
    rule: 'bonded-with-no-adhesive',
    on: 'product: silicone',
  },
  {
    ...hold,
    name: 'wax before the ring is welded',
    changes: [waxOf('Brushed on inside before the ring is set and welded')],
    rule: 'wax-told-before-the-weld',
    on: 'wax: "Brushed',
  },
  {
    ...hold,
    plan: batteryOut,
    name: 'a skin set on before the sill is in',
    changes: [['step: 30', 'step: 5\n        refit_step: 15']],
    rule: 'skin-on-before-the-layer',
    on: 'step: 5',
  },
  {
    ...hold,
    name: 'a radar changed as a sensor, and no calibration',
    changes: [
      [
        '  - id: sill-inner-l\n',
        '  - { id: radar, name: Front radar, kind: sensor, damage: { kind: crack, found_by: seen }, operations: [{ do: replace, extent: whole }] }\n  - id: sill-inner-l\n',
      ],
    ],
    rule: 'checks-not-planned',
    on: 'verify:',
  },
  {
    plan: sectionedPost,
    severity: 'stop',
    name: 'a press-hardened post cut part-way by plasma: there is no permission to type in',
    changes: [
      [
        'name: B-post outer, right\n    kind: b-pillar\n    side: right\n    structural: true\n    grade: HC420LA',
        'name: B-post outer, right\n    kind: b-pillar\n    side: right\n    structural: true\n    grade: 22MnB5',
      ],
      ['cut_with: saw', 'cut_with: plasma'],
    ],
    rule: 'section-press-hardened',
    on: 'do: section',
  },
];
