import type { Provision as StatedProvision } from '../generated/pack-types.ts';
import { factEntry } from './fact-dictionary.ts';
import type { FactDictionary } from './fact-dictionary.ts';
import type { FaultList } from './fault-list.ts';
import type { ProvidedOperation, Provision } from './pack.ts';
import { readApplies } from './read-applies.ts';
import { readHistory } from './read-history.ts';

/** Reads a maker's statement that has the form of the schema; undefined when something in it cannot be right. */
export function readProvision(
  stated: StatedProvision,
  at: string,
  dictionary: FactDictionary,
  faults: FaultList,
): Provision | undefined {
  const before = faults.faults.length;
  const applies = readApplies(stated, at, dictionary, faults);
  const history = readHistory(stated, at, 'statement', faults);
  const entry = factEntry(dictionary, 'operation.do');
  const words = entry?.words ?? [];
  const operations = (given: readonly string[] | undefined, key: string): readonly ProvidedOperation[] =>
    (given ?? []).flatMap((text, index) => {
      const read = readProvidedOperation(text, words);
      if (read !== undefined) return [read];
      const first = text.split(/ at /u)[0] ?? text;
      faults.at(
        `${at}/${key}/${String(index)}`,
        `\`${text}\` is not an operation, such as \`replace whole\` or \`section at B\`.`,
        faults.nearest(first, words, entry?.synonyms),
      );
      return [];
    });
  const shall = operations(stated.shall, 'shall');
  const shallNot = operations(stated.shall_not, 'shall_not');
  const may = operations(stated.may, 'may');
  if (stated.shall === undefined && stated.shall_not === undefined && stated.may === undefined) {
    faults.at(at, 'A statement says what `shall`, `shall_not` or `may` be done.');
  }
  may.forEach((permitted, index) => {
    if (!shallNot.some((forbidden) => isSame(permitted, forbidden))) return;
    faults.at(
      `${at}/may/${String(index)}`,
      'The same is forbidden by `shall_not`; one of the two has to go.',
    );
  });
  if (faults.faults.length > before || applies === undefined) return undefined;
  return {
    ...applies,
    ...history,
    shall,
    shallNot,
    may,
    conditions: stated.conditions ?? [],
  };
}

function isSame(one: ProvidedOperation, other: ProvidedOperation): boolean {
  return one.do === other.do && one.extent === other.extent && one.at === other.at;
}

/** `replace whole`, `section at B`: an operation word, then `whole` or `part`, then `at` and a place. */
export function readProvidedOperation(text: string, words: readonly string[]): ProvidedOperation | undefined {
  const [what = '', ...places] = text.trim().split(/\s+at\s+/u);
  if (places.length > 1) return undefined;
  const extent = /\s(whole|part)$/u.exec(what)?.[1];
  const word = extent === undefined ? what : what.slice(0, -extent.length).trim();
  if (!words.includes(word)) return undefined;
  const [place] = places;
  return {
    do: word,
    ...(extent === 'whole' || extent === 'part' ? { extent } : {}),
    ...(place === undefined ? {} : { at: place }),
  };
}
