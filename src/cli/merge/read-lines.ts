import { closeSync, openSync, readSync } from 'node:fs';
import { StringDecoder } from 'node:string_decoder';

const pieceBytes = 1024 * 1024;

/** The lines of a file, one after the other, without their ends; what stands after the last end is a line too. Throws the system's error. */
export function* readLines(file: string): Generator<string, void, undefined> {
  const descriptor = openSync(file, 'r');
  try {
    const decoder = new StringDecoder('utf8');
    const piece = Buffer.alloc(pieceBytes);
    let rest = '';
    for (let read = readSync(descriptor, piece); read > 0; read = readSync(descriptor, piece)) {
      const lines = (rest + decoder.write(piece.subarray(0, read))).split('\n');
      rest = lines.pop() ?? '';
      yield* lines;
    }
    rest += decoder.end();
    if (rest !== '') yield rest;
  } finally {
    closeSync(descriptor);
  }
}
