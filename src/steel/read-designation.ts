import { coatingOfStandard } from './coating.ts';
import { designationKey } from './designation-key.ts';
import { explainUnknown, nearestGrades } from './explain-unknown.ts';
import type { FoundGrade } from './find-grade.ts';
import { findGrade } from './find-grade.ts';
import type { GradeRow } from './grade-row.ts';
import type { Material } from './material.ts';
import { materialOfRow } from './material.ts';
import { refuseText } from './refuse-text.ts';
import { settleState } from './settle-state.ts';
import { hintSplits, isStandard } from './standard-hint.ts';
import { steelRank } from './strength-class.ts';

export type { Material } from './material.ts';

export type DesignationReading =
  | {
      readonly known: true;
      /** One or more; several when the name is ambiguous, the strongest first. */
      readonly readings: readonly Material[];
      readonly note?: string;
    }
  | { readonly known: false; readonly reason: string; readonly nearest?: readonly string[] };

interface Found extends FoundGrade {
  readonly statedState?: 'hardened' | 'as delivered';
  readonly standard?: string;
}

/**
 * Reads a grade designation, steel number or material word against the grade table. A name that standards share gives
 * every reading; a name that may hide a stronger steel than it shows is unknown, with the reason.
 */
export function readDesignation(text: string): DesignationReading {
  const refusal = refuseText(text);
  if (refusal !== undefined) {
    const nearest = refusal.repaired === undefined ? [] : nearestGrades(refusal.repaired);
    return { known: false, reason: refusal.reason, ...(nearest.length > 0 ? { nearest } : {}) };
  }
  const key = designationKey(text);
  const found = find(key);
  if (found === undefined) {
    const several = severalGrades(text);
    if (several !== undefined) return { known: false, reason: several };
    return { known: false, ...explainUnknown(key, text) };
  }
  const rows = found.standard === undefined ? found.rows : rowsOfStandard(found.rows, found.standard);
  if (rows.length === 0) {
    const name = found.rows[0]?.designation ?? text.trim();
    return {
      known: false,
      reason: `${name} has no row in the table for the standard that is named; other standards use the same name. Look up its minimum tensile strength there and state it as the strength.`,
    };
  }
  const settled = settleState(rows, found.statedState);
  const readings = merged(
    settled.rows.map((row) => materialOfRow(row, found.coating ?? coatingOfStandard(row.standard))),
  );
  const notes = [...settled.notes, ...readingNotes(readings, key)];
  return { known: true, readings, ...(notes.length > 0 ? { note: notes.join(' ') } : {}) };
}

/** The least stripped reading of a key that the table knows. */
function find(key: string): Found | undefined {
  for (const { standard, rest } of hintSplits(key)) {
    for (const sized of withoutSize(rest)) {
      for (const { grade, statedState } of withoutState(sized)) {
        if (standard === undefined && /^(?:EDDS|DDS|DS|CS)(?:\+|$)/.test(grade)) continue;
        const found = findGrade(grade, standard !== undefined);
        if (found.rows.length === 0) continue;
        return {
          ...found,
          ...(statedState === undefined ? {} : { statedState }),
          ...(standard === undefined ? {} : { standard }),
        };
      }
    }
  }
  return undefined;
}

/** The key itself, then without a thickness or width at its end: 1.2 mm, t=1.2, 1.2T, x 1250. */
function withoutSize(key: string): readonly string[] {
  const size = /^(?:[T@]?=?\d{1,2}(?:\.\d+)?MM|T=\d(?:\.\d+)?|\d\.\d{1,2}T?|X\d{2,4}(?:MM)?)$/;
  const forms = [key];
  for (let at = key.length - 1; at >= 2; at--) {
    if (size.test(key.slice(at))) forms.push(key.slice(0, at).replace(/[,;/]$/, ''));
  }
  return forms;
}

function withoutState(
  key: string,
): readonly { readonly grade: string; readonly statedState?: 'hardened' | 'as delivered' }[] {
  const match = /^(.+?)[,;:]?(ASDELIVERED|UNHARDENED|PRESSHARDENED|HARDENED|QUENCHED)$/.exec(key);
  const grade = match?.[1];
  if (grade === undefined) return [{ grade: key }];
  const statedState = /^(?:AS|UN)/.test(match?.[2] ?? '') ? 'as delivered' : 'hardened';
  return [{ grade: key }, { grade, statedState }];
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

/** Joins readings that differ in nothing but the standard, and puts the strongest first. */
function merged(materials: readonly Material[]): readonly Material[] {
  const byContent = new Map<string, Material>();
  for (const material of materials) {
    const { standard, mark, designation, ...content } = material;
    const id = JSON.stringify([
      designationKey(designation),
      Object.entries(content).sort(([a], [b]) => (a < b ? -1 : 1)),
    ]);
    const same = byContent.get(id);
    if (same === undefined) byContent.set(id, material);
    else {
      byContent.set(id, {
        ...same,
        standard: `${same.standard} / ${standard}`,
        mark: same.mark === 'seen' ? mark : same.mark,
      });
    }
  }
  return [...byContent.values()].sort(
    (a, b) =>
      (steelRank(b.class) ?? 0) - (steelRank(a.class) ?? 0) ||
      (b.tensileMinMpa ?? 0) - (a.tensileMinMpa ?? 0),
  );
}

function readingNotes(readings: readonly Material[], key: string): readonly string[] {
  const notes: string[] = [];
  const [first] = readings;
  if (first !== undefined && /^1\.\d{4}/.test(key) && !first.designation.startsWith('1.')) {
    notes.push(
      `The steel number is that of ${first.designation.replace(/\+.*/, '')}; it fixes the chemistry, not the coating.`,
    );
  }
  if (first !== undefined && readings.length > 1) {
    const oneName = readings.every((one) => one.designation === first.designation);
    const ways = readings.map((one) => (oneName ? one.standard : one.designation)).join('; ');
    const ask = oneName ? 'state the standard with it' : 'state the whole designation';
    notes.push(`The name has ${readings.length} readings (${ways}); ${ask}. The strongest counts.`);
  }
  if (readings.some((one) => /^CR\d$/.test(one.designation)) && readings.length > 1) {
    notes.push('In BS 1449 the scale of these ranks runs the other way.');
  }
  return notes;
}

/** A tailored blank, or a choice of grades: a sentence that names the parts, if more than one is a grade. */
function severalGrades(text: string): string | undefined {
  const parts = text.split(/\s*[+;&|]\s*|\s*,\s+|\s+\/\s+|\s+(?:and|or)\s+/i).map((part) => part.trim());
  if (parts.length < 2) return undefined;
  const grades = parts.filter((part) => find(designationKey(part)) !== undefined);
  const like = parts.filter((part) => /[A-Z]/i.test(part) && /\d{2}/.test(part));
  if (grades.length === 0 || like.length < 2) return undefined;
  return `The text names more than one grade (${like.join(', ')}). State one grade a part; a tailored blank is one part for each sheet.`;
}
