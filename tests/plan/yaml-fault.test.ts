import { describe, expect, it } from 'vitest';
import { shownFaults } from './shown-faults.ts';

const overLineEnd =
  'runs over a line end before its colon: a colon (and a space) is missing, or a line is indented too far.';
const notInLine = 'This line is indented neither like the entries above it nor like those around them.';
const tab = 'This line is indented with a tab; indent with spaces.';
const commaMissing =
  'Inside brackets, entries are set apart by commas, not by colons and lines alone; a comma is missing here.';
const tooMany = 'is one word too many: look at the quotes before it and at the indentation of its line.';
const inQuotes = 'put it in quotes.';

/** Slips that people make when they type a plan, each with the one sentence that it should bring. */
const slips: readonly (readonly [string, string, string])[] = [
  ['a tab before a key', 'a:\n\tb: 1\n', `2:1-2:2 ${tab}`],
  ['a tab before a list entry', 'parts:\n\t- id: x\n', `2:1-2:2 ${tab}`],
  ['a tab below spaces', 'parts:\n  - id: x\n\tname: y\n', `3:1-3:2 ${tab}`],
  ['no colon', 'a: 1\nb 2\nc: 3\n', '2:1-2:4 After `b 2` the colon and a space are missing.'],
  ['no space after the colon', 'a: 1\nb:2\n', '2:1-2:4 After `b:2` the colon and a space are missing.'],
  ['no colon in the first line', 'b\na: 1\n', `1:1-2:2 \`b a\` ${overLineEnd}`],
  ['a key below a value', 'a: 1\n  b: 2\n', `1:4-2:4 \`1 b\` ${overLineEnd}`],
  ['too little indentation', 'a:\n  b: 1\n c: 2\n', `3:2-3:3 ${notInLine}`],
  ['a key among list entries', 'a:\n  - 1\n  b: 2\n', `3:3-3:4 ${notInLine}`],
  ['a text that is not indented', 'a: |\n  x\n y\n', `3:2-3:3 ${notInLine}`],
  ['a first line too far in', '  a: 1\nb: 2\n', `2:1-2:2 \`b\` ${tooMany}`],
  [
    'dashes out of line',
    'a:\n  - 1\n - 2\n',
    '3:2-3:3 This list entry does not line up with those above it.',
  ],
  ['a dash among keys', 'b: 1\n- a\n', '2:1-2:2 A list entry stands here among keys.'],
  [
    'a list beside its key',
    'a: - b\n',
    '1:4-1:5 A list begins on the line below its key, not beside the key.',
  ],
  [
    'a colon in a value',
    'note: see p. 4: then cut\n',
    '1:7-1:8 A second colon stands on this line; put a value that holds a colon in quotes.',
  ],
  ['an open double quote', 'a: "x\nb: 2\n', '1:4-1:5 A quote is opened here and not closed.'],
  ['an open single quote', "x: 1\na: 'y\nb: 2\n", '2:4-2:5 A quote is opened here and not closed.'],
  ['an open quote at the end', 'a: "x', '1:4-1:5 A quote is opened here and not closed.'],
  ['a quote inside quotes', "a: 'it's'\n", `1:8-1:10 \`s'\` ${tooMany}`],
  [
    'an open list',
    'a: [1, 2\nb: 3\n',
    '1:4-1:5 The `[` opened here is not closed, or the lines inside it are not indented.',
  ],
  [
    'an open entry',
    '{a: 1\n',
    '1:1-1:2 The `{` opened here is not closed, or the lines inside it are not indented.',
  ],
  [
    'the wrong bracket',
    'a: [1, 2}\n',
    '1:4-1:5 The `[` opened here is not closed, or the lines inside it are not indented.',
  ],
  ['a bracket too many', 'a: [1, 2]]\n', '1:10-1:11 `]` closes a bracket that is not open.'],
  ['no comma', 'a: {b: 1 c: 2}\n', `1:8-1:14 ${commaMissing}`],
  ['no comma at a line end', 'a: {b: 1\n  c: 2}\n', `1:8-2:7 ${commaMissing}`],
  [
    'no comma between quoted words',
    'a: ["b" "c"]\n',
    '1:9-1:10 A comma is missing here between two entries inside brackets.',
  ],
  ['two commas', 'a: [1,,2]\n', '1:7-1:8 No entry stands before this comma.'],
  ['a comma first', 'a: [,1]\n', '1:5-1:6 No entry stands before this comma.'],
  ['a comment that touches', 'a: "x"#c\n', '1:7-1:9 A comment needs a space before its `#`.'],
  [
    'a path in double quotes',
    'a: "C:\\shop"\n',
    '1:7-1:8 A backslash in double quotes begins an escape, and this one is not known; use single quotes.',
  ],
  ['an at sign', 'a: @x\n', `1:4-1:5 A value cannot begin with \`@\`; ${inQuotes}`],
  ['a per cent sign', 'a: %x\n', `1:4-1:5 A value cannot begin with \`%\`; ${inQuotes}`],
  ['a backtick', 'a: `x`\n', `1:4-1:5 A value cannot begin with a backtick; ${inQuotes}`],
  [
    'more than',
    'a: > 3 mm\n',
    '1:6-1:10 `3 mm` cannot stand here; put a value that begins with `>` or `|` in quotes.',
  ],
  ['a bar', 'a: |x\n', '1:5-1:6 `x` cannot stand here; put a value that begins with `>` or `|` in quotes.'],
  [
    'an entry beside the dashes',
    '--- a: 1\n',
    '1:5-1:6 The first entry stands beside `---`; it belongs on the next line.',
  ],
  [
    'two anchors',
    'a: &x &y 1\n',
    '1:7-1:9 `&y` marks or repeats a value of another place; write the value out, in quotes if it is text.',
  ],
  [
    'a lone asterisk',
    'a: *\n',
    '1:4-1:5 `*` marks or repeats a value of another place; write the value out, in quotes if it is text.',
  ],
  [
    'two type marks',
    'a: !!str !!str x\n',
    '1:10-1:15 The type mark `!!str` has no use here; take it out, or put the value in quotes.',
  ],
];

describe('sentences for slips of the pen', () => {
  it.each(slips)('%s', (_name, text, shown) => {
    expect(shownFaults(text)[0]).toBe(shown);
  });

  it('tells two slips on two lines apart, and one slip once', () => {
    expect(shownFaults('a: @x\nb: 1\nc: @y\n')).toEqual([
      `1:4-1:5 A value cannot begin with \`@\`; ${inQuotes}`,
      `3:4-3:5 A value cannot begin with \`@\`; ${inQuotes}`,
    ]);
    expect(shownFaults('a:\n  - 1\n - 2\n')).toHaveLength(1);
  });

  it('lists five and counts the rest', () => {
    const six = Array.from({ length: 6 }, (_, index) => `k${index}: @x\n`);
    expect(shownFaults(six.join('')).at(-1)).toBe('One more fault follows.');
    expect(shownFaults(six.slice(1).join(''))).toHaveLength(5);
  });
});

describe('what looks like a slip and is none', () => {
  it.each([
    "a: Amsel's\n",
    'a: 0.055"\n',
    'a: x#y\n',
    'a: 1:2\n',
    'a:\tb\n',
    'a:\n- 1\n- 2\n',
    'a: [\n  1,\n]\n',
    'a: -5 °C\n',
    'a: b - c\n',
  ])('%j', (text) => {
    expect(shownFaults(text)).toEqual([]);
  });
});
