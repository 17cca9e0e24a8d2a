import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isMap, isSeq, parseDocument } from 'yaml';
import { faultsOfTheWholeJob, wholeJob } from './faults-of-the-whole-job.ts';
import { judgeText } from './judge-text.ts';
import { changed } from './one-change.ts';

// Silence about a step is never the better answer: whatever step around the work is dropped, a plan that was held or stopped is not
// cleared by it, and a stop that the step has no part in stays a stop.

type Path = readonly (string | number)[];

/** Every step around the work: what makes safe, protects, checks and records, each whole. */
const blocks = ['make_safe', 'measurements', 'finish', 'verify', 'record', 'sign_off', 'damage'] as const;

function stepsOf(text: string): readonly Path[] {
  const document = parseDocument(text);
  const found: Path[] = [];
  for (const block of blocks) {
    const node: unknown = document.get(block);
    if (!isMap(node)) continue;
    found.push([block]);
    for (const { key, value } of node.items) {
      const at = [block, String(key)];
      if (isMap(value)) found.push(at);
      // Of a list each step; points and batteries are no steps.
      const isOfSteps = key === 'calibrations' || key === 'cavities';
      if (isSeq(value) && isOfSteps) value.items.forEach((_item, index) => found.push([...at, index]));
    }
  }
  const points = document.get('hold_points');
  if (isSeq(points)) points.items.forEach((_item, index) => found.push(['hold_points', index]));
  return [
    ...found,
    ['make_safe', 'high_voltage', 'isolation'],
    ['make_safe', 'high_voltage', 'proof_of_absence'],
  ];
}

function without(text: string, paths: readonly Path[]): string {
  const document = parseDocument(text);
  // The last of a list first, so that the places of those before it stay.
  for (const path of paths.toSorted((a, b) => Number(b.at(-1)) - Number(a.at(-1)))) {
    if (document.hasIn(path)) document.deleteIn(path);
  }
  return document.toString({ lineWidth: 0 });
}

const steps = stepsOf(wholeJob);
const faults = faultsOfTheWholeJob.map((fault) => [fault, changed(fault.plan, fault.changes)] as const);

/** Steps that the general pack does not ask for, each with why. All others are missed at once. */
const notAskedFor: ReadonlySet<string> = new Set([
  'finish.bake', // the cover was painted off the vehicle
  'verify.structural_release', // the general pack leaves it to the shop
]);

describe('a step of the whole job that is dropped', () => {
  test('there are many', () => {
    expect(steps.length).toBeGreaterThan(20);
  });

  test.each(steps.map((path) => [path.join('.'), path] as const))(
    '%s: the plan is cleared no more',
    (name, path) => {
      const { verdict } = judgeText(without(wholeJob, [path]));
      expect([name, verdict === 'cleared']).toEqual([name, notAskedFor.has(name)]);
    },
  );

  test('never clears a plan with one thing wrong', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...faults),
        fc.uniqueArray(fc.constantFrom(...steps), { minLength: 1, maxLength: 3 }),
        ([{ name, severity, rule }, text], dropped) => {
          // Where nothing is baked on the vehicle, no wax was put in before a bake.
          fc.pre(
            rule !== 'inside-protected-before-bake' ||
              !dropped.some((path) => path.join('.') === 'finish.bake'),
          );
          const { verdict } = judgeText(without(text, dropped));
          expect([name, verdict]).not.toEqual([name, 'cleared']);
          // The stop stands in the step itself: what is not said is asked for, and holds.
          if (severity === 'stop' && verdict !== 'stopped') expect(verdict).toBe('held');
        },
      ),
      { numRuns: 250 },
    );
  }, 120_000);

  test('a stop in the work on a part stays a stop, whatever is dropped around it', () => {
    const ofParts = faults.filter(
      ([{ severity, rule }]) =>
        severity === 'stop' &&
        [
          'added-metal-not-in-procedure',
          'second-hand-part-flame-cut',
          'film-before-radar-over-limit',
        ].includes(rule),
    );
    expect(ofParts).toHaveLength(3);
    for (const [{ name }, text] of ofParts) {
      for (const path of steps) {
        expect([name, path.join('.'), judgeText(without(text, [path])).verdict]).toEqual([
          name,
          path.join('.'),
          'stopped',
        ]);
      }
    }
  }, 120_000);
});
