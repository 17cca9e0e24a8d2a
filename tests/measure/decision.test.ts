import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { heldAgainst } from '../../src/measure/decision.ts';

// ISO 14253-1: conformance is proven inside the tolerance less the uncertainty, non-conformance outside the tolerance with the
// uncertainty added, and in between neither. The rule was seen in summaries of the standard; the rows are worked by hand.
describe('the decision rule of ISO 14253-1', () => {
  test.each([
    [0, 3, 0.5, 'conforms'],
    [2.4, 3, 0.5, 'conforms'],
    [2.5, 3, 0.5, 'conforms'],
    [2.51, 3, 0.5, 'not proven'],
    [3, 3, 0.5, 'not proven'],
    [3.49, 3, 0.5, 'not proven'],
    [3.5, 3, 0.5, 'not proven'],
    [3.51, 3, 0.5, 'does not conform'],
    [0.1, 1, 0.9, 'conforms'],
    [0.2, 1, 0.9, 'not proven'],
    [0, 1, 1.2, 'not proven'],
    [1, 1, 0, 'conforms'],
  ])('%s mm off, tolerance %s mm, uncertainty %s mm: %s', (deviation, tolerance, uncertainty, decision) => {
    expect(heldAgainst(deviation, tolerance, uncertainty).decision).toBe(decision);
  });

  test('no uncertainty, no decision', () => {
    expect(heldAgainst(3.5, 3, undefined)).toEqual({
      overMm: 0.5,
      overWithUncertaintyMm: undefined,
      decision: undefined,
    });
  });

  test('a larger uncertainty never proves what a smaller one did not', () => {
    const mm = fc.double({ min: 0, max: 20, noNaN: true });
    fc.assert(
      fc.property(mm, mm, mm, mm, (deviation, tolerance, uncertainty, more) => {
        const wide = heldAgainst(deviation, tolerance, uncertainty + more).decision;
        if (wide !== 'not proven') expect(heldAgainst(deviation, tolerance, uncertainty).decision).toBe(wide);
      }),
    );
  });
});
