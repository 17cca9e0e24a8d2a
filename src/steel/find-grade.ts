import type { Coating } from './coating.ts';
import { coatingOfCode } from './coating.ts';
import type { GradeRow } from './grade-row.ts';
import { gradeTable } from './grade-table.ts';
import { tradeGrade } from './trade-grade.ts';

export interface FoundGrade {
  readonly rows: readonly GradeRow[];
  readonly coating?: Coating;
}

interface Suffix {
  readonly form: RegExp;
  /** The standards whose names take this suffix. */
  readonly standards: RegExp;
  /** True where the suffix is so short that it counts only beside the name of its standard. */
  readonly onlyNamed?: true;
}

/** Standards of sheet steel: only steel has a metallic coating behind a plus. */
const steelStandards = /^(?:EN 10|SEW|DIN|VDA|SAE|ASTM A|JIS|JFS|GB|IS|works|trade)/;

/** What may follow a grade. Separators are gone from the key, so a suffix counts only if a known grade stands before it. */
const suffixes: readonly Suffix[] = [
  // EN, GB: +Z100MB, +ZE75/75, +AS150, +ZA130MCO
  {
    form: /^(.+?)\+(?<code>ZE|ZN|ZF|ZA|ZM|AZ|AS|Z)(?:\d{2,3}(?:\/\d{2,3})?)?[NMR]?[ABC]?[CPOSUL]{0,3}$/,
    standards: steelStandards,
  },
  // VDA: -GI50/50-U, -UC
  {
    form: /^(.+?)(?<code>UNC|UC|GI|GA|EG|ZM|ZA|AS|AZ)(?:\d{2,3}(?:\/\d{2,3})?)?[UE]?$/,
    standards: /^(?:VDA|SAE|trade|works)/,
  },
  { form: /^(.+?)[UE]$/, standards: /^VDA/ },
  // A plus left out: HX340LAD Z100, 22MnB5 AS150
  {
    form: /^(.+?)(?<code>ZE|ZF|ZM|ZA|AZ|AS|Z)\d{2,3}(?:\/\d{2,3})?[NMR]?[ABC]?[CPOSUL]{0,3}$/,
    standards: /^(?:EN 10|GB|works|trade)/,
  },
  // JIS: tensile on request, temper and surface (-SD), hot-dip coating (-Z27, -F08, -K18), electro-zinc (-E16/E16)
  { form: /^(.+?)[SA8421][DB]$/, standards: /^JIS/ },
  { form: /^(.+?)T(?:[SA8421][DB])?$/, standards: /^JIS G (?:3141|3131|33)/ },
  { form: /^(.+?)(?<code>[ZFK])\d{2}$/, standards: /^JIS G 33/ },
  { form: /^(.+?)E\d{1,2}(?:\/E?\d{1,2})?$/, standards: /^JIS G 3313/ },
  // JFS: zinc mass each side (-45/45)
  { form: /^(.+?)\d{2}\/\d{2}$/, standards: /^JFS/ },
  // Hot rolled: pickled, pickled and oiled
  { form: /^(.+?)PO?$/, standards: /^(?:EN 10149|EN 10111|SEW 092)/ },
  // SAE J2329: surface or ageing letter, C for a carbon minimum
  { form: /^(.+?)[A-Z]C?$/, standards: /^SAE J2329/, onlyNamed: true },
];

/** The rows for a comparison key: exact first, then with what may follow a grade taken off. Empty when there is none. */
export function findGrade(key: string, standardNamed: boolean): FoundGrade {
  const exact = namedRows(key);
  if (exact.length > 0) return { rows: exact };
  const rows = new Set<GradeRow>();
  let coating: Coating | undefined;
  for (const { form, standards, onlyNamed } of suffixes) {
    if (onlyNamed === true && !standardNamed) continue;
    const match = form.exec(key);
    const base = match?.[1];
    if (base === undefined) continue;
    const code = match?.groups?.['code'] ?? '';
    const electroZinc = code === 'ZE' ? namedRows(`${base}+ZE`) : [];
    const candidates = electroZinc.length > 0 ? electroZinc : namedRows(base);
    for (const row of candidates) {
      if (!standards.test(row.standard)) continue;
      rows.add(row);
      coating ??= coatingOfCode(code);
    }
  }
  return { rows: [...rows], ...(coating === undefined ? {} : { coating }) };
}

/** Rows of a bare grade name, under its own or another accepted spelling. */
function namedRows(key: string): readonly GradeRow[] {
  const { byKey, numberToKey } = gradeTable();
  const rows = byKey.get(key) ?? byKey.get(numberToKey.get(key) ?? '');
  if (rows !== undefined) return rows;
  const numbered = /^(1\.\d{4})(\+.+)$/.exec(key);
  if (numbered !== null)
    return byKey.get(`${numberToKey.get(numbered[1] ?? '') ?? ''}${numbered[2] ?? ''}`) ?? [];
  const hotDip = /^(H[CD]T\d+[A-Z]{1,2})D$/.exec(key)?.[1];
  if (hotDip !== undefined)
    return (byKey.get(hotDip) ?? []).filter((row) => /^EN 103[34]6/.test(row.standard));
  for (const spelling of otherSpellings(key)) {
    const found = byKey.get(spelling);
    if (found !== undefined) return found;
  }
  const trade = tradeGrade(key);
  return trade === undefined ? [] : [trade];
}

function otherSpellings(key: string): readonly string[] {
  const chinese = /^(HC|HD|CR|HR)(\d{3,4}\/\d{3,4}[A-Z]{2})D?$/.exec(key);
  if (chinese !== null) {
    const [, roll = '', rest = ''] = chinese;
    return [`${roll}${rest}`, `${roll === 'HC' || roll === 'CR' ? 'CR' : 'HR'}${rest}`];
  }
  const american = /^(?:CR|HR)?(DP|TRIP|MS)?(\d{3,4}T\/\d{3,4}Y)(DP|TRIP|MS)?$/.exec(key);
  if (american !== null) return [`${american[1] ?? american[3] ?? ''}${american[2] ?? ''}`];
  const aluminium = /^(?:EN)?(?:AW|AA|A)(\d{4}[A-Z]?)([OHT]\w*)?$/.exec(key);
  if (aluminium !== null) {
    const [, alloy = '', temper] = aluminium;
    return [temper === undefined ? `ENAW${alloy}` : `${alloy}${temper}`];
  }
  return [];
}
