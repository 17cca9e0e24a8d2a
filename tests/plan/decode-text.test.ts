import { describe, expect, it } from 'vitest';
import { decodeText } from '../../src/plan/decode-text.ts';
import { limits } from '../../src/plan/limits.ts';
import { shownFault } from './shown-faults.ts';

const utf8 = (text: string) => new TextEncoder().encode(text);

function utf16(text: string, order: 'le' | 'be'): Uint8Array {
  const bytes = Buffer.from(`\ufeff${text}`, 'utf16le');
  return order === 'le' ? bytes : bytes.swap16();
}

function refusal(bytes: Uint8Array): string {
  const decoded = decodeText(bytes);
  return decoded.ok ? 'decoded' : shownFault(decoded.fault, decoded.text);
}

describe('decodeText, text that is taken', () => {
  it('takes UTF-8 with letters, signs and line ends of every ordinary kind', () => {
    const text = 'name: Türring\t600 °C 🚗\r\nnext: 1\n';
    expect(decodeText(utf8(text))).toEqual({ ok: true, text });
  });

  it('takes a byte order mark off, so that the first letter stands in column 1', () => {
    expect(decodeText(Uint8Array.of(0xef, 0xbb, 0xbf, 0x61))).toEqual({ ok: true, text: 'a' });
  });

  it.each(['le', 'be'] as const)('takes UTF-16 %s that begins with its mark', (order) => {
    expect(decodeText(utf16('temperature: 600 °C 🚗\n', order))).toEqual({
      ok: true,
      text: 'temperature: 600 °C 🚗\n',
    });
  });

  it('takes a replacement character that the author wrote', () => {
    expect(decodeText(utf8('a: \ufffd'))).toEqual({ ok: true, text: 'a: \ufffd' });
  });

  it('takes a file of exactly the limit', () => {
    expect(decodeText(new Uint8Array(limits.bytes).fill(0x61)).ok).toBe(true);
  });
});

describe('decodeText, what is refused', () => {
  it('refuses an empty file, also one that holds nothing but its mark', () => {
    expect(refusal(new Uint8Array(0))).toBe('The file is empty.');
    expect(refusal(Uint8Array.of(0xef, 0xbb, 0xbf))).toBe('The file is empty.');
    expect(refusal(Uint8Array.of(0xff, 0xfe))).toBe('The file is empty.');
  });

  it('refuses one byte more than the limit', () => {
    expect(refusal(new Uint8Array(limits.bytes + 1).fill(0x61))).toBe(
      'The file holds more than 4 MiB, which is more than a plan ever takes.',
    );
  });

  it('names the byte and the place where UTF-8 breaks off', () => {
    // A degree sign as an older Windows editor saves it.
    const bytes = Uint8Array.of(...utf8('a: ü\nt: 600 '), 0xb0, 0x43);
    expect(refusal(bytes)).toBe(
      '2:8-2:9 The byte 0xB0 here fits no character of UTF-8; save the file as UTF-8.',
    );
  });

  it('is not misled by a replacement character before the broken byte', () => {
    const bytes = Uint8Array.of(...utf8('\ufffd🚗\n'), 0xe4, 0x20);
    expect(refusal(bytes)).toBe(
      '2:1-2:2 The byte 0xE4 here fits no character of UTF-8; save the file as UTF-8.',
    );
  });

  it('finds the place also behind a byte order mark', () => {
    const bytes = Uint8Array.of(0xef, 0xbb, 0xbf, 0x61, 0xff);
    expect(refusal(bytes)).toBe(
      '1:2-1:3 The byte 0xFF here fits no character of UTF-8; save the file as UTF-8.',
    );
  });

  it.each([
    ['a character that is cut off', [0x61, 0xe2, 0x82], 0xe2],
    ['a character spelled too long', [0x61, 0xc0, 0xaf], 0xc0],
    ['half of a surrogate pair', [0x61, 0xed, 0xa0, 0x80], 0xed],
  ])('refuses %s', (_name, bytes, broken) => {
    const hex = broken.toString(16).toUpperCase();
    expect(refusal(Uint8Array.from(bytes))).toBe(
      `1:2-1:3 The byte 0x${hex} here fits no character of UTF-8; save the file as UTF-8.`,
    );
  });

  it('refuses UTF-16 without its mark, because of the zero bytes', () => {
    expect(refusal(Buffer.from('ab', 'utf16le'))).toBe(
      '1:2-1:3 A zero byte stands here, so this is not a text file; save the plan as UTF-8.',
    );
  });

  it('refuses UTF-16 that is cut in the middle of a character', () => {
    const sentence = 'The file begins as UTF-16 text but does not go on as such; save it as UTF-8.';
    expect(refusal(Uint8Array.of(0xff, 0xfe, 0x61, 0x00, 0x62))).toBe(sentence);
    expect(refusal(Uint8Array.of(0xfe, 0xff, 0x00, 0x61, 0xd8, 0x3d))).toBe(sentence);
  });

  it('refuses a picture', () => {
    const picture = Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0x00, 0x00, 0x00, 0x0d);
    expect(refusal(picture)).toBe(
      '1:1-1:2 The file is not text: it holds zero bytes and bytes that fit no character.',
    );
  });

  it.each([
    ['\u0007', 'U+0007 (a control character)'],
    ['\u001b', 'U+001B (a control character)'],
    ['\u007f', 'U+007F (a control character)'],
    ['\u009b', 'U+009B (a control character)'],
    ['\u000b', 'U+000B (a control character)'],
    ['\u0085', 'U+0085 (a line end that few programs know)'],
    ['\u2028', 'U+2028 (a line end that few programs know)'],
    ['\u202e', 'U+202E (a mark that turns the direction of writing)'],
    ['\u2066', 'U+2066 (a mark that turns the direction of writing)'],
    ['\u2069', 'U+2069 (a mark that turns the direction of writing)'],
    ['\ufeff', 'U+FEFF (a byte order mark inside the text)'],
    ['\r', 'U+000D (a carriage return without a line feed)'],
  ])('refuses %j in the text, also in a comment', (character, name) => {
    expect(refusal(utf8(`a: 1\nb: "x${character}y"\n`))).toBe(
      `2:6-2:7 The character ${name} stands here; a plan may not hold it.`,
    );
    expect(refusal(utf8(`# ${character}z`))).toBe(
      `1:3-1:4 The character ${name} stands here; a plan may not hold it.`,
    );
  });

  it('takes the neighbours of what it refuses', () => {
    const text = '\t \u007e \u00a0 \u00ac \u00ae \u061b \u200a \u2010 \u2027 \u202f \u205f \u206a\r\n';
    expect(decodeText(utf8(text))).toEqual({ ok: true, text });
  });
});
