import { checkCases } from '../../judge/check-cases.ts';
import { loadPackFiles } from '../../packs/load-pack.ts';
import type { PackPlace } from '../../packs/pack-fault.ts';
import type { Pack, Rule } from '../../packs/pack.ts';
import { readPackSources } from '../../packs/sources/read-pack-sources.ts';
import { resolvePacks } from '../../packs/layers/resolve-packs.ts';
import { brokenPromises } from '../../packs/versions/semantic-promise.ts';
import { builtInPacks } from '../../generated/built-in-packs.ts';
import { countOf } from '../../report/count-words.ts';
import { visibleText } from '../../report/visible-text.ts';
import { complain } from '../complain.ts';
import { dictionary } from '../dictionary.ts';
import { writeOut } from '../write-out.ts';

/**
 * The command `packs check`: every fault of the packs of one place at once, each as `file:line:column`, with the cases run and the pack
 * laid over the general one. Gives the exit status.
 */
export function checkPacks(given: string): 0 | 2 {
  const found = readPackSources(given, process.cwd());
  if (!found.ok) {
    complain(found.sentence);
    return 2;
  }
  const right: Pack[] = [];
  let faults = 0;
  const tell = (sentence: string, place: PackPlace | undefined): void => {
    faults += 1;
    writeOut(`${visibleText(place === undefined ? sentence : `${shown(place)}: ${sentence}`)}\n`);
  };
  for (const { files, where } of found.packs) {
    const loaded = loadPackFiles(files, where, dictionary);
    for (const fault of loaded.ok ? [] : loaded.faults) tell(fault.sentence, fault);
    const rules = loaded.ok ? loaded.pack.rules : loaded.rules;
    for (const { sentence, place } of checkCases({ rules }, loaded.placeOfCase)) tell(sentence, place);
    if (!loaded.ok) continue;
    const { pack } = loaded;
    for (const { sentence, version } of brokenPromises(pack))
      tell(`${pack.name} ${version}: ${sentence}`, pack.places?.['pack']);
    right.push(pack);
    writeOut(
      visibleText(
        `${pack.name} ${pack.version}: ${countOf(rules.length, 'rule')}, ${countOf(casesOf(rules), 'case')} run.`,
      ) + '\n',
    );
    for (const { part, operation, place } of pack.open ?? []) {
      writeOut(
        visibleText(`${shown(place)}: still to be filled in, lifts nothing: ${operation}, ${part}.`) + '\n',
      );
    }
  }
  const others = builtInPacks().filter(({ name }) => right.every((pack) => pack.name !== name));
  const resolved = faults > 0 ? undefined : resolvePacks([...others, ...right], undefined);
  if (resolved?.ok === false) tell(resolved.sentence, resolved.place);
  writeOut(faults === 0 ? 'Nothing is wrong.\n' : `${countOf(faults, 'fault')}.\n`);
  return faults === 0 ? 0 : 2;
}

function shown({ file, line, column }: PackPlace): string {
  return `${file}:${String(line)}:${String(column)}`;
}

function casesOf(rules: readonly Rule[]): number {
  return rules
    .flatMap(({ cases }) => (cases === undefined ? [] : [cases.finds, cases.passes, cases.asks]))
    .reduce((sum, { length }) => sum + length, 0);
}
