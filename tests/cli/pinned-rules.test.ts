import { expect, test } from 'vitest';
import { dictionary } from '../../src/cli/dictionary.ts';
import { pinnedRules } from '../../src/cli/judging/pinned-rules.ts';
import type { JudgingRun } from '../../src/cli/judging/pinned-rules.ts';
import { rememberingLapSolver, rememberingStripSolver } from '../../src/facts/heat/strip-solver.ts';
import { builtInPacks } from '../../src/generated/built-in-packs.ts';
import { loadPackFolder } from '../../src/packs/load-pack.ts';

test('what is kept for later plans does not grow with the vehicles of an archive, and what is used stays', () => {
  const loaded = loadPackFolder('examples/rules/corvane-tarn', dictionary);
  if (!loaded.ok) throw new Error('the example pack does not load');
  const run: JudgingRun = {
    packs: [...builtInPacks(), loaded.pack],
    dictionary,
    asOfDay: 20_747,
    solveStrip: rememberingStripSolver(),
    solveLap: rememberingLapSolver(),
    resolved: new Map(),
  };
  const forBody = (body: string): unknown =>
    pinnedRules(run, undefined, { maker: 'Corvane', model: 'Tarn', body, model_year: 2021 }, undefined);
  const often = forBody('wagon');
  for (let one = 0; one < 200; one += 1) {
    forBody(`body ${String(one)}`);
    expect(forBody('wagon')).toBe(often);
  }
  expect(run.resolved.size).toBeLessThanOrEqual(64);
});
