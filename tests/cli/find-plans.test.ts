import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { findPlans } from '../../src/cli/plans/find-plans.ts';

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'planish find '));
  for (const file of [
    'jobs/b.yaml',
    'jobs/a.yml',
    'jobs/B.YAML',
    'jobs/notes.txt',
    'jobs/yaml',
    'jobs/inner.yaml/c.yaml',
    'jobs/[x] (y)/d.yaml',
    'jobs/.hidden.yaml',
    'jobs/.tool/e.yaml',
    'jobs/node_modules/f.yaml',
    'other/g.yaml',
    'one-[2026].yaml',
    '-',
  ]) {
    mkdirSync(path.join(folder, path.dirname(file)), { recursive: true });
    writeFileSync(path.join(folder, file), '');
  }
  mkdirSync(path.join(folder, 'empty'));
  mkdirSync(path.join(folder, 'links'));
  symlinkSync('../jobs/b.yaml', path.join(folder, 'links/linked.yaml'));
  symlinkSync('../other', path.join(folder, 'links/folder'));
  symlinkSync('..', path.join(folder, 'links/ring'));
  symlinkSync('nowhere', path.join(folder, 'links/dangling.yaml'));
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

const found = (...args: readonly string[]): ReturnType<typeof findPlans> => findPlans(args, folder);
const shown = (...args: readonly string[]): readonly string[] => found(...args).map((source) => source.shown);
const named = (...args: readonly string[]): readonly (readonly [string, boolean])[] =>
  found(...args).map((source) => [source.shown, source.kind === 'file' && source.named] as const);

describe('folders', () => {
  test('every YAML file below comes, sorted by code units; hidden names and packages of others do not', () => {
    expect(named('jobs')).toEqual([
      ['jobs/B.YAML', false],
      ['jobs/[x] (y)/d.yaml', false],
      ['jobs/a.yml', false],
      ['jobs/b.yaml', false],
      ['jobs/inner.yaml/c.yaml', false],
    ]);
  });

  test('the same with a slash at its end, from above, and as the working folder', () => {
    expect(shown('jobs/')).toEqual(shown('jobs'));
    expect(shown('./other/../jobs')).toEqual(shown('jobs'));
    expect(findPlans(['.'], path.join(folder, 'other')).map((source) => source.shown)).toEqual(['g.yaml']);
  });

  test('a folder without YAML is no plan found', () => {
    expect(found('empty')).toEqual([
      { kind: 'nothing found', shown: 'empty', sentence: 'No YAML file lies in this folder.' },
    ]);
  });

  test('links are followed, each folder once; a link to nowhere is listed, so that it is told', () => {
    expect(shown('links')).toEqual([
      'links/dangling.yaml',
      'links/folder/g.yaml',
      'links/linked.yaml',
      'links/ring/jobs/B.YAML',
      'links/ring/jobs/[x] (y)/d.yaml',
      'links/ring/jobs/a.yml',
      'links/ring/jobs/b.yaml',
      'links/ring/jobs/inner.yaml/c.yaml',
      'links/ring/one-[2026].yaml',
    ]);
  });
});

describe('files and patterns', () => {
  test('a file that is named is named, whether it is there or not, and whatever it is called', () => {
    expect(named('jobs/notes.txt', 'nowhere.yaml')).toEqual([
      ['jobs/notes.txt', true],
      ['nowhere.yaml', true],
    ]);
  });

  test('a name with signs of patterns in it is the file where there is one', () => {
    expect(shown('one-[2026].yaml')).toEqual(['one-[2026].yaml']);
  });

  test('a pattern names files only, sorted', () => {
    expect(named('jobs/*')).toEqual([
      ['jobs/B.YAML', true],
      ['jobs/a.yml', true],
      ['jobs/b.yaml', true],
      ['jobs/notes.txt', true],
      ['jobs/yaml', true],
    ]);
    expect(shown('{jobs,other}/**/[cg].yaml')).toEqual(['jobs/inner.yaml/c.yaml', 'other/g.yaml']);
  });

  test('a pattern without a match is no plan found', () => {
    expect(found('jobs/*.json')).toEqual([
      { kind: 'nothing found', shown: 'jobs/*.json', sentence: 'No file matches this pattern.' },
    ]);
  });

  test('an empty name, as of an empty variable, is not the working folder', () => {
    expect(found('')).toMatchObject([{ kind: 'nothing found' }]);
  });

  test('a name that is too long for the system is left for the reader to tell', () => {
    expect(named('x'.repeat(5000))).toEqual([['x'.repeat(5000), true]]);
  });
});

describe('standard input and order', () => {
  test('- is standard input, once; ./- is the file', () => {
    expect(found('-', 'other', '-', './-')).toMatchObject([
      { kind: 'standard input', shown: '(standard input)' },
      { kind: 'file', shown: 'other/g.yaml' },
      { kind: 'file', shown: '-', named: true },
    ]);
  });

  test('in the order of the arguments; what is reached twice comes once, where it came first', () => {
    expect(shown('other', 'jobs/b.yaml', 'jobs/*.yaml', 'jobs/../jobs/b.yaml')).toEqual([
      'other/g.yaml',
      'jobs/b.yaml',
    ]);
  });

  test('a file of a folder that is named too counts as named, before or after the folder', () => {
    expect(named('other', 'other/g.yaml')).toEqual([['other/g.yaml', true]]);
    expect(named('other/g.yaml', 'other')).toEqual([['other/g.yaml', true]]);
  });

  test('a whole path is shown whole, so that it is the same from every folder', () => {
    const whole = path.join(folder, 'other');
    for (const from of [folder, path.join(folder, 'jobs'), '/']) {
      expect(findPlans([whole], from).map((source) => source.shown)).toEqual([`${whole}/g.yaml`]);
    }
  });
});
