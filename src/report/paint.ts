import { Chalk } from 'chalk';
import type { Severity } from '../judge/finding.ts';
import type { Verdict } from '../judge/verdict.ts';

/** Colour for the terminal. It only repeats what the words say; without it nothing is lost. */
export interface Paint {
  readonly severity: (severity: Severity, text: string) => string;
  readonly verdict: (verdict: Verdict, text: string) => string;
  readonly strong: (text: string) => string;
  readonly faint: (text: string) => string;
}

export function paintWith(colour: boolean): Paint {
  const chalk = new Chalk({ level: colour ? 1 : 0 });
  return {
    severity: (severity, text) => {
      switch (severity) {
        case 'stop':
          return chalk.bold.red(text);
        case 'hold':
          return chalk.bold.yellow(text);
        case 'note':
          return chalk.bold.cyan(text);
      }
    },
    verdict: (verdict, text) => {
      switch (verdict) {
        case 'cleared':
          return chalk.bold.green(text);
        case 'held':
          return chalk.bold.yellow(text);
        case 'stopped':
        case 'not judged':
          return chalk.bold.red(text);
      }
    },
    strong: (text) => chalk.bold(text),
    faint: (text) => chalk.dim(text),
  };
}
