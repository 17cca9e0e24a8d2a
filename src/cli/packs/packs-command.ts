import type { Command } from 'commander';
import { nearestWords } from '../../plan/nearest-word.ts';
import { rulesAsForCheckOption } from '../judging/judging-options.ts';
import { collect } from '../option-values.ts';
import { complain } from '../complain.ts';
import { canonical } from './packs-canonical.ts';
import { addAuthorCommands, formOption } from './packs-author-commands.ts';
import { listPacks } from './packs-list.ts';
import { lock } from './packs-lock.ts';

/** The command `packs` with its words; what they do is in the file of each. */
export function addPacksCommand(planish: Command, today: () => number): void {
  const packs = planish
    .command('packs')
    .description('look at rule packs, write and release them, and fix their versions')
    // Options before a command below are those of `packs`, behind it those of the command.
    .enablePositionalOptions()
    .addOption(rulesAsForCheckOption())
    .addOption(formOption())
    .addHelpText('after', help)
    .allowExcessArguments()
    .exitOverride()
    .action(({ rules, format }: ListArguments) => {
      const [word] = packs.args;
      process.exitCode = word === undefined ? listPacks(rules, format, 80) : refuseWord(packs, word);
    });

  addAuthorCommands(packs, today);

  packs
    .command('canonical')
    .description('print the canonical form of a pack, of which its digest is the SHA-256')
    .argument('<pack>', 'its folder, a packed file (.tgz), an npm package, or a built-in one')
    .argument('[version]', 'a released version; the newest when left out')
    .addHelpText('after', canonicalHelp)
    .exitOverride()
    .action((pack: string, version: string | undefined) => {
      process.exitCode = canonical(pack, version);
    });

  packs
    .command('lock')
    .description('write planish.lock.yaml: the exact packs by which the plans of a folder are judged')
    .argument('[folder]', 'folder of the jobs; the working folder when left out', '.')
    .addOption(rulesAsForCheckOption())
    .option(
      '--pin <pack@range>',
      'a pack in a certain version, such as general@1; may be given again',
      collect,
      [],
    )
    .addHelpText('after', lockHelp)
    .exitOverride()
    .action((folder: string, options: LockArguments) => {
      process.exitCode = lock(folder, options.rules, options.pin);
    });
}

/** Whatever stands where a command of `packs` should. */
function refuseWord(packs: Command, word: string): 2 {
  const known = packs.commands.map((command) => command.name());
  const nearest = nearestWords(word, known);
  const hint =
    nearest.length > 0 ? `Nearest known: ${nearest.join(', ')}.` : `There are ${known.join(', ')}.`;
  complain(`\`packs\` has no command \`${word}\`. ${hint}`);
  return 2;
}

interface ListArguments {
  readonly rules: readonly string[];
  readonly format: 'text' | 'json';
}

interface LockArguments {
  readonly rules: readonly string[];
  readonly pin: readonly string[];
}

const help = `
Without a command of its own: what is installed, with versions, digests, and
the makers, models and years that it is for. Exit status: 0, or 2 when one of
the packs given cannot be loaded.

Examples:
  planish packs
  planish packs --rules packs/ --format json
  planish packs check packs/corvane-tarn
  planish packs new --from jobs/K-2207.yaml packs/corvane-tarn
  planish packs diff general@1 general@2
  planish packs lock jobs/
  planish packs canonical rules/general 2.0.0`;

const canonicalHelp = `
Exit status: 0 printed; 2 the pack cannot be loaded or has no such version.

Examples:
  planish packs canonical packs/corvane-tarn 2026.1.0 | sha256sum
  planish packs canonical general 1.0.0 | sha256sum`;

const lockHelp = `
An old lock is written anew; what changes is told.
Exit status: 0 written; 2 not.

Examples:
  planish packs lock --rules packs/ jobs/
  planish packs lock --pin general@1 jobs/`;
