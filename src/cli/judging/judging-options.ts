import { Option } from 'commander';
import { collect } from '../option-values.ts';

// By what a plan is judged, in the words that every command with this option has.

/** `--rules` where all forms of a pack are told. */
export function rulesOption(): Option {
  return furtherPacks(
    'a further rule pack: its folder, a folder of several, a packed file (.tgz) or an npm package; may be given again',
  );
}

/** `--rules` of the commands whose page would only repeat what `check` tells. */
export function rulesAsForCheckOption(what = 'a further rule pack'): Option {
  return furtherPacks(`${what}, as for check; may be given again`);
}

export function lockedOption(): Option {
  return new Option(
    '--locked',
    'judge only by the packs that planish.lock.yaml fixes, and by no others',
  ).default(false);
}

/** `--stage`: `whose` is the question that is put aside. */
export function stageOption(whose = 'each plan asks'): Option {
  return new Option('--stage <stage>', `ask this question instead of the one that ${whose}`).choices([
    'draft',
    'start',
    'release',
  ]);
}

function furtherPacks(description: string): Option {
  return new Option('--rules <pack>', description).argParser(collect).default([]);
}
