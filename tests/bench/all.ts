// Every ratio that is asked of planish, in one table: each bench in a process of its own, one after the other, so that none warms up
// another. Takes some ten minutes on a machine that does nothing else. Run: npm run bench, or npm run bench -- check steel
import { spawnSync } from 'node:child_process';
import path from 'node:path';

const benches = ['check', 'heat', 'steel', 'packs', 'mark', 'sheet'];
const named = process.argv.slice(2);
const unknown = named.filter((name) => !benches.includes(name));
if (unknown.length > 0) throw new Error(`no bench: ${unknown.join(', ')}; there are ${benches.join(', ')}`);

process.stdout.write(`Node ${process.version}\n${'what : beside what'.padEnd(58)}   ratio  asked\n`);
for (const name of named.length === 0 ? benches : named) {
  const { status } = spawnSync(
    process.execPath,
    ['--import', 'tsx', path.join(import.meta.dirname, `${name}.ts`)],
    { stdio: 'inherit' },
  );
  if (status !== 0) process.exitCode = 1;
}
