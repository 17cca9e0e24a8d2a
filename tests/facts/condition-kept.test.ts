import { expect, test } from 'vitest';
import { conditionKept } from '../../src/facts/part/condition-kept.ts';
import { surveyOf } from './facts-of.ts';

function kept(condition: string, joints: string): string | undefined {
  const [operation] = surveyOf(`parts: [{ operations: [{ do: section, joints: [${joints}] }] }]`).operations;
  if (operation === undefined) throw new Error('no operation');
  return conditionKept(condition, operation);
}

const insert = (length: string): string => `{ insert: { length_each_side: ${length} } }`;

test.each([
  ['Insert of 30 mm each side', '30 mm', 'kept'],
  ['Insert of 30 mm each side', '29.9 mm', 'not kept'],
  ['insert, 3 cm on each side', '30 mm', 'kept'],
  ['insert, 3 cm on each side', '29 mm', 'not kept'],
  // In all: half of it each side.
  ['insert of 60 mm', '30 mm', 'kept'],
  ['insert of at least 60 mm', '29 mm', 'not kept'],
  // A number that is not plainly the length of the insert is held against nothing.
  ['insert of 1.2 mm thick steel', '1 mm', 'kept'],
  ['insert, edges 60 mm from the hinge', '20 mm', 'kept'],
  ['an insert as drawn', '20 mm', 'kept'],
])('%s, with %s: %s', (condition, length, answer) => {
  expect(kept(condition, insert(length))).toBe(answer);
});

test('a joint without insert does not keep it, and a flange beside it needs none', () => {
  expect(kept('an insert as drawn', '{ form: lap }')).toBe('not kept');
  expect(kept('an insert as drawn', '')).toBe('not kept');
  expect(kept('an insert as drawn', `${insert('30 mm')}, { form: flange }`)).toBe('kept');
});

test('a coupon is passed, still to come, or failed', () => {
  expect(kept('coupon before the weld', '{ coupon: passed }')).toBe('kept');
  expect(kept('coupon before the weld', '{ coupon: planned }')).toBe('not yet');
  expect(kept('coupon before the weld', '{}')).toBe('not yet');
  expect(kept('coupon before the weld', '{ coupon: passed }, { coupon: planned }')).toBe('not yet');
  expect(kept('coupon before the weld', '{ coupon: passed }, { coupon: { result: failed } }')).toBe(
    'not kept',
  );
  expect(kept('coupon and insert of 30 mm each side', `{ coupon: planned }`)).toBe('not kept');
});

test('what its words do not ask for is not compared', () => {
  for (const condition of [
    'by two people',
    'no insert',
    'without an insert',
    'insert the plug',
    'couponing',
  ]) {
    expect([condition, kept(condition, '{ form: lap }')]).toEqual([condition, undefined]);
  }
});
