import { describe, expect, test } from 'vitest';
import type { FoundSoFar } from '../../src/facts/afterwards.ts';
import { factsOf } from './facts-of.ts';

const hold: FoundSoFar = {
  rule: 'revision-missing',
  severity: 'hold',
  part: 'ring-l',
  operation: 'section',
  operationAt: '/parts/0/operations/0',
  fingerprint: 'f1',
};
const full =
  'rule: revision-missing, part: ring-l, by: { name: L. Brandt, role: master }, reason: It comes on Monday., date: 2026-10-10, expires: 2026-10-30';

function deviation(entries: string, found: readonly FoundSoFar[] = [hold]): ReturnType<typeof factsOf> {
  const text = `job: { written_by: { name: R. Amsel } }
parts: [{ id: ring-l, operations: [{ id: cut, do: section }, { id: weld, do: section }] }]
deviations: [{ ${entries} }]`;
  return factsOf(text, { found });
}
const inForce = (entries: string, found?: readonly FoundSoFar[]): boolean =>
  deviation(entries, found).permits.length === 1;

describe('a deviation permit', () => {
  test('that is complete, for one hold, is in force and names that hold alone', () => {
    expect(deviation(full).permits).toEqual([
      {
        rule: 'revision-missing',
        part: 'ring-l',
        fingerprint: 'f1',
        deviation: {
          by: 'L. Brandt',
          role: 'master',
          date: '2026-10-10',
          reason: 'It comes on Monday.',
          expires: '2026-10-30',
        },
      },
    ]);
    expect(deviation(full).value('deviation.matches')).toBe('hold');
  });

  test.each([
    ['the rule', 'rule: revision-missing, '],
    ['the name', 'name: L. Brandt, '],
    ['the role', ', role: master'],
    ['the reason', 'reason: It comes on Monday., '],
    ['the date', 'date: 2026-10-10, '],
    ['the last day', ', expires: 2026-10-30'],
  ])('without %s it is not, and says so', (missing, text) => {
    const derived = deviation(full.replace(text, ''));
    expect(derived.permits).toEqual([]);
    expect(derived.value('deviation.complete')).toBe(false);
    expect(derived.value('deviation.missing')).toBe(missing);
  });

  test('for what a stop hangs on accepts nothing, however complete', () => {
    const question: FoundSoFar = { ...hold, standsForStop: true };
    expect(inForce(full, [question])).toBe(false);
    expect(deviation(full, [question]).value('deviation.matches')).toBe('open question of a stop');
    expect(inForce(full, [hold])).toBe(true);
  });

  test('a blank reason is none', () => {
    expect(inForce(full.replace('It comes on Monday.', '" "'))).toBe(false);
  });

  test('holds to its last day and no longer, and from its date', () => {
    expect(inForce(full.replace('2026-10-30', '2026-10-21'))).toBe(true);
    expect(inForce(full.replace('2026-10-30', '2026-10-20'))).toBe(false);
    expect(deviation(full.replace('2026-10-30', '2026-10-20')).value('deviation.expired')).toBe(true);
    expect(inForce(full.replace('date: 2026-10-10', 'date: 2026-10-21'))).toBe(true);
    expect(inForce(full.replace('date: 2026-10-10', 'date: 2026-10-22'))).toBe(false);
    expect(
      deviation(full.replace('date: 2026-10-10', 'date: 2026-10-22')).value('deviation.dated_ahead'),
    ).toBe(true);
  });

  test('nobody permits what they wrote themselves', () => {
    const own = deviation(full.replace('L. Brandt', 'r.  amsel').replace('r.  amsel', '"r.  amsel "'));
    expect(own.permits).toEqual([]);
    expect(own.value('deviation.by_author')).toBe(true);
  });

  test('accepts neither a stop nor a note', () => {
    for (const severity of ['stop', 'note'] as const) {
      const derived = deviation(full, [{ ...hold, severity }]);
      expect([severity, derived.permits, derived.value('deviation.matches')]).toEqual([
        severity,
        [],
        severity,
      ]);
    }
  });

  test('for one of several like holds is told, and accepts none, unless it names the operation', () => {
    const two = [hold, { ...hold, operationAt: '/parts/0/operations/1', fingerprint: 'f2' }];
    expect(deviation(full, two).value('deviation.matches')).toBe('several');
    expect(inForce(full, two)).toBe(false);
    expect(deviation(`${full}, operation: weld`, two).permits.map(({ fingerprint }) => fingerprint)).toEqual([
      'f2',
    ]);
    expect(inForce(`${full}, operation: section`, two)).toBe(false);
  });

  test('that matches nothing', () => {
    for (const change of [
      full.replace('revision-missing', 'other-rule'),
      full.replace('part: ring-l, ', ''),
      full.replace('ring-l', 'ring-r'),
      `${full}, operation: heat`,
    ]) {
      expect([change, deviation(change).value('deviation.matches')]).toEqual([change, 'nothing']);
    }
    expect(deviation(full, []).value('deviation.matches')).toBe('nothing');
  });

  test('for a hold of no part', () => {
    const { part: _part, ...whole } = hold;
    expect(inForce(full.replace('part: ring-l, ', ''), [whole])).toBe(true);
    // The part that it was met on may be named; one that the plan does not list may not.
    expect(inForce(full, [whole])).toBe(true);
    expect(inForce(full.replace('part: ring-l', 'part: nobody'), [whole])).toBe(false);
  });
});

describe('the signature', () => {
  const signed = (
    entries: string,
    more = '',
    found: readonly FoundSoFar[] = [],
  ): ReturnType<typeof factsOf> => factsOf(`${more}\nsign_off: { ${entries} }`, { found });
  const whole = 'by: { name: L. Brandt, role: master }, date: 2026-10-20';

  test('is there and complete, or not', () => {
    expect(factsOf('').value('sign-off.present')).toBe(false);
    expect(factsOf('').value('sign-off.complete')).toBe(false);
    expect(signed(whole).value('sign-off.complete')).toBe(true);
    expect(signed('date: 2026-10-20').value('sign-off.missing')).toBe('the name, the role');
    expect(signed('by: { name: L. Brandt, role: master }').value('sign-off.missing')).toBe('the date');
  });

  test('counts the stops and the holds that nobody accepted', () => {
    const found = [
      hold,
      { ...hold, rule: 'x', fingerprint: 'f2' },
      { ...hold, severity: 'stop' as const, fingerprint: 'f3' },
      { ...hold, severity: 'note' as const, fingerprint: 'f4' },
    ];
    const one = { ...hold, fingerprint: 'f1' };
    const derived = signed(whole, `parts: [{ id: ring-l }]\ndeviations: [{ ${full} }]`, [
      one,
      ...found.slice(1, 2),
      ...found.slice(2),
    ]);
    // The permit names revision-missing: of that rule there are a hold, a stop and a note, so it fits several.
    expect(derived.value('sign-off.open_holds')).toBe(2);
    expect(derived.value('sign-off.open_stops')).toBe(1);
    const accepted = signed(whole, `parts: [{ id: ring-l }]\ndeviations: [{ ${full} }]`, found.slice(0, 2));
    expect(accepted.value('sign-off.open_holds')).toBe(1);
  });

  test('lies after the last step that has a day', () => {
    const before = (day: string): unknown =>
      signed(whole, `verify: { road_test: { done: ${day} } }`).value('sign-off.before_last_step');
    expect(before('2026-10-20')).toBe(false);
    expect(before('2026-10-21')).toBe(true);
    expect(signed(whole).value('sign-off.before_last_step')).toBe(false);
    expect(signed('by: {}').fact('sign-off.before_last_step').known).toBe(false);
  });

  test.each([
    'parts: [{ operations: [{ done: 2026-10-21 }] }]',
    'parts: [{ operations: [{ joints: [{ done: 2026-10-21T08:00 }] }] }]',
    'measurements: { after: 2026-10-21 }',
    'parts: [{ operations: [{ joints: [{ adhesive: { cured: 2026-10-21 } }] }] }]',
    'finish: { bake: { done: 2026-10-21 } }',
    'finish: { sealer: { done: 2026-10-21 } }',
    'finish: { primer: { done: 2026-10-21 } }',
    'finish: { underbody: { done: 2026-10-21 } }',
    'finish: { cavities: [{ done: 2026-10-21 }] }',
    'verify: { calibrations: [{ done: 2026-10-21 }] }',
    'verify: { scan_after: { done: 2026-10-21 } }',
    'make_safe: { high_voltage: { proof_of_absence: { done: 2026-10-21T08:00 } } }',
  ])('%s counts as a step', (text) => {
    expect(signed(whole, text).value('sign-off.before_last_step')).toBe(true);
  });

  test('is not dated ahead of the as-of date', () => {
    expect(signed(whole.replace('2026-10-20', '2026-10-21')).value('sign-off.dated_ahead')).toBe(false);
    expect(signed(whole.replace('2026-10-20', '2026-10-22')).value('sign-off.dated_ahead')).toBe(true);
  });
});

describe('the revision that was signed', () => {
  const gap = (plan: string, signed: string): unknown =>
    factsOf(`job: { ${plan} }\nsign_off: { ${signed} }`).value('sign-off.revision_gap');

  test('is that of the plan', () => {
    expect(String(gap('revision: C', 'plan_revision: c'))).toMatch(/^\?/u);
    expect(String(gap('', ''))).toMatch(/^\?/u);
    expect(gap('revision: C', 'plan_revision: A')).toBe('it is for revision A, and the plan is revision C');
    expect(gap('revision: C', '')).toBe('the plan is revision C, and the signature names none');
    expect(gap('', 'plan_revision: A')).toBe('it is for revision A, and the plan bears none');
  });
});

describe('who gave a permit and who wrote the plan', () => {
  test.each([
    ['R Amsel', true],
    ['r. amsel', true],
    ['Amsel, R.', true],
    ['R.Amsel', true],
    ['Rolf Amsel', true],
    ['B. Amsel', false],
    ['R. Amselt', false],
    ['L. Brandt', false],
    ['Amsel', false],
  ])('%s', (name, isAuthor) => {
    const derived = deviation(full.replace('L. Brandt', `"${name}"`));
    expect(derived.value('deviation.by_author')).toBe(isAuthor);
    expect(derived.permits).toHaveLength(isAuthor ? 0 : 1);
  });
});

describe('what the signature says of open holds', () => {
  const told = (text: string): unknown =>
    factsOf(`sign_off: { open_holds: "${text}" }`).value('sign-off.holds_told');

  test.each(['none', 'None.', 'none; all answered', 'no open holds', 'all closed', '0'])(
    '%s: none',
    (text) => {
      expect(told(text)).toEqual(expect.stringMatching(/^\?/u));
    },
  );

  test.each([
    'two holds open, accepted by phone',
    'no. 3',
    'none but one',
    'no answer yet',
    'none, except the coupon',
    'none; coupon of the sill still open',
    'none open besides the scan',
  ])('%s', (text) => {
    expect(told(text)).toBe(text);
  });

  test('a permit in force may be told of', () => {
    const text = `job: { written_by: { name: R. Amsel } }
parts: [{ id: ring-l, operations: [{ do: section }] }]
deviations: [{ ${full} }]
sign_off: { open_holds: one by permit }`;
    expect(factsOf(text, { found: [hold] }).fact('sign-off.holds_told').known).toBe(false);
  });
});
