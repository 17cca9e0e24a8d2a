export type Coating =
  | 'zinc'
  | 'zinc-iron'
  | 'zinc-magnesium'
  | 'zinc-aluminium'
  | 'aluminium-zinc'
  | 'aluminium-silicon'
  | 'zinc-nickel'
  | 'none';

/** Coating letters of EN 10346, EN 10152 and EN 10271, VDA 239-100, and JIS G 3302 and G 3323 (Z, F, K with a mass). */
const codes: Readonly<Record<string, Coating>> = {
  Z: 'zinc',
  ZE: 'zinc',
  GI: 'zinc',
  EG: 'zinc',
  ZF: 'zinc-iron',
  GA: 'zinc-iron',
  F: 'zinc-iron',
  ZM: 'zinc-magnesium',
  K: 'zinc-magnesium',
  ZA: 'zinc-aluminium',
  AZ: 'aluminium-zinc',
  AS: 'aluminium-silicon',
  ZN: 'zinc-nickel',
  UC: 'none',
  UNC: 'none',
};

/** The same in words and short words of the trade, by comparison key. */
const words: Readonly<Record<string, string>> = {
  ...{ ALSI: 'AS', ALUMINISED: 'AS', ALUMINIZED: 'AS' },
  ...{
    HDG: 'GI',
    HDGI: 'GI',
    GALV: 'GI',
    GALVANISED: 'GI',
    GALVANIZED: 'GI',
    HDGA: 'GA',
    GALVANNEALED: 'GA',
  },
  ...{ ELECTROGALVANISED: 'EG', ELECTROGALVANIZED: 'EG', ELECTROZINC: 'EG' },
  ...{ UNCOATED: 'UC' },
};

/** Alternatives of a regular expression for `coatCode`. */
export const coatWords = Object.keys(words).join('|');

/** The letters of a standard for a coating that may be written as a word. */
export function coatCode(word: string): string {
  return Object.hasOwn(words, word) ? (words[word] ?? word) : word;
}

export function coatingOfCode(code: string): Coating | undefined {
  return Object.hasOwn(codes, code) ? codes[code] : undefined;
}

/** The coating that a standard implies although the name says nothing of it: its sheets are all coated so. */
export function coatingOfStandard(standard: string): Coating | undefined {
  if (/^JFS A 3011/.test(standard)) return 'zinc-iron';
  if (/^(?:EN 10152|JIS G 3302|JIS G 3313)/.test(standard)) return 'zinc';
  return undefined;
}
