// Package yaml alone: parses every YAML file of a folder to a document and does nothing with it.
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { parseDocument } from 'yaml';

const [folder] = process.argv.slice(2);
let kept;
for (const name of readdirSync(folder)) kept = parseDocument(readFileSync(path.join(folder, name), 'utf8'));
process.exitCode = kept === undefined ? 1 : 0;
