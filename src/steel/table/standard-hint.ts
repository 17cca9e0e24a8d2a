import { designationKey } from '../designation-key.ts';

/** Spellings of the standards whose grades are read, as comparison keys, alone at the head of a designation. */
const reference = new RegExp(
  `^(?:${[
    String.raw`(?:DIN|BS|NF|UNI)*EN(?:ISO)?\d{3,5}[1-9]?(?:[:.]?(?:19|20)\d\d)?(?:\+A[1-3](?::?20\d\d)?)?`,
    String.raw`VDA239(?:[125]00)?(?::?20\d\d)?`,
    String.raw`JIS[GH]\d{4}(?::?(?:19|20)\d\d)?`,
    String.raw`JFSA\d{4}(?::?20\d\d)?`,
    String.raw`(?:SAE)?J\d{4}(?::?(?:19|20)\d\d)?`,
    String.raw`GB\/?T\d{4,5}(?:\.\d{1,2})?(?::?20\d\d)?`,
    String.raw`IS513[12]?(?::?20\d\d)?`,
    String.raw`BS1449`,
    String.raw`(?:ASTM)?(?:A\d{3,4}|B\d{2,3})(?:M?(?:\d\d[A-E]?)?|(?:M?\/[AB]\d{2,4}(?:M(?:\d\d[A-E]?)?)?))?`,
    String.raw`ISO(?:1043(?:[12])?|11469)(?::?20\d\d)?`,
    String.raw`SEW09\d`,
    String.raw`DIN1623[12]?`,
    // Not a standard, but written in the same place
    String.raw`W(?:\.?NR|ERKSTOFF(?:NR|NUMMER)?)\.?|MAT(?:ERIAL)?\.?(?:NO|NR|NUMBER)\.?`,
  ].join('|')})[:.,]?$`,
);

/** With what a reference can begin; most grades do not, and are then not cut at every place. */
const opening = /^(?:DIN|BS|NF|UNI|EN|VDA|JIS|JFS|J\d|SAE|SEW|GB|IS|ASTM|[AB]\d|W|MAT)/;

const longestReference = 28;

export interface HintSplit {
  /** The named standard as a comparison key, without publisher prefix and year; undefined when none is named. */
  readonly standard?: string;
  readonly rest: string;
}

/** Ways to read a key as standard and grade, the one without a standard first: only the grade table can tell. */
export function* hintSplits(key: string): Generator<HintSplit, void> {
  yield { rest: key };
  if (!opening.test(key)) return;
  const shortest = key.startsWith('WNR') ? 3 : 4;
  for (let at = Math.min(longestReference, key.length - 2); at >= shortest; at--) {
    const head = key.slice(0, at);
    if (!reference.test(head)) continue;
    const standard = standardKey(head);
    yield isNumberWord(standard) ? { rest: key.slice(at) } : { standard, rest: key.slice(at) };
  }
}

/**
 * A text whose last words, or those in brackets, are a standard: `HC340LA (EN 10268)`, `DC04 EN 10130`. Only whole words count: the
 * end of a name is not searched for one. Undefined where there is none.
 */
export function standardBehind(
  text: string,
): { readonly text: string; readonly standard: string } | undefined {
  const edges = [...text.matchAll(/[\s(,;]+/g)];
  for (const edge of edges) {
    const key = designationKey(text.slice(edge.index + edge[0].length));
    const before = text
      .slice(0, edge.index)
      .replace(/\s+(?:acc\.?|according|as)?\s*(?:to|per|by|of|in)\s*$/i, '')
      .trim();
    if (key.length > longestReference || before === '' || !reference.test(key)) continue;
    const standard = standardKey(key);
    if (!isNumberWord(standard)) return { text: before, standard };
  }
  return undefined;
}

/** Werkstoffnummer, material number: no standard, but written in the same place. */
function isNumberWord(head: string): boolean {
  return /^(?:W|MAT)/.test(head);
}

/** Standards that lay down tolerances, coatings in general or papers, and list no grade: named beside one they settle nothing. */
const withoutGrades =
  /^(?:EN(?:10131|10140|10143|10051|10029|10048|10204|10169|10021|10027[12]?|10020|10079)|JISG(?:3193|0404)|ISO\d+)/;

/** Standards that another took the place of, and the one that took it. */
const successors: readonly (readonly [old: RegExp, now: readonly string[]])[] = [
  [/^EN(?:10142|10147|10154|10214|10215|10292|10326|10327)$/, ['EN10346']],
  [/^EN10336$/, ['EN10346', 'EN10338']],
  [/^DIN1623[12]?$/, ['DIN1623']],
  // The Chinese standards of soft and of hot-dip coated sheet take over the names of the European ones.
  [/^GBT5213$/, ['EN10130']],
  [/^GBT2518$/, ['EN10346', 'GBT20564']],
  // Stainless: annealed and cold-worked sheet stand in standards of their own that name the same grades.
  [/^(?:A240|A480|A167)M?$/, ['A240', 'A666']],
  [/^A666M?$/, ['A240']],
  [/^EN10088[1-5]?$/, ['EN10088', 'EN10151']],
  [/^EN10151$/, ['EN10088']],
  [/^EN(?:485|573|515|755)[1-9]?$/, ['EN485', 'EN573', 'EN755', 'AA']],
  [/^JISG43(?:04|05|12|13)$/, ['JISG4305', 'JISG4313']],
  // Boron steel for sheet has no standard of its own; drawings name that of the stock.
  [/^EN10083[123]?$/, ['WORKSNAME']],
];

/** True for a standard that no grade can contradict. */
export function namesNoGrade(standard: string): boolean {
  return withoutGrades.test(standard);
}

/** The keys under which rows of a named standard may stand: its own and that of its successor. */
export function standardsMeant(standard: string): readonly string[] {
  return [standard, ...successors.flatMap(([old, now]) => (old.test(standard) ? now : []))];
}

/** True when a row's standard is the one named: parts and years may be missing on either side. */
export function isStandard(rowStandard: string, named: string): boolean {
  const own = standardKey(rowStandard.toUpperCase().replaceAll(/[\s-]/g, ''));
  return own.startsWith(named) || named.startsWith(own);
}

function standardKey(reference: string): string {
  return reference
    .replace(/^(?:DIN|BS|NF|UNI)+(?=EN)|^(?:ASTM|SAE)/, '')
    .replace(/[:.,]$/, '')
    .replace(/:.*$/, '')
    .replace(/^(GB\/?T\d{4,5}(?:\.\d{1,2}?)?)(?:19|20)\d\d$/, '$1')
    .replace(/^([AB]\d{2,4})M?\/.*$|^([AB]\d{3,4})(?:M\d*|\d\d)[A-E]?$/, '$1$2')
    .replaceAll(/[./]/g, '');
}
