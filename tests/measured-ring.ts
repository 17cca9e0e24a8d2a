import { changed } from './one-change.ts';
import { releasedRing } from './released-ring.ts';

/**
 * The ring plan after the work, measured as a shop would that takes it seriously: four zero points, both sides, a door opening by its
 * corners. It is cleared for release.
 */
export const measuredRing = changed(releasedRing, [
  ['zero_points: [Z1, Z2, Z3]', 'zero_points: [Z1, Z2, Z3, Z4]'],
  [
    '    - { name: A1, on: ring-l,',
    `    - { name: Z4, on: floor, nominal: [1800 mm, 1120 mm, 0 mm], before: [1800.3 mm, 1120.2 mm, -0.1 mm], after: [1800.2 mm, 1120 mm, 0.1 mm] }
    - { name: C1, on: ring-l, nominal: [600 mm, -120 mm, 100 mm], before: [600.4 mm, -118.2 mm, 100.1 mm], after: [600.3 mm, -120.4 mm, 100.2 mm] }
    - { name: C2, on: ring-l, nominal: [1700 mm, -120 mm, 120 mm], before: [1700.5 mm, -114.1 mm, 119.8 mm], after: [1700.2 mm, -120.6 mm, 120.1 mm] }
    - { name: C3, on: ring-l, nominal: [1680 mm, 60 mm, 1100 mm], before: [1681.2 mm, 66.3 mm, 1099.4 mm], after: [1680.5 mm, 60.8 mm, 1100.2 mm] }
    - { name: C4, on: ring-l, nominal: [700 mm, 60 mm, 1120 mm], before: [700.6 mm, 61.2 mm, 1120.3 mm], after: [700.4 mm, 60.3 mm, 1120.1 mm] }
    - { name: C1R, on: floor, other_side: C1, nominal: [600 mm, 1240 mm, 100 mm], before: [600.1 mm, 1240.2 mm, 100.1 mm], after: [600.1 mm, 1240.1 mm, 99.9 mm] }
    - { name: C2R, on: floor, other_side: C2, nominal: [1700 mm, 1240 mm, 120 mm], before: [1700.2 mm, 1240.3 mm, 120 mm], after: [1700.1 mm, 1240.2 mm, 120.1 mm] }
    - { name: A1, on: ring-l,`,
  ],
  [
    '  after: 2026-10-13\n',
    '  after: 2026-10-13\n  openings: [{ name: Front left door, corners: [C1, C2, C3, C4] }]\n',
  ],
]);
