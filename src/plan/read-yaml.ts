import { Composer, Lexer, Parser } from 'yaml';
import type { CST, ParsedNode, YAMLError } from 'yaml';
import { excerpt } from './excerpt.ts';
import type { ReadFault } from './fault.ts';
import { limits } from './limits.ts';
import { locateNodes } from './locate-nodes.ts';
import type { LocatedNode } from './node.ts';
import { yamlFault } from './yaml-fault.ts';

export type YamlReading =
  | { readonly ok: true; readonly root: LocatedNode }
  | { readonly ok: false; readonly faults: readonly ReadFault[] };

/**
 * `schema` is forced because a `%YAML 1.1` line would win over `version` alone and turn `yes`, `010` and `1:30` into other
 * values. `uniqueKeys` is off because the parser's own search is quadratic; `locateNodes` finds doubles with a `Map`.
 */
const composerOptions = {
  version: '1.2',
  schema: 'core',
  merge: false,
  resolveKnownTags: false,
  stringKeys: true,
  uniqueKeys: false,
  strict: true,
  logLevel: 'silent',
} as const;

/** After this many the text is no YAML at all, and each further error costs as much as the first. */
const errorTokensRead = 100;

interface Stream {
  readonly composer: Composer<ParsedNode>;
  readonly faults: ReadFault[];
  documents: number;
  errorTokens: number;
}

/** The one YAML document of a text, every key and value with its place; or why it cannot be used. */
export function readYaml(text: string): YamlReading {
  const parser = new Parser();
  const stream: Stream = {
    composer: new Composer(composerOptions),
    faults: [],
    documents: 0,
    errorTokens: 0,
  };
  let pieces = 0;
  for (const lexeme of new Lexer().lex(text)) {
    for (const token of parser.next(lexeme)) if (!take(stream, token)) return finish(stream, text);
    if (parser.stack.length > limits.depth + 1 && nestsDeeper(parser)) return refuse([tooDeep(parser)]);
    if (++pieces > limits.pieces) return refuse([tooManyPieces(parser.offset)]);
  }
  for (const token of parser.end()) if (!take(stream, token)) break;
  return finish(stream, text);
}

/** False when reading on would tell nothing new. */
function take(stream: Stream, token: CST.Token): boolean {
  if (token.type === 'directive' && !/^%YAML[ \t]+1\.2$/.test(token.source)) {
    const range = { start: token.offset, end: token.offset + token.source.length };
    const sentence = `\`${excerpt(token.source)}\` asks for other rules of reading than YAML 1.2; take the line out.`;
    stream.faults.push({ sentence, range });
    return false;
  }
  if (token.type === 'document') {
    stream.documents += 1;
    if (stream.documents > 1) {
      const range = { start: token.offset, end: token.offset + 3 };
      stream.faults.push({ sentence: 'A second document begins here; a file holds one plan.', range });
      return false;
    }
  }
  if (token.type === 'error') stream.errorTokens += 1;
  // Nothing comes out before the end, because a second document is never handed over.
  for (const document of stream.composer.next(token)) void document;
  return stream.errorTokens < errorTokensRead;
}

function finish(stream: Stream, text: string): YamlReading {
  const document = stream.composer.end().next().value ?? undefined;
  const found = document ? [...document.errors, ...document.warnings] : stream.composer.streamInfo().errors;
  // Counted from the end of the entry before, so that a thousand blanks or remarks between two keys would be an error.
  const errors = found.filter((error) => error.code !== 'KEY_OVER_1024_CHARS');
  if (errors.length > 0 || stream.faults.length > 0) {
    return refuse([
      ...stream.faults,
      ...onePerLine(errors, text).map((error) => yamlFault(error, text, document)),
    ]);
  }
  const contents = document?.contents;
  if (!contents || contents.range[0] === contents.range[1]) {
    const sentence = /^\s*#/m.test(text) ? 'The file holds comments only.' : 'The file holds no entries.';
    return refuse([{ sentence, range: { start: 0, end: 0 } }]);
  }
  const located = locateNodes(contents, text);
  // V8 holds on to the functions that were called last, and by them to the composer with its document: let go, a plan's tree is
  // not copied about with the next ones.
  document.contents = null;
  return located.faults.length > 0 ? refuse(located.faults) : { ok: true, root: located.root };
}

/** One slip sets off several errors on its line. Of those that begin together, the widest tells most. */
function onePerLine(errors: readonly YAMLError[], text: string): readonly YAMLError[] {
  const kept: YAMLError[] = [];
  let lineEnd = -1;
  for (const error of [...errors].sort((a, b) => a.pos[0] - b.pos[0] || b.pos[1] - a.pos[1])) {
    if (error.pos[0] <= lineEnd) continue;
    kept.push(error);
    const feed = text.indexOf('\n', error.pos[0]);
    lineEnd = feed === -1 ? text.length : feed;
  }
  return kept;
}

function refuse(faults: readonly ReadFault[]): YamlReading {
  const inOrder = [...faults].sort((a, b) => (a.range?.start ?? 0) - (b.range?.start ?? 0));
  const more = inOrder.length - limits.faultsListed;
  if (more <= 0) return { ok: false, faults: inOrder };
  const sentence = more === 1 ? 'One more fault follows.' : `${more} more faults follow.`;
  return { ok: false, faults: [...inOrder.slice(0, limits.faultsListed), { sentence }] };
}

/** Under the nested entries stands the document; above them may stand the value under work, which nests nothing. */
function nestsDeeper(parser: Parser): boolean {
  const top = parser.stack[parser.stack.length - 1];
  return top !== undefined && 'items' in top;
}

function tooDeep(parser: Parser): ReadFault {
  const at = parser.stack[parser.stack.length - 1]?.offset ?? parser.offset;
  const sentence = `Entries are nested more than ${limits.depth} deep here; a plan nests about ten deep.`;
  return { sentence, range: { start: at, end: at + 1 } };
}

function tooManyPieces(at: number): ReadFault {
  return {
    sentence: 'The file holds more words and marks than a plan ever takes.',
    range: { start: at, end: at },
  };
}
