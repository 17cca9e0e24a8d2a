import { isUtf8 } from 'node:buffer';
import { findControlCharacter } from './control-character.ts';
import type { ReadFault } from './fault.ts';
import { limits } from './limits.ts';

export type DecodedText =
  | { readonly ok: true; readonly text: string }
  /** `text` is what could be made of the bytes; the fault's range counts in it. */
  | { readonly ok: false; readonly text: string; readonly fault: ReadFault };

type Encoding = 'utf-8' | 'utf-16le' | 'utf-16be';

/**
 * The bytes of a plan as text: UTF-8, or UTF-16 that begins with its byte order mark (what an office computer saves as
 * "Unicode"). The mark itself is taken off, so that places are those an editor shows.
 */
export function decodeText(bytes: Uint8Array): DecodedText {
  if (bytes.length > limits.bytes) {
    const size = `more than ${limits.bytes / 1024 / 1024} MiB`;
    return refuse('', { sentence: `The file holds ${size}, which is more than a plan ever takes.` });
  }
  const encoding = encodingOf(bytes);
  const text = new TextDecoder(encoding).decode(bytes);
  if (text.length === 0) return refuse(text, { sentence: 'The file is empty.' });
  if (encoding === 'utf-8' && !isUtf8(bytes)) return refuse(text, malformedUtf8(bytes, text));
  if (encoding !== 'utf-8' && isMalformedUtf16(bytes, encoding)) {
    return refuse(text, {
      sentence: 'The file begins as UTF-16 text but does not go on as such; save it as UTF-8.',
    });
  }
  const control = findControlCharacter(text);
  if (control === undefined) return { ok: true, text };
  const range = { start: control.offset, end: control.offset + 1 };
  if (text.charCodeAt(control.offset) === 0) {
    return refuse(text, {
      sentence: 'A zero byte stands here, so this is not a text file; save the plan as UTF-8.',
      range,
    });
  }
  return refuse(text, {
    sentence: `The character ${control.name} stands here; a plan may not hold it.`,
    range,
  });
}

function refuse(text: string, fault: ReadFault): DecodedText {
  return { ok: false, text, fault };
}

function encodingOf(bytes: Uint8Array): Encoding {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return 'utf-16be';
  return 'utf-8';
}

function isMalformedUtf16(bytes: Uint8Array, encoding: Encoding): boolean {
  try {
    new TextDecoder(encoding, { fatal: true }).decode(bytes);
    return false;
  } catch {
    return true;
  }
}

/** The decoder puts U+FFFD where bytes fit no character; the first one that the author did not write is the place. */
function malformedUtf8(bytes: Uint8Array, text: string): ReadFault {
  const zero = text.indexOf('\0');
  let at = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf ? 3 : 0;
  let offset = 0;
  for (const character of text) {
    const codePoint = character.codePointAt(0) ?? 0;
    if (codePoint === 0xfffd && !(bytes[at] === 0xef && bytes[at + 1] === 0xbf && bytes[at + 2] === 0xbd))
      break;
    at += codePoint < 0x80 ? 1 : codePoint < 0x800 ? 2 : codePoint < 0x10000 ? 3 : 4;
    offset += character.length;
  }
  const range = { start: offset, end: offset + 1 };
  // Pictures and archives hold both; "save it as UTF-8" would be no help with those.
  if (zero !== -1)
    return { sentence: 'The file is not text: it holds zero bytes and bytes that fit no character.', range };
  const hex = (bytes[at] ?? 0).toString(16).toUpperCase().padStart(2, '0');
  return { sentence: `The byte 0x${hex} here fits no character of UTF-8; save the file as UTF-8.`, range };
}
