import { spokenUpTo } from './spoken-strength.ts';
import { mpaPerKgfOnMm2, mpaPerUnit } from './stress-unit.ts';

/** A strength that a text states in place of a grade. */
export interface StatedStrength {
  readonly mpa: number;
  /** Upper end, where the text gives a range. */
  readonly maxMpa?: number;
  /** What a rounded figure may stand for at most; the figure itself where it is not rounded. */
  readonly upToMpa: number;
  /** What the text says it is; `open` where it does not, and a sheet may quote either. */
  readonly of: 'tensile' | 'yield' | 'open';
  /** True where the number cannot be the strength of any sheet. */
  readonly absurd: boolean;
  /** True for a limit from above alone, which says nothing of how strong the sheet may be. */
  readonly onlyMost?: true;
}

/** Spellings of a unit in upper case, and MPa in one of it. */
const units: readonly (readonly [spellings: RegExp, mpa: () => number])[] = [
  [/^(?:MPA|MEGAPASCALS?|N\/(?:SQ ?MM|MM\^?2))$/, () => mpaPerUnit('MPa')],
  [/^(?:GPA|GIGAPASCALS?)$/, () => mpaPerUnit('GPa')],
  [/^KSI$/, () => mpaPerUnit('ksi')],
  [/^PSI$/, () => mpaPerUnit('psi')],
  [/^(?:KGF?\/(?:SQ ?MM|MM\^?2)|KGF?|KILOS?|K)$/, mpaPerKgfOnMm2],
];

/** Steps of the Japanese series in MPa by the kgf/mm² from which they were rounded: 60 kgf/mm² is 588 MPa and named 590. */
const japaneseSteps: ReadonlyMap<number, number> = new Map([
  ...([
    [35, 340],
    [40, 390],
    [45, 440],
    [50, 490],
    [55, 540],
    [60, 590],
    [80, 780],
  ] as const),
  ...([
    [100, 980],
    [120, 1180],
    [150, 1470],
  ] as const),
]);

const before = String.raw`(?<before>(?:(?:MIN(?:IMUM)?\.?|>=?|≥|AT LEAST|NOT LESS THAN|(?:MORE|GREATER|HIGHER) THAN|OVER|ABOVE|FROM|ABOUT|APPROX\.?|CA\.?|~|MAX(?:IMUM)?\.?|<=?|≤|AT MOST|UP TO|R ?M|R ?E[HL]?|R ?P ?0\.2|UTS|TS|YS|TENSILE(?: STRENGTH)?|YIELD(?: STRENGTH| POINT)?|PROOF(?: STRENGTH)?|STRENGTH|=|:) ?){0,3})`;
const number = String.raw`(\d{1,6}(?:\.\d{1,3})?)`;
const unit = String.raw`(?<unit>MPA|MEGAPASCALS?|N\/(?:SQ ?MM|MM\^?2)|GPA|GIGAPASCALS?|KSI|PSI|KGF?\/(?:SQ ?MM|MM\^?2)|KGF?|KILOS?|K)`;
const after = String.raw`(?<after>(?: ?(?:CLASS|GRADE|STEEL|SHEET|TENSILE(?: STRENGTH)?|YIELD(?: STRENGTH| POINT)?|STRENGTH|MIN(?:IMUM)?\.?|MAX(?:IMUM)?\.?|UTS|PLUS)){0,3})`;
const form = new RegExp(
  `^${before}${number}\\+? ?(?:${unit.replace('<unit>', '<early>')} ?)?(?:(?:-|TO|\\.{2,3}|…) ?${number} ?)?(?:${unit}\\+?)?${after}$`,
);

/** No sheet for bodies is weaker or stronger than this, in MPa. */
const sheet = { least: 200, most: 2500 };

/** Undefined for a text that states no strength with its unit. */
export function statedStrength(text: string): StatedStrength | undefined {
  const match = form.exec(plain(text));
  if (match === null) return undefined;
  const { before: head = '', after: tail = '', early, unit: late } = match.groups ?? {};
  const spelled = late ?? early ?? unitOfSymbol(head, tail);
  if (spelled === undefined) return undefined;
  const parts: readonly (string | undefined)[] = match.slice(2);
  const figures = parts.filter((one) => one !== undefined).filter((one) => /^\d/.test(one));
  const [first, second] = figures.map((one) => inMpa(one, spelled));
  if (first === undefined) return undefined;
  const words = `${head} ${tail}`;
  const mpa = Math.min(first, second ?? first);
  const maxMpa = second === undefined ? undefined : Math.max(first, second);
  const most = /MAX|<|≤|AT MOST|UP TO/.test(words);
  return {
    mpa,
    ...(maxMpa === undefined ? {} : { maxMpa }),
    upToMpa: isSpoken(figures, spelled) ? upToMpa(figures, spelled) : mpa,
    of: ofWhat(words, spelled),
    absurd: mpa < sheet.least || (maxMpa ?? mpa) > sheet.most,
    ...(most && second === undefined ? { onlyMost: true } : {}),
  };
}

/** Rm 980 and Rp0.2 340 are in MPa (ISO 6892-1) where no unit stands behind; words alone may be of either world. */
function unitOfSymbol(head: string, tail: string): string | undefined {
  return /\bR ?(?:M|E[HL]?|P ?0\.2)\b/.test(`${head} ${tail}`) ? 'MPA' : undefined;
}

function upToMpa(figures: readonly string[], spelled: string): number {
  const factor = units.find(([spellings]) => spellings.test(spelled))?.[1]() ?? Number.NaN;
  return spokenUpTo(Math.min(...figures.map(Number))) * factor;
}

/** A whole figure of ksi or kgf/mm² is rounded. */
function isSpoken(figures: readonly string[], spelled: string): boolean {
  return /^K/.test(spelled) && figures.every((one) => /^\d+$/.test(one));
}

/** A kilogram-force a square millimetre is the Japanese way to name a tensile class. */
function ofWhat(words: string, spelled: string): 'tensile' | 'yield' | 'open' {
  if (/\b(?:YIELD|PROOF|YS|R ?E[HL]?|R ?P ?0\.2)\b/.test(words)) return 'yield';
  if (/\b(?:TENSILE|UTS|TS|R ?M)\b/.test(words) || /^K(?!SI)/.test(spelled)) return 'tensile';
  return 'open';
}

function inMpa(figures: string, spelled: string): number {
  const factor = units.find(([spellings]) => spellings.test(spelled))?.[1]() ?? Number.NaN;
  const value = Number(figures);
  return (/^K(?!SI)/.test(spelled) ? japaneseSteps.get(value) : undefined) ?? Math.round(value * factor);
}

/** Upper case, plain dashes, single blanks, a decimal point; thousands in one piece: 217,000 psi, 1,500 MPa, 1 500 MPa. */
function plain(text: string): string {
  return text
    .normalize('NFKC')
    .toUpperCase()
    .replaceAll(/[\p{Pd}\u2212]/gu, '-')
    .replaceAll(/(\d)[,.](\d{3})(?=\s*PSI)/g, '$1$2')
    .replaceAll(/(?<![\d.,])([12])[,. '](\d{3})(?=\+?\s*(?:MPA|MEGAPASCAL|N\/))/g, '$1$2')
    .replaceAll(/(\d),(?=\d)/g, '$1.')
    .replaceAll(/(?<=[A-Z])-(?=[A-Z])/g, ' ')
    .replaceAll(/\s+/g, ' ')
    .trim();
}
