import { asWritten } from './as-written.ts';
import { materialsOfNumber } from '../strength/bare-number.ts';
import { classWord } from './class-words.ts';
import type { Coat } from '../coating/coat.ts';
import { coatingOfStandard } from '../coating/coating.ts';
import type { DesignationForm } from './designation-forms.ts';
import { designationForms } from './designation-forms.ts';
import { designationKey } from '../designation-key.ts';
import { outsideFamily } from '../table/family-window.ts';
import type { FoundGrade } from '../table/find-grade.ts';
import { findGrade } from '../table/find-grade.ts';
import type { GradeRow } from '../table/grade-row.ts';
import type { NameAnswer } from '../grammar/read-name.ts';
import { readName } from '../grammar/read-name.ts';
import { isHardnessText, readHardness } from '../strength/hardness-text.ts';
import type { DesignationReading, KnownDesignation } from './known-designation.ts';
import { noteOf } from './known-designation.ts';
import type { Material } from '../material.ts';
import { materialOfRow } from '../material.ts';
import { mergeReadings, strongestFirst } from './merge-readings.ts';
import { nameWarnings } from './name-warnings.ts';
import {
  coatDoubts,
  eitherDoubt,
  formDoubt,
  otherStandard,
  outsideDoubt,
  tradeDoubts,
} from './reading-doubts.ts';
import { notesOfForm, notesOfReadings, onlyStandardsDiffer } from './reading-notes.ts';
import { settleState } from './settle-state.ts';
import { readStrength } from '../strength/read-strength.ts';
import { isStandard, namesNoGrade, standardBehind, standardsMeant } from '../table/standard-hint.ts';
import { withStatedHardening } from './stated-hardening.ts';
import { steelFamily } from '../steel-family.ts';
import { steelRank } from '../strength-class.ts';
import { materialsOfEither, materialsOfTensile } from '../strength/strength-materials.ts';

/** A text with blanks is taken apart in many ways, which share most of their parts. Beyond this the parts are forgotten. */
const mostKept = 512;
const kept = new Map<string, DesignationReading | undefined>();

/** A text as one grade, word or strength; undefined when it is none of them. */
export function readOne(text: string): DesignationReading | undefined {
  if (kept.has(text)) return kept.get(text);
  const reading = read(text);
  if (kept.size >= mostKept) kept.clear();
  kept.set(text, reading);
  return reading;
}

function read(text: string): DesignationReading | undefined {
  const key = designationKey(text);
  const whole = inTable(key, text, undefined) ?? inGrammar(key, text, undefined) ?? inTrade(key, text);
  if (whole !== undefined) return whole;
  const behind = standardBehind(text);
  if (behind === undefined) return undefined;
  if (namesNoGrade(behind.standard)) return readOne(behind.text);
  const rest = designationKey(behind.text);
  return inTable(rest, behind.text, behind.standard) ?? inGrammar(rest, behind.text, behind.standard);
}

function inTable(key: string, text: string, behind: string | undefined): DesignationReading | undefined {
  for (const form of designationForms(key, behind)) {
    const { grade, statedState } = form;
    if (form.standard === undefined && /^(?:EDDS|DDS|DS|CS)(?:\+|$|TYPE)/.test(grade)) continue;
    const standard = form.standard !== undefined && namesNoGrade(form.standard) ? undefined : form.standard;
    const found = foundIn(grade, standard);
    if (found.rows.length === 0) continue;
    const meant = standard === undefined ? found.rows : rowsOfStandard(found.rows, standard);
    if (meant.length === 0 && standard !== undefined) {
      // The standard may form such names without a row here for them: ASTM A653 has a CS of its own.
      if (readName(grade, standard) !== undefined) continue;
      if (isRank(found.rows)) return scaleUnknown(found.rows, text);
    }
    const rows = meant.length > 0 ? meant : found.rows;
    const settled = settleState(rows, statedState);
    const readings = readingsOf(settled.rows, found);
    if (form.saidSteel === true && readings.some((one) => steelRank(one.class) === undefined)) continue;
    const doubts = [
      ...(meant.length === 0 && standard !== undefined ? [otherStandard(rows, standard)] : []),
      ...coatDoubts(found.coat),
      ...tradeDoubts(readings),
    ];
    const several = notesOfReadings(readings);
    const ambiguity = doubts.length > 0 ? doubts.join(' ') : several;
    return answer(form, readings, ambiguity, [...settled.notes, ...numberNote(readings, form.grade)], {
      ...(doubts.length === 0 && onlyStandardsDiffer(readings) ? { sameClass: true } : {}),
    });
  }
  return undefined;
}

/** What a standard has in all its sheets and its drawings leave out: electro-zinc, skin-passed strip. */
const implied: Readonly<Record<string, string>> = { EN10152: '+ZE', EN10139: '+LC' };

function foundIn(grade: string, standard: string | undefined): FoundGrade {
  const suffix = standard === undefined || grade.includes('+') ? undefined : implied[standard];
  const whole = suffix === undefined ? undefined : findGrade(`${grade}${suffix}`, standard);
  return whole === undefined || whole.rows.length === 0 ? findGrade(grade, standard) : whole;
}

/** The readings of rows, with what an odd coating or an odd step of the trade may hide. */
function readingsOf(rows: readonly GradeRow[], { coat, alternatives }: FoundGrade): readonly Material[] {
  const readings = mergeReadings(
    [...rows, ...alternatives].map((row) =>
      materialOfRow(
        row,
        coat.coating === undefined ? { ...coat, ...impliedCoating(row) } : coat,
        row.standard === 'trade name' ? 'trade word' : 'table',
      ),
    ),
  );
  const odd = rows.filter((row) => row.standard === 'trade name' && outsideFamily(row));
  return odd.length === 0
    ? readings
    : strongestFirst([...readings, ...odd.flatMap((row) => beyondFamily(row))]);
}

function impliedCoating(row: GradeRow): Pick<Coat, 'coating'> {
  const coating = coatingOfStandard(row.standard);
  return coating === undefined ? {} : { coating };
}

/** What a steel can be whose figures do not go with its family. */
function beyondFamily({ designation, tensileMinMpa, yieldMinMpa }: GradeRow): readonly Material[] {
  if (tensileMinMpa !== undefined) return materialsOfTensile(designation, tensileMinMpa);
  return yieldMinMpa === undefined ? [] : materialsOfEither(designation, yieldMinMpa);
}

function inGrammar(key: string, text: string, behind: string | undefined): DesignationReading | undefined {
  for (const form of designationForms(key, behind)) {
    const standard = form.standard !== undefined && namesNoGrade(form.standard) ? undefined : form.standard;
    const named: NameAnswer | undefined = readName(form.grade, standard);
    if (named === undefined) continue;
    if ('fault' in named) return { known: false, reason: `"${text.trim()}" ${named.fault}` };
    const { sure, coat, outside, other } = named;
    const designation =
      key.includes(form.grade) && key !== form.grade ? asWritten(text, form.grade) : text.trim();
    const row = { ...named.row, designation };
    const trade = row.standard === 'trade name';
    const [reading, asTensile] = [row, ...(other === undefined ? [] : [{ ...other, designation }])].map(
      (one) =>
        materialOfRow(
          one,
          coat.coating === undefined ? { ...coat, ...impliedCoating(one) } : coat,
          trade ? 'trade word' : 'grammar',
        ),
    );
    if (reading === undefined || (form.saidSteel === true && steelRank(reading.class) === undefined))
      continue;
    const own = asTensile === undefined ? [reading] : [reading, asTensile];
    const readings =
      outside || own.length > 1 ? strongestFirst([...own, ...(outside ? beyondFamily(row) : [])]) : own;
    const doubts = [
      ...(asTensile === undefined || outside ? [] : [eitherDoubt(designation)]),
      ...(outside ? [outsideDoubt(row.designation, steelFamily(row.familyKey).word)] : []),
      ...coatDoubts(coat),
      ...(sure ? [] : [formDoubt(row)]),
    ];
    const byForm = !sure && !outside && doubts.length === 1;
    return answer(form, readings, doubts.length === 0 ? undefined : doubts.join(' '), [], {
      ...(byForm ? { byForm: true } : {}),
      ...(asTensile !== undefined && doubts.length === 1 && asTensile.class === reading.class
        ? { sameClass: true }
        : {}),
    });
  }
  return undefined;
}

/** Class words, strengths, hardness and bare numbers. */
function inTrade(key: string, text: string): DesignationReading | undefined {
  const shown = text.trim();
  for (const form of designationForms(key)) {
    const word = classWord(form.grade);
    if (word === undefined) continue;
    const weakest = word.weakestClass ?? word.class;
    const covers =
      weakest === word.class
        ? `${word.class} steel of any strength`
        : `${weakest} to ${word.class} steel, and the strongest counts`;
    const what = word.family.startsWith('class word')
      ? 'a class only, and bodies disagree where it begins'
      : 'a family without its strength';
    const ambiguity = `"${shown}" names ${what}: it covers ${covers}. State the grade, or the minimum tensile strength with its unit.`;
    return answer(form, [word], ambiguity, []);
  }
  const strength = readStrength(shown) ?? (isHardnessText(shown) ? readHardness(shown) : undefined);
  if (strength !== undefined) {
    if ('reason' in strength) return { known: false, ...strength };
    return answer({ grade: key }, strength.readings, strength.ambiguity, strength.assumed, {
      statedMpa: strength.mpa,
    });
  }
  const numbers = materialsOfNumber(key, shown);
  return numbers === undefined ? undefined : answer({ grade: key }, numbers.readings, numbers.ambiguity, []);
}

function answer(
  form: DesignationForm,
  read: readonly Material[],
  asked: string | undefined,
  notes: readonly string[],
  more: Pick<KnownDesignation, 'sameClass' | 'statedMpa' | 'byForm'> = {},
): KnownDesignation {
  const { readings, doubt } = withStatedHardening(form, read);
  const ambiguity = [doubt, asked].filter((one) => one !== undefined).join(' ') || undefined;
  return {
    known: true,
    readings,
    ...(ambiguity === undefined ? {} : { ambiguity }),
    ...noteOf([...notes, ...notesOfForm(form, readings)], ambiguity),
    warnings: nameWarnings(form, readings),
    ...(form.laminated === undefined ? {} : { laminated: form.laminated }),
    ...(form.softZone === undefined ? {} : { softZone: form.softZone }),
    ...(doubt === undefined ? more : {}),
  };
}

/** The rows of the named standard or of the one that took its place; empty where the table has none. */
function rowsOfStandard(rows: readonly GradeRow[], standard: string): readonly GradeRow[] {
  const meant = standardsMeant(standard);
  return rows.filter((row) => meant.some((one) => isStandard(row.standard, one)));
}

/** A bare rank such as CR4: its scale rises in one standard and falls in another. */
function isRank(rows: readonly GradeRow[]): boolean {
  return rows.some((row) => /^(?:CR|HR)\d$/.test(row.designation));
}

function scaleUnknown(rows: readonly GradeRow[], text: string): DesignationReading {
  const name = rows[0]?.designation ?? text.trim();
  return {
    known: false,
    reason: `${name} has no row in the table for the standard that is named; other standards use the same name. Look up its minimum tensile strength there and state it as the strength.`,
  };
}

function numberNote(readings: readonly Material[], key: string): readonly string[] {
  const [first] = readings;
  if (first === undefined || !/^(?:W\.?NR\.?)?1\.\d{4}/.test(key) || first.designation.startsWith('1.'))
    return [];
  return [
    `The steel number is that of ${first.designation.replace(/\+.*/, '')}; it fixes the chemistry, not the coating.`,
  ];
}
