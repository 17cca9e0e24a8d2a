import { readSync } from 'node:fs';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { readStandardInput } from '../../src/cli/plans/read-standard-input.ts';

vi.mock('node:fs', () => ({ readSync: vi.fn() }));
const read = vi.mocked(readSync as (fd: number, bytes: Uint8Array) => number);

const give =
  (content: string) =>
  (_fd: number, bytes: Uint8Array): number =>
    Buffer.from(content).copy(bytes);
const fail = (code: string) => (): number => {
  throw Object.assign(new Error(code), { code });
};

afterEach(() => {
  read.mockReset();
});

describe('reading standard input', () => {
  test('pieces are put together in order', () => {
    read
      .mockImplementationOnce(give('format: 1\n'))
      .mockImplementationOnce(fail('EAGAIN'))
      .mockImplementationOnce(give('parts: []\n'))
      .mockReturnValue(0);
    const reading = readStandardInput();
    expect(reading.ok && Buffer.from(reading.bytes).toString()).toBe('format: 1\nparts: []\n');
  });

  test('an end that is told as an error is the end', () => {
    read.mockImplementationOnce(give('a')).mockImplementation(fail('EOF'));
    const reading = readStandardInput();
    expect(reading.ok && Buffer.from(reading.bytes).toString()).toBe('a');
  });

  test('what cannot be read is one sentence', () => {
    read.mockImplementation(fail('EISDIR'));
    expect(readStandardInput()).toEqual({
      ok: false,
      fault: { sentence: 'Standard input cannot be read (the system answers EISDIR).' },
    });
  });

  test('an endless pipe is left soon after the most that a plan takes, 4 MiB', () => {
    read.mockImplementation((_fd, bytes) => bytes.length);
    expect(readStandardInput().ok).toBe(false);
    expect(read.mock.calls.length).toBeLessThanOrEqual(4 * 16 + 1);
  });
});
