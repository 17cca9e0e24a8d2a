import { gradeTable } from './grade-table.ts';

export interface Unknown {
  readonly reason: string;
  readonly nearest?: readonly string[];
}

const lookUp =
  'Look up its minimum tensile strength in the standard that the drawing names and state it as the strength, with its unit.';

/** Says why a comparison key is not a known grade and what would settle it. `text` is the grade as the user wrote it. */
export function explainUnknown(key: string, text: string): Unknown {
  const shown = `"${text.trim()}"`;
  if (/^\d+(?:\.\d+)?$/.test(key) && !/^1\.\d{4}$/.test(key)) {
    return {
      reason: `${shown} is a number without a unit: it could be a strength, a size or a part code. A strength is stated with its unit, as "1500 MPa".`,
    };
  }
  if (
    /^\d+(?:\.\d+)?(?:MPA|GPA|KSI|PSI|N\/MM2|N\/MM\^2|KGF(?:\/MM2)?|KG\/MM2|KILO|K)(?:CLASS|GRADE|STEEL|TENSILE)*$/.test(
      key,
    )
  ) {
    return {
      reason: `${shown} is a strength, not a grade: it names no family, so it could be martensitic or press-hardened. State it as the strength, or state the grade.`,
    };
  }
  if (
    /^(?:HSS|AHSS|UHSS|VHSS|EHSS|XHSS|(?:ADVANCED|ULTRA|VERY|EXTRA)?HIGH(?:STRENGTH|TENSILE))(?:STEEL)?$/.test(
      key,
    )
  ) {
    return {
      reason: `${shown} names a class only, and bodies disagree where it begins. State the grade, or the minimum tensile strength with its unit.`,
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
  const pair = /^(?:CR|HR)(\d{3,4})Y(\d{3,4})T/.exec(key);
  if (pair !== null && Number(pair[1]) >= Number(pair[2])) {
    return {
      reason: `${shown} gives a yield (${pair[1]} MPa) that is not below its tensile strength (${pair[2]} MPa); the yield comes first, as in CR330Y590T-DP. Read the drawing again.`,
    };
  }
  const swapped = lookAlikeGrade(key);
  if (swapped !== undefined) {
    return {
      reason: `${shown} looks like ${swapped.name}, but it has ${swapped.written} where that grade has ${swapped.meant}; type it again.`,
      nearest: [swapped.name],
    };
  }
  if (/^(?:HC|HX|HCT|HDT|CR|HR|SPFC|JSC|JAC)\d{3,4}$/.test(key)) {
    return withNearest(
      key,
      `${shown} is cut short: the letters after the number tell the family. State the whole designation.`,
    );
  }
  return withNearest(key, `There is no grade ${shown} in the table. ${lookUp}`);
}

/** Names of known grades that a key is closest to: at most three, only if a third of it or less differs. */
export function nearestGrades(key: string): readonly string[] {
  const limit = Math.min(2, Math.floor(key.length / 3));
  if (limit === 0) return [];
  const near: { readonly name: string; readonly distance: number }[] = [];
  for (const [candidate, [row]] of gradeTable().byKey) {
    if (row === undefined || Math.abs(candidate.length - key.length) > limit) continue;
    const distance = editDistance(candidate, key);
    if (distance <= limit) near.push({ name: row.designation, distance });
  }
  near.sort((a, b) => a.distance - b.distance || (a.name < b.name ? -1 : 1));
  const [best] = near;
  if (best?.distance === 0) return [best.name];
  return [...new Set(near.map((one) => one.name))].slice(0, 3);
}

function withNearest(key: string, reason: string): Unknown {
  const nearest = nearestGrades(key);
  return nearest.length > 0 ? { reason, nearest } : { reason };
}

/** A known grade that differs only by O for 0, or I or L for 1. */
function lookAlikeGrade(
  key: string,
): { readonly name: string; readonly written: string; readonly meant: string } | undefined {
  const fold = (text: string): string => text.replaceAll('O', '0').replaceAll(/[IL]/g, '1');
  const folded = fold(key);
  const base = folded.replace(/\+.*$/, '');
  for (const [candidate, [row]] of gradeTable().byKey) {
    const other = fold(candidate);
    if (row === undefined || (other !== folded && other !== base)) continue;
    const at = [...candidate].findIndex((char, index) => char !== key.charAt(index));
    if (at >= 0)
      return { name: row.designation, written: sign(key.charAt(at)), meant: sign(candidate.charAt(at)) };
  }
  return undefined;
}

function sign(char: string): string {
  return /\d/.test(char) ? `the figure ${char}` : `the letter ${char}`;
}

/** Edits (insert, remove, replace) between two short texts (Levenshtein). */
function editDistance(a: string, b: string): number {
  let above = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let row = 1; row <= a.length; row++) {
    const current = [row];
    for (let column = 1; column <= b.length; column++) {
      const replaced = (above[column - 1] ?? 0) + (a.charAt(row - 1) === b.charAt(column - 1) ? 0 : 1);
      current.push(Math.min(replaced, (above[column] ?? 0) + 1, (current[column - 1] ?? 0) + 1));
    }
    above = current;
  }
  return above[b.length] ?? 0;
}
