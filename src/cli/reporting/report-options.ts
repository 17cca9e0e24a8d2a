import { InvalidArgumentError, Option } from 'commander';
import type { Command } from 'commander';
import { countArgument } from '../option-values.ts';
import { wantsColour } from './colour-choice.ts';
import { isTerminal } from './is-terminal.ts';
import { nearestWords } from '../../plan/nearest-word.ts';
import { formNames, isFormName } from './report-forms.ts';
import type { FormName } from './report-forms.ts';
import type { OutputOptions, OutputWish } from './report-outputs.ts';

/** The flags of every command that reports on plans. */
export interface ReportFlags {
  readonly format: FormName;
  readonly output: readonly OutputWish[];
  readonly force: boolean;
  readonly quiet: boolean;
  readonly summary: boolean;
  readonly maxFindings: number;
}

const defaultMostFindings = 100;

export function addReportOptions(command: Command): Command {
  return command
    .addOption(
      new Option('--format <form>', 'form of the report on standard output')
        .choices(formNames)
        .default('text'),
    )
    .option(
      '--output <form=file>',
      'write the report to a file as well, such as sarif=planish.sarif; may be given again',
      collectWish,
      [],
    )
    .option('--force', 'let --output replace files that are there, but no signed plan', false)
    .option(
      '--quiet',
      'one line for each plan that is not cleared, or cleared with accepted holds only',
      false,
    )
    .option('--summary', 'totals by rule and by folder at the end of the text', false)
    .addOption(
      new Option(
        '--max-findings <number>',
        'findings shown of one plan in text and Markdown, the worst; 0 shows all',
      )
        .default(defaultMostFindings)
        .argParser(countArgument),
    );
}

export function outputOptions(flags: ReportFlags): OutputOptions {
  return {
    format: flags.format,
    outputs: flags.output,
    force: flags.force,
    quiet: flags.quiet,
    summary: flags.summary,
    mostFindings: flags.maxFindings,
    colour: wantsColour(process.env, isTerminal('stdout')),
    columns: 80,
  };
}

function collectWish(text: string, before: readonly OutputWish[]): readonly OutputWish[] {
  const mark = text.indexOf('=');
  if (mark === -1) throw new InvalidArgumentError('It takes a form and a file, such as sarif=planish.sarif.');
  const form = text.slice(0, mark);
  if (!isFormName(form)) {
    const near = nearestWords(form, formNames);
    const hint = near.length === 0 ? '' : ` (is ${near.join(' or ')} meant?)`;
    throw new InvalidArgumentError(
      `No form is called ${form === '' ? '(nothing)' : form}${hint}; there are ${formNames.join(', ')}.`,
    );
  }
  return [...before, { form, file: text.slice(mark + 1) }];
}
