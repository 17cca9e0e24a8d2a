import { Option } from 'commander';
import type { Command } from 'commander';
import { wantsColour } from '../reporting/colour-choice.ts';
import { rulesAsForCheckOption } from '../judging/judging-options.ts';
import { isTerminal } from '../reporting/is-terminal.ts';
import { rules } from './rules.ts';
import type { RulesOptions } from './rules.ts';

/** Words and options of `planish rules`. */
export function addRulesCommand(planish: Command): void {
  planish
    .command('rules')
    .description('list the rules, or show one whole: what it finds, why, and what to do instead')
    .argument('[id|topic]', 'a rule, also one that has ended, or a topic such as section or heat')
    .addOption(rulesAsForCheckOption())
    .addOption(
      new Option('--format <form>', 'form of the answer')
        .choices(['text', 'json', 'markdown'])
        .default('text'),
    )
    .addHelpText('after', help)
    .exitOverride()
    .action((word: string | undefined, flags: Pick<RulesOptions, 'rules' | 'format'>) => {
      process.exitCode = rules(word, {
        ...flags,
        colour: wantsColour(process.env, isTerminal('stdout')),
        columns: 80,
      });
    });
}

const help = `
The list has the first sentence of what each rule finds; what only a plan knows
stands in ‹ ›. Exit status: 0 shown; 2 no such rule or topic, or a bad pack.

Examples:
  planish rules
  planish rules section
  planish rules section-press-hardened
  planish rules --rules packs/corvane-tarn --format json
  planish rules --format markdown section-press-hardened > rule.md`;
