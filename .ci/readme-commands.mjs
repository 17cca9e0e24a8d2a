// Runs the commands that README.md shows: in its ```sh blocks, the lines that begin with `node bin/planish.js`, `npm` or
// `npx`. A line that ends in a comment with "status N" must leave status N, every other one status 0. Lines with a <placeholder> are
// for the reader to fill in and are passed over, as are the installing and testing that .ci/run did before; of `npm ci && …` the rest is run.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';

const root = path.dirname(import.meta.dirname);
const alreadyRun = new Set(['npm ci', 'npm test', 'npm ci && npm test']);

const readme = path.join(root, 'README.md');
if (!existsSync(readme)) fail('README.md is not there');
const commands = commandsOf(readFileSync(readme, 'utf8'));
if (!commands.some(({ command }) => command.startsWith('node bin/planish.js')))
  fail('README.md shows no command of planish');

let wrong = 0;
for (const { command: shown, expected, line } of commands) {
  // Installed is it already; a second time would only take time.
  const command = shown.replace(/^npm ci && /u, '');
  const result = spawnSync('bash', ['-o', 'pipefail', '-c', command], {
    cwd: root,
    env: { ...process.env, NO_COLOR: '1' },
    encoding: 'utf8',
    timeout: 300_000,
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const ok = result.status === expected;
  process.stdout.write(
    `${ok ? 'as documented' : 'NOT as documented'}: ${command} (status ${String(result.status ?? result.signal)})\n`,
  );
  if (ok) continue;
  wrong += 1;
  process.stdout.write(`  README.md line ${line} says status ${expected}; it printed:\n`);
  process.stdout.write(`${result.stdout}${result.stderr}`.replaceAll(/^/gm, '  ').slice(0, 4000) + '\n');
}
process.stdout.write(`${commands.length} commands of README.md run, ${wrong} not as documented\n`);
if (wrong > 0) process.exitCode = 1;

function commandsOf(text) {
  const found = [];
  let language;
  let pending;
  text.split('\n').forEach((raw, index) => {
    const fence = /^\s*```\s*(\w*)/.exec(raw);
    if (fence !== null) {
      language = language === undefined ? fence[1] : undefined;
      return;
    }
    if (!['sh', 'bash', 'shell'].includes(language)) return;
    const start = pending ?? { line: index + 1, text: '' };
    start.text += raw.trim().replace(/^\$ /, '');
    if (start.text.endsWith('\\')) {
      pending = { ...start, text: start.text.slice(0, -1) };
      return;
    }
    pending = undefined;
    const comment = /\s#\s(.*)$/.exec(start.text)?.[1] ?? '';
    const command = start.text.replace(/\s+#\s.*$/, '').trim();
    if (!/^(?:node bin\/planish\.js|npm|npx)\b/.test(command)) return;
    if (alreadyRun.has(command) || /<[^\s<>][^<>]*>|…/.test(command)) return;
    found.push({ command, line: start.line, expected: Number(/\bstatus (\d+)/.exec(comment)?.[1] ?? 0) });
  });
  return found;
}

function fail(reason) {
  process.stdout.write(`${reason}\n`);
  process.exit(1);
}
