import { describe, expect, test } from 'vitest';
import { againstLines } from '../../src/report/against-lines.ts';
import { planAsJson } from '../../src/report/plan-json.ts';
import type { PlacedFinding } from '../../src/report/plan-report.ts';
import { judgeText } from '../judge-text.ts';
import { changed, lineOf } from '../one-change.ts';
import type { Change } from '../one-change.ts';
import { releasedElectric, releasedRing } from '../released.ts';
import { placed } from './invented-report.ts';

// Two lines that contradict each other: a finding names both, whichever of them is mistyped.

const at = (line: number): PlacedFinding['place'] => ({ line, column: 1, endLine: line, endColumn: 2 });

describe('the lines behind the line of a finding', () => {
  const one = placed({ rule: 'x', severity: 'hold' }, 7);
  test.each<readonly [readonly number[], string]>([
    [[], ''],
    [[7], ''],
    [[98], ', against line 98'],
    [[120, 98, 98, 7], ', against lines 98 and 120'],
    [[3, 2, 1], ', against lines 1, 2 and 3'],
  ])('%j', (lines, expected) => {
    expect(againstLines({ ...one, against: lines.map(at) })).toBe(expected);
  });
  test('of a finding about one entry', () => {
    expect(againstLines(one)).toBe('');
  });
});

describe('rules of days name the line of the other day', () => {
  test.each<readonly [string, string, readonly Change[], string]>([
    [
      'out-of-order',
      releasedRing,
      [['restraints: { done: 2026-10-16', 'restraints: { done: 2026-10-17']],
      'restraints: { done: 2026-10-17',
    ],
    [
      'fit-checked-too-early',
      releasedRing,
      [['before_welding: 2026-10-08', 'before_welding: 2026-10-06']],
      '    done: 2026-10-07T08:00',
    ],
    [
      'hold-point-passed',
      releasedRing,
      [['flange before closing, done: 2026-10-08', 'flange before closing, done: 2026-10-11']],
      '            done: 2026-10-09',
    ],
    [
      'sealed-before-primer',
      releasedRing,
      [['primer: { planned: true, done: 2026-10-13', 'primer: { planned: true, done: 2026-10-14']],
      'primer: { planned: true, done: 2026-10-14',
    ],
    [
      'measured-after-too-early',
      releasedRing,
      [['after: 2026-10-13\n', 'after: 2026-10-08\n']],
      '            done: 2026-10-09',
    ],
    [
      'fire-precautions-after-the-work',
      releasedRing,
      [['fire: { planned: true, done: 2026-10-09', 'fire: { planned: true, done: 2026-10-13']],
      'done: 2026-10-12\n        earth_clamp',
    ],
    [
      'voltage-proved-before-isolation',
      releasedElectric,
      [
        [
          'isolation: { planned: true, done: 2026-10-20T09:00',
          'isolation: { planned: true, done: 2026-10-20T09:40',
        ],
      ],
      'isolation: {',
    ],
  ])('%s', (rule, plan, changes, other) => {
    const text = changed(plan, changes);
    const found = judgeText(text).findings.filter(({ finding }) => finding.rule === rule);
    expect(found).not.toEqual([]);
    expect(found.flatMap(({ against = [] }) => against.map(({ line }) => line))).toContain(
      lineOf(text, other),
    );
    expect(found.flatMap(({ related }) => related?.() ?? []).map(({ what }) => what)).toContain(
      'What contradicts it',
    );
  });

  test('and so does the report as JSON', () => {
    const text = changed(releasedRing, [
      ['primer: { planned: true, done: 2026-10-13', 'primer: { planned: true, done: 2026-10-14'],
    ]);
    expect(planAsJson(judgeText(text))).toMatchObject({
      findings: expect.arrayContaining([
        expect.objectContaining({
          rule: 'sealed-before-primer',
          against: [expect.objectContaining({ line: lineOf(text, 'primer: { planned') })],
        }),
      ]) as unknown,
    });
  });
});
