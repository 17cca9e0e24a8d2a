import { statSync } from 'node:fs';
import path from 'node:path';
import { globSync, isDynamicPattern } from 'tinyglobby';
import type { PlanSource } from './plan-source.ts';

const yamlFiles = ['**/*.yaml', '**/*.yml'];
const leftOut = ['**/node_modules/**', '**/.git/**'];

/**
 * What the arguments of a command name: files as they are, folders with the YAML files below them, glob patterns, `-` for
 * standard input. In the order of the arguments, each folder sorted by name; a file that is reached twice comes once.
 */
export function findPlans(args: readonly string[], workingFolder: string): readonly PlanSource[] {
  const seen = new Set<string>();
  const sources: PlanSource[] = [];
  const add = (file: string, named: boolean): void => {
    const full = path.resolve(workingFolder, file);
    if (seen.has(full)) return;
    seen.add(full);
    sources.push({ kind: 'file', path: full, shown: shownPath(full, workingFolder), named });
  };
  for (const arg of args) {
    if (arg === '-') {
      sources.push({ kind: 'standard input', shown: '(standard input)' });
      continue;
    }
    if (isFolder(path.resolve(workingFolder, arg))) {
      const files = below(yamlFiles, path.resolve(workingFolder, arg));
      for (const file of files) add(file, false);
      if (files.length === 0) sources.push(nothing(arg, 'No YAML file lies in this folder.'));
    } else if (isDynamicPattern(arg) && !exists(path.resolve(workingFolder, arg))) {
      const files = below([arg.replaceAll('\\', '/')], workingFolder);
      for (const file of files) add(file, true);
      if (files.length === 0) sources.push(nothing(arg, 'No file matches this pattern.'));
    } else {
      add(arg, true);
    }
  }
  return sources;
}

function below(patterns: readonly string[], folder: string): readonly string[] {
  const files = globSync([...patterns], {
    cwd: folder,
    absolute: true,
    ignore: leftOut,
    followSymbolicLinks: false,
  });
  // By code units, so that the order is the same on every machine.
  return files.sort((a, b) => (a < b ? -1 : 1));
}

function nothing(shown: string, sentence: string): PlanSource {
  return { kind: 'nothing found', shown, sentence };
}

/** Relative to the working folder with `/`, the same string in every form of the report. */
function shownPath(full: string, workingFolder: string): string {
  const relative = path.relative(workingFolder, full);
  return (relative === '' ? '.' : relative).replaceAll(path.sep, '/');
}

function isFolder(file: string): boolean {
  return statSync(file, { throwIfNoEntry: false })?.isDirectory() === true;
}

function exists(file: string): boolean {
  return statSync(file, { throwIfNoEntry: false }) !== undefined;
}
