import type { Asked, Bound as StatedBound, Test as StatedTest } from '../../generated/pack-types.ts';
import { pointerTo } from '../../plan/pointer.ts';
import { dimensions } from '../../quantity/dimension.ts';
import type { Dimension } from '../../quantity/dimension.ts';
import { readQuantity } from '../../quantity/read-quantity.ts';
import type { FactEntry } from '../fact-dictionary.ts';
import type { FaultList } from './fault-list.ts';
import type { Test, Word } from '../pack.ts';

/** Reads what one line of `when` or `unless` asks of a fact; undefined when something in it is wrong and was told. */
export function readTest(
  stated: StatedTest,
  fact: FactEntry,
  at: string,
  faults: FaultList,
): Test | undefined {
  if (isAsked(stated)) return readAsked(stated, fact, at, faults);
  if (fact.type === 'number') {
    // 0.055 in and 1.397 mm are one thickness and two numbers; a rule that hung on it would miss the plan it is for.
    faults.at(at, 'A measured value is asked by a range, never for one exact number: {min: …, max: …}.');
    return undefined;
  }
  const words = isList(stated) ? stated : [stated];
  const read: Word[] = [];
  for (const [index, word] of words.entries()) {
    const place = isList(stated) ? pointerTo(at, index) : at;
    const value = readValue(word, fact, place, faults);
    if (value !== undefined) read.push(value);
  }
  return read.length === words.length ? { anyOf: read } : undefined;
}

/** A single value of a fact, in the fact's unit; undefined when it is none and that was told. */
export function readValue(word: Word, fact: FactEntry, at: string, faults: FaultList): Word | undefined {
  switch (fact.type) {
    case 'word':
    case 'words': {
      const known = fact.words ?? [];
      if (typeof word === 'string' && known.includes(word)) return word;
      faults.at(
        at,
        `\`${String(word)}\` is not a word of this fact.`,
        faults.nearest(String(word), known, fact.synonyms),
      );
      return undefined;
    }
    case 'text':
      if (typeof word === 'string') return word;
      faults.at(at, 'This fact is a text: write it in quotes.');
      return undefined;
    case 'yes-no':
      if (typeof word === 'boolean') return word;
      faults.at(at, `This fact is true or false, not \`${String(word)}\`.`);
      return undefined;
    case 'count':
    case 'number':
      return readNumber(word, fact, at, faults);
  }
}

function readAsked(asked: Asked, fact: FactEntry, at: string, faults: FaultList): Test | undefined {
  const { known, ...stated } = asked;
  const ends = Object.keys(stated);
  if (known !== undefined) {
    if (ends.length === 0) {
      if (known || fact.alwaysKnown !== true) return { known };
      faults.at(at, 'This fact is known on every sheet: the line would never hold.');
      return undefined;
    }
    faults.at(at, '`known` stands alone: a range asks a known value already.');
    return undefined;
  }
  if (fact.type !== 'count' && fact.type !== 'number') {
    faults.at(at, 'A range is for counts and quantities; this fact has none.');
    return undefined;
  }
  const { min, max, above, below } = stated;
  const read = {
    ...bound('min', min, fact, at, faults),
    ...bound('max', max, fact, at, faults),
    ...bound('above', above, fact, at, faults),
    ...bound('below', below, fact, at, faults),
  };
  if (Object.keys(read).length < ends.length) return undefined;
  const low = Math.max(read.min ?? -Infinity, read.above ?? -Infinity);
  const high = Math.min(read.max ?? Infinity, read.below ?? Infinity);
  const open = read.above === low || read.below === high;
  if (low > high || (low === high && open)) {
    faults.at(at, 'No value can lie in this range: its ends cross.');
    return undefined;
  }
  if (fact.type === 'count' && !holdsWholeNumber(low, high, read.above === low, read.below === high)) {
    faults.at(at, 'No whole number lies in this range, and this fact is a count.');
    return undefined;
  }
  return { range: read };
}

function holdsWholeNumber(low: number, high: number, isLowOut: boolean, isHighOut: boolean): boolean {
  if (!Number.isFinite(low) || !Number.isFinite(high)) return true;
  const first = isLowOut ? Math.floor(low) + 1 : Math.ceil(low);
  return isHighOut ? first < high : first <= high;
}

function bound(
  key: 'min' | 'max' | 'above' | 'below',
  stated: StatedBound | undefined,
  fact: FactEntry,
  at: string,
  faults: FaultList,
): Partial<Record<'min' | 'max' | 'above' | 'below', number>> {
  if (stated === undefined) return {};
  const value = readNumber(stated, fact, pointerTo(at, key), faults);
  return value === undefined ? {} : { [key]: value };
}

function readNumber(stated: Word, fact: FactEntry, at: string, faults: FaultList): number | undefined {
  const dimension = dimensions.find((one) => one === fact.dimension);
  if (dimension === undefined) {
    if (typeof stated === 'number') return stated;
    faults.at(at, `This fact is a bare number, not \`${String(stated)}\`.`);
    return undefined;
  }
  return readWithUnit(stated, dimension, fact, at, faults);
}

function readWithUnit(
  stated: Word,
  dimension: Dimension,
  fact: FactEntry,
  at: string,
  faults: FaultList,
): number | undefined {
  const text = String(stated);
  // Margins lie on both sides of zero, which the quantities of a plan do not.
  const negative = text.startsWith('-') && dimension !== 'temperature';
  const reading = readQuantity(negative ? text.slice(1) : text, dimension);
  if (reading.ok) return negative ? -reading.value : reading.value;
  faults.at(at, `${reading.reason} The fact is held in ${fact.unit ?? 'its unit'}.`);
  return undefined;
}

function isAsked(stated: StatedTest): stated is Asked {
  return typeof stated === 'object' && !Array.isArray(stated);
}

function isList(stated: Exclude<StatedTest, Asked>): stated is readonly Word[] {
  return Array.isArray(stated);
}
