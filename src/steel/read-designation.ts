import { materialsOfNumber } from './bare-number.ts';
import { classWord } from './class-words.ts';
import { coatingOfStandard } from './coating.ts';
import type { DesignationForm } from './designation-forms.ts';
import { designationForms } from './designation-forms.ts';
import { designationKey } from './designation-key.ts';
import { explainUnknown, nearestGrades } from './explain-unknown.ts';
import { findGrade } from './find-grade.ts';
import type { GradeRow } from './grade-row.ts';
import type { NameAnswer } from './grammar/read-name.ts';
import { readName } from './grammar/read-name.ts';
import type { Material } from './material.ts';
import { materialOfRow } from './material.ts';
import { mergeReadings, strongestFirst } from './merge-readings.ts';
import { nameWarnings } from './name-warnings.ts';
import { notesOfForm, notesOfReadings } from './reading-notes.ts';
import { refuseText } from './refuse-text.ts';
import { settleState } from './settle-state.ts';
import { isStandard } from './standard-hint.ts';
import { materialsOfStrength, strengthOfName } from './strength-name.ts';
import { blankParts } from './tailored-blank.ts';
import { isTradeStep } from './trade-grade.ts';

export type { Material } from './material.ts';

export interface KnownDesignation {
  readonly known: true;
  /** One or more; several when the name is ambiguous or names several sheets, the strongest first. */
  readonly readings: readonly Material[];
  /** Why the name can be read in more than one way, or not surely, and what would settle it. The strongest reading counts. */
  readonly ambiguity?: string;
  /** What was taken for granted, and what the strongest reading hides. */
  readonly note?: string;
  /** What such a name is easily mistaken for; of use to a reader, of no weight for the class. */
  readonly warnings: readonly string[];
  /** The sheets of a tailored blank, as written. */
  readonly blank?: readonly string[];
  readonly laminated?: true;
  readonly softZone?: true;
}

export interface UnknownDesignation {
  readonly known: false;
  readonly reason: string;
  readonly nearest?: readonly string[];
  /** True where the text cannot be a designation at all, whatever the tables hold. */
  readonly unusable?: true;
}

export type DesignationReading = KnownDesignation | UnknownDesignation;

/**
 * Reads a grade designation, steel number, material word or strength. The grade table is asked first, then the way standards
 * form their names, then the words of the trade. A name with several readings gives all of them; a name that may hide a
 * stronger steel than it shows is unknown, with the reason.
 */
export function readDesignation(text: string): DesignationReading {
  const refusal = refuseText(text);
  if (refusal !== undefined) {
    const nearest = refusal.repaired === undefined ? [] : nearestGrades(refusal.repaired);
    return {
      known: false,
      reason: refusal.reason,
      unusable: true,
      ...(nearest.length > 0 ? { nearest } : {}),
    };
  }
  const one = readOne(text);
  if (one !== undefined) return one;
  const blank = readBlank(text);
  if (blank !== undefined) return blank;
  const several = severalGrades(text);
  if (several !== undefined) return { known: false, reason: several, unusable: true };
  return { known: false, ...explainUnknown(designationKey(text), text) };
}

/** A text as one grade, word or strength; undefined when it is none of them. */
function readOne(text: string): DesignationReading | undefined {
  const key = designationKey(text);
  return inTable(key, text) ?? inGrammar(key, text) ?? inTrade(key, text);
}

function inTable(key: string, text: string): DesignationReading | undefined {
  for (const form of designationForms(key)) {
    const { grade, standard, statedState } = form;
    if (standard === undefined && /^(?:EDDS|DDS|DS|CS)(?:\+|$)/.test(grade)) continue;
    const found = findGrade(grade, standard !== undefined);
    if (found.rows.length === 0) continue;
    const rows = standard === undefined ? found.rows : rowsOfStandard(found.rows, standard);
    if (rows.length === 0) {
      const name = found.rows[0]?.designation ?? text.trim();
      return {
        known: false,
        reason: `${name} has no row in the table for the standard that is named; other standards use the same name. Look up its minimum tensile strength there and state it as the strength.`,
      };
    }
    const settled = settleState(rows, statedState);
    const origin = (row: GradeRow): 'table' | 'trade word' =>
      row.standard === 'trade name' ? 'trade word' : 'table';
    const readings = mergeReadings(
      settled.rows.map((row) =>
        materialOfRow(row, found.coating ?? coatingOfStandard(row.standard), origin(row)),
      ),
    );
    const offStep = readings.find((row) => row.from === 'trade word' && !isTradeStep(row.designation));
    const several = notesOfReadings(readings);
    const ambiguity =
      offStep === undefined
        ? several
        : `Sheet is not made in the step of ${offStep.designation}; read the drawing again.`;
    return answer(form, readings, ambiguity, [...settled.notes, ...numberNote(readings, key)]);
  }
  return undefined;
}

function inGrammar(key: string, text: string): DesignationReading | undefined {
  for (const form of designationForms(key)) {
    const named: NameAnswer | undefined = readName(form.grade, form.standard);
    if (named === undefined) continue;
    if ('fault' in named) return { known: false, reason: `"${text.trim()}" ${named.fault}` };
    const { sure } = named;
    const whole = key === form.grade;
    const row = whole ? { ...named.row, designation: text.trim() } : named.row;
    const coating = named.coating ?? coatingOfStandard(row.standard);
    const reading = materialOfRow(row, coating, row.standard === 'trade name' ? 'trade word' : 'grammar');
    const ambiguity = sure
      ? undefined
      : `The table has no row for ${row.designation}; it is read by the way ${row.standard === 'national list' ? 'national lists form' : `${row.standard} forms`} names. Look it up there.`;
    return answer(form, [reading], ambiguity, []);
  }
  return undefined;
}

/** Class words, strengths and bare numbers. */
function inTrade(key: string, text: string): DesignationReading | undefined {
  const shown = text.trim();
  for (const form of designationForms(key)) {
    const word = classWord(form.grade);
    if (word === undefined) continue;
    const ambiguity = `"${shown}" names a class only, and bodies disagree where it begins: it covers ${word.weakestClass ?? word.class} to ${word.class} steel, and the strongest counts. State the grade, or the minimum tensile strength with its unit.`;
    return answer(form, [word], ambiguity, []);
  }
  const strength = strengthOfName(key);
  if (strength !== undefined) {
    if (Number.isNaN(strength)) {
      const reason = `${shown} is no strength that sheet steel has (200 to 2500 MPa). State the tensile strength with its unit, as "1500 MPa".`;
      return { known: false, reason };
    }
    const readings = materialsOfStrength(shown, strength);
    const ambiguity =
      readings.length > 1
        ? `"${shown}" is a strength, not a grade: it names no family, so it could be martensitic or press-hardened. The stronger counts; state the grade.`
        : undefined;
    return answer({ grade: key }, readings, ambiguity, [
      `${shown} is taken as the minimum tensile strength.`,
    ]);
  }
  const numbers = materialsOfNumber(key, shown);
  if (numbers === undefined) return undefined;
  const ambiguity = /^\d+$/.test(key)
    ? `"${shown}" is a number without a unit: it could be a tensile strength, a yield, a size or a part code. The strongest reading counts; state the grade, or the strength with its unit, as "1500 MPa".`
    : `"${shown}" may be press-hardened steel by a shop's own short name, or another steel of that strength. The stronger counts; state the grade.`;
  return answer({ grade: key }, numbers, ambiguity, []);
}

function answer(
  form: DesignationForm,
  readings: readonly Material[],
  ambiguity: string | undefined,
  notes: readonly string[],
): KnownDesignation {
  const all = [...notes, ...notesOfForm(form, readings), ...(ambiguity === undefined ? [] : [ambiguity])];
  return {
    known: true,
    readings,
    ...(ambiguity === undefined ? {} : { ambiguity }),
    ...(all.length > 0 ? { note: all.join(' ') } : {}),
    warnings: nameWarnings(form, readings),
    ...(form.laminated === undefined ? {} : { laminated: form.laminated }),
    ...(form.softZone === undefined ? {} : { softZone: form.softZone }),
  };
}

/**
 * The rows of the named standard. Where the table has none, a name that only one system uses still counts (a plan may
 * name a predecessor); a bare rank such as CR4 does not, for its scale rises in one standard and falls in another.
 */
function rowsOfStandard(rows: readonly GradeRow[], standard: string): readonly GradeRow[] {
  const own = rows.filter((row) => isStandard(row.standard, standard));
  if (own.length > 0) return own;
  return rows.some((row) => /^(?:CR|HR)\d$/.test(row.designation)) ? [] : rows;
}

function numberNote(readings: readonly Material[], key: string): readonly string[] {
  const [first] = readings;
  if (first === undefined || !/^(?:W\.?NR\.?)?1\.\d{4}/.test(key) || first.designation.startsWith('1.'))
    return [];
  return [
    `The steel number is that of ${first.designation.replace(/\+.*/, '')}; it fixes the chemistry, not the coating.`,
  ];
}

/** Two or more sheets welded into one blank: both are kept, and the strongest counts. */
function readBlank(text: string): DesignationReading | undefined {
  for (const parts of blankParts(text)) {
    const sheets = parts.map((part) => ({ part, reading: readOne(part) }));
    const known: KnownDesignation[] = [];
    for (const { reading } of sheets) if (reading?.known === true) known.push(reading);
    if (known.length < sheets.length) continue;
    const readings = strongestFirst(known.flatMap((one) => one.readings));
    const ambiguity = known.flatMap((one) => (one.ambiguity === undefined ? [] : [one.ambiguity])).join(' ');
    const notes = [
      `The text names a blank of ${parts.length} sheets (${parts.join(', ')}); the strongest counts until the plan says in which sheet the work lies.`,
      ...known.flatMap((one) => (one.note === undefined ? [] : [one.note])),
    ];
    return {
      known: true,
      readings,
      ...(ambiguity === '' ? {} : { ambiguity }),
      note: notes.join(' '),
      warnings: [...new Set(known.flatMap((one) => one.warnings))],
      blank: parts,
    };
  }
  return undefined;
}

/** A choice of grades, or a blank with a sheet that is not known: a sentence that names the parts, if more than one is a grade. */
function severalGrades(text: string): string | undefined {
  const parts = text
    .split(/\s*[+;&|]\s*|\s*,\s+|\s+\/\s+|\s+(?:and|or)\s+/i)
    .map((part) => part.trim())
    .filter((part) => part !== '');
  if (parts.length < 2) return undefined;
  const grades = parts.filter((part) => readOne(part)?.known === true);
  const like = parts.filter((part) => /[A-Z]/i.test(part) && /\d{2}/.test(part));
  if (grades.length === 0 || like.length < 2) return undefined;
  return `The text names more than one grade (${like.join(', ')}). State one grade a part; a tailored blank is written with a plus, as "DC04 + HC260LA".`;
}
