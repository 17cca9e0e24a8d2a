import { expect, test } from 'vitest';
import { grid } from '../../../src/report/sheet/sheet-facts.ts';

test('the last cell of a row that is shorter than the head takes the rest of it', () => {
  const { source } = grid('c', ['a', 'b', 'c', 'd'], [['x', 'why'], ['y', '1', '2', '3'], ['z']]);
  expect(source).toContain('<td colspan="3">why</td>');
  expect(source.match(/<td/gu)).toHaveLength(4);
});

test('a short table is kept together on paper, a long one runs on', () => {
  const rows = Array.from({ length: 9 }, (_one, index) => [String(index), 'b']);
  expect(grid('c', ['a', 'b'], rows.slice(1)).source).toContain('class="wide short"');
  expect(grid('c', ['a', 'b'], rows).source).toContain('class="wide"');
});
