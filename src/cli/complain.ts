import { visibleText } from '../report/visible-text.ts';
import { writeOut } from './write-out.ts';

/** One line on standard error. */
export function complain(line: string): void {
  writeOut(`planish: ${visibleText(line)}\n`, 'complaints');
}
