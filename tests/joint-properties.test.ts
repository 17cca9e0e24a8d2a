import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stringify } from 'yaml';
import { verdicts } from '../src/judge/verdict.ts';
import { leastPitch } from '../src/joint/spot-spacing.ts';
import { judgeText } from './judge-text.ts';
import { ring } from './one-change.ts';

// What must hold of every joint: a weaker row is never judged better. Tried on rows at random, most of them bad, in the plan of the ring.

const maybe = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> =>
  fc.option(value, { nil: undefined });
const millimetres = (least: number, most: number): fc.Arbitrary<number> =>
  fc.integer({ min: least * 10, max: most * 10 }).map((tenths) => tenths / 10);
const mm = (value: number): string => `${String(value)} mm`;

const method = fc.constantFrom(
  'resistance spot',
  'resistance spot',
  'adhesive and spot',
  'plug weld',
  'arc stitch',
  'arc braze',
  'self-piercing rivet',
  'blind rivet',
  'adhesive and rivet',
);

const row = fc.record({
  method,
  count: fc.integer({ min: 2, max: 80 }),
  factory_count: maybe(fc.integer({ min: 0, max: 60 })),
  factory_method: maybe(method),
  factory_pitch: maybe(millimetres(15, 60).map(mm)),
  nugget: maybe(millimetres(3, 9).map(mm)),
  edge: maybe(millimetres(4, 15).map(mm)),
  overlap: maybe(millimetres(10, 25).map(mm)),
  length: maybe(fc.integer({ min: 20, max: 2000 }).map(mm)),
  hole: maybe(millimetres(5, 10).map(mm)),
  access: maybe(fc.constantFrom('both sides', 'one side')),
  cite: maybe(fc.constant({ reference: 'ring', at: 'p. 14' })),
  fastener: maybe(
    fc.record({
      product: fc.constant('R'),
      kind: fc.constant('structural'),
      diameter: fc.constant('4.8 mm'),
      grip_from: fc.constant('1 mm'),
      grip_to: fc.constant('4 mm'),
    }),
  ),
  pattern: maybe(
    fc.record({
      count: maybe(fc.integer({ min: 1, max: 80 })),
      pitch: maybe(millimetres(15, 60).map(mm)),
      cite: maybe(fc.constantFrom({ reference: 'ring', at: 'p. 14' }, { reference: 'nowhere', at: 'p. 1' })),
    }),
  ),
  coupon: fc.constantFrom('planned', 'passed'),
  settings: maybe(fc.constant({ machine: 'Gun', program: 'P', most_force: '5 kN', most_current: '14 kA' })),
});

const start = ring.indexOf('          - to: sill-inner-l');
const end = ring.indexOf('        near: []');

/** Rank of the ring plan with this one row in place of its own: 0 is cleared. `pitchMm` is asked for apart. */
function rank(joint: object, pitchMm: number | undefined, isHard: boolean): number {
  const stated = {
    to: 'sill-inner-l',
    form: 'flange',
    sheets: ['ring-l', 'sill-inner-l'],
    ...joint,
    ...(pitchMm === undefined ? {} : { pitch: mm(pitchMm) }),
  };
  const text = stringify([JSON.parse(JSON.stringify(stated))], { lineWidth: 0 }).replaceAll(
    /^/gmu,
    '          ',
  );
  const plan = `${ring.slice(0, start)}${text.trimEnd()}\n${ring.slice(end)}`;
  return verdicts.indexOf(
    judgeText(isHard ? plan : plan.replace('grade: 22MnB5+AS150', 'grade: HC340LA')).verdict,
  );
}

const seconds = 60_000;

describe('a row', () => {
  test(
    'with a joint less is judged no better',
    () => {
      fc.assert(
        fc.property(row, maybe(millimetres(10, 60)), fc.boolean(), (joint, pitchMm, isHard) => {
          const less = { ...joint, count: joint.count - 1 };
          expect(rank(less, pitchMm, isHard)).toBeGreaterThanOrEqual(rank(joint, pitchMm, isHard));
        }),
        { numRuns: 300 },
      );
    },
    seconds,
  );

  test(
    'of a wider pitch, from the least one on, is judged no better',
    () => {
      const least = leastPitch(1.2, 2);
      expect(least.ok).toBe(true);
      const leastMm = Math.max(least.ok ? least.value : 0, 3 * 4.8);
      fc.assert(
        fc.property(
          row,
          millimetres(22, 60),
          millimetres(1, 40),
          fc.boolean(),
          (joint, pitchMm, more, isHard) => {
            fc.pre(pitchMm >= leastMm);
            const wider = Math.round((pitchMm + more) * 10) / 10;
            expect(rank(joint, wider, isHard)).toBeGreaterThanOrEqual(rank(joint, pitchMm, isHard));
          },
        ),
        { numRuns: 300 },
      );
    },
    seconds,
  );

  test(
    'whose page is left out is judged no better',
    () => {
      fc.assert(
        fc.property(row, maybe(millimetres(15, 60)), fc.boolean(), (joint, pitchMm, isHard) => {
          const { pattern, ...rest } = joint;
          const { cite: _cite, ...bare } = pattern ?? {};
          const without = pattern === undefined ? rest : { ...rest, pattern: bare };
          expect(rank(without, pitchMm, isHard)).toBeGreaterThanOrEqual(rank(joint, pitchMm, isHard));
        }),
        { numRuns: 150 },
      );
    },
    seconds,
  );

  test('that is sound is among those tried, so that the properties are no empty ones', () => {
    const sound = {
      method: 'resistance spot',
      count: 55,
      factory_count: 42,
      nugget: '6 mm',
      edge: '9 mm',
      coupon: 'planned',
      settings: { machine: 'Gun', program: 'P', most_force: '5 kN', most_current: '14 kA' },
    };
    expect(rank(sound, 30, true)).toBe(0);
    expect(rank({ ...sound, count: 54 }, 30, true)).toBe(1);
    expect(rank({ ...sound, count: 51 }, 30, true)).toBe(2);
  });
});
