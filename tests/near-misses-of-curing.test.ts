import { expect, test } from 'vitest';
import { readCure } from '../src/facts/joint/cure-time.ts';
import { bondedRail } from './faults-of-the-bonded-rail.ts';
import { judgeText, ruleIds } from './judge-text.ts';
import { changed } from './one-change.ts';
import type { Change } from './one-change.ts';

// A good shop lets its adhesive set; each plan here does, and is cleared. What data sheets say is from memory.

test.each<readonly [string, readonly Change[]]>([
  ['measured to the minute when it had cured', [['after: 2026-09-12\n', 'after: 2026-09-08T10:00\n']]],
  [
    'measured on the day on which it had cured, hours not written',
    [['after: 2026-09-12\n', 'after: 2026-09-08\n']],
  ],
  [
    'measured 24 hours after the bond, which cures in 24',
    [
      ['cured: 2026-09-08T10:00, ', ''],
      ['after: 2026-09-12\n', 'after: 2026-09-08T10:00\n'],
    ],
  ],
  [
    'measured when the bond bears handling, long before it has cured',
    [
      ['cured: 2026-09-08T10:00, ', 'cured: 2026-09-08T10:00, handling_time: 6 h, '],
      ['after: 2026-09-12\n', 'after: 2026-09-07T16:00\n'],
    ],
  ],
  [
    'cured warm in half an hour, which its data sheet allows too',
    [
      [
        'cure: 24 h at 23 °C, cured: 2026-09-08T10:00',
        'cure: "24 h at 23 °C, or 30 min at 80 °C", cured: 2026-09-07T11:30',
      ],
      ['after: 2026-09-12\n', 'after: 2026-09-07T16:00\n'],
    ],
  ],
  [
    'measured a week and a day later, and only the data sheet says how long it cures',
    [
      ['cure: 24 h at 23 °C, cured: 2026-09-08T10:00', 'cure: by its data sheet'],
      ['after: 2026-09-12\n', 'after: 2026-09-15T13:00\n'],
      ['structural_release: { done: 2026-09-12T16:00', 'structural_release: { done: 2026-09-15T16:00'],
    ],
  ],
])('cleared: %s', (_name, changes) => {
  expect(ruleIds(judgeText(changed(bondedRail, changes)))).toEqual([]);
});

test.each([
  ['24 h at 23 °C', [86_400, 86_400, false, 23]],
  ['24-48 hours at 20 °C', [86_400, 172_800, false, 20]],
  ['1,5 h', [5_400, 5_400, false, undefined]],
  ['24 h at 23 °C, or 30 min at 80 °C', [1_800, 86_400, false, 80]],
  ['30 min at 80 °C', [1_800, 1_800, true, 80]],
  ['30 min at 175 °F', [1_800, 1_800, true, 79.444]],
  ['7 days', [604_800, 604_800, false, undefined]],
])('a cure of “%s”', (text, [shortest, longest, isWarm, warmest]) => {
  const { warmestCelsius, ...times } = readCure(text) ?? {};
  expect(times).toEqual({ shortestSeconds: shortest, longestSeconds: longest, isWarm });
  if (typeof warmest === 'number') expect(warmestCelsius).toBeCloseTo(warmest, 2);
  else expect(warmestCelsius).toBeUndefined();
});

test.each(['by its data sheet', 'overnight', '23 °C', '0 h', ''])('“%s” names no time', (text) => {
  expect(readCure(text)).toBeUndefined();
});
