import { expect, test, vi } from 'vitest';
import { rememberingStripSolver } from '../../src/facts/heat/strip-solver.ts';
import { solveHeldSheet } from '../../src/heat/sheet/held-sheet.ts';
import type { HeldSheet } from '../../src/heat/sheet/held-sheet.ts';

vi.mock('../../src/heat/sheet/held-sheet.ts', () => ({ solveHeldSheet: vi.fn() }));
const solve = vi.mocked(solveHeldSheet);

const strip: HeldSheet = { sourceCelsius: 600, holdSeconds: 60, times: 1, thicknessMm: 1.2, metal: 'steel' };

test('equal heats are computed once, others each, and the oldest of very many go', () => {
  solve.mockImplementation((given) => ({ ok: false, reason: JSON.stringify(given) }));
  const remembering = rememberingStripSolver();
  expect(remembering(strip)).toBe(remembering({ ...strip }));
  expect(solve).toHaveBeenCalledTimes(1);
  expect(remembering({ ...strip, holdSeconds: 61 })).not.toEqual(remembering(strip));
  expect(remembering({ ...strip, freeEndMm: 30 })).not.toEqual(remembering(strip));
  expect(solve).toHaveBeenCalledTimes(3);
  for (let n = 0; n < 300; n += 1) remembering({ ...strip, holdSeconds: 100 + n });
  expect(solve).toHaveBeenCalledTimes(303);
  remembering(strip);
  expect(solve).toHaveBeenCalledTimes(304);
});

test('two runs share nothing', () => {
  solve.mockClear();
  solve.mockReturnValue({ ok: false, reason: 'x' });
  rememberingStripSolver()(strip);
  rememberingStripSolver()(strip);
  expect(solve).toHaveBeenCalledTimes(2);
});
