import { readdirSync } from 'node:fs';
import path from 'node:path';
import { globSync } from 'tinyglobby';

export interface MatchingFiles {
  /** Full paths, by code units, so that the order is the same on every machine. */
  readonly files: readonly string[];
  /** Folders in which a match may lie and that the system does not let us look into. */
  readonly closed: readonly string[];
}

/** The files that a pattern names. The search itself passes over what it cannot look into; here that is said. */
export function filesMatching(pattern: string, workingFolder: string): MatchingFiles {
  const closed = new Set<string>();
  const telling = new Proxy(readdirSync, {
    apply: (read, self: unknown, given: unknown[]): unknown => {
      try {
        return Reflect.apply(read, self, given);
      } catch (error) {
        const code = error instanceof Error && 'code' in error ? error.code : undefined;
        if (code !== 'ENOENT' && code !== 'ENOTDIR')
          closed.add(path.resolve(workingFolder, String(given[0])));
        throw error;
      }
    },
  });
  const files = globSync([pattern], {
    cwd: workingFolder,
    absolute: true,
    ignore: ['**/node_modules/**', '**/.git/**'],
    expandDirectories: false,
    fs: { readdirSync: telling },
  });
  return { files: files.sort(), closed: [...closed].sort() };
}
