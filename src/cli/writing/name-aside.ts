import { randomBytes } from 'node:crypto';
import path from 'node:path';

/**
 * A name beside a file, under which what is to take its place is written. By chance, not by the number of the process alone: that is
 * the same in every container, and what a killed run left would keep out all that follow.
 */
export function nameAside(file: string): string {
  return path.join(path.dirname(file), `.${path.basename(file)}.${randomBytes(6).toString('hex')}.part`);
}
