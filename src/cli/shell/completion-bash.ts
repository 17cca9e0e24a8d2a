import type { CommandEntry, OptionEntry } from './command-tree.ts';

/** A script for bash: words of the command, then its options, values where they are a choice, file names everywhere else. */
export function bashCompletion({ commands, options }: CommandEntry): string {
  const names = commands.map(({ name }) => name);
  return `# planish in bash; in ~/.bashrc: source <(planish completion bash)
_planish() {
  local current=\${COMP_WORDS[COMP_CWORD]} previous=\${COMP_WORDS[COMP_CWORD - 1]} command='' word
  for word in "\${COMP_WORDS[@]:1:COMP_CWORD-1}"; do
    case $word in
      ${names.join('|')}) command=$word; break ;;
    esac
  done
  COMPREPLY=()
  case "$command $previous" in
${commands.flatMap(({ name, options: own }) => own.flatMap((option) => valueCase(name, option))).join('\n')}
  esac
  case "$command $current" in
${commands.map(({ name, options: own }) => wordCase(`'${name} '-*`, longNames(own))).join('\n')}
${wordCase("' '*", [...names, ...longNames(options)])}
  esac
  compopt -o filenames
  mapfile -t COMPREPLY < <(compgen -f -- "$current")
}
complete -F _planish planish
`;
}

function valueCase(command: string, { long, choices, takesValue }: OptionEntry): readonly string[] {
  if (!takesValue || choices.length === 0) return [];
  return [wordCase(`'${command} ${long}'`, choices)];
}

function wordCase(pattern: string, words: readonly string[]): string {
  return `    ${pattern}) mapfile -t COMPREPLY < <(compgen -W '${words.join(' ')}' -- "$current"); return ;;`;
}

function longNames(options: readonly OptionEntry[]): readonly string[] {
  return options.map(({ long }) => long);
}
