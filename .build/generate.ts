// Makes the files that are made from others: npm run generate. With --check nothing is written; what is not as it would
// be made is named, and the status is 1.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { generatedFiles } from './generated-files.ts';
import { root } from './json-schema.ts';

const check = process.argv.includes('--check');
const stale: string[] = [];

for (const file of generatedFiles) {
  const missing = file.madeFrom.find((source) => !existsSync(path.join(root, source)));
  if (missing !== undefined) {
    process.stderr.write(`${file.path}: left out, ${missing} is not there\n`);
    continue;
  }
  const target = path.join(root, file.path);
  const text = await file.make();
  if (existsSync(target) && readFileSync(target, 'utf8') === text) continue;
  stale.push(file.path);
  if (!check) writeFileSync(target, text);
}

for (const file of stale) process.stdout.write(check ? `${file} is not up to date\n` : `${file} made anew\n`);
if (check && stale.length > 0) {
  process.stdout.write('Run: npm run generate\n');
  process.exitCode = 1;
}
