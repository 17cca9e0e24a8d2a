import { expect, test } from 'vitest';
import { visibleText } from '../../src/report/visible-text.ts';

// Unicode Standard, chapter 23, and Annex 9 for the marks of writing direction.
test.each([
  ['escape', '\u001b[31mred', '\\u{001B}[31mred'],
  ['line feed and return', 'a\r\nb', 'a\\u{000D}\\u{000A}b'],
  ['tabulator', 'a\tb', 'a\\u{0009}b'],
  ['NUL', 'a\u0000b', 'a\\u{0000}b'],
  ['DEL', 'a\u007fb', 'a\\u{007F}b'],
  ['the C1 introducer of a sequence', '\u009b31m', '\\u{009B}31m'],
  ['right-to-left override', 'a\u202eb', 'a\\u{202E}b'],
  ['an isolate', '\u2067x\u2069', '\\u{2067}x\\u{2069}'],
  ['the Arabic letter mark', '\u061c', '\\u{061C}'],
  ['zero-width space and joiner', 'a\u200b\u200db', 'a\\u{200B}\\u{200D}b'],
  ['soft hyphen', 'a\u00adb', 'a\\u{00AD}b'],
  ['line separator', '\u2028', '\\u{2028}'],
  ['byte order mark inside', 'a\ufeffb', 'a\\u{FEFF}b'],
  ['tag characters, which show nothing', '\u{e0041}', '\\u{E0041}'],
])('%s is shown by its number', (_name, text, shown) => {
  expect(visibleText(text)).toBe(shown);
});

test('what people write stays as it is', () => {
  const text = 'Tür vorn – 600 °C, “kink”, 1 200 mm, 時計, عربي, 🚗, e\u0301';
  expect(visibleText(text)).toBe(text);
});
