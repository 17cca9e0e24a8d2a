import type { Command, Option } from 'commander';

/** One command as help, manual and completion tell of it: read off the command line itself, so that none of them can differ. */
export interface CommandEntry {
  /** Without the name of the program; empty for the program itself. */
  readonly name: string;
  readonly description: string;
  readonly args: readonly ArgumentEntry[];
  readonly options: readonly OptionEntry[];
  /** What its help says after the options: exit status and examples. */
  readonly notes: string;
  readonly commands: readonly CommandEntry[];
}

export interface ArgumentEntry {
  /** `plan ...`, in brackets when it may be left out. */
  readonly term: string;
  readonly description: string;
}

export interface OptionEntry {
  /** As the help shows it: `-h, --help`, `--format <form>`. */
  readonly flags: string;
  /** `--format`. */
  readonly long: string;
  readonly short?: string;
  readonly description: string;
  readonly takesValue: boolean;
  /** Empty when any value goes. */
  readonly choices: readonly string[];
}

export function commandTree(command: Command): CommandEntry {
  const help = command.createHelp();
  return {
    name: command.parent === null ? '' : command.name(),
    description: command.description(),
    args: command.registeredArguments.map((argument) => ({
      term: termOf(argument.name(), argument.variadic, argument.required),
      description: argument.description,
    })),
    options: help.visibleOptions(command).map(optionEntry),
    notes: notesOf(command),
    commands: help
      .visibleCommands(command)
      .filter((one) => one.name() !== 'help')
      .map(commandTree),
  };
}

function termOf(name: string, isVariadic: boolean, isRequired: boolean): string {
  const term = isVariadic ? `${name} ...` : name;
  return isRequired ? term : `[${term}]`;
}

function optionEntry(option: Option): OptionEntry {
  return {
    flags: option.flags,
    long: option.long ?? option.flags,
    ...(option.short === undefined ? {} : { short: option.short }),
    description: option.description,
    takesValue: option.required || option.optional,
    choices: option.argChoices ?? [],
  };
}

/** What `addHelpText` adds can only be had by having the help written. */
function notesOf(command: Command): string {
  let written = '';
  command.configureOutput({
    writeOut: (text) => {
      written += text;
    },
  });
  command.outputHelp();
  return written.slice(command.helpInformation().length).trim();
}
