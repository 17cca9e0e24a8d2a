import { existsSync } from 'node:fs';
import { InvalidArgumentError } from 'commander';
import type { Command } from 'commander';
import type { Shard } from '../../report/plan-report.ts';
import { check } from './check.ts';
import { fix } from './fix.ts';
import type { FixOptions } from './fix.ts';
import { explain } from './explain.ts';
import { lockedOption, rulesOption, stageOption } from '../judging/judging-options.ts';
import { dayArgument } from '../option-values.ts';
import { isTerminal } from '../reporting/is-terminal.ts';
import { progressOf } from '../reporting/progress.ts';
import { addReportOptions, outputOptions } from '../reporting/report-options.ts';
import type { ReportFlags } from '../reporting/report-options.ts';
import { readShard } from './shard.ts';
import { watchAndRun } from './watch.ts';

interface CheckFlags extends ReportFlags {
  readonly asOf?: number;
  readonly stage?: 'draft' | 'start' | 'release';
  readonly rules: readonly string[];
  readonly locked: boolean;
  readonly changedSince?: string;
  readonly shard?: Shard;
  readonly fix: boolean;
  readonly yes: boolean;
  readonly watch: boolean;
  readonly explain?: string;
}

/** Words and options of `planish check`. */
export function addCheckCommand(planish: Command, today: () => number): void {
  const command = planish
    .command('check')
    .description('judge plans: may work begin, may the vehicle go, and if not, what stops it and where')
    .argument('<plan...>', 'plan files, folders, patterns such as "jobs/**/*.yaml", or - for standard input');
  addReportOptions(command)
    .option(
      '--as-of <date>',
      'judge as of this day, such as 2026-10-05 (today in UTC when not given)',
      dayArgument,
    )
    .addOption(stageOption())
    .addOption(rulesOption())
    .addOption(lockedOption())
    .option('--changed-since <commit>', 'judge only what was changed since the branch left this commit (git)')
    .option(
      '--shard <part/parts>',
      'judge one part of the files, such as 3/16, by their content',
      shardArgument,
    )
    .option('--fix', 'first mend misspelt keys in the files, as far as each can only mean one', false)
    .option('--watch', 'judge again whenever a plan or a pack changes, until Ctrl-C', false)
    .option('--yes', 'with --fix: write without a question', false)
    .option(
      '--explain <part[/operation]>',
      'show each rule that was asked of a part or operation of one plan, and what it saw',
    )
    .addHelpText('after', help)
    .exitOverride()
    .action(async (plans: string[], flags: CheckFlags) => {
      const wrong = whyWrong(plans, flags);
      if (wrong !== undefined) command.error(`error: ${wrong}`);
      const isMended = !flags.fix || (await fix(plans, fixOptions(flags)));
      const { asOf, stage, rules, locked, changedSince, shard } = flags;
      const options = outputOptions(flags);
      if (flags.explain !== undefined) {
        process.exitCode = explain(plans, flags.explain, {
          asOfDay: asOf ?? today(),
          ...(stage === undefined ? {} : { stage }),
          ...{ rules, locked, format: options.format, columns: options.columns },
        });
        return;
      }
      // Where the report itself runs down the same screen it shows how far it has come.
      const isBarSeen =
        isTerminal('stderr') && (!isTerminal('stdout') || options.quiet || options.format === 'markdown');
      const run = (): Promise<0 | 1 | 2> =>
        check(plans, {
          ...options,
          asOfDay: asOf ?? today(),
          ...(stage === undefined ? {} : { stage }),
          rules,
          locked,
          ...(changedSince === undefined ? {} : { changedSince }),
          ...(shard === undefined ? {} : { shard }),
          progress: (total) => progressOf(total, isBarSeen),
        });
      const status = flags.watch
        ? await watchAndRun([...plans, ...rules.filter((one) => existsSync(one))], isTerminal('stdout'), run)
        : await run();
      process.exitCode = isMended ? status : 2;
    });
}

/** Options that do not go together, in one sentence. */
function whyWrong(plans: readonly string[], flags: CheckFlags): string | undefined {
  if (flags.yes && !flags.fix) return '--yes belongs to --fix';
  const isPart = flags.changedSince !== undefined || flags.shard !== undefined;
  if (flags.fix && isPart) return '--fix mends all that is named; leave --changed-since and --shard out';
  const isMore = flags.fix || flags.watch || flags.quiet || flags.summary || flags.output.length > 0;
  if (flags.explain !== undefined && (isPart || isMore))
    return '--explain answers for one plan, on its own; --format, --rules, --as-of, --stage and --locked may stand beside it';
  if (!flags.watch) return undefined;
  if (plans.includes('-')) return '--watch watches files, and standard input is none';
  if (flags.fix) return '--watch changes no file; run --fix before it';
  return flags.format === 'text' && flags.output.length === 0
    ? undefined
    : '--watch shows the text report, and writes no other form';
}

function fixOptions({ yes }: CheckFlags): FixOptions {
  return { yes, isTerminal: isTerminal('stdin') && isTerminal('stderr'), columns: 80 };
}

function shardArgument(text: string): Shard {
  const shard = readShard(text);
  if (shard === undefined)
    throw new InvalidArgumentError('It takes a part and how many there are, such as 3/16, at most 10000.');
  return shard;
}

const help = `
Exit status: 0 cleared (or only held, and every held plan is a draft);
1 stopped, or held at start or release; 2 something could not be judged or
written.

Forms: text, json, ndjson (one plan a line), csv (one finding a row), sarif,
junit, markdown (a summary), and the annotations of github, gitlab and azure.
--fix changes letters of keys and nothing else, shows what before it asks, and
leaves signed plans alone; what it is not sure of stays a finding.
A folder's .planishignore (lines as in .gitignore) names what is passed over.

Examples:
  planish check jobs/K-2207.yaml
  planish check --rules rules/ --as-of 2026-10-05 jobs/
  planish check --format json - < plan.yaml
  planish check --quiet --summary jobs/
  planish check --output sarif=out.sarif --output junit=out.xml jobs/
  planish check --fix jobs/K-2207.yaml
  planish check --watch --rules rules/ jobs/K-2207.yaml
  planish check --changed-since origin/main jobs/
  planish check --explain ring-l/section jobs/K-2207.yaml
  planish check --shard 3/16 --format ndjson jobs/ > part-3.ndjson`;
