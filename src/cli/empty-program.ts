import { Command, Help } from 'commander';
import type { Option } from 'commander';
import { version } from './version.ts';
import { writeOut } from './write-out.ts';

/** The command line without a command. */
export function emptyProgram(): Command {
  return (
    new Command('planish')
      .description('Checks collision-repair plans against versioned rules, before sign-off.')
      .version(version, '--version', 'print the version')
      .helpOption('-h, --help', 'print this help')
      .configureHelp({ optionDescription: withoutEmptyDefault })
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

/** That a switch is off and a list empty when nobody names them goes without saying. */
function withoutEmptyDefault(option: Option): string {
  return new Help().optionDescription(option).replace(/ \(default: (?:false|\[\])\)$/u, '');
}
