import { Option } from 'commander';
import type { Command } from 'commander';
import { wantsColour } from '../reporting/colour-choice.ts';
import { rulesAsForCheckOption } from '../judging/judging-options.ts';
import { isTerminal } from '../reporting/is-terminal.ts';
import { mark } from './mark.ts';
import type { MarkForm } from './mark.ts';

interface MarkArguments {
  readonly key: string;
  readonly format: MarkForm;
  readonly output?: string;
  readonly numbers?: string;
  readonly force: boolean;
  readonly reveal: boolean;
  readonly rules: readonly string[];
}

export function addMarkCommand(planish: Command, today: () => number): void {
  planish
    .command('mark')
    .description('mark students’ plans by a key, with what to say to each')
    .argument('<submission...>', 'plan files, folders or patterns, one plan a student')
    .requiredOption('--key <file>', 'key of the exercise; must be given')
    .addOption(
      new Option('--format <form>', 'form of the marks')
        .choices(['text', 'json', 'csv', 'html'])
        .default('text'),
    )
    .option('-o, --output <file>', 'write the marks to this file')
    .option('--numbers <file>', 'numbers in place of names; this file says which number is whose')
    .option('--reveal', 'give the answers of the key too', false)
    .addOption(rulesAsForCheckOption())
    .option('--force', 'replace files that are there, but no signed plan', false)
    .addHelpText('after', help)
    .exitOverride()
    .action((submissions: string[], options: MarkArguments) => {
      process.exitCode = mark(submissions, {
        ...options,
        today: today(),
        colour: wantsColour(process.env, isTerminal('stdout')),
        columns: 80,
      });
    });
}

const help = `
A plan that something stops, or that plans what the key forbids, does not pass,
whatever its points. Exit status: 0 all are marked; 2 something could not be.

Examples:
  planish mark --key examples/class/key.yaml examples/class/plans
  planish mark --key key.yaml --format html -o marks.html plans/
  planish mark --key key.yaml --numbers whose.csv --format csv plans/`;
