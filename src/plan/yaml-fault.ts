import { visit } from 'yaml';
import type { Document, ParsedNode, YAMLError } from 'yaml';
import { excerpt } from './excerpt.ts';
import type { ReadFault } from './fault.ts';
import type { Range } from './node.ts';

/**
 * What the parser found wrong, in a sentence for someone who writes plans, not parsers. One code of the parser stands for
 * several slips, so its message is looked at as well; a message that is not known gets the sentence of its code.
 */
export function yamlFault(
  error: YAMLError,
  text: string,
  document: Document.Parsed<ParsedNode> | undefined,
): ReadFault {
  const at = error.pos[0];
  if (/closing ['"]quote/.test(error.message)) {
    const range = openingOf(document, at, 'quote');
    return { sentence: 'A quote is opened here and not closed.', range };
  }
  if (/end with a [\]}]/.test(error.message)) {
    const range = openingOf(document, at, 'bracket');
    const bracket = text.slice(range.start, range.start + 1);
    return {
      sentence: `The \`${bracket}\` opened here is not closed, or the lines inside it are not indented.`,
      range,
    };
  }
  const mark = loneMark(error, text);
  if (mark !== undefined) {
    return markFault(mark);
  }
  const start = Math.min(skipBlanks(text, at), text.length);
  const end = Math.min(Math.max(error.pos[1], start + 1), text.length);
  return {
    sentence: sentenceOf(error, excerpt(text.slice(start, end))),
    range: { start, end: Math.max(start, end) },
  };
}

/** What is not known yet, written so that YAML takes it for something else. `at` is the place of the mark. */
export function markFault(at: number): ReadFault {
  return {
    sentence:
      "A `?` alone stands here, which begins a key in YAML; leave what is not known empty, or put the mark in quotes: `'?'`.",
    range: { start: at, end: at + 1 },
  };
}

/** Where a value is a bare question mark, as people write what they do not know yet: the parser waits for a key behind it. */
function loneMark(error: YAMLError, text: string): number | undefined {
  const [at] = error.pos;
  const isFlow = error.code === 'MISSING_CHAR' && error.message.includes('between flow');
  if (!isFlow && error.code !== 'BLOCK_AS_IMPLICIT_KEY') return undefined;
  const mark = isFlow ? text.slice(0, at).trimEnd().length - 1 : skipBlanks(text, at);
  return text[mark] === '?' && /[\s:]/u.test(text[mark - 1] ?? ' ') ? mark : undefined;
}

function sentenceOf(error: YAMLError, piece: string): string {
  const { message } = error;
  switch (error.code) {
    case 'TAB_AS_INDENT':
      return 'This line is indented with a tab; indent with spaces.';
    case 'BAD_INDENT':
      return 'This line is indented neither like the entries above it nor like those around them.';
    case 'MULTILINE_IMPLICIT_KEY':
      if (piece.startsWith('-')) return 'A list entry stands here among keys.';
      return `\`${piece}\` runs over a line end before its colon: a colon (and a space) is missing, or a line is indented too far.`;
    case 'BLOCK_AS_IMPLICIT_KEY':
      if (message.startsWith('A block sequence'))
        return 'This list entry does not line up with those above it.';
      return 'A second colon stands on this line; put a value that holds a colon in quotes.';
    case 'MISSING_CHAR':
      return missingCharacter(message, piece);
    case 'UNEXPECTED_TOKEN':
      return unexpectedPiece(message, piece);
    case 'BLOCK_IN_FLOW':
      return 'Inside brackets, entries are set apart by commas, not by colons and lines alone; a comma is missing here.';
    case 'BAD_SCALAR_START':
      return `A value cannot begin with ${piece === '`' ? 'a backtick' : `\`${piece}\``}; put it in quotes.`;
    case 'BAD_DQ_ESCAPE':
      return 'A backslash in double quotes begins an escape, and this one is not known; use single quotes.';
    case 'NON_STRING_KEY':
      return `\`${piece}\` begins a key that is not a plain word.`;
    case 'TAG_RESOLVE_FAILED':
    case 'BAD_COLLECTION_TYPE':
    case 'MULTIPLE_TAGS':
      return `The type mark \`${piece}\` has no use here; take it out, or put the value in quotes.`;
    case 'BAD_ALIAS':
    case 'ALIAS_PROPS':
    case 'MULTIPLE_ANCHORS':
      return `\`${piece}\` marks or repeats a value of another place; write the value out, in quotes if it is text.`;
    case 'BAD_PROP_ORDER':
      return `\`${piece}\` stands before its mark or name instead of after it.`;
    case 'BAD_DIRECTIVE':
      return `The line \`${piece}\` is a directive that a plan has no use for.`;
    default:
      return 'The parser of YAML could not go on from here.';
  }
}

function missingCharacter(message: string, piece: string): string {
  if (message.includes('followed by map values'))
    return `After \`${piece}\` the colon and a space are missing.`;
  if (message.includes('Comments must be')) return 'A comment needs a space before its `#`.';
  if (message.includes('Missing space after')) return 'A space is missing after this colon.';
  if (message.includes('between flow')) return 'A comma is missing here between two entries inside brackets.';
  if (message.includes('indicator line'))
    return 'After a line that begins with `%`, a line `---` has to come.';
  if (message.includes('same line with directives-end'))
    return 'The first entry stands beside `---`; it belongs on the next line.';
  if (message.includes('without - indicator')) return 'This line stands in a list but begins with no dash.';
  if (message.includes('leading empty lines'))
    return 'The blank lines that begin this text are indented further than the text itself.';
  return 'A space or a mark is missing here.';
}

function unexpectedPiece(message: string, piece: string): string {
  if (message.includes('same line with key'))
    return 'A list begins on the line below its key, not beside the key.';
  if (message.startsWith('Unexpected ,') || message.includes('empty item'))
    return 'No entry stands before this comma.';
  if (message.startsWith('Not a YAML token') || message.startsWith('Block scalar header')) {
    return `\`${piece}\` cannot stand here; put a value that begins with \`>\` or \`|\` in quotes.`;
  }
  if (/flow-(seq|map)-end/.test(message)) return `\`${piece}\` closes a bracket that is not open.`;
  return `\`${piece}\` is one word too many: look at the quotes before it and at the indentation of its line.`;
}

/** The parser tells where the text ended; what helps is where the quote or bracket was opened. The innermost one counts. */
function openingOf(
  document: Document.Parsed<ParsedNode> | undefined,
  end: number,
  kind: 'quote' | 'bracket',
): Range {
  const found: number[] = [];
  if (document !== undefined) {
    visit(document, {
      Scalar: (_key, node) => {
        const quoted = node.type === 'QUOTE_DOUBLE' || node.type === 'QUOTE_SINGLE';
        if (kind === 'quote' && quoted && node.range?.[1] === end) found.push(node.range[0]);
      },
      Collection: (_key, node) => {
        if (kind === 'bracket' && node.flow === true && node.range?.[1] === end) found.push(node.range[0]);
      },
    });
  }
  const start = found[found.length - 1];
  return start === undefined ? { start: end, end } : { start, end: start + 1 };
}

function skipBlanks(text: string, from: number): number {
  let at = from;
  while (text[at] === ' ') at += 1;
  return at;
}
