import { describe, expect, test } from 'vitest';
import { explainUnknownWord, planWords } from '../../src/plan/plan-words.ts';

describe('words of the plan, asked for outside of a plan', () => {
  test('of a definition and of a key in one', () => {
    expect(planWords('item').known).toContain('structural adhesive');
    expect(planWords('operation', 'source').known).toContain('hot air');
    expect(planWords('operation', 'source').synonyms.get('flame')).toBe('torch');
  });

  test('a place without words is a defect, not an empty list', () => {
    expect(() => planWords('operation', 'note')).toThrow('operation.note');
    expect(() => planWords('nothing')).toThrow('nothing');
  });

  test('an unknown one is told with the nearest, or with all', () => {
    const words = planWords('operation', 'source');
    expect(explainUnknownWord('--source', 'tourch', words)).toBe(
      '--source does not know `tourch`: the nearest known is `torch`.',
    );
    expect(explainUnknownWord('--source', 'sun', words)).toMatch(/it takes `torch`, .*`oven`/u);
  });
});
