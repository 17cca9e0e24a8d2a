import { createHash } from 'node:crypto';
import type { Shard } from '../../report/plan-report.ts';

const most = 10_000;

/** `3/16`: the third of sixteen parts. */
export function readShard(text: string): Shard | undefined {
  const match = /^(\d{1,5})\/(\d{1,5})$/u.exec(text.trim());
  const [index, of] = [Number(match?.[1]), Number(match?.[2])];
  return index >= 1 && of >= index && of <= most ? { index, of } : undefined;
}

/**
 * Whether what is judged falls to this part. It depends on the content alone, not on names, the folder or what else is there; so
 * every machine that shares a job agrees without asking the others, and two equal files fall to one part.
 */
export function fallsTo({ index, of }: Shard, content: Uint8Array | string): boolean {
  const digest = createHash('sha256').update(content).digest();
  // 48 bits are whole numbers to JavaScript, and far more than enough for ten thousand parts.
  return digest.readUIntBE(0, 6) % of === index - 1;
}
