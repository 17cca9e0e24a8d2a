// How long a command takes from its start to its end, beside a bare start of Node. Run: npm run bench
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import path from 'node:path';

const root = path.dirname(path.dirname(import.meta.dirname));
const planish = path.join(root, 'bin/planish.js');
const runs = 31;

const commands: readonly (readonly string[])[] = [
  ['-e', '0'],
  [planish, '--version'],
  [planish, 'check', 'examples'],
];

// Node reads extra certificates at each start, which would be measured with it.
const env = { ...process.env, NO_COLOR: '1' };
Reflect.deleteProperty(env, 'NODE_EXTRA_CA_CERTS');

const cache = existsSync(path.join(root, 'bin/planish.bundle.cache')) ? 'with' : 'without';
process.stdout.write(`Node ${process.version}, ${cache} code cache, ${runs} runs each, in turn\n`);
const times = commands.map((): number[] => []);
for (let run = 0; run < runs; run++)
  commands.forEach((command, index) => times[index]?.push(milliseconds(command)));
commands.forEach((command, index) => {
  const sorted = (times[index] ?? []).sort((a, b) => a - b);
  const median = sorted[runs >> 1] ?? 0;
  const name = ['node', ...command].map((word) => (word === planish ? 'bin/planish.js' : word)).join(' ');
  process.stdout.write(
    `${median.toFixed(1).padStart(8)} ms median ${(sorted[0] ?? 0).toFixed(1).padStart(8)} ms least   ${name}\n`,
  );
});

function milliseconds(command: readonly string[]): number {
  const started = process.hrtime.bigint();
  const { error } = spawnSync(process.execPath, command, { cwd: root, env, stdio: 'ignore' });
  if (error !== undefined) throw error;
  return Number(process.hrtime.bigint() - started) / 1e6;
}
