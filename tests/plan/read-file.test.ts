import { execFileSync } from 'node:child_process';
import { chmodSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, truncateSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { limits } from '../../src/plan/limits.ts';
import { readPlanFile } from '../../src/plan/read-file.ts';

const onWindows = process.platform === 'win32';
const asRoot = process.getuid?.() === 0;
let folder = '';

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'planish-read-'));
});

afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

function refusal(path: string): string {
  const reading = readPlanFile(path);
  return reading.ok ? 'read' : reading.fault.sentence;
}

describe('readPlanFile', () => {
  it('gives the bytes as they are', () => {
    const path = join(folder, '-plan.yaml');
    writeFileSync(path, Uint8Array.of(0xef, 0xbb, 0xbf, 0x61, 0x00));
    const reading = readPlanFile(path);
    expect(reading.ok && [...reading.bytes]).toEqual([0xef, 0xbb, 0xbf, 0x61, 0x00]);
  });

  it('reads an empty file; that it says nothing is found later', () => {
    const path = join(folder, 'empty.yaml');
    writeFileSync(path, '');
    const reading = readPlanFile(path);
    expect(reading.ok && reading.bytes.length).toBe(0);
  });

  it('says that there is no such file', () => {
    expect(refusal(join(folder, 'absent.yaml'))).toBe('There is no such file.');
    writeFileSync(join(folder, 'file'), 'a');
    expect(refusal(join(folder, 'file', 'under.yaml'))).toBe('There is no such file.');
  });

  it('says that a folder is one', () => {
    mkdirSync(join(folder, 'plans.yaml'));
    expect(refusal(join(folder, 'plans.yaml'))).toBe('This is a folder, not a file.');
  });

  it('reads up to the limit, and does not open what is larger', () => {
    const path = join(folder, 'large.yaml');
    writeFileSync(path, '');
    truncateSync(path, limits.bytes);
    expect(refusal(path)).toBe('read');
    // A sparse file: it takes no room on the disk, and could not be read into one buffer.
    truncateSync(path, 5 * 1024 ** 3);
    expect(refusal(path)).toBe('The file holds 5120.0 MiB; a plan never takes more than 4 MiB.');
  });

  it('names a path that cannot be a file name', () => {
    expect(refusal(join(folder, 'n'.repeat(5000)))).toBe('The file name is longer than the system allows.');
    expect(refusal('plan\0.yaml')).toBe(
      'The file cannot be read (the system answers ERR_INVALID_ARG_VALUE).',
    );
  });

  it.skipIf(onWindows)('does not wait at a pipe', () => {
    const path = join(folder, 'pipe');
    execFileSync('mkfifo', [path]);
    expect(refusal(path)).toBe('This is not an ordinary file (it is a pipe, a socket or a device).');
  });

  it.skipIf(onWindows)('reads no device and no socket', async () => {
    const sentence = 'This is not an ordinary file (it is a pipe, a socket or a device).';
    expect(refusal('/dev/zero')).toBe(sentence);
    const path = join(folder, 'socket');
    const server = createServer();
    await new Promise<void>((resolve) => server.listen(path, resolve));
    expect(refusal(path)).toBe(sentence);
    await new Promise((resolve) => server.close(resolve));
  });

  it.skipIf(onWindows)('follows a link, but not in a circle', () => {
    writeFileSync(join(folder, 'target.yaml'), 'a: 1\n');
    symlinkSync(join(folder, 'target.yaml'), join(folder, 'link.yaml'));
    symlinkSync(join(folder, 'circle.yaml'), join(folder, 'circle.yaml'));
    expect(refusal(join(folder, 'link.yaml'))).toBe('read');
    expect(refusal(join(folder, 'circle.yaml'))).toBe('The file is a link that leads back to itself.');
  });

  it.skipIf(onWindows || asRoot)('says that the permissions do not allow it', () => {
    const path = join(folder, 'closed.yaml');
    writeFileSync(path, 'a: 1\n');
    chmodSync(path, 0o000);
    expect(refusal(path)).toBe('The file cannot be read: its permissions do not allow it.');
  });
});
