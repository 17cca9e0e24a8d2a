import type { Command } from 'commander';
import { CommanderError } from 'commander';
import { visibleText } from '../report/visible-text.ts';
import { outputIsCut, writeOut } from './write-out.ts';

/** Runs the words of the command line; whatever is thrown becomes a sentence and a status, never a stack trace. */
export function runProgram(program: Command): void {
  program.parseAsync().then(tellCut, fail);
}

/** A page or a report that nobody took to its end is no success. */
function tellCut(): void {
  if (!outputIsCut() || process.exitCode === 2) return;
  writeOut('planish: the output cannot be written to its end: who reads it has gone away.\n', 'complaints');
  process.exitCode = 2;
}

function fail(error: unknown): void {
  if (error instanceof CommanderError) {
    // Commander has written help or complaint already; wrong usage is status 2, help and version 0.
    process.exitCode = error.exitCode === 0 ? 0 : 2;
  } else {
    const reason = error instanceof Error ? error.message : String(error);
    const code = error instanceof Error && 'code' in error ? error.code : undefined;
    const isFolderGone = error instanceof Error && 'syscall' in error && error.syscall === 'uv_cwd';
    const isOutput = code === 'ENOSPC' || code === 'EDQUOT' || code === 'EIO';
    writeOut(
      isFolderGone
        ? 'planish: the working folder is not there any more.\n'
        : isOutput
          ? `planish: the output cannot be written to its end (${visibleText(code)}); is the disk full?\n`
          : `planish: it failed on its own account, and judged nothing to its end: ${visibleText(reason)}\n`,
      'complaints',
    );
    process.exitCode = 2;
  }
}
