import type { Fault } from './fault.ts';
import { batteryOut } from './faults-of-the-battery-out.ts';
import { bondedRail } from './faults-of-the-bonded-rail.ts';
import { seamedRail } from './faults-of-joining.ts';
import { wholeJob } from './faults-of-the-whole-job.ts';

const of = <S extends Fault['severity']>(
  plan: string,
  severity: S,
): { readonly plan: string; readonly severity: S } => ({ plan, severity });

const prepared = 'Ground with its own discs and primed within the hour';
const coupon = 'coupon: { result: passed, date: 2026-09-04 }';

/** Written by two readers who know the trade and not the code. What is a fault is common practice. */
export const faultsOfPreparing: readonly Fault[] = [
  {
    ...of(bondedRail, 'stop'),
    name: 'rivets: six millimetres to the edge of the other sheet',
    changes: [['overlap: 28 mm', 'overlap: 20 mm']],
    rule: 'rivet-far-edge-close',
    on: 'edge: 14 mm',
  },
  {
    ...of(seamedRail, 'hold'),
    name: 'gas: the shares are exchanged',
    changes: [['gas: M21', "gas: 'M21, 18 % argon and 82 % carbon dioxide'"]],
    rule: 'gas-contradicts-its-group',
    on: 'gas: ',
  },
  {
    ...of(seamedRail, 'hold'),
    name: 'gas: exchanged, and no group named',
    changes: [['gas: M21', 'gas: CO2 82 % and argon 18 %']],
    rule: 'gas-contradicts-its-group',
    on: 'gas: ',
  },
  {
    ...of(seamedRail, 'hold'),
    name: 'gas: an inert group with carbon dioxide in it',
    changes: [['gas: M21', "gas: 'I1, argon with 18 % CO2'"]],
    rule: 'gas-contradicts-its-group',
    on: 'gas: ',
  },
  {
    ...of(seamedRail, 'hold'),
    name: 'gas: argon that is said to hold no carbon dioxide, on steel wire',
    changes: [['gas: M21', "gas: 'Pure argon, no CO2'"]],
    rule: 'inert-gas-on-steel-wire',
    on: 'gas: ',
  },
  ...(
    ['Wiped with thinner', 'Wiped with isopropanol over the old primer', 'As delivered, wiped'] as const
  ).map((words) => ({
    ...of(bondedRail, 'hold'),
    name: `faces of the bond: ${words}`,
    changes: [[prepared, `'${words}'`]] as const,
    rule: 'bond-faces-ill-prepared',
    on: 'preparation: ',
  })),
  {
    ...of(bondedRail, 'hold'),
    name: 'faces of the bond: a night in between',
    changes: [[prepared, 'Ground with its own discs and bonded next morning']],
    rule: 'bond-faces-ill-prepared',
    on: 'preparation: ',
  },
  {
    ...of(bondedRail, 'hold'),
    name: 'faces of the bond: discs of the steel bay, and tools of its own all the same',
    changes: [[prepared, 'Ground with the discs from the steel bay and primed within the hour']],
    rule: 'aluminium-with-tools-of-steel',
    on: 'preparation: ',
  },
  {
    ...of(bondedRail, 'hold'),
    name: 'coupon of the bond: torn before the car came',
    changes: [[coupon, 'coupon: { result: passed, date: 2026-08-12 }']],
    rule: 'coupon-of-another-job',
    on: 'coupon: ',
  },
  {
    ...of(bondedRail, 'hold'),
    name: 'coupon of the bond: of another lot',
    changes: [[coupon, 'coupon: { result: passed, date: 2026-09-04, record: B-2240-3 of lot L-8790 }']],
    rule: 'coupon-of-another-job',
    on: 'coupon: ',
  },
  {
    ...of(wholeJob, 'hold'),
    name: 'coupon of the spots: its record is that of another job',
    changes: [
      ['nugget: 6 mm, failure: button', "nugget: 6 mm, failure: button, record: 'W-2198-1, job K-2198'"],
    ],
    rule: 'coupon-of-another-job',
    on: 'coupon: ',
  },
  {
    ...of(bondedRail, 'hold'),
    name: 'record: that of another job',
    changes: [['record: B-2240-1', 'record: B-2198-1 of job K-2198']],
    rule: 'joint-record-of-another-job',
    on: 'record: B-2198-1',
  },
  {
    ...of(bondedRail, 'hold'),
    name: 'primer: zinc dust on aluminium',
    changes: [['product: Two-part epoxy }\n  sealer', 'product: Zinc-rich weld-through primer }\n  sealer']],
    rule: 'zinc-primer-on-aluminium',
    on: 'primer: ',
  },
  {
    ...of(wholeJob, 'hold'),
    name: 'stack: names the floor, and is joined to the apron',
    changes: [['sheets: [rail-l, apron-l]', 'sheets: [rail-l, floor]']],
    rule: 'stack-leaves-partner-out',
    on: 'sheets: ',
  },
  {
    ...of(batteryOut, 'hold'),
    name: 'cavity: its drain holes are plugged',
    changes: [
      [
        'wax: Through the drawn holes after all heat',
        "wax: 'Through the drain holes after all heat, then plugged with sealer'",
      ],
    ],
    rule: 'drains-told-shut',
    on: 'wax: ',
  },
  {
    ...of(batteryOut, 'hold'),
    name: 'sills: two grades at one place of one page',
    changes: [
      [
        'grade: HCT780X+Z100\n    grade_from: { reference: sill, at: p. 2 }\n    thickness: 1.4 mm\n    under',
        'grade: HC260LA\n    grade_from: { reference: sill, at: p. 2 }\n    thickness: 1.4 mm\n    under',
      ],
    ],
    rule: 'twin-grades-on-one-page',
    on: 'grade: HCT780X+Z100',
  },
  {
    ...of(seamedRail, 'hold'),
    name: 'insert: shorter than the condition that is said to be met',
    changes: [
      ['length_each_side: 30 mm', 'length_each_side: 20 mm'],
      ['        at: K1\n', '        at: K1\n        conditions_met: [insert of 30 mm each side]\n'],
    ],
    rule: 'insert-too-short',
    on: 'insert: {',
  },
  {
    ...of(bondedRail, 'hold'),
    name: 'bond: on the old adhesive',
    changes: [[prepared, 'Old adhesive left on and blown off with air']],
    rule: 'bond-faces-ill-prepared',
    on: 'Old adhesive left on',
  },
  {
    ...of(bondedRail, 'hold'),
    name: 'bond: faces that were only wiped',
    changes: [[prepared, 'Wiped dry with a rag']],
    rule: 'bond-faces-ill-prepared',
    on: 'Wiped dry',
  },
];
