import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { globSync } from 'tinyglobby';
import { describe, expect, test } from 'vitest';

// What the documents name goes away or moves, and the documents stay: every file and folder that they name must be there.

const all = globSync(['**/*', '.build/*', '.ci/*'], { ignore: ['node_modules/**'], dot: true });

/** The files that a document names in code spans and links: a path with an ending, or the bare name of a source file. */
function filesNamedIn(document: string): readonly string[] {
  const text = readFileSync(document, 'utf8').replace(/^```[^]*?^```/gmu, '');
  const spans = [...text.matchAll(/`([^`\s]+)`/gu)].map(([, span = '']) => span);
  const links = [...text.matchAll(/\]\(([^)#\s]+)\)/gu)].map(([, link = '']) => link);
  const isFile = /^[\w./-]+\.(?:ts|mjs|md|json|csv)$/u;
  return [...new Set([...spans.filter((span) => isFile.test(span)), ...links])];
}

function isThere(document: string, name: string): boolean {
  const from = path.dirname(document);
  const known = [path.join(from, name), name, path.join('src', name), path.join('tests', name)];
  return known.some((one) => existsSync(one)) || all.some((file) => file.endsWith(`/${name}`));
}

describe('the files that documents name are there', () => {
  test.each(['README.md', 'DEVELOPERS.md', 'rules/README.md', 'src/heat/README.md'])('%s', (document) => {
    const named = filesNamedIn(document);
    expect(named.length).toBeGreaterThan(2);
    expect(named.filter((name) => !isThere(document, name))).toEqual([]);
  });
});
