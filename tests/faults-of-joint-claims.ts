import type { Fault } from './fault.ts';
import { pluggedRing } from './faults-of-joints.ts';
import { hemmedDoor } from './faults-of-seams.ts';
import { ring } from './one-change.ts';
import type { Change } from './one-change.ts';

const hold = { plan: ring, severity: 'hold' } as const;

/** A distance to the edge, and the page that is said to ask for it. */
export const edgeByPage = (mm: string): Change => [
  'edge: 9 mm',
  `edge: ${mm}\n            pattern: { edge: ${mm}, cite: { reference: ring, at: p. 14 } }`,
];
/** A row of which the factory is said to have made few. */
export const fewInAll: Change = [
  'factory_count: 42\n            count: 56',
  'factory_count: 12\n            count: 16',
];
export const noWordOnAdhesive: Change = ['            factory_adhesive: false\n', ''];
const hemAdhesive = /factory_adhesive: true[\s\S]*?(?=record: B)/u.exec(hemmedDoor)?.[0] ?? '';

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
];
