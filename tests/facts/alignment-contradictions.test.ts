import { describe, expect, test } from 'vitest';
import { factsOf, tarn } from './facts-of.ts';

/** A fact of the wheel alignment with such rows, as text; `?` when it is not known. */
function told(name: string, ...rows: readonly string[]): string {
  const values = rows.map((row) => `{ ${row} }`).join(', ');
  const fact = factsOf(
    `${tarn}\nverify: { alignment: { done: 2026-10-12, result: within range, values: [${values}] } }`,
  ).fact(`step.${name}`, '/verify/alignment');
  return fact.known ? String(fact.value) : '?';
}

describe('left and right of one axle', () => {
  const pair = (left: string, right: string): string =>
    told('wheels_unlike', `of: camber, at: rear left, ${left}`, `of: camber, at: rear right, ${right}`);

  test.each([
    [`specified: -1°00', tolerance: 0°30'`, `specified: -1°30', tolerance: 0°30'`, false],
    [`specified: -1°00', tolerance: 0°30'`, `specified: -1°31', tolerance: 0°30'`, true],
    [`from: -2°00', to: -1°00'`, `specified: -1°30', tolerance: 0°30'`, false],
    [`from: 1°00', to: 2°00'`, `specified: -1°30', tolerance: 0°30'`, true],
    // Zero has no sign.
    [`specified: 0°00', tolerance: 0°30'`, `specified: -0°20', tolerance: 0°30'`, false],
    [`specified: 0°10', tolerance: 0°30'`, `specified: -0°10', tolerance: 0°30'`, true],
  ])('%s and %s', (left, right, isUnlike) => {
    expect(pair(left, right) !== '?').toBe(isUnlike);
  });

  test('one wheel alone, or one of each axle, says nothing', () => {
    expect(told('wheels_unlike', `of: camber, at: rear left, specified: 1°, tolerance: 0.5°`)).toBe('?');
    expect(
      told(
        'wheels_unlike',
        `of: camber, at: rear left, specified: 1°, tolerance: 0.5°`,
        `of: camber, at: front right, specified: -1°, tolerance: 0.5°`,
      ),
    ).toBe('?');
  });
});

describe('toe of wheels, total toe, thrust angle: the geometry of an axle', () => {
  const front = (left: string, right: string, total: string): string =>
    told(
      'toes_contradict',
      `of: toe, at: front left, after: ${left}`,
      `of: toe, at: front right, after: ${right}`,
      `of: total toe, at: front axle, after: ${total}`,
    );

  test.each([
    // 3′, and half a minute for each of three numbers.
    [`0°04'`, `0°05'`, `0°13'`, false],
    [`0°04'`, `0°05'`, `0°14'`, true],
    [`-0°04'`, `-0°05'`, `-0°09'`, false],
    [`-0°04'`, `-0°05'`, `0°09'`, true],
    // 0.5 mm, and 0.05 mm for each.
    ['0.3 mm', '0.4 mm', '1.3 mm', false],
    ['0.3 mm', '0.4 mm', '1.4 mm', true],
    // Degrees to a tenth round by more than the limit.
    ['0.1°', '0.1°', '0.4°', false],
    // Two units are not compared.
    [`0°04'`, `0°05'`, '9 mm', false],
  ])('%s and %s beside %s', (left, right, total, isContradicted) => {
    expect(front(left, right, total) !== '?').toBe(isContradicted);
  });

  test('the thrust angle has the size of half the difference, whichever way is counted up', () => {
    const rear = (thrust: string): string =>
      told(
        'toes_contradict',
        `of: toe, at: rear left, after: 0°20'`,
        `of: toe, at: rear right, after: 0°04'`,
        `of: thrust angle, after: ${thrust}`,
      );
    expect([rear(`0°08'`), rear(`-0°08'`), rear(`0°12'`)]).toEqual(['?', '?', '?']);
    expect(rear(`0°01'`)).toContain('half the difference');
  });
});

test('the thrust angle is specified about nothing', () => {
  const thrust = (range: string): string => told('thrust_off_centre', `of: thrust angle, ${range}`);
  expect(thrust(`specified: 0.02°, tolerance: 0.1°`)).toBe('?');
  expect(thrust(`specified: 0°03', tolerance: 0°10'`)).not.toBe('?');
  expect(thrust(`from: -0°10', to: 0°10'`)).toBe('?');
  expect(thrust(`from: 0°00', to: 0°12'`)).not.toBe('?');
});
