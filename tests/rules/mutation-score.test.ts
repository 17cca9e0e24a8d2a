import { describe, expect, test } from 'vitest';
import { builtInPacksWithCases } from '../../src/generated/built-in-packs.ts';
import type { Pack, Rule } from '../../src/packs/pack.ts';
import { allFaults } from '../all-faults.ts';
import { scoresOf, scoreText, witnessOf } from './mutation-score.ts';
import { stopsWithoutPlan } from './stops-without-plan.ts';

const found = builtInPacksWithCases().find(({ name }) => name === 'general');
if (found === undefined) throw new Error('the general pack is not built in');
const general: Pack = found;
const stops = general.rules.filter(({ severity, until }) => severity === 'stop' && until === undefined);

describe('the mutation score of the general pack', () => {
  const began = performance.now();
  const scores = scoresOf(general, allFaults);
  const seconds = (performance.now() - began) / 1000;
  for (const score of scores) console.info(scoreText(score));
  const shareOf = (severity: string): number => {
    const score = scores.find((one) => one.severity === severity);
    return score === undefined ? 0 : score.caught / score.of;
  };

  test('of rules that stop, every mutant is caught', () => {
    const stop = scores.find(({ severity }) => severity === 'stop');
    expect(stop?.survivors).toEqual([]);
    // Some of each kind for every rule, or the score counts nothing.
    expect(stop?.of).toBeGreaterThan(4 * stops.length);
  });

  test('it is done within a minute', () => {
    expect(seconds).toBeLessThan(60);
  });

  // The shares may grow and not shrink. Of holds most survivors are words of a list, and whole rules that no plan shows.
  test.each([
    ['hold', 0.7],
    ['note', 0.85],
  ] as const)('of %ss the share that is caught does not shrink', (severity, least) => {
    expect(shareOf(severity)).toBeGreaterThan(least);
  });
});

describe('the list of stops that no plan shows', () => {
  test('names rules that stop, each once', () => {
    const ids = new Set(stops.map(({ id }) => id));
    expect(stopsWithoutPlan.filter((id) => !ids.has(id))).toEqual([]);
    expect(new Set(stopsWithoutPlan).size).toBe(stopsWithoutPlan.length);
  });

  test('notices that a rule is lowered', () => {
    const rule = stops.find(({ id }) => id === stopsWithoutPlan[0]);
    if (rule === undefined) throw new Error('no such rule');
    const lowered: Rule = { ...rule, severity: 'hold' };
    expect([witnessOf(rule, []), witnessOf(lowered, [])]).toEqual(['list', undefined]);
  });
});

describe('the mutants', () => {
  test('a rule whose cases are too few is found out', () => {
    const rule = stops.find(({ when, cases }) => when.length > 1 && (cases?.passes.length ?? 0) > 1);
    if (rule?.cases === undefined) throw new Error('no such rule');
    const bare: Rule = { ...rule, cases: { ...rule.cases, passes: [], asks: [] } };
    const [stop] = scoresOf({ ...general, rules: [bare] }, []);
    expect(stop?.survivors.length).toBeGreaterThan(0);
  });
});
