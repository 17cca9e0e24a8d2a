import { Option } from 'commander';
import type { Command } from 'commander';
import { draftQuestions } from '../../draft/questions.ts';
import { askAtTerminal } from '../ask.ts';
import { rulesAsForCheckOption } from '../judging/judging-options.ts';
import { collect } from '../option-values.ts';
import { isTerminal } from '../reporting/is-terminal.ts';
import { draft } from './draft.ts';

interface DraftFlags {
  readonly part: readonly string[];
  readonly ask: boolean;
  readonly rules: readonly string[];
  readonly output?: string;
  readonly force: boolean;
}

/** Words and options of `planish draft`. */
export function addDraftCommand(planish: Command): void {
  const command = planish
    .command('draft')
    .description('begin a plan: what is known is filled in, what is open becomes a question')
    .argument('[input]', '- for answers as JSON on standard input');
  for (const { option, question } of draftQuestions) {
    command.addOption(new Option(`--${option} <answer>`, lowered(question)));
  }
  command
    .option('--part <part>', 'a part: what it is, its side, its damage; may be given again', collect, [])
    .option('--no-ask', 'ask nothing, though there is a terminal')
    .addOption(rulesAsForCheckOption('a vehicle pack to fill in from'))
    .option('-o, --output <file>', 'write to this file, and never over one that is there')
    .option('--force', 'replace a file that is there, but no signed plan', false)
    .addHelpText('after', help)
    .exitOverride()
    .action(async (input: string | undefined, flags: DraftFlags) => {
      if (input !== undefined && input !== '-')
        command.error('error: draft takes no file but -, standard input; the new plan goes to --output');
      const given: Readonly<Record<string, unknown>> = command.opts();
      const byOption = new Map(
        draftQuestions.flatMap(({ option }): readonly (readonly [string, string])[] => {
          const answer = given[camelled(option)];
          return typeof answer === 'string' ? [[option, answer]] : [];
        }),
      );
      const canAsk = flags.ask && isTerminal('stdin') && isTerminal('stderr');
      process.exitCode = await draft({
        typed: { byOption, parts: flags.part },
        fromInput: input === '-',
        ...(canAsk ? { asker: askAtTerminal } : {}),
        rules: flags.rules,
        ...(flags.output === undefined ? {} : { output: flags.output }),
        force: flags.force,
      });
    });
}

function lowered(question: string): string {
  return question.charAt(0).toLowerCase() + question.slice(1);
}

/** As commander names the value of `--year-from`. */
function camelled(option: string): string {
  return option.replace(/-([a-z])/gu, (_whole, letter: string) => letter.toUpperCase());
}

const help = `
On a terminal it asks for what the options leave out. From a vehicle pack it
fills in what the maker says of parts for this very vehicle: layers, grades,
thickness, and the documents to look up. Whatever is open stands in the draft as
a question (# ?), and what a document says of itself is never filled in. It
proposes no work: a check holds every draft until the operations are written.

On standard input: {"job": {...}, "vehicle": {...}, "parts": [{"kind": ...}]}
with the keys and words of a plan.

Exit status: 0 written; 2 something was wrong, and nothing was.

Examples:
  planish draft -o jobs/K-2207.yaml
  planish draft --maker Corvane --model Tarn --body wagon --year 2021 \\
    --part "door ring, left, kink" --rules rules/corvane-tarn -o K-2207.yaml
  planish draft - < answers.json`;
