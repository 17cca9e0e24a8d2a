import type { Coat } from '../coating/coat.ts';
import { coatOf } from '../coating/coat.ts';
import type { GradeRow } from './grade-row.ts';
import { worseMark } from './grade-row.ts';
import { otherSpellings } from './grade-spellings.ts';
import { gradeSuffixes } from './grade-suffixes.ts';
import { gradeTable } from './grade-table.ts';
import { isStandard } from './standard-hint.ts';
import { tradeGrade } from './trade-grade.ts';

export interface FoundGrade {
  readonly rows: readonly GradeRow[];
  readonly coat: Coat;
  /** Rows that the name may mean as well: a Z for the C of cold-hardened strip. */
  readonly alternatives: readonly GradeRow[];
}

/**
 * The rows for a comparison key: exact first, then with what may follow a grade taken off. Empty when there is none. `standard` is
 * the one that the text names, as a comparison key.
 */
export function findGrade(key: string, standard: string | undefined): FoundGrade {
  const exact = namedRows(key, standard !== undefined);
  // No suffix ends so; a thickness is taken off before the next look.
  if (exact.length > 0 || key.endsWith('MM')) return { rows: exact, coat: {}, alternatives: [] };
  const rows = new Map<string, GradeRow>();
  let coat: Coat = {};
  const alternatives: GradeRow[] = [];
  for (const { form, standards, mass, onlyNamed, tensileOrdered, ownOf } of gradeSuffixes) {
    if (onlyNamed === true && standard === undefined) continue;
    const named = onlyNamed === true ? standard : undefined;
    const found = ends(form, key)
      .map((groups) => ({ groups, candidates: owned(rowsBefore(groups, standards, named), ownOf) }))
      .find(({ candidates }) => candidates.length > 0);
    if (found === undefined) continue;
    const { groups, candidates } = found;
    for (const row of candidates) {
      const id = `${row.designation}|${row.standard}|${row.state}`;
      if (!rows.has(id)) rows.set(id, tensileOrdered === true ? withoutCondition(row) : row);
    }
    if (mass === undefined || coat.coating !== undefined || coat.mass !== undefined) continue;
    coat = coatOf(groups, mass);
    if (coat.unlisted !== undefined)
      alternatives.push(...namedRows(`${groups['base'] ?? ''}+C${groups['m1'] ?? ''}`));
    // Behind a plus stands one coating, which the first form has read.
    if (mass === 'european' && key.includes('+')) break;
  }
  return { rows: [...rows.values()], coat, alternatives };
}

type Groups = Readonly<Record<string, string | undefined>>;

/**
 * The ways in which a key ends with a suffix: the longest suffix first, then the shortest, for a grade may end in a letter that also
 * begins one (HC340LA Z100 is no HC340L with AZ100).
 */
function ends(form: RegExp, key: string): readonly Groups[] {
  const longest = form.exec(key)?.groups;
  if (longest === undefined) return [];
  const shortest = shortestEnd(form).exec(key)?.groups;
  return shortest === undefined || shortest['base'] === longest['base'] ? [longest] : [longest, shortest];
}

const shortestEnds = new Map<RegExp, RegExp>();

function shortestEnd(form: RegExp): RegExp {
  const made = shortestEnds.get(form) ?? new RegExp(form.source.replace('(?<base>.+?)', '(?<base>.+)'));
  shortestEnds.set(form, made);
  return made;
}

function rowsBefore(groups: Groups, standards: RegExp, named: string | undefined): readonly GradeRow[] {
  const base = groups['base'] ?? '';
  const electroZinc = groups['coat'] === 'ZE' ? namedRows(`${base}+ZE`) : [];
  return (electroZinc.length > 0 ? electroZinc : namedRows(base, named !== undefined)).filter(
    (row) => standards.test(row.standard) && (named === undefined || isStandard(row.standard, named)),
  );
}

function owned(rows: readonly GradeRow[], ownOf: RegExp | undefined): readonly GradeRow[] {
  const own = ownOf === undefined ? [] : rows.filter((row) => ownOf.test(row.standard));
  return own.length > 0 ? own : rows;
}

function withoutCondition(row: GradeRow): GradeRow {
  const { tensileMinOnlyIf: _condition, ...promised } = row;
  return promised;
}

/** Rows of a bare grade name, under its own or another accepted spelling. */
function namedRows(key: string, standardNamed = false): readonly GradeRow[] {
  const { rowsOf, numbered } = gradeTable();
  const rows = rowsOf(key);
  if (rows !== undefined) return rows;
  const plus = key.indexOf('+');
  const grade = numbered(plus < 0 ? key : key.slice(0, plus));
  if (grade !== undefined) {
    const found = rowsOf(`${grade.key}${plus < 0 ? '' : key.slice(plus)}`) ?? [];
    return found.map((row) => ({ ...row, mark: worseMark(row.mark, grade.mark) }));
  }
  const hotDip = /^(H[CD]T\d+[A-Z]{1,2})D$/.exec(key)?.[1];
  if (hotDip !== undefined) return (rowsOf(hotDip) ?? []).filter((row) => /^EN 103[34]6/.test(row.standard));
  for (const spelling of otherSpellings(key, standardNamed)) {
    const found = rowsOf(spelling);
    if (found !== undefined) return found;
  }
  const trade = tradeGrade(key);
  return trade === undefined ? [] : [trade];
}
