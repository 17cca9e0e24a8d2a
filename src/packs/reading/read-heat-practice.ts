import type { Allowance as StatedAllowance, Reach as StatedReach } from '../../generated/pack-types.ts';
import type { Dimension } from '../../quantity/dimension.ts';
import { readQuantity } from '../../quantity/read-quantity.ts';
import { factEntry } from '../fact-dictionary.ts';
import type { FactDictionary } from '../fact-dictionary.ts';
import type { Allowance, Reach } from '../pack.ts';
import type { FaultList } from './fault-list.ts';
import { readHistory } from './read-history.ts';

/** Reads what is added for a means of measuring; undefined when something in it cannot be right. */
export function readAllowance(
  stated: StatedAllowance,
  at: string,
  dictionary: FactDictionary,
  faults: FaultList,
): Allowance | undefined {
  const { measured_by: means, add, source } = stated;
  const isWord = isKnownWord(means, 'operation.measured_by', `${at}/measured_by`, dictionary, faults);
  const kelvin = nonNegative(add, 'temperature difference', `${at}/add`, faults);
  const before = faults.faults.length;
  const history = readHistory(stated, at, 'allowance', faults);
  const isSound = isWord && faults.faults.length === before;
  return isSound && kelvin !== undefined ? { means, kelvin, source, ...history } : undefined;
}

/** Reads how far a kind of heat is asked about; undefined when something in it cannot be right. */
export function readReach(
  stated: StatedReach,
  at: string,
  dictionary: FactDictionary,
  faults: FaultList,
): Reach | undefined {
  const { from, within, source } = stated;
  const isWord = isKnownWord(from, 'exposure.from', `${at}/from`, dictionary, faults);
  const mm = nonNegative(within, 'length', `${at}/within`, faults);
  const before = faults.faults.length;
  const history = readHistory(stated, at, 'reach', faults);
  const isSound = isWord && faults.faults.length === before;
  return isSound && mm !== undefined ? { from, mm, source, ...history } : undefined;
}

function isKnownWord(
  word: string,
  fact: string,
  at: string,
  dictionary: FactDictionary,
  faults: FaultList,
): boolean {
  const entry = factEntry(dictionary, fact);
  const words = entry?.words ?? [];
  if (words.includes(word)) return true;
  faults.at(at, `\`${word}\` is no word of the fact ${fact}.`, faults.nearest(word, words, entry?.synonyms));
  return false;
}

function nonNegative(
  given: string | number,
  dimension: Dimension,
  at: string,
  faults: FaultList,
): number | undefined {
  const reading = readQuantity(String(given), dimension);
  if (reading.ok && reading.value >= 0) return reading.value;
  faults.at(at, reading.ok ? `"${String(given)}" is negative.` : reading.reason);
  return undefined;
}
