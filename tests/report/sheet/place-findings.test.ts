import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { PartShown } from '../../../src/facts/part/part-shown.ts';
import { placeFindings } from '../../../src/report/sheet/place-findings.ts';
import { placed } from '../invented-report.ts';

const part = (at: string, id?: string): PartShown => ({
  ...{ at, name: at, under: [], over: [], facts: {}, besideWork: [], operations: [] },
  ...(id === undefined ? {} : { id }),
});
const parts = [
  part('/parts/1', 'ring'),
  part('/parts/0', 'skin'),
  part('/parts/2', 'ring'),
  part('/parts/3'),
];
const one = (pointer: string, more: object = {}) => placed({ rule: 'r', severity: 'hold', pointer, ...more });

describe('where a finding stands', () => {
  const at = (pointer: string, more: object = {}): string => {
    const places = placeFindings([one(pointer, more)], parts);
    const sections = (['plan', 'documents', 'measuring', 'steps', 'sign-off'] as const).filter(
      (section) => places.inSection(section).length > 0,
    );
    return [
      ...sections,
      ...parts.filter((each) => places.atPart(each.at).length > 0).map((each) => each.at),
    ].join();
  };

  test.each([
    ['/parts/0/operations/0', {}, '/parts/0'],
    ['/parts/3', {}, '/parts/3'],
    // Of two parts with one id the one that the pointer names.
    ['/parts/2/grade', { part: 'ring' }, '/parts/2'],
    ['/references/0', { part: 'ring' }, '/parts/1'],
    // The operation is on one part, what it harms is told by the place of another.
    ['/references/0', { part: 'ring', operationAt: '/parts/2/operations/0' }, '/parts/2'],
    ['/references/0/revision', {}, 'documents'],
    ['/measurements/points/3', {}, 'measuring'],
    ['/make_safe/restraints', {}, 'steps'],
    ['/finish/bake', {}, 'steps'],
    ['/verify', {}, 'steps'],
    ['/sign_off', {}, 'sign-off'],
    ['/deviations/0', {}, 'sign-off'],
    ['/vehicle/vin', {}, 'plan'],
    ['', {}, 'plan'],
    ['/parts', {}, 'plan'],
    ['/parts/77/grade', {}, 'plan'],
    ['/parts/77', { part: 'nobody' }, 'plan'],
    ['/__proto__', { part: '__proto__' }, 'plan'],
  ])('%s %j: %s', (pointer, more, expected) => {
    expect(at(pointer, more)).toBe(expected);
  });

  test('numbers run down the page, for each severity from 1', () => {
    const places = placeFindings(
      [
        one('/parts/0', { severity: 'stop' }),
        one('/parts/1', { severity: 'stop' }),
        one('/vehicle', { severity: 'hold' }),
        one('/parts/1', { severity: 'hold' }),
      ],
      parts,
    );
    expect(
      places.all.map(({ finding, number }) => `${finding.severity} ${String(number)} ${finding.pointer}`),
    ).toEqual(['hold 1 /vehicle', 'stop 1 /parts/1', 'hold 2 /parts/1', 'stop 2 /parts/0']);
  });

  test('none is lost and none comes twice, wherever they point', () => {
    const pointer = fc.constantFrom(
      '',
      '/parts',
      '/parts/0',
      '/parts/9',
      '/references/1',
      '/finish',
      '/x',
      '/sign_off',
    );
    const id = fc.constantFrom(undefined, 'ring', 'skin', 'nobody');
    fc.assert(
      fc.property(fc.array(fc.tuple(pointer, id), { maxLength: 30 }), (given) => {
        const findings = given.map(([where, of]) => one(where, of === undefined ? {} : { part: of }));
        const { all } = placeFindings(findings, parts);
        const there = new Set(all.map(({ finding }) => finding));
        expect(all).toHaveLength(findings.length);
        expect(findings.every(({ finding }) => there.has(finding))).toBe(true);
        expect(new Set(all.map(({ number }) => number)).size).toBe(findings.length);
      }),
    );
  });
});
