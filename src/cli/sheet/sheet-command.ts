import type { Command } from 'commander';
import type { PlanStage } from '../../facts/context.ts';
import { lockedOption, rulesOption, stageOption } from '../judging/judging-options.ts';
import { dayArgument } from '../option-values.ts';
import { sheet } from './sheet.ts';

interface SheetFlags {
  readonly output: string;
  readonly force: boolean;
  readonly asOf?: number;
  readonly stage?: PlanStage;
  readonly rules: readonly string[];
  readonly locked: boolean;
}

/** Words and options of `planish sheet`. */
export function addSheetCommand(planish: Command, today: () => number): void {
  planish
    .command('sheet')
    .description('write a plan as a page to read beside the car: the answer, and part by part why')
    .argument('<plan>', 'a plan file, or - for standard input')
    .requiredOption('-o, --output <file>', 'the page to write (HTML), or - for standard output')
    .option('--force', 'replace a file that is there, but no signed plan', false)
    .option(
      '--as-of <date>',
      'judge as of this day, such as 2026-10-05 (today in UTC when not given)',
      dayArgument,
    )
    .addOption(stageOption('the plan asks'))
    .addOption(rulesOption())
    .addOption(lockedOption())
    .addHelpText('after', help)
    .exitOverride()
    .action((plan: string, { output, force, asOf, stage, rules, locked }: SheetFlags) => {
      process.exitCode = sheet(plan, {
        output,
        force,
        asOfDay: asOf ?? today(),
        ...(stage === undefined ? {} : { stage }),
        rules,
        locked,
      });
    });
}

const help = `
The page needs nothing beside itself: no network, no script. It prints on A4
and Letter, in black and white as well.

Exit status: that of \`planish check\` on the plan (0 cleared, or held as a
draft; 1 stopped or held), once the page is written; 2 when it could not be.

Examples:
  planish sheet jobs/K-2207.yaml -o K-2207.html
  planish sheet --rules rules/ --stage release jobs/K-2207.yaml -o page.html
  planish sheet --as-of 2026-10-05 - -o - < K-2207.yaml > K-2207.html`;
