import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Place } from '../src/measure/place.ts';
import { carried } from '../src/measure/rigid-motion.ts';
import type { RigidMotion } from '../src/measure/rigid-motion.ts';
import { verdicts } from '../src/judge/verdict.ts';
import { faultsOfTheDatum } from './faults-of-the-datum.ts';
import { judgeText } from './judge-text.ts';
import { anyMotion } from './measure/any-body.ts';
import { measuredRing } from './measured-ring.ts';
import { changed } from './one-change.ts';

// What must hold of the measuring in every plan: it does not matter where the vehicle stood when it was read, nor which side is called left.

const reading = /\b(nominal|before|after): \[(-?[\d.]+) mm, (-?[\d.]+) mm, (-?[\d.]+) mm\]/gu;

function everyPlace(text: string, read: (place: Place, which: string) => Place): string {
  return text.replaceAll(reading, (_whole, which: string, x: string, y: string, z: string) => {
    const place = read([Number(x), Number(y), Number(z)], which);
    return `${which}: [${place.map((value) => `${value.toFixed(6)} mm`).join(', ')}]`;
  });
}

function judgement(text: string): unknown {
  const { verdict, findings } = judgeText(text);
  return [
    verdict,
    findings.map(({ finding }) => `${finding.severity} ${finding.rule} ${finding.message}`).sort(),
  ];
}

/** Clean, a body that is off, and datums that have moved: what is found must not depend on where the readings were taken. */
const bodies = new Map([
  ['clean', measuredRing],
  ...faultsOfTheDatum
    .filter(({ rule }) => /zero-points?-|not-proven|tolerance|deformed/u.test(rule))
    .filter(({ plan }) => plan === measuredRing)
    .map(({ name, plan, changes }) => [name, changed(plan, changes)] as const),
]);
const anyReadBody = fc.constantFrom(...bodies.keys());
const textOf = (name: string): string => bodies.get(name) ?? '';

test('there are bodies of all kinds', () => {
  expect(bodies.size).toBeGreaterThan(8);
});

describe('where the vehicle stood', () => {
  test.each(['before', 'after'])(
    'turning and shifting all readings %s the repair changes nothing',
    (occasion) => {
      fc.assert(
        fc.property(anyReadBody, anyMotion, (name, motion: RigidMotion) => {
          const text = textOf(name);
          const moved = everyPlace(text, (place, which) =>
            which === occasion ? carried(motion, place) : place,
          );
          expect(judgement(moved)).toEqual(judgement(text));
        }),
        { numRuns: 40 },
      );
    },
  );
});

describe('left and right', () => {
  test('a mirrored body with a mirrored data sheet is judged alike', () => {
    fc.assert(
      fc.property(anyReadBody, (name) => {
        const text = textOf(name);
        const rules = (one: string): unknown => {
          const { verdict, findings } = judgeText(one);
          return [verdict, findings.map(({ finding }) => [finding.rule, finding.severity])];
        };
        expect(rules(everyPlace(text, ([x, y, z]) => [x, -y, z]))).toEqual(rules(text));
      }),
      { numRuns: 20 },
    );
  });
});

describe('what makes a body worse never improves its verdict', () => {
  const rank = (text: string): number => verdicts.indexOf(judgeText(text).verdict);
  const points = [...measuredRing.matchAll(/ {4}- \{ name: (?:A|C).*\n/gu)].map(([line]) => line);

  test('a point farther off', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...points),
        fc.nat(2),
        fc.double({ min: 0, max: 8, noNaN: true }),
        fc.double({ min: 0, max: 8, noNaN: true }),
        (line, axis, off, more) => {
          const gone = (mm: number): string =>
            changed(measuredRing, [
              [
                line,
                line.replace(/after: \[([^\]]*)\]/u, (_whole, axes: string) => {
                  const nominal = (/nominal: \[([^\]]*)\]/u.exec(line)?.[1] ?? '').split(', ');
                  const now = axes
                    .split(', ')
                    .with(axis, `${(Number.parseFloat(nominal[axis] ?? '') + mm).toFixed(3)} mm`);
                  return `after: [${now.join(', ')}]`;
                }),
              ],
            ]);
          expect(rank(gone(off + more))).toBeGreaterThanOrEqual(rank(gone(off)));
        },
      ),
      { numRuns: 40 },
    );
  });

  test('a tighter tolerance, a larger uncertainty', () => {
    // Tenths of a millimetre; above 3 mm it would be another question, whose word the tolerance is.
    const tenths = fc.integer({ min: 1, max: 30 });
    fc.assert(
      fc.property(tenths, tenths, tenths, tenths, (one, other, doubt, otherDoubt) => {
        const plan = (tolerance: number, uncertainty: number): number =>
          rank(
            changed(measuredRing, [
              ['tolerance: 3 mm, after', `tolerance: ${String(tolerance / 10)} mm, after`],
              ['uncertainty: 0.5 mm', `uncertainty: ${String(uncertainty / 10)} mm`],
            ]),
          );
        const [tight, wide] = [Math.min(one, other), Math.max(one, other)];
        const [sure, unsure] = [Math.min(doubt, otherDoubt), Math.max(doubt, otherDoubt)];
        expect(plan(tight, sure)).toBeGreaterThanOrEqual(plan(wide, sure));
        expect(plan(wide, unsure)).toBeGreaterThanOrEqual(plan(wide, sure));
      }),
      { numRuns: 30 },
    );
  });

  test('a reading that is left out never clears a plan', () => {
    for (const line of points) {
      const without = line.replace(/, after: \[[^\]]*\]/u, '');
      expect([line, judgeText(changed(measuredRing, [[line, without]])).verdict]).not.toEqual([
        line,
        'cleared',
      ]);
    }
  });
});
