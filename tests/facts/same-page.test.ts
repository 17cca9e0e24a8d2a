import { describe, expect, test } from 'vitest';
import { sharePage } from '../../src/facts/papers/same-page.ts';

describe('a cited place and the place of a statement', () => {
  test.each([
    ['p. 20-26', 'p. 20-26', true],
    ['p. 22', 'p. 20-26', true],
    ['pp. 22–23', 'pages 20-26', true],
    ['20', 'p. 20-26', true],
    ['p. 14-20', 'p. 20-26', true],
    ['p. 19', 'p. 20-26', false],
    ['p. 27', 'p. 20-26', false],
    ['p. 2', 'p. 20-26', false],
    ['section 3', 'section 3', true],
    ['section 3', 'p. 3', false],
    ['§ 3', '§3', true],
    ['Drawing B', 'drawing b', true],
    ['step 4, note', 'p. 4', false],
  ])('%s and %s: %s', (cited, stated, expected) => {
    expect(sharePage(cited, stated)).toBe(expected);
  });
});
