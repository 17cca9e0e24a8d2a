import { visibleText } from '../report/visible-text.ts';
import { writeOut } from './write-out.ts';

/** One line on standard error. */
export function complain(line: string): void {
  writeOut(`planish: ${visibleText(line)}\n`, 'complaints');
}

/** Why a command does nothing, a line each, and the exit status of that. */
export function refuse(lines: readonly string[]): 2 {
  for (const line of lines) complain(line);
  return 2;
}
