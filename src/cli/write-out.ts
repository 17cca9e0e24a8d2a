import { writeSync } from 'node:fs';

export type Stream = 'output' | 'complaints';

const descriptors: Readonly<Record<Stream, number>> = { output: 1, complaints: 2 };

/**
 * Writes to standard output (or standard error) and returns when the text has left: a report of megabytes is cut at the pipe's
 * size when the process ends with writes pending. False when the reader has gone away (EPIPE), which is no fault.
 */
export function writeOut(text: string, stream: Stream = 'output'): boolean {
  let bytes = new TextEncoder().encode(text);
  while (bytes.length > 0) {
    try {
      bytes = bytes.subarray(writeSync(descriptors[stream], bytes));
    } catch (error) {
      const code = error instanceof Error && 'code' in error ? error.code : undefined;
      if (code === 'EPIPE') {
        isCut ||= stream === 'output';
        return false;
      }
      // A pipe in non-blocking mode that is full for now.
      if (code !== 'EAGAIN') throw error;
      Atomics.wait(pause, 0, 0, 1);
    }
  }
  return true;
}

let isCut = false;

/** Whether the reader of standard output has gone away before its end, in this run. */
export function outputIsCut(): boolean {
  return isCut;
}

const pause = new Int32Array(new SharedArrayBuffer(4));
