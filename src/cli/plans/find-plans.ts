import { statSync } from 'node:fs';
import path from 'node:path';
import { isDynamicPattern } from 'tinyglobby';
import { filesMatching } from './files-matching.ts';
import { ignoreFileName } from './ignore-files.ts';
import type { PlanSource } from './plan-source.ts';
import { closedSentence, yamlFilesBelow } from './yaml-files-below.ts';

type FoundFile = Extract<PlanSource, { readonly kind: 'file' }>;

/**
 * What the arguments of a command name: files as they are, folders with the YAML files below them, glob patterns, `-` for
 * standard input. In the order of the arguments, each folder sorted by name; a file that is reached twice comes once, and
 * counts as named when any argument names it.
 */
export function findPlans(args: readonly string[], workingFolder: string): readonly PlanSource[] {
  const sources = new Map<string, PlanSource>();
  for (const arg of args) {
    for (const source of sourcesOf(arg, workingFolder)) {
      const key = source.kind === 'file' ? `file ${source.path}` : `${source.kind} ${source.shown}`;
      const before = sources.get(key);
      if (before === undefined) sources.set(key, source);
      else if (before.kind === 'file' && source.kind === 'file' && source.named) {
        sources.set(key, { ...before, named: true });
      }
    }
  }
  return [...sources.values()];
}

function sourcesOf(arg: string, workingFolder: string): readonly PlanSource[] {
  // An empty name would be the working folder, and a shop's script with an empty variable would pass.
  if (arg === '') return [nothing("''", 'An empty name is no file, folder or pattern.')];
  if (arg === '-') return [{ kind: 'standard input', shown: '(standard input)' }];
  const full = path.resolve(workingFolder, arg);
  const show = path.isAbsolute(arg) ? slashed : (file: string) => shownPath(file, workingFolder);
  const file = (found: string, named: boolean): FoundFile => ({
    kind: 'file',
    path: found,
    shown: show(found),
    named,
  });
  if (isFolder(full)) {
    const { files, closed, passedOver } = yamlFilesBelow(full);
    const unseen = closed.map(({ folder, sentence }) => nothing(show(folder), sentence));
    const unasked = passedOver === 0 ? [] : [passed(show(full), passedOver)];
    if (files.length + unseen.length + unasked.length === 0)
      return [nothing(arg, 'No YAML file lies in this folder.')];
    return [...files.map((found) => file(found, false)), ...unseen, ...unasked];
  }
  if (isDynamicPattern(arg) && !exists(full)) {
    const { files, closed } = filesMatching(slashed(arg), workingFolder);
    const unseen = closed.map((folder) => nothing(show(folder), closedSentence));
    return files.length + unseen.length === 0
      ? [nothing(arg, 'No file matches this pattern.')]
      : [...files.map((found) => file(found, true)), ...unseen];
  }
  return [file(full, true)];
}

function nothing(shown: string, sentence: string): PlanSource {
  return { kind: 'nothing found', shown, sentence };
}

function passed(shown: string, count: number): PlanSource {
  const what = count === 1 ? '1 file or folder is' : `${String(count)} files and folders are`;
  return { kind: 'passed over', shown, sentence: `${what} passed over, as ${ignoreFileName} says.` };
}

/**
 * As the argument names it: a whole path stays whole, any other is relative to the working folder. So the same arguments give
 * the same report from whatever folder it is asked.
 */
function shownPath(full: string, workingFolder: string): string {
  const relative = path.relative(workingFolder, full);
  return slashed(relative === '' ? '.' : relative);
}

function slashed(file: string): string {
  return file.replaceAll(path.sep, '/');
}

function isFolder(file: string): boolean {
  return look(file)?.isDirectory() === true;
}

function exists(file: string): boolean {
  return look(file) !== undefined;
}

/** A name that the system refuses to look up (too long, a ring of links) is told when it is read. */
function look(file: string): ReturnType<typeof statSync> | undefined {
  try {
    return statSync(file);
  } catch {
    return undefined;
  }
}
