import type { Fact } from '../../src/facts/fact.ts';
import type { Test } from '../../src/packs/pack.ts';

/** One row of the table that says what a line makes of a fact. The documentation prints these rows. */
export interface TruthRow {
  readonly line: string;
  readonly fact: string;
  readonly truth: 'true' | 'false' | 'unknown';
  readonly test: Test;
  readonly value: Fact;
}

/** One row of the table that says what a rule answers. `unless` is absent when the rule has none. */
export interface AnswerRow {
  readonly when: readonly ('true' | 'false' | 'unknown')[];
  readonly unless?: readonly (readonly ('true' | 'false' | 'unknown')[])[];
  readonly answer: 'passed' | 'found' | 'unknown' | 'lifted';
  readonly because: string;
}

const unknown: Fact = { known: false, reason: 'not stated' };

function known(value: string | number | boolean | readonly string[]): Fact {
  return { known: true, value, from: 'stated' };
}

export const truthRows: readonly TruthRow[] = [
  row('a word', 'the same word', 'true', { anyOf: ['mild'] }, known('mild')),
  row('a word', 'another word', 'false', { anyOf: ['mild'] }, known('stainless')),
  row('a word', 'unknown', 'unknown', { anyOf: ['mild'] }, unknown),
  row('a list', 'a word of it', 'true', { anyOf: ['mild', 'stainless'] }, known('stainless')),
  row('a list', 'no word of it', 'false', { anyOf: ['mild', 'stainless'] }, known('aluminium')),
  row('a list', 'unknown', 'unknown', { anyOf: ['mild', 'stainless'] }, unknown),
  row('a word', 'several words, one the same', 'true', { anyOf: ['mild'] }, known(['stainless', 'mild'])),
  row(
    'a word',
    'several words, none the same',
    'false',
    { anyOf: ['mild'] },
    known(['stainless', 'aluminium']),
  ),
  row('a list', 'several words, one of it', 'true', { anyOf: ['a', 'b'] }, known(['c', 'b'])),
  row('a word', 'a list known to be empty', 'false', { anyOf: ['mild'] }, known([])),
  row('yes', 'yes', 'true', { anyOf: [true] }, known(true)),
  row('yes', 'no', 'false', { anyOf: [true] }, known(false)),
  row('no', 'no', 'true', { anyOf: [false] }, known(false)),
  row('no', 'unknown', 'unknown', { anyOf: [false] }, unknown),
  row('a count', 'the same count', 'true', { anyOf: [2] }, known(2)),
  row('a count', 'another count', 'false', { anyOf: [2] }, known(3)),
  row('0', '0', 'true', { anyOf: [0] }, known(0)),
  row('0', 'unknown', 'unknown', { anyOf: [0] }, unknown),
  row('above 200', '199', 'false', { range: { above: 200 } }, known(199)),
  row('above 200', '200', 'false', { range: { above: 200 } }, known(200)),
  row('above 200', '201', 'true', { range: { above: 200 } }, known(201)),
  row('min 200', '199', 'false', { range: { min: 200 } }, known(199)),
  row('min 200', '200', 'true', { range: { min: 200 } }, known(200)),
  row('max 200', '200', 'true', { range: { max: 200 } }, known(200)),
  row('max 200', '201', 'false', { range: { max: 200 } }, known(201)),
  row('below 200', '199', 'true', { range: { below: 200 } }, known(199)),
  row('below 200', '200', 'false', { range: { below: 200 } }, known(200)),
  row('min 1, below 3', '0', 'false', { range: { min: 1, below: 3 } }, known(0)),
  row('min 1, below 3', '1', 'true', { range: { min: 1, below: 3 } }, known(1)),
  row('min 1, below 3', '3', 'false', { range: { min: 1, below: 3 } }, known(3)),
  row('above 0', '0', 'false', { range: { above: 0 } }, known(0)),
  row('any range', 'unknown', 'unknown', { range: { above: 200 } }, unknown),
  row('known: false', 'unknown', 'true', { known: false }, unknown),
  row('known: false', 'any value', 'false', { known: false }, known('mild')),
  row('known: false', 'no', 'false', { known: false }, known(false)),
  row('known: false', '0', 'false', { known: false }, known(0)),
  row('known: false', 'a list known to be empty', 'false', { known: false }, known([])),
  row('known: true', 'unknown', 'false', { known: true }, unknown),
  row('known: true', 'any value', 'true', { known: true }, known('mild')),
  row('known: true', 'no', 'true', { known: true }, known(false)),
];

export const answerRows: readonly AnswerRow[] = [
  answer(['true'], undefined, 'found', 'every line holds'),
  answer(['false'], undefined, 'passed', 'a line does not hold'),
  answer(['unknown'], undefined, 'unknown', 'silence is not permission'),
  answer(['true', 'true'], undefined, 'found', 'every line holds'),
  answer(['true', 'false'], undefined, 'passed', 'one false line settles it'),
  answer(['true', 'unknown'], undefined, 'unknown', 'it hangs on what is unknown'),
  answer(['unknown', 'true'], undefined, 'unknown', 'the order of lines is nothing'),
  answer(['unknown', 'false'], undefined, 'passed', 'whatever the unknown is, the rule finds nothing'),
  answer(['false', 'unknown'], undefined, 'passed', 'the order of lines is nothing'),
  answer(['unknown', 'unknown'], undefined, 'unknown', 'both are asked'),
  answer(['true'], [['true']], 'lifted', 'the exception holds'),
  answer(['true'], [['false']], 'found', 'the exception does not hold'),
  answer(['true'], [['unknown']], 'found', 'an unknown never lifts'),
  answer(['true'], [['true', 'unknown']], 'found', 'every line of the exception must hold'),
  answer(['true'], [['true', 'false']], 'found', 'every line of the exception must hold'),
  answer(['true'], [['false'], ['true']], 'lifted', 'one exception is enough'),
  answer(['true'], [['unknown'], ['true']], 'lifted', 'one exception is enough'),
  answer(['true'], [['unknown'], ['false']], 'found', 'an unknown never lifts'),
  answer(['false'], [['true']], 'passed', 'there is nothing to lift'),
  answer(['false'], [['unknown']], 'passed', 'there is nothing to lift'),
  answer(['unknown'], [['true']], 'lifted', 'whatever the unknown is, the exception holds'),
  answer(['unknown'], [['false']], 'unknown', 'it hangs on what is unknown'),
  answer(['unknown'], [['unknown']], 'unknown', 'an unknown never lifts'),
];

function row(line: string, fact: string, truth: TruthRow['truth'], test: Test, value: Fact): TruthRow {
  return { line, fact, truth, test, value };
}

function answer(
  when: AnswerRow['when'],
  unless: AnswerRow['unless'],
  given: AnswerRow['answer'],
  because: string,
): AnswerRow {
  return { when, ...(unless === undefined ? {} : { unless }), answer: given, because };
}
