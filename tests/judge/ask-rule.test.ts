import { expect, test } from 'vitest';
import type { Fact } from '../../src/facts/fact.ts';
import { askRule } from '../../src/judge/ask-rule.ts';
import { known, rule, unknown } from './invented-pack.ts';

const red = { fact: 'box.colour', test: { anyOf: ['red'] } };
const heavy = { fact: 'box.weight', test: { range: { above: 10 } } };
const sharp = { fact: 'thing.sharp', test: { anyOf: [true] } };
const permitted = { fact: 'provision.permits', test: { anyOf: [true] } };

function ask(given: Parameters<typeof rule>[0], facts: Readonly<Record<string, Fact>>): unknown {
  return askRule(rule(given), (name) => facts[name] ?? unknown('not there'));
}

test('unknown facts are named in the order of `when`, known ones are not', () => {
  const given = { id: 'a', judges: 'part', when: [sharp, red, heavy] };
  expect(ask(given, { 'box.colour': known('red') })).toEqual({
    kind: 'unknown',
    facts: ['thing.sharp', 'box.weight'],
  });
});

test('a false line settles it wherever it stands', () => {
  const facts = { 'box.weight': known(10) };
  expect(ask({ id: 'a', judges: 'part', when: [heavy, red, sharp] }, facts)).toEqual({ kind: 'passed' });
  expect(ask({ id: 'a', judges: 'part', when: [red, sharp, heavy] }, facts)).toEqual({ kind: 'passed' });
});

test('a lift names the exception that held, and the first one counts', () => {
  const given = { id: 'a', judges: 'part', when: [red], unless: [[heavy], [permitted], [sharp]] };
  expect(
    ask(given, { 'box.colour': known('red'), 'provision.permits': known(true), 'thing.sharp': known(true) }),
  ).toEqual({ kind: 'lifted', by: [permitted] });
});

test('an exception with a fact of another type is a defect and is thrown', () => {
  const given = { id: 'a', judges: 'part', when: [red], unless: [[permitted]] };
  expect(() => ask(given, { 'box.colour': known('red'), 'provision.permits': known('yes') })).toThrow(
    TypeError,
  );
});

test('a rule that passes does not look at its exceptions', () => {
  const given = { id: 'a', judges: 'part', when: [red], unless: [[permitted]] };
  expect(ask(given, { 'box.colour': known('green'), 'provision.permits': known('yes') })).toEqual({
    kind: 'passed',
  });
});
