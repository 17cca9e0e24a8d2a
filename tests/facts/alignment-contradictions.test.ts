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

describe('left and right as they go', () => {
  const apart = (of: string, left: string, right: string): string =>
    told(
      'wheels_apart',
      `of: ${of}, at: front left, specified: ${left}, tolerance: 1°, after: ${right}`,
      `of: ${of}, at: front right, specified: 1°, tolerance: 1°, after: 1°`,
    );
  test.each([
    ['camber', '1°', `1°45'`, false],
    ['camber', '1°', `1°46'`, true],
    ['camber', '1°', `0°14'`, true],
    ['camber', `1°30'`, `1°46'`, false],
    ['caster', '1°', '2°', false],
    ['caster', '1°', `2°01'`, true],
    ['caster', '1°', '2 mm', false],
  ])('%s specified as %s of a wheel that stands at %s', (of, specified, after, isApart) => {
    expect(apart(of, specified, after) !== '?').toBe(isApart);
  });
});

describe('a wheel that came right by itself', () => {
  const right = (before: string, rest: string, at = 'rear left'): string => {
    const fact = factsOf(
      `${tarn}\nverify: { alignment: { done: 2026-10-12, values: [{ of: camber, at: ${at}, specified: -1°30', tolerance: 0°30', before: ${before}, after: -1°30' }] } }\n${rest}`,
    ).fact('step.wheel_came_right', '/verify/alignment');
    return fact.known ? String(fact.value) : '?';
  };
  const worked = (part: string, work = 'do: replace'): string =>
    `parts: [{ name: X, ${part}, operations: [{ ${work} }] }]`;

  test.each([
    [`-2°31'`, '', true],
    [`-2°30'`, '', false],
    [`-0°29'`, '', true],
    [`-2°31'`, worked('kind: suspension part'), false],
    [`-2°31'`, worked('kind: suspension part', 'do: remove and refit'), false],
    [`-2°31'`, worked('kind: suspension part', 'do: refinish'), true],
    [`-2°31'`, worked('kind: suspension part, side: right'), true],
    [`-2°31'`, worked('kind: subframe').replace('name: X', 'name: Front subframe'), true],
    [`-2°31'`, worked('kind: rear rail, side: left', 'do: straighten'), false],
    [`-2°31'`, worked('kind: rear rail, side: right', 'do: straighten'), true],
    [`-2°31'`, worked('kind: bumper cover', 'do: replace'), true],
    [
      `-2°31'`,
      `${worked('kind: rear rail, side: left')}\ndamage: { indirect: { looked_at: [rear axle mounts], found: none found } }`,
      true,
    ],
    [
      `-2°31'`,
      `${worked('kind: rear rail, side: left')}\ndamage: { indirect: { looked_at: [front axle mounts], found: none found } }`,
      false,
    ],
  ])('%s; %s', (before, rest, isTold) => {
    expect(right(before, rest) !== '?').toBe(isTold);
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
