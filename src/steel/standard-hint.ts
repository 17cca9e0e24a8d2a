/** Spellings of the standards whose grades are read, as comparison keys, alone at the head of a designation. */
const reference = new RegExp(
  `^(?:${[
    String.raw`(?:DIN|BS|NF|UNI)*EN(?:ISO)?\d{3,5}[1-9]?(?:[:.]?(?:19|20)\d\d)?`,
    String.raw`VDA239(?:[125]00)?(?::?20\d\d)?`,
    String.raw`JISG\d{4}(?::?(?:19|20)\d\d)?`,
    String.raw`JFSA\d{4}(?::?20\d\d)?`,
    String.raw`(?:SAE)?J\d{4}(?::?(?:19|20)\d\d)?`,
    String.raw`GB\/?T\d{4,5}(?:\.\d{1,2})?(?::?20\d\d)?`,
    String.raw`IS513[12]?(?::?20\d\d)?`,
    String.raw`BS1449`,
    String.raw`(?:ASTM)?A\d{3,4}M?(?:\/A\d{3,4}M?)?`,
    String.raw`SEW09\d`,
    String.raw`DIN1623[12]?`,
    // Not a standard, but written in the same place: Werkstoff number
    String.raw`W\.?NR\.?`,
  ].join('|')})[:.,]?$`,
);

const longestReference = 24;

export interface HintSplit {
  /** The named standard as a comparison key, without publisher prefix and year; undefined when none is named. */
  readonly standard?: string;
  readonly rest: string;
}

/** Ways to read a key as standard and grade, the one without a standard first: only the grade table can tell. */
export function* hintSplits(key: string): Generator<HintSplit, void> {
  yield { rest: key };
  for (let at = Math.min(longestReference, key.length - 2); at >= 4; at--) {
    const head = key.slice(0, at);
    if (!reference.test(head)) continue;
    const standard = standardKey(head);
    yield standard === 'WNR' ? { rest: key.slice(at) } : { standard, rest: key.slice(at) };
  }
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
    .replaceAll(/[./]/g, '');
}
