/** Whether the user or the host asked a run to end (Ctrl-C, or a cancelled job). */
export interface Interruption {
  readonly isAsked: () => boolean;
  /** Lets signals come in; a run that never waits would not hear them. */
  readonly listen: () => Promise<void>;
  /** Ends as the signal ends a program by default, so that a shell's loop ends with it; without a signal nothing. */
  readonly obey: () => void;
}

const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;
const pauseMilliseconds = 50;

export function listenForInterruption(): Interruption {
  let asked: NodeJS.Signals | undefined;
  let listened = milliseconds();
  const note = (signal: NodeJS.Signals): void => {
    asked = signal;
    // A second one is obeyed at once.
    forget();
  };
  const forget = (): void => {
    for (const signal of signals) process.removeListener(signal, note);
  };
  for (const signal of signals) process.on(signal, note);
  return {
    isAsked: () => asked !== undefined,
    listen: async () => {
      if (milliseconds() - listened < pauseMilliseconds) return;
      await new Promise((resolve) => {
        setImmediate(resolve);
      });
      listened = milliseconds();
    },
    obey: () => {
      forget();
      if (asked !== undefined) process.kill(process.pid, asked);
    },
  };
}

/** Since the start. `performance` would load a module of its own, a millisecond at each start. */
function milliseconds(): number {
  return process.uptime() * 1000;
}
