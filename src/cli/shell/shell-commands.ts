import { Argument } from 'commander';
import type { Command } from 'commander';
import { commandTree } from './command-tree.ts';
import { bashCompletion } from './completion-bash.ts';
import { fishCompletion } from './completion-fish.ts';
import { zshCompletion } from './completion-zsh.ts';
import { manPage } from './man-page.ts';
import { version } from '../version.ts';
import { writeOut } from '../write-out.ts';

const completions = { bash: bashCompletion, zsh: zshCompletion, fish: fishCompletion } as const;

/** The commands that tell a shell and a reader of manuals what the others are. */
export function addShellCommands(planish: Command): void {
  planish
    .command('completion')
    .description('print a script that completes words and options in your shell')
    .addArgument(new Argument('<shell>', 'whose script').choices(['bash', 'zsh', 'fish']))
    .addHelpText(
      'after',
      `
Examples:
  source <(planish completion bash)
  planish completion zsh > ~/.zfunc/_planish
  planish completion fish > ~/.config/fish/completions/planish.fish`,
    )
    .exitOverride()
    .action((shell: keyof typeof completions) => {
      writeOut(completions[shell](commandTree(planish)));
    });

  planish
    .command('man')
    .description('print the manual page')
    .addHelpText(
      'after',
      `
Examples:
  planish man > planish.1 && man ./planish.1`,
    )
    .exitOverride()
    .action(() => {
      writeOut(manPage(commandTree(planish), version));
    });
}
