import { describe, expect, test } from 'vitest';
import type { FactSheet } from '../../src/facts/sheet.ts';
import type { Finding } from '../../src/judge/finding.ts';
import { judgeSheets } from '../../src/judge/judge-sheets.ts';
import type { Rule } from '../../src/packs/pack.ts';
import { box, compiled, known, rule, thing, unknown } from './invented-pack.ts';

const red = { fact: 'box.colour', test: { anyOf: ['red'] } };
const heavy = { fact: 'box.weight', test: { range: { above: 10 } } };
const sharp = { fact: 'thing.sharp', test: { anyOf: [true] } };
const at = '/parts/0/colour';
const noColour = unknown('The colour is not stated.', at);

function findings(sheets: readonly FactSheet[], rules: readonly Rule[]): readonly Finding[] {
  return judgeSheets(sheets, compiled(rules), 'release').findings;
}

describe('merging', () => {
  test('two facts that lack the same entry for the same reason are one hold', () => {
    const weightless = unknown('The colour is not stated.', at);
    const found = findings(
      [box('a', 0, { 'box.colour': noColour, 'box.weight': weightless })],
      [rule({ id: 'one', judges: 'part', when: [red] }), rule({ id: 'two', judges: 'part', when: [heavy] })],
    );
    expect(found.map(({ facts }) => facts.map(({ name }) => name))).toEqual([['box.colour', 'box.weight']]);
  });

  test('the same entry lacking for two reasons is two holds', () => {
    const found = findings(
      [box('a', 0, { 'box.colour': noColour, 'box.weight': unknown('The colour cannot be read.', at) })],
      [rule({ id: 'one', judges: 'part', when: [red] }), rule({ id: 'two', judges: 'part', when: [heavy] })],
    );
    expect(found).toHaveLength(2);
  });

  test('the same reason on two parts is two holds', () => {
    const nowhere = unknown('The colour is not stated.');
    const found = findings(
      [box('a', 0, { 'box.colour': nowhere }), box('b', 1, { 'box.colour': nowhere })],
      [rule({ id: 'one', judges: 'part', when: [red] })],
    );
    expect(found.map(({ part, pointer }) => [part, pointer])).toEqual([
      ['a', '/parts/0'],
      ['b', '/parts/1'],
    ]);
  });

  test('the hold bears the rule of a stop before that of a hold, whichever stands first', () => {
    const found = findings(
      [box('a', 0, { 'box.colour': noColour })],
      [
        rule({ id: 'milder', judges: 'part', when: [red], severity: 'hold' }),
        rule({ id: 'worse', judges: 'part', when: [red] }),
      ],
    );
    expect(found.map(({ rule: id, severity }) => [id, severity])).toEqual([['worse', 'hold']]);
    expect(found[0]?.why).toContain('worse and milder');
  });
});

describe('a hold that stands where a stop might', () => {
  const a = box('a', 0, { 'box.colour': noColour });
  const absence = { fact: 'box.colour', test: { known: false } } as const;
  const stands = (rules: readonly Rule[]): readonly unknown[] =>
    findings([a], rules).map(({ rule: id, standsForStop }) => [id, standsForStop]);

  test('is the one that a stop asks, not the one that a hold asks', () => {
    expect(stands([rule({ id: 'stop', judges: 'part', when: [red] })])).toEqual([['stop', true]]);
    expect(stands([rule({ id: 'hold', judges: 'part', when: [red], severity: 'hold' })])).toEqual([
      ['hold', false],
    ]);
  });

  test('is the one that speaks for the question of a stop', () => {
    const speaker = rule({ id: 'absent', judges: 'part', when: [absence], severity: 'hold' });
    expect(stands([speaker])).toEqual([['absent', false]]);
    expect(stands([speaker, rule({ id: 'hold', judges: 'part', when: [red], severity: 'hold' })])).toEqual([
      ['absent', false],
    ]);
    expect(stands([speaker, rule({ id: 'stop', judges: 'part', when: [red] })])).toEqual([['absent', true]]);
  });
});

describe('the first unknown of each rule', () => {
  const a = box('a', 0, { 'box.colour': noColour });
  const sheets = [a, thing(a, 0, { 'thing.sharp': unknown('Nobody felt it.') })];

  test('follows the order in which `when` is written', () => {
    const asked = (when: Rule['when']): readonly string[] =>
      findings(sheets, [rule({ id: 'r', judges: 'operation', when })]).map(({ message }) => message);
    expect(asked([red, sharp])).toEqual(['Box a: The colour is not stated.']);
    expect(asked([sharp, red])).toEqual(['Box a: Nobody felt it.']);
  });

  test('of two rules with different firsts gives two holds', () => {
    const found = findings(sheets, [
      rule({ id: 'r', judges: 'operation', when: [red, sharp] }),
      rule({ id: 's', judges: 'operation', when: [sharp, red] }),
    ]);
    expect(found).toHaveLength(2);
  });

  test('once answered, the next is asked', () => {
    const answered = box('a', 0, { 'box.colour': known('red') });
    const found = findings(
      [answered, thing(answered, 0, { 'thing.sharp': unknown('Nobody felt it.') })],
      [rule({ id: 'r', judges: 'operation', when: [red, sharp] })],
    );
    expect(found.map(({ message }) => message)).toEqual(['Box a: Nobody felt it.']);
  });
});

describe('a rule that finds the absence', () => {
  const other = rule({ id: 'other', judges: 'part', when: [red] });
  const absence = { fact: 'box.colour', test: { known: false } };

  test('speaks for rules that judge what stands on the sheet', () => {
    const a = box('a', 0, { 'box.colour': noColour });
    const found = findings(
      [a, thing(a, 0, { 'thing.sharp': known(true) })],
      [
        rule({ id: 'absent', judges: 'part', when: [absence], severity: 'hold' }),
        rule({ id: 'below', judges: 'operation', when: [red, sharp] }),
      ],
    );
    expect(found.map(({ rule: id }) => id)).toEqual(['absent']);
  });

  test('as a note speaks for nobody: the hold must stand', () => {
    const found = findings(
      [box('a', 0, { 'box.colour': noColour })],
      [rule({ id: 'absent', judges: 'part', when: [absence], severity: 'note' }), other],
    );
    expect(found.map(({ rule: id, severity }) => [id, severity])).toEqual([
      ['other', 'hold'],
      ['absent', 'note'],
    ]);
  });

  test('that does not find, for another line, speaks for nobody', () => {
    const found = findings(
      [box('a', 0, { 'box.colour': noColour, 'box.weight': known(1) })],
      [rule({ id: 'absent', judges: 'part', when: [absence, heavy] }), other],
    );
    expect(found.map(({ rule: id }) => id)).toEqual(['other']);
  });

  test('on one part does not speak for another', () => {
    const found = findings(
      [
        box('a', 0, { 'box.colour': noColour, 'box.weight': known(11) }),
        box('b', 1, {
          'box.colour': unknown('The colour is not stated.', '/parts/1/colour'),
          'box.weight': known(1),
        }),
      ],
      [rule({ id: 'absent', judges: 'part', when: [absence, heavy] }), other],
    );
    expect(found.map(({ part, rule: id }) => [part, id])).toEqual([
      ['a', 'absent'],
      ['b', 'other'],
    ]);
  });
});

test('a fact that no sheet holds is asked for, never taken as false', () => {
  const found = findings([box('a', 0, {})], [rule({ id: 'r', judges: 'part', when: [red] })]);
  expect(found.map(({ severity, asksUnknown }) => [severity, asksUnknown])).toEqual([['hold', true]]);
});
