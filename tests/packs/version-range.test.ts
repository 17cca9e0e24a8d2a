import fc from 'fast-check';
import semver from 'semver';
import { describe, expect, test } from 'vitest';
import { readVersion } from '../../src/packs/versions/semantic-version.ts';
import { fitsRange } from '../../src/packs/versions/version-range.ts';

function fits(version: string, range: string): boolean | undefined {
  const read = readVersion(version);
  if (read === undefined) throw new Error(`${version} is no version`);
  return fitsRange(read, range);
}

// The README of package semver 7.8 (sections Ranges and Advanced Range Syntax): each range and what it comes to.
const documented: readonly (readonly [
  range: string,
  inside: readonly string[],
  outside: readonly string[],
])[] = [
  ['>=1.2.7', ['1.2.7', '1.2.8', '2.5.3', '1.3.9'], ['1.2.6', '1.1.0']],
  ['>=1.2.7 <1.3.0', ['1.2.7', '1.2.8', '1.2.99'], ['1.2.6', '1.3.0', '1.1.0']],
  ['1.2.7 || >=1.2.9 <2.0.0', ['1.2.7', '1.2.9', '1.4.6'], ['1.2.8', '2.0.0']],
  ['1.2.3 - 2.3.4', ['1.2.3', '2.3.4'], ['1.2.2', '2.3.5']],
  ['1.2 - 2.3.4', ['1.2.0', '2.3.4'], ['1.1.9', '2.3.5']],
  ['1.2.3 - 2.3', ['1.2.3', '2.3.99'], ['1.2.2', '2.4.0']],
  ['1.2.3 - 2', ['1.2.3', '2.99.0'], ['1.2.2', '3.0.0']],
  ['*', ['0.0.0', '9.9.9'], []],
  ['1.x', ['1.0.0', '1.9.9'], ['0.9.9', '2.0.0']],
  ['1.2.x', ['1.2.0', '1.2.9'], ['1.1.9', '1.3.0']],
  ['1', ['1.0.0', '1.9.9'], ['0.9.9', '2.0.0']],
  ['1.2', ['1.2.0', '1.2.9'], ['1.1.9', '1.3.0']],
  ['~1.2.3', ['1.2.3', '1.2.9'], ['1.2.2', '1.3.0']],
  ['~1.2', ['1.2.0', '1.2.9'], ['1.1.9', '1.3.0']],
  ['~1', ['1.0.0', '1.9.9'], ['0.9.9', '2.0.0']],
  ['~0.2.3', ['0.2.3', '0.2.9'], ['0.2.2', '0.3.0']],
  ['~0.2', ['0.2.0', '0.2.9'], ['0.1.9', '0.3.0']],
  ['~0', ['0.0.0', '0.9.9'], ['1.0.0']],
  ['^1.2.3', ['1.2.3', '1.9.9'], ['1.2.2', '2.0.0']],
  ['^0.2.3', ['0.2.3', '0.2.9'], ['0.2.2', '0.3.0']],
  ['^0.0.3', ['0.0.3'], ['0.0.2', '0.0.4']],
  ['^1.2.x', ['1.2.0', '1.9.9'], ['1.1.9', '2.0.0']],
  ['^0.0.x', ['0.0.0', '0.0.9'], ['0.1.0']],
  ['^0.0', ['0.0.0', '0.0.9'], ['0.1.0']],
  ['^1.x', ['1.0.0', '1.9.9'], ['0.9.9', '2.0.0']],
  ['^0.x', ['0.0.0', '0.9.9'], ['1.0.0']],
];

describe('ranges are those of package semver', () => {
  test.each(documented)('%s as its documentation says', (range, inside, outside) => {
    for (const version of inside) expect([version, fits(version, range)]).toEqual([version, true]);
    for (const version of outside) expect([version, fits(version, range)]).toEqual([version, false]);
  });

  const number = fc.integer({ min: 0, max: 3 }).map(String);
  const partial = fc.oneof(
    fc.tuple(number, number, number).map((parts) => parts.join('.')),
    fc.tuple(number, number).map((parts) => parts.join('.')),
    fc.tuple(number, fc.constantFrom('x', 'X', '*')).map((parts) => parts.join('.')),
    fc.tuple(number, number, fc.constantFrom('x', 'X', '*')).map((parts) => parts.join('.')),
    number,
    fc.constantFrom('*', 'x'),
  );
  const sign = fc.constantFrom('', '', '>', '>=', '<', '<=', '=', '~', '^', '~>', '>= ', '< ', '^ ');
  const comparator = fc.tuple(sign, partial).map(([before, after]) => before + after);
  const alternative = fc.oneof(
    fc.array(comparator, { minLength: 1, maxLength: 3 }).map((all) => all.join(' ')),
    fc.tuple(partial, partial).map(([from, to]) => `${from} - ${to}`),
  );
  const range = fc.array(alternative, { minLength: 1, maxLength: 3 }).map((all) => all.join(' || '));

  test('whatever is written, package semver says the same', () => {
    fc.assert(
      fc.property(range, fc.tuple(number, number, number), (text, parts) => {
        const version = parts.join('.');
        expect(fits(version, text)).toBe(semver.satisfies(version, text));
      }),
      { numRuns: 5000 },
    );
  });

  test.each([
    '',
    ' ',
    '1 ||',
    '|| 1',
    'spring',
    '1.2.3.4',
    '01',
    '>',
    '1.2.3-beta',
    '-1',
    '1 - ',
    `${'1 || '.repeat(60)}1`,
  ])('%j is refused: %s', (text) => {
    expect(fits('1.2.3', text)).toBeUndefined();
  });
});
