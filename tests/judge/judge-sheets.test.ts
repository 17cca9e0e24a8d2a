import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { judgePlan } from '../../src/judge/judge-plan.ts';
import { judgeSheets } from '../../src/judge/judge-sheets.ts';
import { worstVerdict } from '../../src/judge/verdict.ts';
import { box, compiled, known, rule, thing, unknown } from './invented-pack.ts';

const red = { fact: 'box.colour', test: { anyOf: ['red'] } };
const sharp = { fact: 'thing.sharp', test: { anyOf: [true] } };

describe('findings', () => {
  test('a rule finds on its own kind of sheet and sees what the sheet stands on', () => {
    const rules = compiled([rule({ id: 'sharp-in-red', judges: 'operation', when: [red, sharp] })]);
    const a = box('a', 0, { 'box.colour': known('red') });
    const b = box('b', 1, { 'box.colour': known('green') });
    const sheets = [
      a,
      b,
      thing(a, 0, { 'thing.sharp': known(true) }),
      thing(b, 0, { 'thing.sharp': known(true) }),
    ];
    const { findings } = judgeSheets(sheets, rules, 'release');
    expect(findings.map(({ rule: id, part, pointer }) => [id, part, pointer])).toEqual([
      ['sharp-in-red', 'a', '/parts/0/operations/0'],
    ]);
  });

  test('a rule judges from its stage on', () => {
    const rules = compiled([rule({ id: 'late', judges: 'part', when: [red], from: 'release' })]);
    const sheets = [box('a', 0, { 'box.colour': known('red') })];
    expect(judgeSheets(sheets, rules, 'start').findings).toEqual([]);
    expect(judgeSheets(sheets, rules, 'release').findings).toHaveLength(1);
  });

  test('the message shows the value with its unit and drops what is unknown', () => {
    const rules = compiled([
      rule({
        id: 'big',
        judges: 'part',
        when: [{ fact: 'box.weight', test: { range: { above: 10 } } }],
        message: '{part.name} is {box.weight}[ and {box.colour}].',
      }),
    ]);
    const sheets = [
      box('a', 0, { 'box.weight': known(12.5), 'box.colour': unknown('not said') }),
      box('b', 1, { 'box.weight': known(11), 'box.colour': known('green') }),
    ];
    expect(judgeSheets(sheets, rules, 'draft').findings.map(({ message }) => message)).toEqual([
      'Box a is 12.5 mm.',
      'Box b is 11 mm and green.',
    ]);
  });

  test('worst first within a part, parts in the order of the plan', () => {
    const rules = compiled([
      rule({ id: 'b-note', judges: 'part', when: [red], severity: 'note' }),
      rule({ id: 'c-hold', judges: 'part', when: [red], severity: 'hold' }),
      rule({ id: 'd-stop', judges: 'part', when: [red] }),
    ]);
    const sheets = ['z', 'a'].map((id, index) => box(id, index, { 'box.colour': known('red') }));
    const order = judgeSheets(sheets, rules, 'draft').findings.map(
      ({ part, rule: id }) => `${String(part)} ${id}`,
    );
    expect(order).toEqual(['z d-stop', 'z c-hold', 'z b-note', 'a d-stop', 'a c-hold', 'a b-note']);
  });

  test('the order of sheets changes nothing', () => {
    const rules = compiled([
      rule({ id: 'one', judges: 'part', when: [red] }),
      rule({ id: 'two', judges: 'operation', when: [red, sharp], severity: 'hold' }),
    ]);
    const boxes = [0, 1, 2].map((n) =>
      box(`p${String(n)}`, n, {
        'box.colour': n === 1 ? unknown('not said', `/parts/${String(n)}/c`) : known('red'),
      }),
    );
    const sheets = [...boxes, ...boxes.map((one) => thing(one, 0, { 'thing.sharp': known(true) }))];
    const expected = JSON.stringify(judgeSheets(sheets, rules, 'draft').findings);
    fc.assert(
      fc.property(fc.shuffledSubarray(sheets, { minLength: sheets.length }), (shuffled) => {
        expect(JSON.stringify(judgeSheets(shuffled, rules, 'draft').findings)).toBe(expected);
      }),
    );
  });
});

describe('unknowns', () => {
  const noColour = unknown('The colour is not stated.', '/parts/0/colour');

  test('one missing thing is one hold, however many rules and sheets ask it', () => {
    const rules = compiled([
      rule({ id: 'first', judges: 'part', when: [red] }),
      rule({ id: 'second', judges: 'operation', when: [red, sharp] }),
    ]);
    const a = box('a', 0, { 'box.colour': noColour });
    const sheets = [
      a,
      thing(a, 0, { 'thing.sharp': known(true) }),
      thing(a, 1, { 'thing.sharp': known(true) }),
    ];
    const { findings } = judgeSheets(sheets, rules, 'draft');
    expect(findings).toHaveLength(1);
    expect(findings[0]).toMatchObject({
      severity: 'hold',
      asksUnknown: true,
      pointer: '/parts/0/colour',
      message: 'Box a: The colour is not stated.',
    });
    expect(findings[0]?.why).toContain('first and second');
  });

  test('only the first unknown line is asked', () => {
    const rules = compiled([rule({ id: 'both', judges: 'operation', when: [red, sharp] })]);
    const a = box('a', 0, { 'box.colour': noColour });
    const { findings } = judgeSheets(
      [a, thing(a, 0, { 'thing.sharp': unknown('not said') })],
      rules,
      'draft',
    );
    expect(findings.map(({ message }) => message)).toEqual(['Box a: The colour is not stated.']);
  });

  test('a false line beside the unknown one asks nothing', () => {
    const rules = compiled([rule({ id: 'both', judges: 'operation', when: [red, sharp] })]);
    const a = box('a', 0, { 'box.colour': noColour });
    expect(judgeSheets([a, thing(a, 0, { 'thing.sharp': known(false) })], rules, 'draft').findings).toEqual(
      [],
    );
  });

  test('a note asks nothing', () => {
    const rules = compiled([rule({ id: 'aside', judges: 'part', when: [red], severity: 'note' })]);
    expect(judgeSheets([box('a', 0, { 'box.colour': noColour })], rules, 'draft').findings).toEqual([]);
  });

  test('a rule that finds the absence speaks for the others', () => {
    const rules = compiled([
      rule({ id: 'absent', judges: 'part', when: [{ fact: 'box.colour', test: { known: false } }] }),
      rule({ id: 'other', judges: 'part', when: [red] }),
    ]);
    const { findings } = judgeSheets([box('a', 0, { 'box.colour': noColour })], rules, 'draft');
    expect(findings.map(({ rule: id, severity }) => [id, severity])).toEqual([['absent', 'stop']]);
  });
});

describe('lifts and failures', () => {
  const permitted = { fact: 'provision.permits', test: { anyOf: [true] } };

  test('a permission lifts the rule and is told', () => {
    const rules = compiled([
      rule({ id: 'sharp', judges: 'operation', when: [sharp], unless: [[permitted]] }),
    ]);
    const a = box('a', 0, {});
    const facts = {
      'thing.sharp': known(true),
      'provision.permits': known(true),
      'provision.by': known('D-1, page 3'),
    };
    const { findings, lifts } = judgeSheets([a, thing(a, 0, facts)], rules, 'draft');
    expect(findings).toEqual([]);
    expect(lifts).toMatchObject([{ rule: 'sharp', part: 'a', by: 'D-1, page 3' }]);
  });

  test('an unknown permission lifts nothing', () => {
    const rules = compiled([
      rule({ id: 'sharp', judges: 'operation', when: [sharp], unless: [[permitted]] }),
    ]);
    const a = box('a', 0, {});
    const facts = { 'thing.sharp': known(true), 'provision.permits': unknown('no pack') };
    expect(judgeSheets([a, thing(a, 0, facts)], rules, 'draft').findings).toHaveLength(1);
  });

  test('a rule that fails leaves the plan not judged and the other rules asked', () => {
    const rules = compiled([
      rule({ id: 'broken', judges: 'part', when: [{ fact: 'box.weight', test: { anyOf: ['red'] } }] }),
      rule({ id: 'works', judges: 'part', when: [red] }),
    ]);
    const sheets = [box('a', 0, { 'box.weight': known(3), 'box.colour': known('red') })];
    const judged = judgePlan(sheets, rules, 'draft', () => ({ sheets: [], permits: [] }));
    expect(judged.notJudged.map(({ rule: id }) => id)).toEqual(['broken']);
    expect(judged.findings.map(({ rule: id }) => id)).toEqual(['works']);
    expect(judged.verdict).toBe('not judged');
  });
});

describe('deviations', () => {
  const rules = compiled([
    rule({ id: 'reddish', judges: 'part', when: [red], severity: 'hold' }),
    rule({ id: 'red-stop', judges: 'part', when: [{ fact: 'box.weight', test: { range: { above: 1 } } }] }),
  ]);
  const deviation = { by: 'N', role: 'r', date: '2026-10-01', reason: 'x', expires: '2026-11-01' };

  test('a permit accepts the one hold that it is for; a stop takes none', () => {
    const sheets = ['a', 'b'].map((id, n) =>
      box(id, n, { 'box.colour': known('red'), 'box.weight': known(n) }),
    );
    const judged = judgePlan(sheets, rules, 'draft', (found) => ({
      sheets: [],
      permits: found
        .filter(({ part }) => part === 'a')
        .map(({ rule: id, part, fingerprint }) => ({
          rule: id,
          ...(part === undefined ? {} : { part }),
          fingerprint,
          deviation,
        })),
    }));
    expect(judged.findings.map(({ part, deviation: accepted }) => [part, accepted?.by])).toEqual([
      ['a', 'N'],
      ['b', undefined],
    ]);
    expect(judged.verdict).toBe('held');
  });

  test('with its only hold accepted a plan is cleared', () => {
    const sheets = [box('a', 0, { 'box.colour': known('red'), 'box.weight': known(0) })];
    const judged = judgePlan(sheets, rules, 'draft', (found) => ({
      sheets: [],
      permits: found.map(({ rule: id, fingerprint }) => ({ rule: id, part: 'a', fingerprint, deviation })),
    }));
    expect(judged.verdict).toBe('cleared');
  });
});

test('fingerprints survive that the part moves in the file and differ between parts', () => {
  const rules = compiled([rule({ id: 'reddish', judges: 'part', when: [red] })]);
  const at = (index: number, id: string): string | undefined =>
    judgeSheets([box(id, index, { 'box.colour': known('red') })], rules, 'draft').findings[0]?.fingerprint;
  expect(at(0, 'a')).toBe(at(7, 'a'));
  expect(at(0, 'a')).not.toBe(at(0, 'b'));
});

test('verdicts rank cleared, held, stopped, not judged', () => {
  expect(worstVerdict(['held', 'cleared'])).toBe('held');
  expect(worstVerdict(['held', 'stopped', 'cleared'])).toBe('stopped');
  expect(worstVerdict(['not judged', 'stopped'])).toBe('not judged');
  expect(worstVerdict([])).toBeUndefined();
});
