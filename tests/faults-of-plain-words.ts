import type { Fault } from './fault.ts';
import { batteryOut } from './faults-of-the-battery-out.ts';
import { bondedRail } from './faults-of-the-bonded-rail.ts';
import { wholeJob } from './faults-of-the-whole-job.ts';
import type { Change } from './one-change.ts';
import { releasedRing } from './released-ring.ts';

export const beltsOfJob = 'Front left belt and buckle replaced by the list, the others in order';
export const linkBolts =
  'fasteners: { one_time: renewed, cite: { reference: link, at: p. 7 }, tightened: 2026-10-06 }';
export const railPage =
  "title: 'Front rail, replacement', document: BRM-ILX-2200, revision: C, published: 2023-05-09, covers: { maker: Corvane, model: Ilex, bodies: [saloon, wagon], years: 2022-2024 }, looked_up: 2026-09-29, for_job: K-2224 }";
export const scanAfter = 'scan_after: { done: 2026-10-12T11:00, tool: shop tool 4.2, codes: [] }';
export const lastWatch = 'extinguisher: Two of 6 kg beside the bay, watch: 40 min }';

/** A belt of which the words tell; the driver's airbag and the front left pretensioner fired. */
const belts = (text: string): Change => [beltsOfJob, `"${text}"`];
export const linkNote = (text: string): Change => [linkBolts, `${linkBolts}\n        note: "${text}"`];
export const sillNote = (text: string): Change => [
  'looked_up: 2026-09-08, for_job: K-2231 }\n  - { id: hv',
  `looked_up: 2026-09-08, for_job: K-2231, note: "${text}" }\n  - { id: hv`,
];

const hold = { severity: 'hold' } as const;
const stop = { severity: 'stop' } as const;

/** What a plan admits in words and denies in numbers. Found by readers who know the trade; common practice. */
export const faultsOfPlainWords: readonly Fault[] = [
  ...[
    'Front left belt still locks and was kept, buckle replaced, the others in order',
    'Front left belt kept, looks in order, the others too',
    'Driver’s belt reused, the others in order',
    'All belts kept, all lock and roll',
  ].map((text): Fault => ({
    ...stop,
    plan: wholeJob,
    name: `belts: ${text}`,
    changes: [belts(text)],
    rule: 'fired-belt-kept',
    on: 'belts_checked:',
  })),
  {
    ...hold,
    plan: batteryOut,
    name: 'a pretensioner that did not fire is renewed, and its belt kept',
    changes: [
      [
        'at: pillar-r, state: undeployed, treatment: removed',
        'at: pillar-r, state: undeployed, treatment: replaced',
      ],
      [
        'belts_checked: All five looked at and pulled through by the maker’s list, in order',
        'belts_checked: Front right belt was kept, all in order',
      ],
    ],
    rule: 'belt-kept-though-renewed',
    on: 'belts_checked:',
  },
  {
    ...stop,
    plan: wholeJob,
    name: 'the other belts were not looked at after a deployment',
    changes: [belts('Front left belt and buckle replaced by the list, the others not looked at')],
    rule: 'belts-unlooked-after-deployment',
    on: 'belts_checked:',
  },
  {
    ...hold,
    plan: batteryOut,
    name: 'nobody looked at the rear belts',
    changes: [
      [
        'All five looked at and pulled through by the maker’s list, in order',
        'Front belts in order; nobody looked at the rear ones',
      ],
    ],
    rule: 'belts-unlooked',
    on: 'belts_checked:',
  },
  {
    ...hold,
    plan: wholeJob,
    name: 'a note on a bolt that was warmed',
    changes: [
      linkNote('Rear bolt was seized in the subframe, warmed with the torch till it turned and put back.'),
    ],
    rule: 'note-tells-of-trouble',
    on: 'note: "Rear bolt',
  },
  {
    ...hold,
    plan: wholeJob,
    name: 'a note on a part moved to fit',
    changes: [linkNote('Hole of the bracket filed until it fits.')],
    rule: 'note-tells-of-trouble',
    on: 'note: "Hole',
  },
  ...[
    'Bolts set in place of two rivets.',
    'Hole for the old belt closed with a plate.',
    'Bush is from the salvage yard, owner wanted it cheap.',
    'Hairline crack beside the mount, dressed with a file.',
    'Calibration of the wrench expired in May.',
  ].map((text): Fault => ({
    ...hold,
    plan: wholeJob,
    name: `a note: ${text}`,
    changes: [linkNote(text)],
    rule: 'note-tells-of-trouble',
    on: `note: "${text}`,
  })),
  {
    ...hold,
    plan: batteryOut,
    name: 'a note on a newer revision',
    changes: [sillNote('Portal has a newer revision since July; it would not load.')],
    rule: 'document-told-outdated',
    on: 'note: "Portal',
  },
  ...(
    [
      ['Gateway did not answer; read engine and body only.', scanAfter],
      ['Third target moved 40 mm to get it through.', scanAfter],
    ] as const
  ).map(([text, entry]): Fault => ({
    ...hold,
    plan: wholeJob,
    name: `a note: ${text}`,
    changes: [[entry, entry.replace(/ \}$/u, `, note: "${text}" }`)]],
    rule: 'note-tells-of-trouble',
    on: 'scan_after:',
  })),
  ...[
    'Pulls slightly to the right when braked hard',
    'Wanders on the motorway',
    'Drifts left, owner told',
    'Veers to the right on a crown',
    'Steering wheel a little off centre',
  ].map((text): Fault => ({
    ...hold,
    plan: wholeJob,
    name: `on the road: ${text}`,
    changes: [['result: passed }\n  warning_lamps', `result: passed, note: "${text}" }\n  warning_lamps`]],
    rule: 'note-tells-of-trouble',
    on: 'road_test:',
  })),
  {
    ...hold,
    plan: wholeJob,
    name: 'it still pulls on the road',
    changes: [
      [
        'result: passed }\n  warning_lamps',
        'result: passed, note: Still pulls to the left under braking }\n  warning_lamps',
      ],
    ],
    rule: 'note-tells-of-trouble',
    on: 'road_test:',
  },
  {
    ...hold,
    plan: wholeJob,
    name: 'a lamp that comes on again',
    changes: [['lit: [] }', 'lit: [], note: Airbag lamp comes on after ten minutes }']],
    rule: 'note-tells-of-trouble',
    on: 'Airbag lamp',
  },
  {
    ...hold,
    plan: wholeJob,
    name: 'the last scan by a reader of engine codes',
    changes: [
      [
        'scan_after: { done: 2026-10-12T11:00, tool: shop tool 4.2',
        'scan_after: { done: 2026-10-12T11:00, tool: "pocket reader, engine codes only"',
      ],
    ],
    rule: 'scan-tool-reads-the-engine-alone',
    on: 'scan_after:',
  },
  {
    ...hold,
    plan: wholeJob,
    name: 'the torque of a link from the page on the rail',
    changes: [[linkBolts, linkBolts.replace('link, at: p. 7', 'rail, at: p. 19')]],
    rule: 'page-borrowed-from-another-matter',
    on: 'rail, at: p. 19 }, tightened',
  },
  {
    ...hold,
    plan: wholeJob,
    name: 'the paint limit before the radar from the page on restraints',
    changes: [['film_cite: { reference: assist', 'film_cite: { reference: safe']],
    rule: 'page-borrowed-from-another-matter',
    on: 'film_cite:',
  },
  {
    ...hold,
    plan: bondedRail,
    name: 'the grade of a rail from the page on wheels',
    changes: [['grade_from: { reference: rail, at: p. 4 }', 'grade_from: { reference: wheels, at: p. 4 }']],
    rule: 'page-borrowed-from-another-matter',
    on: 'reference: wheels, at: p. 4',
  },
  {
    ...hold,
    plan: wholeJob,
    name: 'the older of two revisions is cited',
    changes: [
      [
        railPage,
        `${railPage}\n  - { id: rail-d, kind: maker procedure, ${railPage.replace('revision: C, published: 2023-05-09', 'revision: D, published: 2025-11-03')}`,
      ],
    ],
    rule: 'older-revision-cited',
    on: 'revision: C, published: 2023-05-09',
  },
  {
    ...hold,
    plan: wholeJob,
    name: 'a cable is left in the zone by its own words',
    changes: [
      [
        '    person: { name: L. Brandt',
        '    cables_in_zone: Orange cable left in place along the rail under a leather blanket\n    person: { name: L. Brandt',
      ],
    ],
    rule: 'cable-left-in-the-zone',
    on: 'cables_in_zone:',
  },
  {
    ...hold,
    plan: wholeJob,
    name: 'none found, and then a ripple',
    changes: [['found: none found }', 'found: "none; but the roof ripples above the pillar" }']],
    rule: 'indirect-damage-not-listed',
    on: 'roof ripples',
  },
  {
    ...hold,
    plan: wholeJob,
    name: 'a gap that is not even again',
    changes: [['found: none found }', 'found: "gap of the left door 2 mm tight, not even again" }']],
    rule: 'indirect-damage-not-listed',
    on: 'not even again',
  },
  {
    ...stop,
    plan: releasedRing,
    name: 'a fuel line stays 60 mm from the flange by the fire list',
    changes: [
      [
        lastWatch,
        lastWatch.replace(
          ' }',
          ', fluids: [{ item: fuel line, treatment: stays, place: "Along the left inner sill, 60 mm from the flange" }] }',
        ),
      ],
    ],
    rule: 'fuel-close-by-the-fire-list',
    on: 'fuel line',
  },
  ...['none; one is left', 'none, all but one answered', 'nothing open but the wax'].map((text): Fault => ({
    ...hold,
    plan: wholeJob,
    name: `holds: ${text}`,
    changes: [['open_holds: none', `open_holds: "${text}"`]],
    rule: 'signature-tells-of-holds',
    on: 'open_holds:',
  })),
];
