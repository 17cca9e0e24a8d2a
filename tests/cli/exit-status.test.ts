import { expect, test } from 'vitest';
import { exitStatus } from '../../src/cli/exit-status.ts';

test.each([
  ['cleared', false, 0],
  ['cleared', true, 0],
  ['held', true, 0],
  ['held', false, 1],
  ['stopped', true, 1],
  ['stopped', false, 1],
  ['not judged', true, 2],
  ['not judged', false, 2],
] as const)('%s, every held plan a draft: %s, leaves %i', (verdict, heldAtDraft, status) => {
  expect(exitStatus(verdict, heldAtDraft)).toBe(status);
});
