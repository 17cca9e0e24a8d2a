import { InvalidArgumentError, Option } from 'commander';
import type { Command } from 'commander';
import { readDate } from '../quantity/iso-date.ts';
import type { Shard } from '../report/plan-report.ts';
import { check } from './check.ts';
import { explain } from './explain.ts';
import { progressOf } from './progress.ts';
import { addReportOptions, outputOptions } from './report-options.ts';
import type { ReportFlags } from './report-options.ts';
import { readShard } from './shard.ts';

interface CheckFlags extends ReportFlags {
  readonly asOf?: number;
  readonly stage?: 'draft' | 'start' | 'release';
  readonly rules: readonly string[];
  readonly locked: boolean;
  readonly changedSince?: string;
  readonly shard?: Shard;
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
    .option('--changed-since <commit>', 'judge only what was changed since the branch left this commit (git)')
    .option(
      '--shard <part/parts>',
      'judge one part of the files, such as 3/16, by their content',
      shardArgument,
    )
    .option(
      '--explain <part[/operation]>',
      'show each rule that was asked of a part or operation of one plan, and what it saw',
    )
    .addHelpText('after', help)
    .exitOverride()
    .action(async (plans: string[], flags: CheckFlags) => {
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
        process.stderr.isTTY && (!process.stdout.isTTY || options.quiet || options.format === 'markdown');
      process.exitCode = await check(plans, {
        ...options,
        asOfDay: asOf ?? today(),
        ...(stage === undefined ? {} : { stage }),
        rules,
        locked,
        ...(changedSince === undefined ? {} : { changedSince }),
        ...(shard === undefined ? {} : { shard }),
        progress: (total) => progressOf(total, isBarSeen),
      });
    });
}

function collect(folder: string, before: readonly string[]): readonly string[] {
  return [...before, folder];
}

function dayArgument(text: string): number {
  const reading = readDate(text);
  if (!reading.ok) throw new InvalidArgumentError(reading.reason);
  return reading.day;
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
A folder's .planishignore (lines as in .gitignore) names what is passed over.

Examples:
  planish check jobs/K-2207.yaml
  planish check --rules rules/ --as-of 2026-10-05 jobs/
  planish check --format json - < plan.yaml
  planish check --quiet --summary jobs/
  planish check --output sarif=out.sarif --output junit=out.xml jobs/
  planish check --changed-since origin/main jobs/
  planish check --explain ring-l/section jobs/K-2207.yaml
  planish check --shard 3/16 --format ndjson jobs/ > part-3.ndjson`;
