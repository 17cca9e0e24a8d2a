import { writeSync } from 'node:fs';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { writeOut } from '../../src/cli/write-out.ts';

vi.mock('node:fs', () => ({ writeSync: vi.fn() }));
const write = vi.mocked(writeSync as (fd: number, bytes: Uint8Array) => number);

let sent: number[] = [];
const take =
  (most: number) =>
  (_fd: number, bytes: Uint8Array): number => {
    const taken = Math.min(most, bytes.length);
    sent.push(...bytes.subarray(0, taken));
    return taken;
  };
const fail = (code: string) => (): number => {
  throw Object.assign(new Error(code), { code });
};
const text = (): string => Buffer.from(sent).toString('utf8');

afterEach(() => {
  sent = [];
  write.mockReset();
});

describe('writing out', () => {
  test('what the pipe does not take at once is sent in pieces, also when a piece ends inside a character', () => {
    write.mockImplementation(take(3));
    expect(writeOut('600 °C – 1,4 mm 時')).toBe(true);
    expect(text()).toBe('600 °C – 1,4 mm 時');
    expect(new Set(write.mock.calls.map(([fd]) => fd))).toEqual(new Set([1]));
  });

  test('a pipe that is full for now is tried again, and nothing is lost or sent twice', () => {
    write
      .mockImplementationOnce(take(2))
      .mockImplementationOnce(fail('EAGAIN'))
      .mockImplementationOnce(fail('EAGAIN'))
      .mockImplementation(take(100));
    expect(writeOut('held')).toBe(true);
    expect(text()).toBe('held');
  });

  test('a reader that has gone away is told by false', () => {
    write.mockImplementationOnce(take(2)).mockImplementation(fail('EPIPE'));
    expect(writeOut('held')).toBe(false);
    expect(write).toHaveBeenCalledTimes(2);
  });

  test('a full disk is a fault', () => {
    write.mockImplementation(fail('ENOSPC'));
    expect(() => writeOut('held')).toThrow('ENOSPC');
  });

  test('nothing to say is not written', () => {
    expect(writeOut('')).toBe(true);
    expect(write).not.toHaveBeenCalled();
  });

  test('complaints go to standard error', () => {
    write.mockImplementation(take(100));
    writeOut('planish: no', 'complaints');
    expect(write.mock.calls.map(([fd]) => fd)).toEqual([2]);
  });
});
