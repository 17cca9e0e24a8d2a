import { fstatSync } from 'node:fs';

const descriptors = { stdin: 0, stdout: 1, stderr: 2 } as const;

/**
 * Whether a standard stream is a terminal. The descriptor is asked first: for a pipe `process.stdout` loads the network modules,
 * and makes the pipe one on which every full buffer is waited for by the clock (see `writeOut`).
 */
export function isTerminal(stream: keyof typeof descriptors): boolean {
  return isDevice(descriptors[stream]) && process[stream].isTTY;
}

function isDevice(descriptor: number): boolean {
  try {
    return fstatSync(descriptor).isCharacterDevice();
  } catch {
    return false;
  }
}
