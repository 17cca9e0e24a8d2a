import { describe, expect, test } from 'vitest';
import { runPlanish } from './run-planish.ts';

const rail = [
  ...['heat', '--source', 'induction', '--temperature', '600C', '--hold', '60s', '--times', '1'],
  ...[
    '--measured-by',
    'contact probe',
    '--sheet',
    '1.2mm',
    '--metal',
    'HC340LA',
    '--near',
    'structural adhesive',
  ],
];
const cloth = [
  ...['--sink', 'wet rag', '--sink-distance', '30mm', '--sink-width', '20mm'],
  ...['--sink-length', '300mm', '--sink-water', '200g'],
];

function clearOf(args: readonly string[]): number {
  const { stdout, stderr, status } = runPlanish([...args, '--format', 'json']);
  if (status !== 0) throw new Error(stderr);
  const answer: { readonly stay_clear: { readonly value: number } } = JSON.parse(stdout);
  return answer.stay_clear.value;
}

describe('planish heat with a heat sink', () => {
  test('a wet cloth brings the stay-clear distance down, and text and picture name it', () => {
    expect(clearOf([...rail, ...cloth])).toBeLessThan(clearOf(rail));
    const { stdout } = runPlanish([...rail, ...cloth]);
    expect(stdout).toContain('Counted: wet cloth from 30 mm to 50 mm');
    expect(stdout).toMatch(/=\s+wet\s+cloth\s+from\s+30\s+mm\s+to\s+50\s+mm/u);
    expect(stdout).toContain('taken to lie across the whole way');
  });

  test.each([
    [['--sink', 'wet cloth', '--sink-distance', '30mm'], '--sink-water is missing'],
    [[...cloth, '--sink-held', 'clamped'], '--sink-held does not belong to a wet cloth'],
    [['--sink-water', '200g'], '--sink-water belongs to --sink'],
    [['--sink', 'ice'], '--sink does not know'],
    [[...cloth.slice(0, -1), '200kg'], 'out of range'],
  ])('%j ends with 2 and one sentence', (args, sentence) => {
    const { status, stderr } = runPlanish([...rail, ...args]);
    expect(status).toBe(2);
    expect(stderr).toContain(sentence);
  });
});
