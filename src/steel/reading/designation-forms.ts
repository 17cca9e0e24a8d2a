import { coatCode, coatWords } from '../coating/coating.ts';
import type { GradeState } from '../table/grade-row.ts';
import { hintSplits } from '../table/standard-hint.ts';

/** Quenched and tempered is the state of stock for machine parts, softer than what a press hardens. */
export type StatedState =
  Extract<GradeState, 'hardened' | 'as delivered' | 'paint baked'> | 'quenched and tempered';

/** One way to take a key apart: what is left is to be a grade. */
export interface DesignationForm {
  readonly grade: string;
  /** The named standard as a comparison key. */
  readonly standard?: string;
  readonly statedState?: StatedState;
  /** The word steel or sheet stands behind the grade. */
  readonly saidSteel?: true;
  /** Two sheets with a plastic core. */
  readonly laminated?: true;
  /** Hardened with zones that were kept soft. */
  readonly softZone?: true;
}

/**
 * Ways to read a key as standard, grade, size and state, the least stripped first: only table and grammar can tell. They are
 * made one by one, since most names are found as they stand. `standard` is one that the text names behind the grade.
 */
export function* designationForms(key: string, standard?: string): Generator<DesignationForm, void> {
  let first = standard === undefined;
  // Most names stand alone; they are found before any of the ways below is made.
  if (first) yield { grade: key };
  for (const form of formsOf(key, standard)) {
    if (!first) yield form;
    first = false;
  }
  // Orders by EN 10346 begin so: Steel EN 10346 - DX54D+Z100-M-B-O.
  const named = /^(?:STEEL|SHEET|STAHL|GRADE|MATERIAL)[:=]?(?=[A-Z0-9].{3})(.+)$/.exec(key)?.[1];
  if (named !== undefined) yield* formsOf(named, standard);
  // In words behind a name that only the grammar knows: HSLA420 HDG.
  const [, bare, word] = coatBehind.exec(key) ?? [];
  if (bare !== undefined && word !== undefined) yield* formsOf(`${bare}${coatCode(word)}`, standard);
  // The coat ahead of the grade, as in the lists of some mills: GI DP590, GA 340BH.
  const [, coat, coated] = /^(HDG[AI]?|G[AI]|EG)[:,]?(.{3,})$/.exec(key) ?? [];
  if (coat !== undefined && coated !== undefined) yield* formsOf(`${coated}${coatCode(coat)}`, standard);
}

const coatBehind = new RegExp(`^(.{3,}?)\\+?(${coatWords})$`);

function* formsOf(key: string, behind: string | undefined): Generator<DesignationForm, void> {
  const splits = behind === undefined ? hintSplits(key) : [{ standard: behind, rest: key }];
  for (const { standard, rest } of splits) {
    for (const sized of withoutSize(rest)) {
      for (const form of withoutWords(sized)) yield standard === undefined ? form : { ...form, standard };
    }
  }
}

/** The key itself, then without a thickness or width at its end or head: 1.2 mm, t=1.2, 1.2T, x 1250. */
function* withoutSize(key: string): Generator<string, void> {
  yield key;
  const behind = /^[T\d]/.test(key) ? sizeAhead.exec(key)?.[1] : undefined;
  if (behind !== undefined) yield behind;
  if (!/(?:MM|\.\d+T?|=\d|X\d+)$/.test(key)) return;
  for (let at = key.length - 1; at >= Math.max(2, key.length - longestSize); at--) {
    if (size.test(key.slice(at))) yield key.slice(0, at).replace(/[,;/]$/, '');
  }
}

const longestSize = 10;
const size = /^(?:[T@]?=?\d{1,2}(?:\.\d+)?MM|T=\d(?:\.\d+)?|T?\d\.\d{1,2}T?(?:X\d{2,4})?|X\d{2,4}(?:MM)?)$/;
/** Before a grade that begins with a letter, for figures run together with those of 22MnB5. */
const sizeAhead =
  /^(?:T=?)?(?:\d(?:\.\d{1,2})?MM[,;:X]?|(?<=^T=?)\d\.\d{1,2}[,;:]?|\d\.\d{1,2}(?=[A-Z])(?!G(?:PA|IGA)))(.{3,})$/;

const state =
  /^(.+?)[,;:]?(ASDELIVERED|(?:IN)?DELIVERYCONDITION|BEFOREHARDENING|NO[NT]HARDENED|UNHARDENED|PRESSHARDENED|HARDENED|QUENCHEDANDTEMPERED|\+QT|(?:PRESS|DIE)?QUENCHED|HOT(?:STAMPED|FORMED|PRESSED)|PAINTBAKED|BAKEHARDENED|BAKED)$/;
const laminatedWords = String.raw`(?:LAMINATED?|SANDWICH|SOUNDDAMP(?:ING|ED)|SOUNDDEADENING)(?:SHEET|STEEL)?`;
const laminated = new RegExp(
  `^(?:${laminatedWords}[,;:]?(?<after>.{3,})|(?<before>.{3,}?)[,;:]?(?:WITH)?${laminatedWords})$`,
);
const softZone =
  /^(.+?)[,;:]?(?:WITH)?(?:SOFTZONES?|TAILOR(?:ED)?(?:TEMPER(?:ED|ING)|PROPERTIES)|PARTIAL(?:LY)?(?:HARDEN|TEMPER)(?:ED|ING))$/;
/** How the sheet was made, which its grade tells already. */
const rolled = /^(.{3,}?)[,;:]?(?:COLD|HOT)ROLLED(?:STEEL|SHEET|STRIP)?$/;

function* withoutWords(key: string): Generator<DesignationForm, void> {
  yield { grade: key };
  // The words below have five letters or more; hardly any grade has.
  if (!/[A-Z]{5}|\+QT$/.test(key)) return;
  const named = state.exec(key);
  if (named?.[1] !== undefined) {
    for (const grade of withoutSize(named[1])) yield { grade, statedState: stateOf(named[2] ?? '') };
  }
  const steel = /^(.{3,}?)(?:STEEL|SHEET|STEELSHEET)$/.exec(key)?.[1];
  if (steel !== undefined) yield { grade: steel, saidSteel: true };
  const made = rolled.exec(key)?.[1];
  if (made !== undefined) yield { grade: made };
  const layers = laminated.exec(key)?.groups;
  const skin = layers?.['after'] ?? layers?.['before'];
  if (skin !== undefined) yield { grade: skin, laminated: true };
  const soft = softZone.exec(key)?.[1];
  if (soft !== undefined) yield { grade: soft, softZone: true };
}

function stateOf(word: string): StatedState {
  if (/BAKE/.test(word)) return 'paint baked';
  if (/QT|TEMPERED/.test(word)) return 'quenched and tempered';
  return /^(?:AS|UN|IN|NO|BEFORE|DELIVERY)/.test(word) ? 'as delivered' : 'hardened';
}
