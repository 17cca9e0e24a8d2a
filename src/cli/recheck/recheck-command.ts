import { Option } from 'commander';
import type { Command } from 'commander';
import { rulesOption, stageOption } from '../judging/judging-options.ts';
import { collect, countArgument, dayArgument } from '../option-values.ts';
import { wantsColour } from '../reporting/colour-choice.ts';
import { isTerminal } from '../reporting/is-terminal.ts';
import { progressOf } from '../reporting/progress.ts';
import { recheck } from './recheck.ts';
import type { RecheckForm } from './recheck.ts';

interface RecheckFlags {
  readonly from: readonly string[];
  readonly to: readonly string[];
  readonly rules: readonly string[];
  readonly report?: string;
  readonly asOf?: number;
  readonly stage?: 'draft' | 'start' | 'release';
  readonly format: RecheckForm;
  readonly maxPlans: number;
}

const defaultMostPlans = 20;

/** Words and options of `planish recheck`. */
export function addRecheckCommand(planish: Command, today: () => number): void {
  planish
    .command('recheck')
    .description(
      'judge an archive of plans by two versions of the rules: what passed then and would not now, and why',
    )
    .argument('<plan...>', 'plan files, folders, or patterns such as "archive/**/*.yaml"')
    .option(
      '--from <pack@range>',
      'a pack in the version of then, such as general@1.0; may be given again',
      collect,
      [],
    )
    .option(
      '--to <pack@range>',
      'a pack in the version of now; the newest when left out; may be given again',
      collect,
      [],
    )
    .addOption(rulesOption())
    .option(
      '--report <file>',
      'what check wrote then (json or ndjson): its verdicts count, and its facts are compared',
    )
    .option('--as-of <date>', 'judge all as of this day; else as of the report or the signature', dayArgument)
    .addOption(stageOption())
    .addOption(
      new Option('--format <form>', 'form of the answer').choices(['text', 'json', 'csv']).default('text'),
    )
    .addOption(
      new Option('--max-plans <number>', 'plans named under one rule in the text; 0 names all')
        .default(defaultMostPlans)
        .argParser(countArgument),
    )
    .addHelpText('after', help)
    .exitOverride()
    .action(async (plans: string[], { asOf, stage, report, maxPlans, ...flags }: RecheckFlags) => {
      process.exitCode = await recheck(plans, {
        ...flags,
        today: today(),
        ...(asOf === undefined ? {} : { asOfDay: asOf }),
        ...(stage === undefined ? {} : { stage }),
        ...(report === undefined ? {} : { report }),
        mostPlans: maxPlans,
        colour: wantsColour(process.env, isTerminal('stdout')),
        columns: 80,
        progress: (total) => progressOf(total, isTerminal('stderr')),
      });
    });
}

const help = `
Without --from, each plan is judged by what it was recorded with: the versions
that the report names, those of its sign-off (digests), or its own pins.
What a plan pins beside the named packs stays as it is; planish.lock.yaml is not
asked. Without --as-of, each plan is judged as of the day of the report, else of
its signature, else today.

A report or a sign-off of another planish or fact schema is told: computed
differently, with the facts that moved as far as the report carries them.

Exit status: 0 nothing comes out worse; 1 something passed then and would not
now, or is worse otherwise; 2 something could not be judged, or no plan found.

Examples:
  planish recheck archive/ --from general@1.0 --to general@2
  planish recheck archive/ --from general@1 --format csv > changes.csv
  planish recheck archive/ --report checked-2026.ndjson
  planish recheck --rules packs/ --from corvane-tarn@2025 archive/`;
