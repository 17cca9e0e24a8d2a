import type { Coat } from './coat.ts';
import { americanCoatPresent, coatOf, saeCoat } from './coat.ts';
import type { MassNotation } from './coating-mass.ts';
import type { GradeRow } from './grade-row.ts';
import { worseMark } from './grade-row.ts';
import { otherSpellings } from './grade-spellings.ts';
import { gradeTable } from './grade-table.ts';
import { isStandard } from './standard-hint.ts';
import { tradeGrade } from './trade-grade.ts';

export interface FoundGrade {
  readonly rows: readonly GradeRow[];
  readonly coat: Coat;
  /** Rows that the name may mean as well: a Z for the C of cold-hardened strip. */
  readonly alternatives: readonly GradeRow[];
}

interface Suffix {
  readonly form: RegExp;
  /** The standards whose names take this suffix. */
  readonly standards: RegExp;
  /** How the standard writes the mass of a coating; left out where the suffix is no coating. */
  readonly mass?: MassNotation;
  /** True where the suffix is so short that it counts only beside the name of its standard. */
  readonly onlyNamed?: true;
  /** The standard whose own way of writing it is: where it has the grade, no other is meant. */
  readonly ownOf?: RegExp;
  /** True where the suffix promises the minimum tensile strength. */
  readonly tensileOrdered?: true;
}

/** Standards of sheet steel: only steel has a metallic coating behind a plus. */
const steelStandards = /^(?:EN 10|SEW|DIN|VDA|SAE|ASTM A|JIS|JFS|GB|IS|works|trade)/;

const masses = String.raw`(?:(?<m1>\d{2,3})(?:\/(?<m2>\d{2,3}))?)`;

/** What may follow a grade. Separators are gone from the key, so a suffix counts only if a known grade stands before it. */
const suffixes: readonly Suffix[] = [
  // EN, GB: +Z100MB, +ZE75/75, +AS150, +ZA130MCO
  {
    form: new RegExp(
      String.raw`^(?<base>.+?)\+(?<coat>ZE|ZN|ZF|ZA|ZM|AZ|AS|Z)${masses}?[NMR]?[ABC]?[CPOSUL]{0,3}$`,
    ),
    standards: steelStandards,
    mass: 'european',
  },
  // VDA: -GI50/50-U, -UC
  {
    form: new RegExp(
      String.raw`^(?<base>.+?)(?<coat>UNC|UC|GI|GA|EG|ZM|ZA|AS|AZ)${masses}?(?:[UE](?:PO?|O)?)?$`,
    ),
    standards: /^(?:VDA|SAE|EN 103[34]|EN 10268|trade|works)/,
    ownOf: /^VDA/,
    mass: 'each side',
  },
  { form: /^(?<base>.+?)[UE](?:PO?|O)?$/, standards: /^VDA/ },
  // A plus left out: HX340LAD Z100, 22MnB5 AS150
  {
    form: new RegExp(
      String.raw`^(?<base>.+?)(?<coat>ZE|ZF|ZM|ZA|AZ|AS|Z)${masses}[NMR]?[ABC]?[CPOSUL]{0,3}$`,
    ),
    standards: /^(?:EN 10|GB|works|trade)/,
    mass: 'european',
  },
  // EN 10130, EN 10268, EN 10338: surface A or B, finish bright, semi-bright, normal or rough, oiled (DC04-B-m-O)
  { form: /^(?<base>.+?)[AB](?:[BGMR]O?|O)?$/, standards: /^EN 10(?:130|139|152|268|338)/ },
  // GB/T 5213: surface FB, FC or FD, finish dull or bright (DC01-FB-D)
  { form: /^(?<base>DC0[1-7])F[BCD][DB]?$/, standards: /^EN 10130/ },
  // JIS G 4305: plate or strip, finish
  { form: /^(?<base>S[TU][HS]\d.+?)(?:CP|CS|HP|HS)?(?:2B|2D|BA|HL|NO\.?\d)?$/, standards: /^JIS G 43/ },
  // JIS: tensile on request, non-ageing, temper and surface (-SD), hot-dip coating (-Z27, -F08, -K18), electro-zinc (-E16/E16)
  { form: /^(?<base>.+?)[SA][DB]$/, standards: /^JIS/ },
  { form: /^(?<base>.+?)N(?:[SA][DB])?$/, standards: /^JIS G 3141/ },
  { form: /^(?<base>.+?)T(?:[SA][DB])?$/, standards: /^JIS G (?:3141|3131|33)/, tensileOrdered: true },
  { form: /^(?<base>.+?)(?<coat>[ZFK])(?<m1>\d{2})$/, standards: /^JIS G 33/, mass: 'japanese' },
  { form: /^(?<base>.+?)(?<coat>Z)(?<m1>\d{3})$/, standards: /^JIS G 33/, mass: 'european' },
  { form: /^(?<base>.+?)(?:E\d{1,2}(?:\/E?\d{1,2})?|\d{2}\/\d{2})$/, standards: /^JIS G 3313/ },
  // JFS: zinc mass each side (-45/45)
  { form: /^(?<base>.+?)(?<m1>\d{2})\/(?<m2>\d{2})$/, standards: /^JFS/, mass: 'each side' },
  // ASTM A653, A463, A792: G60, A40, T1-40, AZ50, 60G60G
  {
    form: new RegExp(`^(?<base>.+?)${americanCoatPresent}$`),
    standards: /^(?:ASTM A|SAE)/,
    mass: 'american',
    onlyNamed: true,
  },
  // SAE: CR HD70G70GE behind the grade, and behind the letters of J2329 and J2340 (K, F, O)
  {
    form: new RegExp(String.raw`^(?:CR|HR)?(?<base>\d{3,4}[A-Z]{1,2}?[12]?|.+?Y)[KFO]?${saeCoat}$`),
    standards: /^SAE J2(?:340|745)/,
    mass: 'american',
    onlyNamed: true,
  },
  {
    form: new RegExp(String.raw`^(?<base>[CH]R\d)(?:[A-Z]C?)?${saeCoat}$`),
    standards: /^SAE J2329/,
    mass: 'american',
    onlyNamed: true,
  },
  // Hot rolled: pickled, pickled and oiled
  { form: /^(?<base>.+?)PO?$/, standards: /^(?:EN 10149|EN 10111|SEW 092|JIS G 31[13]|JFS A 1001)/ },
  // SAE J2329: surface or ageing letter, C for a carbon minimum
  { form: /^(?<base>.+?)[A-Z]C?$/, standards: /^SAE J2329/, onlyNamed: true },
  // SAE J2340: killed, sulphide controlled, other
  { form: /^(?<base>\d{3}[XY])[KFO]$/, standards: /^SAE J2340/ },
];

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
  for (const { form, standards, mass, onlyNamed, tensileOrdered, ownOf } of suffixes) {
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
  return (electroZinc.length > 0 ? electroZinc : namedRows(base)).filter(
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
  const { byKey, numberToKey } = gradeTable();
  const rows = byKey.get(key);
  if (rows !== undefined) return rows;
  const plus = key.indexOf('+');
  const grade = numberToKey.get(plus < 0 ? key : key.slice(0, plus));
  if (grade !== undefined) {
    const found = byKey.get(`${grade.key}${plus < 0 ? '' : key.slice(plus)}`) ?? [];
    return found.map((row) => ({ ...row, mark: worseMark(row.mark, grade.mark) }));
  }
  const hotDip = /^(H[CD]T\d+[A-Z]{1,2})D$/.exec(key)?.[1];
  if (hotDip !== undefined)
    return (byKey.get(hotDip) ?? []).filter((row) => /^EN 103[34]6/.test(row.standard));
  for (const spelling of otherSpellings(key, standardNamed)) {
    const found = byKey.get(spelling);
    if (found !== undefined) return found;
  }
  const trade = tradeGrade(key);
  return trade === undefined ? [] : [trade];
}
