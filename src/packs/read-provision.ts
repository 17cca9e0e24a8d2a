import type { Provision as StatedProvision } from '../generated/pack-types.ts';
import type { Side } from '../generated/plan-types.ts';
import { readDate } from '../quantity/iso-date.ts';
import { readYears } from '../quantity/year-range.ts';
import { factEntry } from './fact-dictionary.ts';
import type { FactDictionary } from './fact-dictionary.ts';
import type { FaultList } from './fault-list.ts';
import type { ProvidedOperation, Provision } from './pack.ts';

/** Sides that a part of a plan may have. `both` is none of them: a statement for both sides leaves them out. */
const sides: readonly string[] = ['left', 'right', 'centre'] satisfies readonly Side[];

/** Reads a maker's statement that has the form of the schema; undefined when something in it cannot be right. */
export function readProvision(
  stated: StatedProvision,
  at: string,
  dictionary: FactDictionary,
  faults: FaultList,
): Provision | undefined {
  const before = faults.faults.length;
  const parts = factEntry(dictionary, 'part.kind')?.words ?? [];
  if (!parts.includes(stated.part)) {
    faults.at(`${at}/part`, `\`${stated.part}\` is not a kind of part.`, faults.nearest(stated.part, parts));
  }
  // A side that no part has would keep the statement from ever applying, a prohibition as well.
  stated.sides?.forEach((side, index) => {
    if (sides.includes(side)) return;
    faults.at(
      `${at}/sides/${String(index)}`,
      `\`${side}\` is not a side: ${sides.join(', ')}; left out, the statement holds for all.`,
      faults.nearest(side, sides),
    );
  });
  const years = readYears(stated.years);
  if (!years.ok) faults.at(`${at}/years`, years.reason);
  if (stated.published !== undefined) {
    const published = readDate(stated.published);
    if (!published.ok) faults.at(`${at}/published`, published.reason);
  }
  if (stated.revision === undefined && stated.published === undefined) {
    faults.at(at, 'A statement needs the revision of its document, or its day of publication.');
  }
  const words = factEntry(dictionary, 'operation.do')?.words ?? [];
  const operations = (given: readonly string[] | undefined, key: string): readonly ProvidedOperation[] =>
    (given ?? []).flatMap((text, index) => {
      const read = readProvidedOperation(text, words);
      if (read !== undefined) return [read];
      const first = text.split(/ at /u)[0] ?? text;
      faults.at(
        `${at}/${key}/${String(index)}`,
        `\`${text}\` is not an operation, such as \`replace whole\` or \`section at B\`.`,
        faults.nearest(first, words),
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
  if (faults.faults.length > before || !years.ok) return undefined;
  return {
    part: stated.part,
    ...(stated.sides === undefined ? {} : { sides: stated.sides }),
    ...(stated.bodies === undefined ? {} : { bodies: stated.bodies }),
    years: { from: years.from, to: years.to },
    document: stated.document,
    ...(stated.revision === undefined ? {} : { revision: stated.revision }),
    ...(stated.published === undefined ? {} : { published: stated.published }),
    ...(stated.page === undefined ? {} : { page: stated.page }),
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
