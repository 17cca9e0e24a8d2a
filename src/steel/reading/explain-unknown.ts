import { isBodyAlloy } from '../grammar/aluminium-names.ts';
import { gradeTable } from '../table/grade-table.ts';
import { readOne } from './read-one.ts';
import { hintSplits } from '../table/standard-hint.ts';

export interface Unknown {
  readonly reason: string;
  readonly nearest?: readonly string[];
  /** True for a text with look-alike characters, which has to be typed again before anything can be said. */
  readonly unusable?: true;
}

const lookUp =
  'Look up its minimum tensile strength in the standard that the drawing names and state it as the strength, with its unit.';

/** Says why a comparison key is not a known grade and what would settle it. `text` is the grade as the user wrote it. */
export function explainUnknown(key: string, text: string): Unknown {
  const shown = `"${text.trim()}"`;
  if (isBodyAlloy(key)) {
    return {
      reason: `${shown} may be the number of an aluminium alloy. State it with its prefix, as "EN AW-${key}", and the temper behind it.`,
      nearest: [`EN AW-${key}`],
    };
  }
  if (/^\d+(?:\.\d+)?$/.test(key) && !/^1\.\d{4}$/.test(key)) {
    return {
      reason: `${shown} is a number without a unit, and no strength of sheet in MPa. A strength is stated with its unit, as "1500 MPa".`,
    };
  }
  if (/^(?:EDDS|DDS|DS|CS)$/.test(key)) {
    return {
      reason: `${shown} is too short to be sure of: it is a grade of ASTM A1008 and A1011. State the standard with it, as "ASTM A1008 ${key}".`,
    };
  }
  if (/^1\.\d{4}/.test(key)) {
    return {
      reason: `${shown} is a steel number without a row in the table. State the name that goes with it. ${lookUp}`,
    };
  }
  const swapped = lookAlikeGrade(key) ?? lookAlikeName(text.trim().normalize('NFKC'));
  if (swapped !== undefined) {
    return {
      reason: `${shown} looks like ${swapped.name}, but it has ${swapped.written} where that grade has ${swapped.meant}; type it again.`,
      nearest: [swapped.name],
      unusable: true,
    };
  }
  if (/^HRB\d|\dHRB/.test(key)) {
    return {
      reason: `${shown} is a hardness in Rockwell B, which is not converted here. State the grade, the tensile strength with its unit, or the hardness in HV or HBW.`,
    };
  }
  if (/^(?:(?:HC|HX|HCT|HDT|CR|HR|SPFC|JSC|JAC)\d{2,3}[05]|(?:CR|HR)\d{2,3}[05]T|DX5\d)$/.test(key)) {
    return withNearest(
      key,
      `${shown} is cut short: what stands after the number tells the family. State the whole designation.`,
    );
  }
  return withNearest(key, `There is no grade ${shown} in the table. ${lookUp}`);
}

/**
 * Names of known grades that a key is closest to. At most three and only if a third of the key or less differs; with `wide`
 * up to five, and half of it may differ.
 */
export function nearestGrades(key: string, wide = false): readonly string[] {
  const limit = wide ? Math.min(4, Math.ceil(key.length / 2)) : Math.min(2, Math.floor(key.length / 3));
  if (limit === 0) return [];
  const near: { readonly name: string; readonly distance: number }[] = [];
  const signs = signSet(key);
  const { rowsOf } = gradeTable();
  for (const { candidate, signs: own } of signedKeys()) {
    if (Math.abs(candidate.length - key.length) > limit) continue;
    // One edit takes away one sign and adds one at most.
    if (bitsIn(signs ^ own) > 2 * limit) continue;
    const distance = editDistance(candidate, key, limit);
    const [row] = distance <= limit ? (rowsOf(candidate) ?? []) : [];
    if (row !== undefined) near.push({ name: row.designation, distance });
  }
  near.sort((a, b) => a.distance - b.distance || (a.name < b.name ? -1 : 1));
  const [best] = near;
  if (best?.distance === 0) return [best.name];
  return [...new Set(near.map((one) => one.name))].slice(0, wide ? 5 : 3);
}

/** A coat behind a grade, as European and American names write it; it makes two names of one steel look unlike. */
const coat = /\+.*$|[-/]?(?:GI|GA|EG|EL|Z[AEFMN]?|AS|AZ|HDG)\d+(?:\/?\d+)*[A-Z]*$/;

function withNearest(key: string, reason: string): Unknown {
  // Behind the standard that the text names, where it names one.
  const [, split] = hintSplits(key);
  const named = split === undefined ? [key] : [key, split.rest];
  const grades = [
    ...named,
    ...named.map((one) => one.replace(coat, '')).filter((one) => !named.includes(one)),
  ];
  const nearest =
    [nearestGrades, gradeAtHead]
      .flatMap((look) => grades.map((grade) => look(grade)))
      .find((found) => found.length > 0) ?? [];
  return nearest.length > 0 ? { reason, nearest } : { reason };
}

/** The longest known grade with which a key begins, where three signs or fewer are left: CR3 of CR3EC. */
function gradeAtHead(key: string): readonly string[] {
  for (let end = key.length - 1; end >= Math.max(3, key.length - 3); end--) {
    const [row] = gradeTable().rowsOf(key.slice(0, end)) ?? [];
    if (row !== undefined) return [row.designation];
  }
  return [];
}

interface LookAlike {
  readonly name: string;
  readonly written: string;
  readonly meant: string;
}

/** A name without a row of the table that would be read if an O beside a figure were 0, an I or L beside one 1: DP98O, CR1O00T-MB. */
function lookAlikeName(text: string): LookAlike | undefined {
  let mended = text;
  for (;;) {
    const next = mended.replace(/(?<=\d)O|O(?=\d)/i, '0').replace(/(?<=\d)[IL]|[IL](?=\d)/i, '1');
    if (next === mended) break;
    mended = next;
  }
  const at = [...mended].findIndex((char, index) => char !== text.charAt(index));
  if (at < 0 || readOne(mended)?.known !== true) return undefined;
  return { name: mended, written: sign(text.charAt(at)), meant: sign(mended.charAt(at)) };
}

/** A known grade that differs only by O for 0, or I or L for 1; a coating behind it may be any. */
function lookAlikeGrade(key: string): LookAlike | undefined {
  const bare = key.replace(/\+.*$/, '');
  for (const candidate of gradeTable().keys()) {
    const other = candidate.length === key.length ? key : candidate.length === bare.length ? bare : undefined;
    if (other === undefined || !isAlike(candidate, other)) continue;
    const [row] = gradeTable().rowsOf(candidate) ?? [];
    const at = [...candidate].findIndex((char, index) => char !== other.charAt(index));
    if (row !== undefined && at >= 0)
      return { name: row.designation, written: sign(other.charAt(at)), meant: sign(candidate.charAt(at)) };
  }
  return undefined;
}

/** Two texts of one length whose signs are the same or look it. */
function isAlike(one: string, other: string): boolean {
  for (let at = 0; at < one.length; at++) {
    if (folded(one.charCodeAt(at)) !== folded(other.charCodeAt(at))) return false;
  }
  return true;
}

const [zero, one, letterO, letterI, letterL] = [...'01OIL'].map((char) => char.charCodeAt(0));

function folded(code: number): number | undefined {
  if (code === letterO) return zero;
  return code === letterI || code === letterL ? one : code;
}

function sign(char: string): string {
  return /\d/.test(char) ? `the figure ${char}` : `the letter ${char}`;
}

interface SignedKey {
  readonly candidate: string;
  readonly signs: number;
}

let signed: readonly SignedKey[] | undefined;

/** The keys of the table with their signs, made at the first need. */
function signedKeys(): readonly SignedKey[] {
  signed ??= [...gradeTable().keys()].map((candidate) => ({ candidate, signs: signSet(candidate) }));
  return signed;
}

/** The signs of a text as bits; letters and figures may share one, which only makes two texts look more alike. */
function signSet(text: string): number {
  let bits = 0;
  for (let at = 0; at < text.length; at++) bits |= 1 << (text.charCodeAt(at) & 31);
  return bits;
}

function bitsIn(bits: number): number {
  let count = 0;
  for (let rest = bits; rest !== 0; rest &= rest - 1) count++;
  return count;
}

/** Edits (insert, remove, replace) between two short texts (Levenshtein); above `limit` only that it is above. */
function editDistance(a: string, b: string, limit: number): number {
  let above = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let row = 1; row <= a.length; row++) {
    const current = [row];
    let least = row;
    for (let column = 1; column <= b.length; column++) {
      const replaced =
        (above[column - 1] ?? 0) + (a.charCodeAt(row - 1) === b.charCodeAt(column - 1) ? 0 : 1);
      const cost = Math.min(replaced, (above[column] ?? 0) + 1, (current[column - 1] ?? 0) + 1);
      current.push(cost);
      if (cost < least) least = cost;
    }
    if (least > limit) return limit + 1;
    above = current;
  }
  return above[b.length] ?? 0;
}
