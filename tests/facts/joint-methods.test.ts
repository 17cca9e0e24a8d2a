import { expect, test } from 'vitest';
import {
  hasAdhesive,
  isArc,
  isElectric,
  isResistance,
  isWelded,
} from '../../src/facts/joint/joint-methods.ts';

// Which ways of joining melt the sheet, strike an arc or put current through the body: common practice.
test.each([
  ['resistance spot', 'resistance electric welded'],
  ['projection weld', 'resistance electric welded'],
  ['adhesive and spot', 'resistance electric welded adhesive'],
  ['plug weld', 'arc electric welded'],
  ['arc seam', 'arc electric welded'],
  ['arc stitch', 'arc electric welded'],
  ['aluminium arc', 'arc electric welded'],
  ['TIG seam', 'arc electric welded'],
  ['arc braze', 'arc electric welded'],
  ['laser seam', 'arc welded'],
  ['adhesive', 'adhesive'],
  ['adhesive and rivet', 'adhesive'],
  ['self-piercing rivet', ''],
  ['blind rivet', ''],
  ['solid rivet', ''],
  ['flow-drill screw', ''],
  ['clinch', ''],
  ['hem', ''],
  ['bolt', ''],
] as const)('%s: %s', (method, traits) => {
  const said = [
    isArc(method) ? 'arc' : undefined,
    isResistance(method) ? 'resistance' : undefined,
    isElectric(method) ? 'electric' : undefined,
    isWelded(method) ? 'welded' : undefined,
    hasAdhesive(method) ? 'adhesive' : undefined,
  ].filter((word) => word !== undefined);
  expect(said.join(' ')).toBe(traits);
});
