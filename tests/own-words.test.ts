import { describe, expect, test } from 'vitest';
import { nearMissesOfOwnWords } from './faults-of-own-words.ts';
import { judgeText, ruleIds } from './judge-text.ts';
import { changed } from './one-change.ts';

describe('what looks like an evasion and is none stays cleared', () => {
  test.each(nearMissesOfOwnWords)('%s', (_name, plan, changes) => {
    expect(ruleIds(judgeText(changed(plan, changes)))).toEqual([]);
  });
});
