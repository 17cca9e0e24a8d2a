import { readFileSync } from 'node:fs';

// Plans that are cleared, and a way to change exactly one thing in them.

export const ring = readFileSync('examples/plans/ring-replaced-whole.yaml', 'utf8');
export const rail = readFileSync('examples/plans/rail-heated-near-pillar.yaml', 'utf8').replace(
  'distance: 10 mm, path: joined',
  'distance: 60 mm, path: same sheet',
);
export const skin = readFileSync('examples/plans/door-skin-cosmetic.yaml', 'utf8');
export const electric = readFileSync('examples/plans/electric-sill.yaml', 'utf8').replace(
  'isolation: { planned: true, wait: 5 min, wait_asked: 5 min, cite: { reference: hv, at: p. 3-8 } }',
  `isolation: { planned: true, wait: 5 min, wait_asked: 5 min, by: { name: L. Brandt, qualification: high-voltage level 2 }, cite: { reference: hv, at: p. 3-8 } }
    proof_of_absence: { planned: true }`,
);

export type Change = readonly [from: string, to: string];

export function changed(text: string, changes: readonly Change[]): string {
  return changes.reduce((before, [from, to]) => {
    if (!before.includes(from)) throw new Error(`the plan does not hold: ${from}`);
    return before.replace(from, to);
  }, text);
}

/** The line on which a text stands, counted from 1. */
export function lineOf(text: string, part: string): number {
  return text.slice(0, text.indexOf(part)).split('\n').length;
}

/** The operation of the ring, as the plan writes it. */
export const ringOperation = 'do: replace\n        step: 20\n        extent: whole';
export const ringCite = 'cite: { reference: ring, at: p. 12-19 }';
