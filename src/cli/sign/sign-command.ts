import type { Command } from 'commander';
import { lockedOption, rulesAsForCheckOption } from '../judging/judging-options.ts';
import { dayArgument } from '../option-values.ts';
import { wantsColour } from '../reporting/colour-choice.ts';
import { isTerminal } from '../reporting/is-terminal.ts';
import { canonical, sign } from './sign.ts';

interface SignFlags {
  readonly by?: string;
  readonly role?: string;
  readonly qualification?: string;
  readonly date?: number;
  readonly asOf?: number;
  readonly rules: readonly string[];
  readonly locked: boolean;
  readonly again: boolean;
  readonly canonical: boolean;
}

/** Words and options of `planish sign`. */
export function addSignCommand(planish: Command, today: () => number): void {
  planish
    .command('sign')
    .description('sign a plan that is cleared: who, when, and digests by which a later edit shows')
    .argument('<plan>', 'plan file; the sign-off block is written into it')
    .option('--by <name>', 'who signs')
    .option('--role <role>', 'in which role, such as "workshop lead"')
    .option('--qualification <text>', 'certificate or qualification, with its number or date')
    .option(
      '--date <date>',
      'day of the signature (the day as of which it is judged, when not given)',
      dayArgument,
    )
    .option('--as-of <date>', 'judge as of this day (today in UTC when not given)', dayArgument)
    .option('--again', 'put this signature in place of the one that the plan bears', false)
    .option('--canonical', 'sign nothing: print the form that the digest is taken of', false)
    .addOption(rulesAsForCheckOption())
    .addOption(lockedOption())
    .addHelpText('after', help)
    .exitOverride()
    .action((plan: string, { canonical: isCanonical, ...flags }: SignFlags) => {
      const asOfDay = flags.asOf ?? today();
      process.exitCode = isCanonical
        ? canonical(plan)
        : sign(plan, {
            ...flags,
            asOfDay,
            signedOnDay: flags.date ?? asOfDay,
            colour: wantsColour(process.env, isTerminal('stdout')),
            columns: 80,
          });
    });
}

const help = `
Only a plan with no stop and no open hold, for the stage that it asks about, is
signed; a draft is not. The digests show that the plan or its rule packs were
changed after the signature; check then says so. They do not show who signed:
whoever can write the file can sign it. Keep signed plans where it is seen who
wrote them.

Exit status: 0 signed; 1 stopped or held, nothing written; 2 not judged or not
written.

Examples:
  planish sign --by "B. Ohm" --role "workshop lead" jobs/K-2207.yaml
  planish sign --again --by "B. Ohm" --role "workshop lead" jobs/K-2207.yaml
  planish sign --canonical jobs/K-2207.yaml | sha256sum`;
