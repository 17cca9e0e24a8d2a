import type { CommandEntry, OptionEntry } from './command-tree.ts';

/** A script for zsh, with the description of each word. */
export function zshCompletion({ commands, options }: CommandEntry): string {
  const described = commands.map(({ name, description }) => `    ${quoted(`${name}:${description}`)}`);
  return `#compdef planish
# planish in zsh; as a file _planish in a folder of $fpath: planish completion zsh > ~/.zfunc/_planish
_planish() {
  local context state state_descr line
  typeset -A opt_args
  local -a commands=(
${described.join('\n')}
  )
  _arguments -C ${[...options.map(argument), "'1:command:->command'", "'*::argument:->argument'"].join(' \\\n    ')}
  case $state in
    command) _describe command commands ;;
    argument)
      case $line[1] in
${commands.map(commandCase).join('\n')}
      esac ;;
  esac
}
if [ "$funcstack[1]" = _planish ]; then _planish "$@"; else compdef _planish planish; fi
`;
}

function commandCase({ name, options }: CommandEntry): string {
  return `        ${name}) _arguments ${[...options.map(argument), "'*:file:_files'"].join(' \\\n          ')} ;;`;
}

function argument({ long, description, takesValue, choices }: OptionEntry): string {
  const told = description.replace(/[[\]\\:]/gu, '\\$&');
  const value = !takesValue ? '' : choices.length > 0 ? `:value:(${choices.join(' ')})` : ':value:_files';
  return quoted(`*${long}[${told}]${value}`);
}

function quoted(text: string): string {
  return `'${text.replaceAll("'", "'\\''")}'`;
}
