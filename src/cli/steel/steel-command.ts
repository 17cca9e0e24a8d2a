import type { Command } from 'commander';
import { Option } from 'commander';
import { wantsColour } from '../reporting/colour-choice.ts';
import { isTerminal } from '../reporting/is-terminal.ts';
import { steel } from './steel.ts';

interface SteelArguments {
  readonly format: 'text' | 'json';
  readonly find: boolean;
}

/** Words and options of `planish steel`. */
export function addSteelCommand(planish: Command): void {
  planish
    .command('steel')
    .description('say what a material designation, a strength or a word of the trade stands for')
    .argument(
      '[designation...]',
      'such as 22MnB5+AS150, "DP 980", 6016-T4, "217 ksi"; several are shown side by side',
    )
    .addOption(new Option('--format <form>', 'form of the answer').choices(['text', 'json']).default('text'))
    .option('--find', 'name known grades that a misspelt one resembles', false)
    .addHelpText('after', steelHelp)
    .exitOverride()
    .action((designations: string[], options: SteelArguments) => {
      process.exitCode = steel(designations, {
        format: options.format,
        find: options.find,
        colour: wantsColour(process.env, isTerminal('stdout')),
        columns: 80,
      });
    });
}

const steelHelp = `
Exit status: 0 all known; 1 one is ambiguous or unknown; 2 one is no
designation at all.

Examples:
  planish steel 22MnB5+AS150
  planish steel HC340LA CR300LA SPFC440
  planish steel --format json "1.5 GPa"
  planish steel --find HCT98X`;
