import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stringify } from 'yaml';
import { verdicts } from '../src/judge/verdict.ts';
import { leastPitch } from '../src/joint/spot-spacing.ts';
import { judgeText } from './judge-text.ts';
import { ring } from './one-change.ts';

// What must hold of every joint: a weaker row is never judged better. Tried on rows at random in the plan of the ring.

const maybe = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> =>
  fc.option(value, { nil: undefined });
const millimetres = (least: number, most: number): fc.Arbitrary<number> =>
  fc.integer({ min: least * 10, max: most * 10 }).map((tenths) => tenths / 10);
const mm = (value: number): string => `${String(value)} mm`;

/** Mostly what is sound, so that the verdict hangs on what is changed and not on something else. */
const mostly = <T>(sound: T, odd: fc.Arbitrary<T | undefined>): fc.Arbitrary<T | undefined> =>
  fc.oneof({ weight: 9, arbitrary: fc.constant(sound) }, { weight: 1, arbitrary: odd });

const method = fc.oneof(
  { weight: 7, arbitrary: fc.constant('resistance spot') },
  {
    weight: 2,
    arbitrary: fc.constantFrom(
      ...['plug weld', 'adhesive and spot', 'arc stitch', 'arc braze'],
      ...['self-piercing rivet', 'blind rivet', 'adhesive and rivet'],
    ),
  },
);

const page = { reference: 'ring', at: 'p. 14' };
const gun = { machine: 'Gun', program: 'P', most_force: '5 kN', most_current: '14 kA' };
const rivet = {
  product: 'R',
  kind: 'structural',
  diameter: '4.8 mm',
  grip_from: '1 mm',
  grip_to: '4 mm',
};

const row = fc.record({
  method,
  count: fc.oneof(fc.integer({ min: 50, max: 70 }), fc.integer({ min: 28, max: 45 })),
  factory_count: mostly<number>(42, maybe(fc.integer({ min: 0, max: 60 }))),
  factory_method: maybe(method),
  factory_pitch: maybe(millimetres(20, 60).map(mm)),
  nugget: mostly('6 mm', maybe(millimetres(3, 9).map(mm))),
  edge: mostly('12 mm', maybe(millimetres(4, 15).map(mm))),
  overlap: mostly('24 mm', maybe(millimetres(13, 25).map(mm))),
  length: mostly(undefined, fc.integer({ min: 20, max: 2000 }).map(mm)),
  hole: mostly('8 mm', maybe(millimetres(5, 10).map(mm))),
  access: mostly('one side', maybe(fc.constant('both sides'))),
  cite: mostly(page, fc.constant(undefined)),
  access_cite: fc.constant(page),
  fastener: mostly(rivet, fc.constant(undefined)),
  pattern: mostly(
    undefined,
    fc.record({
      count: mostly<number>(30, maybe(fc.integer({ min: 1, max: 80 }))),
      pitch: maybe(millimetres(30, 90).map(mm)),
      cite: mostly(page, fc.constantFrom(undefined, { reference: 'nowhere', at: 'p. 1' })),
    }),
  ),
  factory_adhesive: fc.constant(false),
  coupon: fc.constantFrom('planned', 'passed'),
  settings: mostly(gun, fc.constant(undefined)),
});

const start = ring.indexOf('          - to: sill-inner-l');
const end = ring.indexOf('        near: []');

/** Rank of the ring plan with this one row in place of its own: 0 is cleared. `pitchMm` is asked for apart. */
function rank(joint: object, pitchMm: number | undefined, isHard: boolean): number {
  const stated = {
    to: 'sill-inner-l',
    form: 'flange',
    sheets: ['ring-l', 'sill-inner-l'],
    flange_coat: 'factory coat left whole',
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
        { numRuns: 200 },
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
            // A row that is bunched in the middle of its flange does gain by being spread over it.
            fc.pre((joint.count - 1) * pitchMm >= Number.parseFloat(joint.length ?? '0'));
            const wider = Math.round((pitchMm + more) * 10) / 10;
            expect(rank(joint, wider, isHard)).toBeGreaterThanOrEqual(rank(joint, pitchMm, isHard));
          },
        ),
        { numRuns: 200 },
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
          const { cite: _cite, ...bare } = pattern ?? { cite: undefined };
          const without = pattern === undefined ? rest : { ...rest, pattern: bare };
          expect(rank(without, pitchMm, isHard)).toBeGreaterThanOrEqual(rank(joint, pitchMm, isHard));
        }),
        { numRuns: 100 },
      );
    },
    seconds,
  );

  test('comes out cleared, held and stopped, each often enough for the properties to mean something', () => {
    const rows = fc.sample(fc.tuple(row, millimetres(22, 60), fc.boolean()), { numRuns: 300, seed: 7 });
    const ranks = rows.map(([joint, pitchMm, isHard]) => rank(joint, pitchMm, isHard));
    for (const one of [0, 1, 2]) {
      expect([one, ranks.filter((other) => other === one).length > 30]).toEqual([one, true]);
    }
  }, 60_000);

  test('that is sound is among those tried, so that the properties are no empty ones', () => {
    const sound = {
      method: 'resistance spot',
      count: 55,
      factory_count: 42,
      nugget: '6 mm',
      edge: '9 mm',
      factory_adhesive: false,
      coupon: 'planned',
      settings: { machine: 'Gun', program: 'P', most_force: '5 kN', most_current: '14 kA' },
    };
    expect(rank(sound, 30, true)).toBe(0);
    expect(rank({ ...sound, count: 54 }, 30, true)).toBe(1);
    expect(rank({ ...sound, count: 51 }, 30, true)).toBe(2);
  });
});
