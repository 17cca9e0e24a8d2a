import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { runPlanish } from './cli/run-planish.ts';

// The README shows a newcomer what to expect: up to the line of dots it must be what is printed today.
test('what the README shows is what is printed', () => {
  const readme = readFileSync('README.md', 'utf8');
  const [, command = '', shown = ''] =
    /## What it prints\n[^]*?```sh\nnode bin\/planish\.js ([^#\n]+?)\s*(?:#.*)?\n```\n\n```text\n([^]*?) {2}…\n```/u.exec(
      readme,
    ) ?? [];
  expect(shown.split('\n').length).toBeGreaterThan(10);
  expect(runPlanish(command.split(' ')).stdout.slice(0, shown.length)).toBe(shown);
});
