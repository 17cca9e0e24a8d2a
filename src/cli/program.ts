import type { Command } from 'commander';
import { addCheckCommand } from './check-command.ts';
import { emptyProgram } from './empty-program.ts';
import { addHeatCommand } from './heat-command.ts';
import { addMarkCommand } from './mark-command.ts';
import { addMergeCommand } from './merge-command.ts';
import { addPacksCommand } from './packs-command.ts';
import { addRulesCommand } from './rules-command.ts';
import { addShellCommands } from './shell-commands.ts';
import { addSteelCommand } from './steel-command.ts';

const millisecondsADay = 86_400_000;

/** The command line: words and options only; what they do is in the file of each command. */
export function program(): Command {
  const planish = emptyProgram().addHelpText('after', help);

  addCheckCommand(planish, today);
  addSteelCommand(planish);
  addRulesCommand(planish);
  addPacksCommand(planish, today);
  addHeatCommand(planish, today);
  addMarkCommand(planish, today);
  addMergeCommand(planish);
  addShellCommands(planish);
  return planish;
}

/** In UTC, days since 1970-01-01. */
function today(): number {
  return Math.floor(Date.now() / millisecondsADay);
}

const help = `
Examples:
  planish check jobs/K-2207.yaml          may work begin, and if not, why
  planish check --quiet --summary jobs/   every plan below a folder
  planish rules section                   the rules on one topic
  planish steel "DP 980"                  what a material name stands for
  planish heat --source torch --temperature 600C --hold 30s --sheet 1.2mm \\
    --near press-hardened                 how far to stay away

planish COMMAND --help tells the options of one, with examples.`;
