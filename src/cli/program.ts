import type { Command } from 'commander';
import { addCheckCommand } from './check/check-command.ts';
import { addDraftCommand } from './draft/draft-command.ts';
import { emptyProgram } from './empty-program.ts';
import { addHeatCommand } from './heat/heat-command.ts';
import { addMarkCommand } from './mark/mark-command.ts';
import { addMergeCommand } from './merge/merge-command.ts';
import { addPacksCommand } from './packs/packs-command.ts';
import { addRecheckCommand } from './recheck/recheck-command.ts';
import { addSheetCommand } from './sheet/sheet-command.ts';
import { addRulesCommand } from './packs/rules-command.ts';
import { addShellCommands } from './shell/shell-commands.ts';
import { addSignCommand } from './sign/sign-command.ts';
import { addSteelCommand } from './steel/steel-command.ts';
import { today } from './today.ts';

/** The command line: words and options only; what they do is in the file of each command. */
export function program(): Command {
  const planish = emptyProgram().addHelpText('after', help);

  addCheckCommand(planish, today);
  addSteelCommand(planish);
  addRulesCommand(planish);
  addPacksCommand(planish, today);
  addHeatCommand(planish, today);
  addMarkCommand(planish, today);
  addSheetCommand(planish, today);
  addMergeCommand(planish);
  addRecheckCommand(planish, today);
  addDraftCommand(planish);
  addSignCommand(planish, today);
  addShellCommands(planish);
  return planish;
}

const help = `
Examples:
  planish check jobs/K-2207.yaml          may work begin, and if not, why
  planish check --quiet --summary jobs/   every plan below a folder
  planish sheet jobs/K-2207.yaml -o K-2207.html   the plan to print and pin up
  planish rules section                   the rules on one topic
  planish steel "DP 980"                  what a material name stands for
  planish heat --source torch --temperature 600C --hold 30s --sheet 1.2mm \\
    --near press-hardened                 how far to stay away

planish COMMAND --help tells the options of one, with examples.`;
