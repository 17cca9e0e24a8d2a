import type { PackPart as StatedPart } from '../../generated/pack-types.ts';
import type { Dimension } from '../../quantity/dimension.ts';
import { readQuantity } from '../../quantity/read-quantity.ts';
import { readDesignation } from '../../steel/reading/read-designation.ts';
import { factEntry } from '../fact-dictionary.ts';
import type { FactDictionary } from '../fact-dictionary.ts';
import type { FaultList } from './fault-list.ts';
import type { PackPart } from '../pack.ts';
import { readApplies } from './read-applies.ts';
import { readHistory } from './read-history.ts';

/** Reads what a maker's document says a part is; undefined when something in it cannot be right. */
export function readPackPart(
  stated: StatedPart,
  at: string,
  dictionary: FactDictionary,
  faults: FaultList,
): PackPart | undefined {
  const before = faults.faults.length;
  const applies = readApplies(stated, at, dictionary, faults);
  const history = readHistory(stated, at, 'entry', faults);
  if (stated.grade !== undefined) {
    const reading = readDesignation(stated.grade);
    if (!reading.known) faults.at(`${at}/grade`, reading.reason);
  }
  const quantity = (key: 'strength' | 'thickness', dimension: Dimension): number | undefined => {
    const text = stated[key];
    if (text === undefined) return undefined;
    const reading = readQuantity(text, dimension);
    if (reading.ok) return reading.value;
    faults.at(`${at}/${key}`, reading.reason);
    return undefined;
  };
  const tensileMpa = quantity('strength', 'stress');
  const thicknessMm = quantity('thickness', 'length');
  checkWord(stated.class, `${at}/class`, 'part.class', dictionary, faults);
  stated.under?.forEach((kind, index) => {
    checkWord(kind, `${at}/under/${String(index)}`, 'part.kind', dictionary, faults);
  });
  const says = [
    stated.grade,
    stated.strength,
    stated.class,
    stated.thickness,
    stated.one_piece,
    stated.under,
  ];
  if (says.every((one) => one === undefined)) {
    faults.at(at, 'An entry says what the part is: grade, strength, class, thickness, one_piece or under.');
  }
  if (faults.faults.length > before || applies === undefined) return undefined;
  return {
    ...applies,
    ...history,
    ...(stated.grade === undefined ? {} : { grade: stated.grade }),
    ...(tensileMpa === undefined ? {} : { tensileMpa }),
    ...(stated.class === undefined ? {} : { class: stated.class }),
    ...(thicknessMm === undefined ? {} : { thicknessMm }),
    ...(stated.one_piece === undefined ? {} : { onePiece: stated.one_piece }),
    under: stated.under ?? [],
  };
}

function checkWord(
  word: string | undefined,
  at: string,
  fact: string,
  dictionary: FactDictionary,
  faults: FaultList,
): void {
  const entry = factEntry(dictionary, fact);
  const known = entry?.words ?? [];
  if (word === undefined || known.includes(word)) return;
  faults.at(at, `\`${word}\` is not a word known here.`, faults.nearest(word, known, entry?.synonyms));
}
