import type { Interface } from 'node:readline/promises';

/** One who answers at a terminal. The questions go to standard error, so that standard output holds results only. */
export interface Asker {
  /** The answer without blanks around it; undefined when no more answers come (end of input, or Ctrl-C). */
  readonly ask: (question: string) => Promise<string | undefined>;
  readonly close: () => void;
}

/** Its part of Node is loaded only when somebody is asked: plain commands start without it. */
export function askAtTerminal(): Asker {
  const { createInterface } = process.getBuiltinModule('node:readline/promises');
  const terminal: Interface = createInterface({ input: process.stdin, output: process.stderr });
  let isOver = false;
  // Lines that are pasted, or typed before their question, come while nobody waits for them.
  const early: string[] = [];
  terminal.on('line', (line) => {
    early.push(line);
  });
  const over = new Promise<undefined>((resolve) => {
    terminal.once('close', () => {
      isOver = true;
      resolve(undefined);
    });
  });
  return {
    ask: async (question) => {
      const waiting = early.shift();
      if (waiting !== undefined) {
        process.stderr.write(`${question}${waiting}\n`);
        return waiting.trim();
      }
      if (isOver) return undefined;
      const answer = await Promise.race([terminal.question(question).catch(() => undefined), over]);
      // What comes next begins a line of its own.
      if (answer === undefined) process.stderr.write('\n');
      return answer?.trim();
    },
    close: () => {
      terminal.close();
    },
  };
}
