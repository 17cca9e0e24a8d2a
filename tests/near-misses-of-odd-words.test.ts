import { describe, expect, test } from 'vitest';
import { isKeptAway } from '../src/facts/papers/kept-away.ts';
import { lockWanting } from '../src/facts/step/lock-told.ts';
import { saysScant } from '../src/facts/step/scant-words.ts';
import { driven, kept, left, leftOff, lock, noOpening, sealedAt, waxed } from './faults-of-odd-words.ts';
import { dented, fillAndPull, fluids, nearTank, tolerable } from './faults-of-what-comes-after.ts';
import { bondedQuarter } from './faults-of-seams.ts';
import { judgeText, ruleIds } from './judge-text.ts';
import { measuredRing } from './measured-ring.ts';
import { changed } from './one-change.ts';
import type { Change } from './one-change.ts';
import { releasedElectric, releasedRing } from './released.ts';
import { wholeJob } from './faults-of-the-whole-job.ts';

const cited = 'cite: { reference: safe, at: p. 9 }';

// Beside each fault of faults-of-odd-words.ts and faults-of-what-comes-after.ts a good plan that lies close to it.
describe('near misses of odd words, and of what comes after, stay cleared', () => {
  test.each<readonly [string, string, readonly Change[]]>([
    ...[
      'Plug locked in the tool cabinet',
      'Plug in the pocket of L. Brandt',
      'Lock and tag on the plug in the boot',
      'K-7',
      'L. Brandt carries the plug',
      'Tagged and capped, key held by L. Brandt',
      'Plug in the locker of L. Brandt',
    ].map((words): [string, string, readonly Change[]] => [
      `the isolation is held by: ${words}`,
      releasedElectric,
      [lock(words)],
    ]),
    ...[
      'hidden by the new sound pad',
      'cannot be reached behind the tank',
      'C2R stands for it',
      'no time left, C2R was measured instead',
      'cut away with the old floor',
      'not accessible with the trim in',
    ].map((because): [string, string, readonly Change[]] => [
      `a point that kept its tolerance, left out because: ${because}`,
      measuredRing,
      [left(because)],
    ]),
    ...['hidden under the new side panel', 'covered by the skin now', 'C4 stands for it'].map(
      (because): [string, string, readonly Change[]] => [
        `a point that was off, left out because: ${because}`,
        measuredRing,
        [noOpening, leftOff(because)],
      ],
    ),
    ...[
      'Sill and ring only',
      'Side panel to sill skin, door ring to sill',
      'Roof, arch flange',
      'Every seam, none left out',
      'Sill',
      'All that was opened, a little over the edge',
    ].map((words): [string, string, readonly Change[]] => [
      `sealed: ${words}`,
      releasedRing,
      [sealedAt(words)],
    ]),
    ...['Until it came out of the drains, none left dry', 'No-drip wax no. 4', 'Through the left holes'].map(
      (words): [string, string, readonly Change[]] => [`waxed: ${words}`, releasedRing, [waxed(words)]],
    ),
    ...[
      'No wobble, no vibration, no noise',
      'straight ahead, does not pull, lamps out',
      'Vibration of the old wheel gone after it was balanced',
      'warning lights out',
      'without noise or shudder',
    ].map((note): [string, string, readonly Change[]] => [
      `the road test tells: ${note}`,
      releasedRing,
      [driven(note)],
    ]),
    ...[
      'Job folder, copied from the phone of the shop',
      'Own server of the shop',
      'Cloud archive of the company',
      'Office, with the private notes of nobody',
    ].map((where): [string, string, readonly Change[]] => [
      `the record is kept: ${where}`,
      releasedRing,
      [kept(where)],
    ]),
    [
      'a dented battery with the page that judged it fit',
      releasedElectric,
      [
        dented(''),
        [
          'battery_condition: sound',
          'battery_condition: sound\n    battery_fit_cite: { reference: hv, at: p. 31 }',
        ],
        ['damage: { kind: dent, found_by: seen }', `damage: { kind: dent, found_by: seen${tolerable} }`],
      ],
    ],
    [
      'a dented battery whose dent may stay, and whose case and insulation were examined',
      releasedElectric,
      [dented(tolerable)],
    ],
    [
      'filled after the panel was pulled and brazed',
      bondedQuarter,
      [fillAndPull('step: 30, done: 2026-09-23', 'step: 10, done: 2026-09-22')],
    ],
    [
      'filled on the day of the pulling',
      bondedQuarter,
      [fillAndPull('done: 2026-09-23', 'done: 2026-09-23')],
    ],
    [
      'a tank that was emptied and made inert by the page',
      releasedRing,
      [nearTank(`item: fuel tank, treatment: emptied, distance: 400 mm, path: through air, ${cited}`)],
    ],
    [
      'a tank that was emptied by the page of the fire list',
      releasedRing,
      [
        fluids(
          '{ item: fuel tank, treatment: emptied, place: aired outdoors }',
          `extinguisher: Two of 6 kg beside the bay, watch: 40 min, ${cited}`,
        ),
      ],
    ],
  ])('%s', (_name, plan, changes) => {
    expect(ruleIds(judgeText(changed(plan, changes)))).toEqual([]);
  });
});

describe('what is a note, or says what to do', () => {
  const found = (plan: string, changes: readonly Change[], rule: string): readonly string[] =>
    judgeText(changed(plan, changes))
      .findings.filter(({ finding }) => finding.rule === rule)
      .map(({ finding }) => `${finding.severity}: ${finding.message} ${finding.instead}`);

  test('one who is alone in the shop may release their own work; that is noted', () => {
    const own: readonly Change[] = [1, 2, 3, 4, 5].map(() => [
      'by: { name: B. Ohm, role: workshop lead',
      'by: { name: T. Holm, role: master',
    ]);
    expect(ruleIds(judgeText(changed(wholeJob, own)))).toEqual([]);
    expect(found(wholeJob, own, 'released-by-who-did-it')).not.toEqual([]);
    expect(found(wholeJob, own, 'signed-by-who-did-it')).not.toEqual([]);
  });

  test('a fire watch of the first of two days with hot work is noted', () => {
    const rule = 'fire-watch-dated-before-the-last-hot-work';
    expect(found(releasedRing, [], rule)).toHaveLength(1);
    expect(
      found(
        releasedRing,
        [['control_units: None within', 'fire_watch: 40 min\n        control_units: None within']],
        rule,
      ),
    ).toEqual([]);
    expect(found(wholeJob, [], rule)).toEqual([]);
  });

  test('a tank that was emptied is not called filled', () => {
    const [told = ''] = found(
      releasedRing,
      [fluids('{ item: fuel tank, treatment: emptied, place: outdoors }')],
      'fuel-left-in-place',
    );
    expect(told).toContain('emptied, and no page tells');
    expect(told).not.toContain('filled');
  });

  test('copper wire on a press-hardened part leads to no braze', () => {
    const [told = ''] = found(
      releasedRing,
      [
        [
          'method: resistance spot\n            form: flange\n            flange_coat: factory coat left whole\n            sheets: [ring-l',
          'method: arc seam\n            form: flange\n            filler: CuSi3\n            flange_coat: factory coat left whole\n            sheets: [ring-l',
        ],
      ],
      'braze-called-weld',
    );
    expect(told).toContain('Press-hardened steel takes neither unless the page for it says so');
  });
});

test.each<readonly [string, string | undefined]>([
  ['none', 'lock and tag'],
  ['Note on the windscreen', 'lock and tag'],
  ['Seal no. 12', undefined],
  [
    'wedged with a broom',
    'who or what keeps it from being put back, which “wedged with a broom” does not tell',
  ],
  ['plug on the seat', 'lock and tag, for what lies open (“plug on the seat”) anybody puts back'],
])('a lock that is told as "%s"', (words, expected) => {
  expect(lockWanting(words)).toBe(expected);
});

test.each<readonly [string, boolean]>([
  ['Through the left rear holes', false],
  ['a little over the edge', false],
  ['Rust-proof wax', false],
  ['nothing but the drawn holes', false],
  ['Needs none', true],
  ['sparingly', true],
  ['half a can', true],
])('"%s" is too little: %s', (words, expected) => {
  expect(saysScant(words)).toBe(expected);
});

test.each<readonly [string, boolean]>([
  ['Personal file of the vehicle in the office', false],
  ['Home page of the shop', false],
  ['phone', true],
  ['private account', true],
  ['phone, copied to the job folder', false],
  ['phone, to be copied to the job folder', true],
])('a record "%s" is away from the shop: %s', (words, expected) => {
  expect(isKeptAway(words)).toBe(expected);
});
