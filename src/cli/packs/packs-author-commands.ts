import { Option } from 'commander';
import type { Command } from 'commander';
import { formatDay } from '../../quantity/format-day.ts';
import { collect, dayArgument } from '../option-values.ts';
import { checkPacks } from './packs-check.ts';
import { diff } from './packs-diff.ts';
import { newPack } from './packs-new.ts';
import { release } from './packs-release.ts';

/** The commands below `packs` for those who write packs. */
export function addAuthorCommands(packs: Command, today: () => number): void {
  packs
    .command('check')
    .description(
      'tell every fault of a pack at once, each as file:line:column, and run the cases of its rules',
    )
    .argument('<pack>', 'its folder, a folder of several, a packed file (.tgz) or an npm package')
    .addHelpText('after', checkHelp)
    .exitOverride()
    .action((pack: string) => {
      process.exitCode = checkPacks(pack);
    });

  packs
    .command('new')
    .description('write a pack that loads, to begin with')
    .argument('<folder>', 'its folder, named as the pack: lower-case letters, digits and hyphens')
    .option('--from <plan>', 'with the statements of the maker that this plan would need, to be filled in')
    .option('--force', 'replace files that are there', false)
    .addHelpText('after', newHelp)
    .exitOverride()
    .action((folder: string, { from, force }: { readonly from?: string; readonly force: boolean }) => {
      process.exitCode = newPack(folder, {
        force,
        asOfDay: today(),
        ...(from === undefined ? {} : { from }),
      });
    });

  packs
    .command('diff')
    .description('say what differs between two versions of a pack, or between two packs')
    .argument('<before>', 'a pack, with a version if need be: general@1.0, packs/corvane-tarn@2026.1.0')
    .argument('<after>', 'the other one')
    .addOption(formOption())
    .addHelpText('after', diffHelp)
    .exitOverride()
    .action((before: string, after: string, { format }: { readonly format: 'text' | 'json' }) => {
      process.exitCode = diff(before, after, format, 80);
    });

  packs
    .command('release')
    .description('write the next entry of the releases.yaml of a pack: version, date, digest, reasons')
    .argument('<folder>', 'folder of the pack; pack.yaml says the version')
    .requiredOption('--reason <sentence>', 'what changed, in one line; may be given again', collect)
    .option(
      '--date <date>',
      'day of the release, such as 2026-10-05 (today in UTC when not given)',
      dayArgument,
    )
    .option(
      '--plans <plans>',
      'plans that must keep the promise of the version; may be given again',
      collect,
      [],
    )
    .option('--as-of <date>', 'judge those plans as of this day (today in UTC when not given)', dayArgument)
    .addHelpText('after', releaseHelp)
    .exitOverride()
    .action((folder: string, flags: ReleaseFlags) => {
      const { reason, date, plans, asOf } = flags;
      process.exitCode = release(folder, {
        reasons: reason,
        date: formatDay(date ?? today()),
        plans,
        asOfDay: asOf ?? today(),
      });
    });
}

interface ReleaseFlags {
  readonly reason: readonly string[];
  readonly date?: number;
  readonly asOf?: number;
  readonly plans: readonly string[];
}

/** `--format` of the commands that answer in two forms. */
export function formOption(): Option {
  return new Option('--format <form>', 'form of the answer').choices(['text', 'json']).default('text');
}

const checkHelp = `
Exit status: 0 nothing is wrong; 2 something is.

Examples:
  planish packs check packs/corvane-tarn
  planish packs check packs/`;

const newHelp = `
With --from, each statement says ? until somebody has read the document, writes
may, shall or shall not, and puts a name to it. Until then it lifts nothing.
Exit status: 0 written; 2 not.

Examples:
  planish packs new packs/house
  planish packs new --from jobs/K-2207.yaml packs/corvane-tarn`;

const diffHelp = `
Added, raised and tightened ask for more; withdrawn, lowered and loosened for
less. Exit status: 0 compared; 2 one of the two cannot be had.

Examples:
  planish packs diff general@1 general@2
  planish packs diff --format json old/corvane-tarn packs/corvane-tarn`;

const releaseHelp = `
A patch worsens no verdict, a minor version may add notes and holds, and only a
major one may stop what was cleared. A pack that breaks this, or whose rules do
not prove themselves, is not released. What shows in no single entry, such as a
rule that finds more than the one whose place it takes, or a pack that is now
for more vehicles, --plans shows. Exit status: 0 written; 2 not.

Examples:
  planish packs release packs/house --reason "No open flame on structure."
  planish packs release packs/house --plans jobs/ --reason "Fewer questions."`;
