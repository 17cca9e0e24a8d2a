import type { Command } from 'commander';
import { merge } from './merge.ts';
import { addReportOptions, outputOptions } from '../reporting/report-options.ts';
import type { ReportFlags } from '../reporting/report-options.ts';

/** Words and options of `planish merge`. */
export function addMergeCommand(planish: Command): void {
  const command = planish
    .command('merge')
    .description('make one report of those of several machines, and see that none is missing')
    .argument('<report...>', 'files that check wrote with --format json or ndjson');
  addReportOptions(command)
    .addHelpText('after', help)
    .exitOverride()
    .action((files: string[], flags: ReportFlags) => {
      process.exitCode = merge(files, outputOptions(flags));
    });
}

const help = `
The reports must be of the same rules, day and planish. What is cut off, is of
others or is missing stands in the result as not judged.

Exit status: that of one check of all plans; 2 when a report is not whole.

Examples:
  planish merge part-1.ndjson part-2.ndjson
  planish merge --output sarif=all.sarif --output junit=all.xml part-*.ndjson`;
