import { factsOf, tarn } from './facts-of.ts';
import type { Derived } from './facts-of.ts';

/** One joint of `own` (HC340LA, 1.2 mm) in a plan with some other sheets. */
export function joint(entries: string): Derived {
  return factsOf(`${tarn}
parts:
  - { id: own, kind: sill, grade: HC340LA, thickness: 1.2 mm, operations: [{ do: replace, done: 2026-10-09, joints: [{ ${entries} }] }] }
  - { id: hard, name: Pillar, grade: 22MnB5, thickness: 1.4 mm }
  - { id: skin, class: mild, grade: DC04, structural: false, thickness: 0.7 mm }
  - { id: light, class: aluminium, thickness: 1.1 mm }
  - { id: bare, name: Bracket, class: mild }
  - { id: galvanised, grade: HX340LAD+Z100, thickness: 1.4 mm }
  - { id: blank, grade: HC340LA, thickness: 1 mm, zones: [{ name: foot, thickness: 1.8 mm, grade: HC340LA }] }`);
}
