import type { Provision as StatedProvision } from '../../generated/pack-types.ts';
import { factEntry } from '../fact-dictionary.ts';
import type { FactDictionary } from '../fact-dictionary.ts';
import type { FaultList } from './fault-list.ts';
import type { ProvidedOperation, Provision } from '../pack.ts';
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
        key === 'operation' ? `${at}/operation` : `${at}/${key}/${String(index)}`,
        `\`${text}\` is not an operation, such as \`replace whole\` or \`section at B\`.`,
        faults.nearest(first, words, entry?.synonyms),
      );
      return [];
    });
  checkFilledIn(stated, at, faults);
  const single = stated.operation === undefined ? [] : operations([stated.operation], 'operation');
  const said = (word: StatedProvision['says']): readonly ProvidedOperation[] =>
    stated.says === word ? single : [];
  const shall = [...operations(stated.shall, 'shall'), ...said('shall')];
  const shallNot = [...operations(stated.shall_not, 'shall_not'), ...said('shall not')];
  const may = [...operations(stated.may, 'may'), ...said('may')];
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

/** Whether nobody has read the document yet. */
export function isOpen({ says }: StatedProvision): boolean {
  return says === '?';
}

/**
 * The two ways of writing a statement do not mix, and what was an open question counts only when a named person read the answer
 * in a document that is named as well.
 */
function checkFilledIn(stated: StatedProvision, at: string, faults: FaultList): void {
  const { shall, shall_not: shallNot, may, says, operation, filled_by: filledBy } = stated;
  const isLists = shall !== undefined || shallNot !== undefined || may !== undefined;
  if (says === undefined) {
    if (operation !== undefined) faults.at(at, 'An `operation` needs what the document `says` of it.');
    else if (!isLists) faults.at(at, 'A statement says what `shall`, `shall_not` or `may` be done.');
    return;
  }
  if (operation === undefined) faults.at(`${at}/says`, '`says` needs the `operation` of which it is said.');
  if (isLists)
    faults.at(`${at}/says`, 'Either `says`, or `shall`, `shall_not` and `may`: not both.', [], true);
  if (says === '?') return;
  if (filledBy === undefined || isBlank(filledBy)) {
    faults.at(
      filledBy === undefined ? `${at}/says` : `${at}/filled_by`,
      '`filled_by` names the person who read the document; without a name nothing is permitted by it.',
    );
  }
  for (const key of ['document', 'revision', 'page'] as const) {
    const text = stated[key];
    if (text !== undefined && isBlank(text)) {
      faults.at(`${at}/${key}`, `The \`${key}\` is still to be filled in.`);
    }
  }
}

function isBlank(text: string): boolean {
  return /^[\s?]*$/u.test(text);
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
