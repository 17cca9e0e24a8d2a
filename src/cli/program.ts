import { Command, InvalidArgumentError, Option } from 'commander';
import { readDate } from '../quantity/iso-date.ts';
import { check } from './check.ts';
import { wantsColour } from './colour-choice.ts';
import { addHeatCommand } from './heat-command.ts';
import { addPacksCommand } from './packs-command.ts';
import { addMarkCommand } from './mark-command.ts';
import { addSignCommand } from './sign-command.ts';
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
    .exitOverride();

  planish
    .command('check')
    .description('judge plans: may work begin, may the vehicle go, and if not, what stops it and where')
    .argument('<plan...>', 'plan files, folders, patterns such as "jobs/**/*.yaml", or - for standard input')
    .addOption(new Option('--format <form>', 'form of the report').choices(['text', 'json']).default('text'))
    .option(
      '--as-of <date>',
      'judge as of this day, such as 2026-10-05 (today in UTC when not given)',
      dayArgument,
    )
    .addOption(
      new Option('--stage <stage>', 'ask this question instead of the one that each plan asks').choices([
        'draft',
        'start',
        'release',
      ]),
    )
    .option(
      '--rules <pack>',
      'a further rule pack: its folder, a folder of several, a packed file (.tgz) or an npm package; may be given again',
      collect,
      [],
    )
    .option('--locked', 'judge only by the packs that planish.lock.yaml fixes, and by no others', false)
    .option('--quiet', 'one line for each plan that is not cleared, nothing else', false)
    .addHelpText('after', checkHelp)
    .exitOverride()
    .action((plans: string[], options: CheckArguments) => {
      process.exitCode = check(plans, {
        format: options.format,
        asOfDay: options.asOf ?? today(),
        ...(options.stage === undefined ? {} : { stage: options.stage }),
        quiet: options.quiet,
        rules: options.rules,
        locked: options.locked,
        colour: wantsColour(process.env, process.stdout.isTTY),
        columns: 80,
      });
    });

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

  addPacksCommand(planish);
  addHeatCommand(planish, today);
  addMarkCommand(planish, today);
  addSignCommand(planish, today);
  return planish;
}

interface SteelArguments {
  readonly format: 'text' | 'json';
  readonly find: boolean;
}

interface CheckArguments {
  readonly format: 'text' | 'json';
  readonly asOf?: number;
  readonly stage?: 'draft' | 'start' | 'release';
  readonly rules: readonly string[];
  readonly quiet: boolean;
  readonly locked: boolean;
}

/** In UTC, days since 1970-01-01. */
function today(): number {
  return Math.floor(Date.now() / millisecondsADay);
}

function collect(folder: string, before: readonly string[]): readonly string[] {
  return [...before, folder];
}

function dayArgument(text: string): number {
  const reading = readDate(text);
  if (!reading.ok) throw new InvalidArgumentError(reading.reason);
  return reading.day;
}

const checkHelp = `
Exit status: 0 cleared (or only held, and every held plan is a draft);
1 stopped, or held at start or release; 2 something could not be judged.

Examples:
  planish check jobs/K-2207.yaml
  planish check --rules rules/ --as-of 2026-10-05 jobs/
  planish check --format json - < plan.yaml`;

const steelHelp = `
Exit status: 0 all known; 1 one is ambiguous or unknown; 2 one is no designation at all.

Examples:
  planish steel 22MnB5+AS150
  planish steel HC340LA CR300LA SPFC440
  planish steel --format json "1.5 GPa"
  planish steel --find HCT98X`;
