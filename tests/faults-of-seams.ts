import { readFileSync } from 'node:fs';
import type { Fault } from './fault.ts';
import { changed } from './one-change.ts';

// Whole jobs, from intake to release, by a reader who knows the trade and not the code; each is cleared as it stands.

/** A b-post outer sectioned where the maker draws it. */
export const sectionedPost = readFileSync('tests/plans/sectioned-post.yaml', 'utf8');
/** A quarter panel brazed at the cut and bonded over the wheelhouse. */
export const bondedQuarter = readFileSync('tests/plans/bonded-quarter.yaml', 'utf8');
/** A door skin hemmed and bonded. */
export const hemmedDoor = readFileSync('tests/plans/hemmed-door.yaml', 'utf8');

const insert = 'insert: { length_each_side: 30 mm, grade: HC420LA, thickness: 1.5 mm }';
const ofPost = { plan: sectionedPost, severity: 'hold' } as const;
const ofQuarter = { plan: bondedQuarter, severity: 'hold' } as const;
const ofDoor = { plan: hemmedDoor, severity: 'hold' } as const;

/** What is wrong with a seam, its insert, and the bond beside it. Common practice. */
export const faultsOfSeams: readonly Fault[] = [
  {
    ...ofPost,
    name: 'an insert bent from a scrap of mild steel',
    changes: [[insert, 'insert: { length_each_side: 30 mm, grade: DC04, thickness: 0.8 mm }']],
    rule: 'insert-lesser-than-member',
    on: 'insert: { length',
  },
  {
    ...ofPost,
    name: 'an insert of the right steel, thinner than the post',
    changes: [[insert, 'insert: { length_each_side: 30 mm, grade: HC420LA, thickness: 1.2 mm }']],
    rule: 'insert-lesser-than-member',
    on: 'insert: { length',
  },
  {
    ...ofPost,
    name: 'an insert of the same class and less strength',
    changes: [[insert, 'insert: { length_each_side: 30 mm, grade: HC340LA, thickness: 1.5 mm }']],
    rule: 'insert-lesser-than-member',
    on: 'insert: { length',
  },
  {
    plan: changed(sectionedPost, [['            cite: { reference: post, at: p. 9 }\n', '']]),
    severity: 'stop',
    name: 'an insert of mild steel, and no page at the joint',
    changes: [[insert, 'insert: { length_each_side: 30 mm, grade: DC04, thickness: 1.5 mm }']],
    rule: 'insert-lesser-uncited',
    on: 'insert: { length',
  },
  {
    ...ofPost,
    name: 'an insert of which the thickness is not stated',
    changes: [[insert, 'insert: { length_each_side: 30 mm, grade: HC420LA }']],
    rule: 'butt-insert-not-stated',
    on: '- to: post-r',
  },
  {
    ...ofPost,
    name: 'the seam drawn at another place than the cut',
    changes: [['place: K1', 'place: K2']],
    rule: 'joint-elsewhere-than-cut',
    on: 'place: K2',
  },
  {
    ...ofPost,
    name: 'the cut at another place than the seam is drawn',
    changes: [['at: K1', 'at: 40 mm below the belt anchorage']],
    rule: 'joint-elsewhere-than-cut',
    on: 'place: K1',
  },
  {
    ...ofPost,
    name: 'a root gap of 6 mm, by the page of the seam',
    changes: [['gap: 2 mm', 'gap: 6 mm']],
    rule: 'root-gap-off',
    on: 'gap: 6 mm',
  },
  {
    ...ofPost,
    name: 'weld-through primer under the arc, by the page of the seam',
    changes: [['gap: 2 mm', 'gap: 2 mm\n            flange_coat: weld-through primer']],
    rule: 'weld-through-primer-under-arc',
    on: 'flange_coat: weld-through primer',
  },
  {
    ...ofQuarter,
    name: 'a skin closed over structure past the open time',
    changes: [['closed_after: 30 min', 'closed_after: 90 min']],
    rule: 'skin-adhesive-past-open-time',
    on: 'adhesive: { product: Two-part epoxy B',
  },
  {
    ...ofQuarter,
    name: 'the adhesive of a skin over structure cured before it was laid',
    changes: [['cured: 2026-09-23T14:00', 'cured: 2026-09-21T14:00']],
    rule: 'cured-before-joined',
    on: 'cured: 2026-09-21T14:00',
  },
  {
    ...ofQuarter,
    name: 'the adhesive of a skin over structure said to have cured in six hours',
    changes: [['cured: 2026-09-23T14:00', 'cured: 2026-09-22T20:00']],
    rule: 'cured-too-soon',
    on: 'cured: 2026-09-22T20:00',
  },
  {
    ...ofQuarter,
    name: 'the lot of the adhesive under a skin not recorded',
    changes: [['lot: L-2210, ', '']],
    rule: 'adhesive-not-recorded',
    on: 'adhesive: { product: Two-part epoxy B',
  },
  {
    ...ofQuarter,
    name: 'the cure of the adhesive under a skin not stated',
    changes: [['cure: 24 h at 23 °C, ', '']],
    rule: 'adhesive-not-named',
    on: 'adhesive: { product: Two-part epoxy B',
  },
  {
    ...ofQuarter,
    name: 'brazed half an hour after the bond on the same panel',
    changes: [['done: 2026-09-22T10:00', 'done: 2026-09-22T14:30']],
    rule: 'arc-beside-fresh-bond',
    on: 'done: 2026-09-22T14:30',
  },
  {
    ...ofDoor,
    name: 'the hem adhesive of a door skin left out',
    changes: [[/adhesive: \{ product.*\n\s*/u.exec(hemmedDoor)?.[0] ?? '', '']],
    rule: 'factory-adhesive-of-skin-left-out',
    on: 'factory_adhesive: true',
  },
  {
    ...ofDoor,
    name: 'the hem adhesive said to have cured in six hours',
    changes: [['cured: 2026-09-25T10:00', 'cured: 2026-09-24T16:00']],
    rule: 'cured-too-soon',
    on: 'cured: 2026-09-24T16:00',
  },
];
