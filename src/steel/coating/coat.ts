import type { Coating } from './coating.ts';
import { coatCode, coatingOfCode } from './coating.ts';
import type { CoatingMass, MassNotation } from './coating-mass.ts';
import { coatingMass, isListedMass } from './coating-mass.ts';

/** What stands behind a grade for its metallic coating. */
export interface Coat {
  readonly coating?: Coating;
  readonly mass?: CoatingMass;
  /** The coating as written, where sheet is not ordered with such a mass: a slip, perhaps for something else. */
  readonly unlisted?: string;
}

/** What may follow a grade of EN and GB standards: +Z100MB, +ZE75/75, +AS150, +ZA130MCO. Read by `coatOf`. */
export const europeanCoat = String.raw`(?:\+(?<coat>ZE|ZN|ZF|ZA|ZM|AZ|AS|Z)(?:(?<m1>\d{2,3})(?:\/(?<m2>\d{2,3}))?)?[NMR]?[ABC]?[CPOSUL]{0,3})?`;

/** What may follow a grade of VDA 239: -GI50/50-U, -UC, -EG29/29-E-PO (phosphated, oiled). Read by `coatOf`. */
export const vdaCoat = String.raw`(?:(?<coat>UNC|UC|GI|GA|EG|ZM|ZA|AS|AZ)(?:(?<m1>\d{2,3})(?:\/(?<m2>\d{2,3}))?)?)?(?:[UE](?:PO?|O)?)?`;

/**
 * What may follow a grade of the ASTM sheet standards: G60, A40 (A653), T1-40 (A463), AZ50 (A792), the same in g/m² with Z275, ZF180
 * and AZM150, in brackets behind the first too; and each side for itself, 60G60G. Read by `coatOf`.
 */
export const americanCoatPresent = String.raw`(?:(?<coat>AZM?|ZF|T[12]M?|[GAZ])(?<m1>\d{2,3})(?:\[(?:AZM|ZF|T[12]M|Z)\d{2,3}\])?|(?<m3>\d{2,3})(?<side>[GA])(?:(?<m4>\d{2,3})[GA])?)`;
export const americanCoat = `${americanCoatPresent}?`;

/**
 * What may follow a grade of SAE J2329, J2340 and J2745: cold or hot rolled, the coating with g/m² each side, the surface, as
 * CR HD70G70GE. HD is hot-dip, EG electrolytic; G zinc, A zinc-iron. Read by `coatOf`.
 */
export const saeCoat = String.raw`(?:CR|HR)?(?:(?:HD|EG)(?<m3>\d{2,3})(?<side>[GA])(?:(?<m4>\d{2,3})[GA])?)?[EUZ]?`;

/** Reads the named groups of a matched form: `coat`, `m1` and `m2`; `m3`, `side` and `m4` for the figures-first form of ASTM. */
export function coatOf(groups: Readonly<Record<string, string | undefined>>, usual: MassNotation): Coat {
  const { coat, m1, m2, m3, side, m4 } = groups;
  const code = coat === undefined ? side : coatCode(coat);
  if (code === undefined) return m1 === undefined ? {} : massOnly(m1, m2);
  const notation = side !== undefined ? 'each side' : notationOf(code, m2, usual);
  const coating = coatingOfCode(
    usual === 'american' || side !== undefined ? (americanCodes[code] ?? code) : code,
  );
  const kind = coating === undefined ? {} : { coating };
  const first = m1 ?? m3;
  if (first === undefined || coating === 'none') return kind;
  const second = m2 ?? m4;
  const written = { code: massCode(code), first, notation, ...(second === undefined ? {} : { second }) };
  if (!isListedMass(written))
    return { ...kind, unlisted: `${code}${first}${second === undefined ? '' : `/${second}`}` };
  return { ...kind, mass: coatingMass(written) };
}

/** Figures without a code, 45/45: zinc of the kind that the standard implies. */
function massOnly(first: string, second: string | undefined): Coat {
  const written = {
    code: '',
    first,
    notation: 'each side',
    ...(second === undefined ? {} : { second }),
  } as const;
  return isListedMass(written)
    ? { mass: coatingMass(written) }
    : { unlisted: second === undefined ? first : `${first}/${second}` };
}

/** Some codes are common to EN and VDA, which writes the mass of each side behind a stroke. */
function notationOf(code: string, second: string | undefined, usual: MassNotation): MassNotation {
  if (usual === 'american') return /^Z|M$/.test(code) ? 'european' : usual;
  if (usual === 'japanese') return usual;
  if (/^Z[EN]$/.test(code)) return 'european';
  return second !== undefined || /^(?:GI|GA|EG)$/.test(code) ? 'each side' : 'european';
}

/** Codes of ASTM by those of VDA and EN. T2 is aluminium without silicon, which has no code there. */
const americanCodes: Readonly<Record<string, string>> = {
  G: 'GI',
  A: 'GA',
  T1: 'AS',
  T1M: 'AS',
  AZM: 'AZ',
};

/** The letter of the metric form falls away: AZM150 is AZ150 of EN 10346. */
function massCode(code: string): string {
  return code.replace(/(?<=AZ|T[12])M$/, '');
}
