import { watch } from 'node:fs';
import type { FSWatcher } from 'node:fs';
import { complain } from '../complain.ts';
import { watchPlaces } from './watch-places.ts';
import { writeOut } from '../write-out.ts';

/** An editor makes several changes of one save. */
const settleMilliseconds = 60;

/** Takes the screen away and goes to its upper left corner (ECMA-48, ED and CUP); what was scrolled off stays. */
const clearScreen = '\u001b[2J\u001b[H';

/**
 * `check --watch`: runs, and runs again whenever plans or packs change, until it is ended from outside. On a terminal each report
 * takes the place of the last. Gives 2 where something cannot be watched; else it does not come back.
 */
export async function watchAndRun(
  args: readonly string[],
  isTerminal: boolean,
  run: () => Promise<unknown>,
): Promise<2> {
  let isRunning = false;
  let changes = 0;
  let timer: NodeJS.Timeout | undefined;
  const again = async (): Promise<void> => {
    if (isRunning) return;
    isRunning = true;
    let seen: number;
    do {
      seen = changes;
      if (isTerminal) writeOut(clearScreen);
      await run();
      complain('Watching for changes; Ctrl-C ends it.');
    } while (seen !== changes);
    isRunning = false;
  };
  return new Promise((resolve, reject) => {
    const watchers: FSWatcher[] = [];
    const end = (sentence: string): void => {
      clearTimeout(timer);
      for (const watcher of watchers) watcher.close();
      complain(sentence);
      resolve(2);
    };
    const settle = (): void => {
      clearTimeout(timer);
      timer = setTimeout(() => {
        changes += 1;
        again().catch(reject);
      }, settleMilliseconds);
    };
    for (const { folder, isDeep, matters } of watchPlaces(args, process.cwd())) {
      try {
        const watcher = watch(folder, { recursive: isDeep }, (_event, name) => {
          if (name === null || matters(name)) settle();
        });
        watcher.on('error', (error) => {
          end(`${folder} is no longer watched (the system answers ${codeOf(error)}).`);
        });
        watchers.push(watcher);
      } catch (error) {
        end(`${folder} cannot be watched (the system answers ${codeOf(error)}).`);
        return;
      }
    }
    again().catch(reject);
  });
}

function codeOf(error: unknown): string {
  return error instanceof Error && 'code' in error ? String(error.code) : 'with no reason';
}
