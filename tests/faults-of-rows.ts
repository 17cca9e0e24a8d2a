import type { Fault } from './fault.ts';
import { pluggedRing, softRing } from './faults-of-joints.ts';
import { ring } from './one-change.ts';
import { releasedRing } from './released.ts';

const hold = { severity: 'hold', plan: ring } as const;
const cite = 'cite: { reference: ring, at: p. 14 } }';

/** Rows that say less than they seem to. What is a fault here is common practice, but for the distances (ISO 14373, from memory). */
export const faultsOfRows: readonly Fault[] = [
  {
    ...hold,
    name: 'a coupon of the year before',
    plan: releasedRing,
    changes: [['date: 2026-10-08, nugget', 'date: 2025-10-08, nugget']],
    rule: 'coupon-of-another-day',
    on: 'coupon: { result: passed',
  },
  {
    name: 'a coupon that failed, on its own line',
    severity: 'stop',
    plan: releasedRing,
    changes: [['result: passed, date', 'result: failed, date']],
    rule: 'coupon-failed',
    on: 'coupon: { result: failed',
  },
  {
    name: 'buttons smaller than the page states, though large enough for the sheet',
    severity: 'stop',
    plan: ring,
    changes: [['count: 56', `count: 56\n            pattern: { count: 42, nugget: 7 mm, ${cite}`]],
    rule: 'pattern-not-kept',
    on: 'pattern: { count: 42',
  },
  {
    name: 'nearer to the edge than the page states',
    severity: 'stop',
    plan: ring,
    changes: [['count: 56', `count: 56\n            pattern: { count: 42, edge: 12 mm, ${cite}`]],
    rule: 'pattern-not-kept',
    on: 'pattern: { count: 42',
  },
  {
    ...hold,
    name: 'spots that the gun reaches from one side',
    changes: [['edge: 9 mm', 'edge: 9 mm\n            access: one side']],
    rule: 'spot-from-one-side',
    on: 'access: one side',
  },
  {
    ...hold,
    name: 'spots against the bend of the flange',
    changes: [['edge: 9 mm', 'edge: 10.5 mm']],
    rule: 'spot-far-edge-close',
    on: 'edge: 10.5 mm',
  },
  {
    ...hold,
    name: 'plug holes at the edge of the flange',
    plan: pluggedRing,
    changes: [['edge: 9 mm', 'edge: 5 mm']],
    rule: 'plug-hole-near-edge',
    on: 'edge: 5 mm',
  },
  {
    ...hold,
    name: 'seams for spots, as many as one likes',
    plan: softRing,
    changes: [['method: resistance spot', 'method: arc seam']],
    rule: 'row-replaced-by-another-joint',
    on: 'method: arc seam\n            form: flange',
  },
  {
    ...hold,
    name: 'a row too short for its flange, spread so that it is too thin',
    changes: [
      ['pitch: 33 mm', 'pitch: 33 mm\n            factory_pitch: 33 mm\n            length: 2400 mm'],
    ],
    rule: 'joint-pitch-wide',
    on: 'pitch: 33 mm',
  },
  {
    ...hold,
    name: 'a factory that is said to have made no joint',
    changes: [['factory_count: 42', 'factory_count: 0']],
    rule: 'factory-row-said-to-be-none',
    on: 'factory_count: 0',
  },
];
