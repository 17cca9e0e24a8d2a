import { cautions } from '../../report/cautions.ts';
import type { CommandEntry } from './command-tree.ts';

/** The manual page, section 1, in the macros of man(7); every word of it is that of the help. */
export function manPage(tree: CommandEntry, version: string): string {
  const lines = [
    `.TH PLANISH 1 "" "planish ${version}" "User Commands"`,
    '.SH NAME',
    'planish \\- judge collision\\-repair plans against versioned rules',
    '.SH SYNOPSIS',
    ...tree.commands.flatMap(({ name, args }, index) => [
      ...(index === 0 ? [] : ['.br']),
      `.B planish ${roff(name)}`,
      `[\\fIoption\\fR ...] ${args.map(({ term }) => roff(term)).join(' ')}`.trim(),
    ]),
    '.SH DESCRIPTION',
    roff(tree.description),
    ...notes(tree.notes),
    '.SH COMMANDS',
    ...tree.commands.flatMap(section),
    '.SH FILES',
    '.TP',
    '.B .planishignore',
    'Lines, as in .gitignore, that name what a search of its folder passes over.',
    '.SH ENVIRONMENT',
    '.TP',
    '.B NO_COLOR',
    'When not empty, nothing is coloured.',
    '.TP',
    '.B FORCE_COLOR',
    'When not empty, text is coloured off a terminal too; 0 and false turn it off.',
    '.SH CAUTIONS',
    ...cautions.flatMap((caution, index) => [...(index === 0 ? [] : ['.PP']), roff(caution)]),
  ];
  return `${lines.join('\n')}\n`;
}

function section({ name, description, args, options, notes: after }: CommandEntry): readonly string[] {
  return [
    `.SS ${roff(name)}`,
    `${roff(description)}.`,
    ...args.flatMap(({ term, description: told }) => ['.TP', `.I ${roff(term)}`, roff(told)]),
    ...options.flatMap(({ flags, description: told, choices }) => [
      '.TP',
      `.B ${roff(flags)}`,
      roff(choices.length === 0 ? told : `${told}: ${choices.join(', ')}`),
    ]),
    ...notes(after),
  ];
}

/** Exit status and examples keep their lines. */
function notes(text: string): readonly string[] {
  return text === '' ? [] : ['.PP', '.nf', ...text.split('\n').map(roff), '.fi'];
}

/** A backslash, a minus that must be one in a command, and a mark at the start of a line that would be a macro. */
function roff(text: string): string {
  return text
    .replaceAll('\\', '\\e')
    .replaceAll('-', '\\-')
    .replace(/^(?=[.'])/u, '\\&');
}
