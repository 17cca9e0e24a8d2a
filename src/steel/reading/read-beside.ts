import { wordOfTheTrade } from './class-words.ts';
import { designationKey } from '../designation-key.ts';
import { worseMark } from '../table/grade-row.ts';
import type { DesignationReading, KnownDesignation } from './known-designation.ts';
import { noteOf } from './known-designation.ts';
import type { Material } from '../material.ts';
import { strongestFirst } from './merge-readings.ts';
import { readOne } from './read-one.ts';
import { stainlessType } from './stainless-type.ts';
import { steelRank } from '../strength-class.ts';
import { textSplits } from './text-splits.ts';
import { wordAtStrength } from './word-at-strength.ts';

/**
 * A grade with something else that says what it is: its steel number (`DC04 (1.0338)`), a word of the trade (`boron 22MnB5`), or a
 * strength (`HCT780X 780 MPa`). Where the two agree, the grade counts; where not, both are readings and the strongest counts.
 * Undefined for any other text; two grades are another question.
 */
export function readBeside(text: string): DesignationReading | undefined {
  for (const [left, right] of textSplits(text)) {
    const one = readOne(left);
    const other = one?.known === true ? readOne(right) : undefined;
    if (one?.known !== true || other?.known !== true) continue;
    const pair = [named(left, one), named(right, other)] as const;
    if (pair.some(({ kind }) => kind === 'bare number') && !pair.some(({ kind }) => kind === 'word'))
      continue;
    const [grade, rest] = kindRank(pair[0].kind) >= kindRank(pair[1].kind) ? pair : [pair[1], pair[0]];
    const type = stainlessType(left);
    const oneType = type !== undefined && type === stainlessType(right);
    if (oneType || agrees(grade, rest)) return confirmed(grade.reading, rest.reading);
    if (rest.kind === 'grade') continue;
    const told = wordBeside(pair, [left, right]);
    if (told !== undefined) return told;
    return disagreeing(left, right, [one, other]);
  }
  return undefined;
}

/** A word of the trade and a strength, in either order. */
function wordBeside(
  pair: readonly [Named, Named],
  texts: readonly [string, string],
): KnownDesignation | undefined {
  const [first, second] = pair[0].kind === 'word' ? ([0, 1] as const) : ([1, 0] as const);
  const [word, strength] = [pair[first], pair[second]];
  if (word.kind !== 'word' || !/^(?:strength|bare number)$/.test(strength.kind)) return undefined;
  return wordAtStrength(word.reading, strength.reading, { word: texts[first], strength: texts[second] });
}

interface Named {
  readonly kind: Kind;
  readonly reading: KnownDesignation;
}

function named(text: string, reading: KnownDesignation): Named {
  return { kind: kindOf(text, reading), reading };
}

/** From what says least of a material to what says most. */
const kinds = ['bare number', 'strength', 'word', 'number', 'grade'] as const;

type Kind = (typeof kinds)[number];

function kindRank(kind: Kind): number {
  return kinds.indexOf(kind);
}

function kindOf(text: string, reading: KnownDesignation): Kind {
  const key = designationKey(text);
  if (/^(?:W\.?NR\.?)?1\.\d{4}/.test(key)) return 'number';
  if (reading.statedMpa !== undefined) return 'strength';
  if (reading.readings.some((one) => one.from === 'strength')) return 'bare number';
  // Third-generation steel has a figure and is a word all the same.
  if (reading.readings.every((one) => one.standard === wordOfTheTrade)) return 'word';
  return /\d/.test(key) ? 'grade' : 'word';
}

/**
 * A number of the same name; a word whose range holds every class that the grade may have; a strength that is the grade's; the
 * trade's name for the very family and strength of a grade, `HCT590X (DP600)`.
 */
function agrees(grade: Named, rest: Named): boolean {
  const [first] = rest.reading.readings;
  const all = grade.reading.readings;
  const { statedMpa } = rest.reading;
  if (first === undefined || rest.kind === 'bare number') return false;
  if (statedMpa !== undefined)
    return kindRank(grade.kind) > 2 && all.every((one) => hasStrength(one, statedMpa));
  if (rest.kind === 'word') return all.every((one) => covers(first, one));
  if (rest.kind === 'grade')
    return (
      [...all, ...rest.reading.readings].some((one) => one.from === 'trade word') &&
      all.every((one) => rest.reading.readings.every((other) => isLike(one, other)))
    );
  const names = rest.reading.readings.map((one) => nameOf(one));
  return all.some((one) => names.includes(nameOf(one)));
}

/** Share by which the trade rounds a strength: 600 for 590. */
const rounding = 0.03;

function hasStrength(
  { yieldMinMpa, tensileMinMpa, tensileMaxMpa, tensileTypicalMpa }: Material,
  mpa: number,
): boolean {
  const near = (one: number | undefined): boolean =>
    one !== undefined && Math.abs(one - mpa) <= rounding * one;
  const inside =
    tensileMinMpa !== undefined &&
    tensileMaxMpa !== undefined &&
    mpa >= tensileMinMpa &&
    mpa <= tensileMaxMpa;
  return [yieldMinMpa, tensileMinMpa, tensileTypicalMpa].some(near) || inside;
}

function isLike(one: Material, other: Material): boolean {
  return (
    one.family === other.family &&
    one.class === other.class &&
    one.tensileMinMpa !== undefined &&
    one.tensileMinMpa === other.tensileMinMpa
  );
}

function nameOf({ designation }: Material): string {
  return designationKey(designation.replace(/\+.*/, ''));
}

function covers(word: Material, grade: Material): boolean {
  const high = steelRank(word.class);
  const rank = steelRank(grade.class);
  if (high === undefined || rank === undefined) return word.class === grade.class;
  const low = steelRank(word.weakestClass ?? word.class) ?? high;
  if (rank < low || rank > high) return false;
  // Boron steel goes by several names, all of them press-hardened; a word of strength names no family.
  const family = !word.family.startsWith('class word') && word.weakestClass !== undefined;
  return !family || word.family === grade.family;
}

/** The grade, no surer than what stands beside it. */
function confirmed(grade: KnownDesignation, rest: KnownDesignation): KnownDesignation {
  const mark = rest.readings[0]?.from === 'table' ? rest.readings[0].mark : undefined;
  if (mark === undefined) return grade;
  return { ...grade, readings: grade.readings.map((one) => ({ ...one, mark: worseMark(one.mark, mark) })) };
}

function disagreeing(
  left: string,
  right: string,
  both: readonly [KnownDesignation, KnownDesignation],
): KnownDesignation {
  const ambiguity = `The text names "${left}" and "${right}", which are not one and the same; both are read, and the strongest counts. State the grade alone.`;
  return {
    known: true,
    readings: strongestFirst(both.flatMap((one) => one.readings)),
    ambiguity,
    ...noteOf(
      both.flatMap((one) => one.assumed ?? []),
      ambiguity,
    ),
    warnings: [...new Set(both.flatMap((one) => one.warnings))],
    ...(both.some((one) => one.softZone === true) ? { softZone: true } : {}),
  };
}
