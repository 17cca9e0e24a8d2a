import { Command } from 'commander';
import { version } from './version.ts';
import { writeOut } from './write-out.ts';

/** The command line without a command. */
export function emptyProgram(): Command {
  return (
    new Command('planish')
      .description('Checks collision-repair plans against versioned rules, before sign-off.')
      .version(version, '--version', 'print the version')
      .helpOption('-h, --help', 'print this help')
      .showSuggestionAfterError()
      // Streams would end with a stack trace where the reader has gone away.
      .configureOutput({
        writeOut: (text) => void writeOut(text),
        writeErr: (text) => void writeOut(text, 'complaints'),
      })
      // The options of `packs` itself are not those of the commands below it.
      .enablePositionalOptions()
      .exitOverride()
  );
}
