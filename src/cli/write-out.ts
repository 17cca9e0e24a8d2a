import { writeSync } from 'node:fs';

/**
 * Writes to standard output and returns when the text has left: a report of megabytes is cut at the pipe's size when the process
 * ends with writes pending. A reader that has gone away (EPIPE) ends the writing quietly.
 */
export function writeOut(text: string): boolean {
  let bytes = new TextEncoder().encode(text);
  while (bytes.length > 0) {
    try {
      bytes = bytes.subarray(writeSync(1, bytes));
    } catch (error) {
      const code = error instanceof Error && 'code' in error ? error.code : undefined;
      if (code === 'EPIPE') return false;
      // A pipe in non-blocking mode that is full for now.
      if (code !== 'EAGAIN') throw error;
      Atomics.wait(pause, 0, 0, 5);
    }
  }
  return true;
}

const pause = new Int32Array(new SharedArrayBuffer(4));
