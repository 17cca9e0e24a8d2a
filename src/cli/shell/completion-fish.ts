import type { CommandEntry, OptionEntry } from './command-tree.ts';

/** A script for fish, with the description of each word. */
export function fishCompletion({ commands, options }: CommandEntry): string {
  const names = commands.map(({ name }) => name).join(' ');
  const lines = [
    '# planish in fish: planish completion fish > ~/.config/fish/completions/planish.fish',
    ...options.map((option) => optionLine('__fish_use_subcommand', option)),
    ...commands.flatMap(({ name, description, options: own }) => [
      `complete -c planish -f -n "not __fish_seen_subcommand_from ${names}" -a ${name} -d ${quoted(description)}`,
      ...own.map((option) => optionLine(`__fish_seen_subcommand_from ${name}`, option)),
    ]),
  ];
  return `${lines.join('\n')}\n`;
}

function optionLine(
  condition: string,
  { long, short, description, takesValue, choices }: OptionEntry,
): string {
  const value = !takesValue ? '' : choices.length > 0 ? ` -x -a ${quoted(choices.join(' '))}` : ' -r';
  const brief = short === undefined ? '' : ` -s ${short.replace(/^-+/u, '')}`;
  return `complete -c planish -n "${condition}"${brief} -l ${long.replace(/^--/u, '')}${value} -d ${quoted(description)}`;
}

function quoted(text: string): string {
  return `'${text.replace(/[\\']/gu, '\\$&')}'`;
}
