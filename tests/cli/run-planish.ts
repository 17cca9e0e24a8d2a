import { spawnSync } from 'node:child_process';
import path from 'node:path';

const bin = path.resolve('bin/planish.js');

export interface RunResult {
  readonly status: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

export interface RunOptions {
  readonly input?: string | Uint8Array;
  readonly folder?: string;
  readonly env?: Readonly<Record<string, string>>;
}

/** Runs the built planish as its user would, in an environment that holds nothing but what the test gives. */
export function runPlanish(args: readonly string[], { input, folder, env }: RunOptions = {}): RunResult {
  const result = spawnSync(process.execPath, [bin, ...args], {
    cwd: folder ?? process.cwd(),
    env: { PATH: process.env['PATH'] ?? '', ...env },
    encoding: 'utf8',
    maxBuffer: 64 * 1024 * 1024,
    ...(input === undefined ? {} : { input }),
  });
  return { status: result.status, stdout: result.stdout, stderr: result.stderr };
}
