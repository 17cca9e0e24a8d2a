import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import fc from 'fast-check';
import { Lexer, Parser } from 'yaml';
import type { CST } from 'yaml';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { eagerYaml } from '../.build/eager-yaml.mjs';
import { anyPlan } from './any-plan.ts';

// The bundle runs package yaml with its generators turned into calls; every word and every token must stay what the package
// itself gives, for good text and for broken.

interface Words {
  lex(text: string): Iterable<string>;
}
interface Tokens {
  next(word: string): Iterable<CST.Token>;
  end(): Iterable<CST.Token>;
}
interface Reader {
  readonly lexer: () => Words;
  readonly parser: () => Tokens;
}

const root = path.dirname(import.meta.dirname);
const plans = path.join(root, 'examples/plans');
const work = mkdtempSync(path.join(tmpdir(), 'planish-eager-'));
const asPublished: Reader = { lexer: () => new Lexer(), parser: () => new Parser() };
let asBundled: Reader;

beforeAll(async () => {
  const outfile = path.join(work, 'eager.mjs');
  await build({
    stdin: {
      contents:
        "import { Lexer, Parser } from 'yaml'; export const lexer = () => new Lexer(); export const parser = () => new Parser();",
      resolveDir: root,
    },
    bundle: true,
    platform: 'node',
    format: 'esm',
    plugins: [eagerYaml],
    banner: {
      js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);",
    },
    outfile,
    logLevel: 'error',
  });
  const made: unknown = await import(pathToFileURL(outfile).href);
  if (!isReader(made)) throw new Error('the bundle of package yaml exports something else');
  asBundled = made;
});

afterAll(() => {
  rmSync(work, { recursive: true, force: true });
});

function isReader(value: unknown): value is Reader {
  return typeof value === 'object' && value !== null && 'lexer' in value && 'parser' in value;
}

function wordsAndTokens(reader: Reader, text: string): unknown {
  const words = [...reader.lexer().lex(text)];
  const parser = reader.parser();
  const tokens = [...words.flatMap((word) => [...parser.next(word)]), ...parser.end()];
  return { words, tokens };
}

function expectSame(text: string): void {
  expect(wordsAndTokens(asBundled, text)).toEqual(wordsAndTokens(asPublished, text));
}

describe('package yaml in the bundle reads as it does by itself', () => {
  it('answers with lists, so that it is not the package as published that is compared here', () => {
    expect(Array.isArray(asBundled.lexer().lex('a: 1'))).toBe(true);
    expect(Array.isArray(asPublished.lexer().lex('a: 1'))).toBe(false);
  });

  it.each(readdirSync(plans))('%s', (name) => {
    expectSame(readFileSync(path.join(plans, name), 'utf8'));
  });

  it('any plan', () => {
    fc.assert(fc.property(anyPlan, expectSame), { numRuns: 50 });
  });

  it('any run of the marks that YAML has, most of it broken', () => {
    const piece = fc.constantFrom(
      ...[
        'a',
        'b c',
        ':',
        ': ',
        '- ',
        '\n',
        '\n  ',
        '\n    ',
        '? ',
        '{',
        '}',
        '[',
        ']',
        ', ',
        '#',
        ' # note',
      ],
      ...[
        '"',
        "'",
        '|',
        '>-',
        '|+\n',
        '&x ',
        '*x',
        '!t ',
        '%YAML 1.2\n',
        '---',
        '...',
        '<<',
        '\t',
        '\r\n',
        '\\',
        'é',
      ],
    );
    const text = fc.array(piece, { maxLength: 40 }).map((pieces) => pieces.join(''));
    fc.assert(fc.property(text, expectSame), { numRuns: 2000 });
  });

  it('any change of a few characters to a good plan', () => {
    const good = readFileSync(path.join(plans, 'ring-replaced-whole.yaml'), 'utf8');
    const change = fc.tuple(fc.nat(good.length), fc.nat(6), fc.string({ maxLength: 4 }));
    fc.assert(
      fc.property(fc.array(change, { minLength: 1, maxLength: 4 }), (changes) => {
        expectSame(
          changes.reduce((text, [at, cut, put]) => text.slice(0, at) + put + text.slice(at + cut), good),
        );
      }),
      { numRuns: 200 },
    );
  });
});
