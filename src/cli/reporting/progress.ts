import { writeOut } from '../write-out.ts';

/** How far a run has come, in one line on standard error that is written over and taken away. */
export interface Progress {
  readonly show: (done: number) => void;
  readonly clear: () => void;
}

const quietMilliseconds = 1000;
const betweenMilliseconds = 100;
const barColumns = 30;

/** Shown only on a terminal, and only when a run takes longer than a second. */
export function progressOf(
  total: number,
  isTerminal: boolean,
  write: (text: string) => void = (text) => void writeOut(text, 'complaints'),
  now: () => number = () => performance.now(),
): Progress {
  if (!isTerminal) return { show: () => undefined, clear: () => undefined };
  const began = now();
  let shown = Number.NEGATIVE_INFINITY;
  let isThere = false;
  return {
    show: (done) => {
      const time = now();
      if (time - began < quietMilliseconds || time - shown < betweenMilliseconds) return;
      shown = time;
      isThere = true;
      const full = Math.floor((done / Math.max(1, total)) * barColumns);
      const bar = `${'#'.repeat(full)}${'.'.repeat(barColumns - full)}`;
      write(`\r\u001b[K${bar} ${String(done)} of ${String(total)} files`);
    },
    clear: () => {
      if (isThere) write('\r\u001b[K');
      isThere = false;
    },
  };
}
