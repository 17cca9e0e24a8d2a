// Package yaml lexes and parses by generators that hand every word up through four or five others: a third of its time. In the
// bundle the same code runs as plain calls that put what they would have yielded on a list, in the same order. The text
// is changed by form alone, and a version of the package that does not have this form stops the build.
import { readFileSync } from 'node:fs';

/** An esbuild plugin. */
export const eagerYaml = {
  name: 'eager-yaml',
  setup(build) {
    build.onLoad({ filter: /[\\/]yaml[\\/]dist[\\/]parse[\\/](?:lexer|parser)\.js$/ }, ({ path }) => {
      const source = readFileSync(path, 'utf8');
      return { contents: path.endsWith('lexer.js') ? eagerLexer(source) : eagerParser(source), loader: 'js' };
    });
  },
};

function eagerLexer(source) {
  return collecting(withoutYields(source), 'lex', 'source, incomplete');
}

function eagerParser(source) {
  // `parse` would walk over the list that `next` fills; planish feeds the parser word by word and never calls it.
  const fed = replaceOnce(source, /\n {4}\*parse\(source, incomplete = false\) \{\n[\s\S]*?\n {4}\}\n/, '\n');
  // An item of a list in brackets of which a key is deleted becomes a slow object; a key without a value reads as one that is gone.
  const emptied = ['key', 'sep'].reduce(
    (code, key) =>
      replaceOnce(
        code,
        `\n${' '.repeat(16)}delete it.${key};\n`,
        `\n${' '.repeat(16)}it.${key} = undefined;\n`,
      ),
    fed,
  );
  return collecting(collecting(withoutYields(emptied), 'next', 'source'), 'end', '');
}

function withoutYields(source) {
  const code = source.replaceAll(/\/\*\*[\s\S]*?\*\//g, '');
  const called = code.replaceAll(/\byield\* /g, '').replaceAll(/^( {4})\*(?=\w+\()/gm, '$1');
  const listed = called.replaceAll(/^(\s*)yield ([^;]+);$/gm, '$1this.yielded.push($2);');
  if (/\byield\b|^\s*\*\w+\(/m.test(listed)) throw new Error('package yaml yields in a form not known here');
  return replaceOnce(listed, /^ {4}constructor\(/m, '    yielded = [];\n    constructor(');
}

/** The method under another name, and in its place one that runs it and answers with the list. */
function collecting(code, method, given) {
  const inner = `${method}Eagerly`;
  const names = given.replace('incomplete', 'incomplete = false');
  return replaceOnce(
    code,
    `\n    ${method}(${names}) {\n`,
    `
    ${method}(${names}) {
        this.${inner}(${given});
        const { yielded } = this;
        if (yielded.length > 0) this.yielded = [];
        return yielded;
    }
    ${inner}(${names}) {
`,
  );
}

function replaceOnce(text, from, to) {
  const pieces = text.split(from);
  if (pieces.length !== 2) throw new Error(`package yaml does not have ${String(from)} once`);
  return pieces.join(to);
}
