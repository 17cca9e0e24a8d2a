import { readSync } from 'node:fs';
import type { FileReading } from '../../plan/read-file.ts';
import { limits } from '../../plan/limits.ts';

const pieceBytes = 64 * 1024;

/** All of standard input; refused once it is longer than any plan, so that an endless pipe ends. */
export function readStandardInput(): FileReading {
  const pieces: Uint8Array[] = [];
  let total = 0;
  for (;;) {
    const piece = new Uint8Array(pieceBytes);
    const read = readPiece(piece);
    if (typeof read === 'string')
      return refuse(`Standard input cannot be read (the system answers ${read}).`);
    if (read === 0) return { ok: true, bytes: Buffer.concat(pieces) };
    total += read;
    if (total > limits.bytes) {
      return refuse(
        `Standard input goes on; a plan never takes more than ${String(limits.bytes / 1024 / 1024)} MiB.`,
      );
    }
    pieces.push(piece.subarray(0, read));
  }
}

/** How many bytes came; the system's code where none can. */
function readPiece(piece: Uint8Array): number | string {
  for (;;) {
    try {
      return readSync(0, piece);
    } catch (error) {
      const code = error instanceof Error && 'code' in error ? String(error.code) : 'with no reason';
      // Some systems tell the end of a pipe as an error.
      if (code === 'EOF') return 0;
      if (code !== 'EAGAIN') return code;
      // A pipe in non-blocking mode into which nobody has written yet.
      Atomics.wait(pause, 0, 0, 5);
    }
  }
}

function refuse(sentence: string): FileReading {
  return { ok: false, fault: { sentence } };
}

const pause = new Int32Array(new SharedArrayBuffer(4));
