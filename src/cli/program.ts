import { Command, Option } from 'commander';
import { addCheckCommand } from './check-command.ts';
import { wantsColour } from './colour-choice.ts';
import { addHeatCommand } from './heat-command.ts';
import { addMarkCommand } from './mark-command.ts';
import { addMergeCommand } from './merge-command.ts';
import { addPacksCommand } from './packs-command.ts';
import { addRulesCommand } from './rules-command.ts';
import { addShellCommands } from './shell-commands.ts';
import { steel } from './steel.ts';
import { version } from './version.ts';
import { writeOut } from './write-out.ts';

const millisecondsADay = 86_400_000;

/** The command line: words and options only; what they do is in the file of each command. */
export function program(): Command {
  const planish = new Command('planish')
    .description('Checks collision-repair plans against versioned rules, before sign-off.')
    .version(version, '--version', 'print the version')
    .helpOption('-h, --help', 'print this help')
    .showSuggestionAfterError()
    // Streams would end with a stack trace where the reader has gone away.
    .configureOutput({
      writeOut: (text) => void writeOut(text),
      writeErr: (text) => void writeOut(text, 'complaints'),
    })
    .addHelpText('after', help)
    .exitOverride();

  addCheckCommand(planish, today);

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
        colour: wantsColour(process.env, process.stdout.isTTY),
        columns: 80,
      });
    });

  addRulesCommand(planish);
  addPacksCommand(planish, today);
  addHeatCommand(planish, today);
  addMarkCommand(planish, today);
  addMergeCommand(planish);
  addShellCommands(planish);
  return planish;
}

interface SteelArguments {
  readonly format: 'text' | 'json';
  readonly find: boolean;
}

/** In UTC, days since 1970-01-01. */
function today(): number {
  return Math.floor(Date.now() / millisecondsADay);
}

const help = `
Examples:
  planish check jobs/K-2207.yaml          may work begin, and if not, why
  planish check --quiet --summary jobs/   every plan below a folder
  planish rules section                   the rules on one topic
  planish steel "DP 980"                  what a material name stands for
  planish heat --source torch --temperature 600C --hold 30s --sheet 1.2mm \\
    --near press-hardened                 how far to stay away

planish COMMAND --help tells the options of one, with examples.`;

const steelHelp = `
Exit status: 0 all known; 1 one is ambiguous or unknown; 2 one is no designation at all.

Examples:
  planish steel 22MnB5+AS150
  planish steel HC340LA CR300LA SPFC440
  planish steel --format json "1.5 GPa"
  planish steel --find HCT98X`;
