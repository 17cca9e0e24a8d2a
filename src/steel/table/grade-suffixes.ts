import { americanCoatPresent, saeCoat } from '../coating/coat.ts';
import type { MassNotation } from '../coating/coating-mass.ts';
import { coatWords } from '../coating/coating.ts';

/** One way in which something follows a grade. */
export interface Suffix {
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
export const gradeSuffixes: readonly Suffix[] = [
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
  // In words: 22MnB5 AlSi 150, HSLA420 HDG, HC340LA electro-galvanized
  {
    form: new RegExp(String.raw`^(?<base>.+?)\+?(?<coat>${coatWords})${masses}?(?:COATED)?$`),
    standards: steelStandards,
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
