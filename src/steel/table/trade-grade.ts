import type { GradeRow } from './grade-row.ts';
import { phaseLetters } from '../grammar/family-letters.ts';
import { steelFamily } from '../steel-family.ts';

/** Families that trade names of the form DP600 or 980DP announce; the number is a tensile step. */
const prefixes: Readonly<Record<string, string>> = {
  ...phaseLetters,
  ...{ PHS: 'press_hardening', HPF: 'press_hardening', HF: 'press_hardening' },
};

/** The trade rounds the tensile steps of the standards upwards (EN 10346:2015 itself renamed HCT600X to HCT590X). */
const standardSteps: ReadonlyMap<number, number> = new Map([
  [500, 490],
  [600, 590],
  [700, 690],
  [800, 780],
  [1000, 980],
  [1200, 1180],
]);

/** Steps of tensile strength in MPa that sheet is made in and the trade speaks of; a figure beside them is a slip. Practice. */
const knownSteps: ReadonlySet<number> = new Set([
  ...[
    440, 450, 490, 500, 550, 560, 580, 590, 600, 650, 690, 700, 750, 760, 780, 800, 850, 900, 950, 980, 1000,
  ],
  ...[1050, 1100, 1150, 1180, 1200, 1250, 1270, 1300, 1310, 1320, 1350, 1370, 1400, 1470, 1500, 1600, 1700],
  ...[1800, 1850, 1900, 2000, 2100, 2200],
]);

/** Words that name a material without a grade, by comparison key. Common practice; no strength goes with them. */
const words: Readonly<Record<string, readonly string[]>> = {
  mild: [
    ...['MILDSTEEL', 'MILD', 'LOWCARBONSTEEL', 'DEEPDRAWINGSTEEL'],
    // The qualities that CS, DS, DDS and EDDS of ASTM A1008 took the place of (commercial, drawing, special killed, deep, extra deep).
    ...['CQ', 'DQ', 'DQSK', 'DQAK', 'AKDQ', 'DDQ', 'EDDQ', 'SEDDQ'],
  ],
  press_hardening: [
    'BORONSTEEL',
    'BORON',
    ...['BORONALLOY', 'BORONALLOYED', 'MANGANESEBORON', 'MNB'].flatMap((word) => [word, `${word}STEEL`]),
    'PHS',
    'HPF',
    ...[
      ...['PRESSHARDENED', 'PRESSHARDENING', 'PRESSQUENCHED', 'PRESSQUENCHING', 'DIEQUENCHED'],
      ...[
        'HOTSTAMPED',
        'HOTSTAMPING',
        'HOTFORMED',
        'HOTFORMING',
        'HOTPRESSED',
        'HOTPRESSFORMED',
        'HOTPRESSFORMING',
      ],
    ].flatMap((word) => [word, `${word}STEEL`, `${word}BORON`, `${word}BORONSTEEL`]),
  ],
  aluminium: [
    'ALUMINIUM',
    'ALUMINUM',
    'ALUMINIUMALLOY',
    'ALUMINUMALLOY',
    'ALUMINIUMSHEET',
    'ALUMINUMSHEET',
    'ALUMINIUMEXTRUSION',
    'ALUMINUMEXTRUSION',
  ],
  ...Object.fromEntries(
    ['5', '6', '7'].map((first) => [
      `aluminium_${first}xxx`,
      ['', 'AL', 'AA', 'ALUMINIUM', 'ALUMINUM'].flatMap((word) => [
        `${word}${first}XXX`,
        `${word}${first}000SERIES`,
      ]),
    ]),
  ),
  aluminium_casting: ['ALUMINIUM', 'ALUMINUM'].flatMap((metal) => castings(metal)),
  stainless: ['STAINLESSSTEEL', 'STAINLESS'],
  magnesium: ['MAGNESIUM', 'MAGNESIUMALLOY', ...castings('MAGNESIUM')],
  plastic: ['PLASTIC', 'PLASTICS'],
  composite: ['COMPOSITE', 'FIBRECOMPOSITE', 'FIBERCOMPOSITE'],
  composite_cfrp: ['CARBONFIBRE', 'CARBONFIBER'],
  composite_thermoplastic: ['GMT', 'GLASSMATTHERMOPLASTIC', 'LWRT'],
  composite_gfrp: ['GLASSFIBRE', 'GLASSFIBER', 'FIBREGLASS', 'FIBERGLASS'],
};

function castings(metal: string): readonly string[] {
  return [`CAST${metal}`, `DIECAST${metal}`, `${metal}CASTING`, `${metal}DIECASTING`];
}

const familyOfWord: ReadonlyMap<string, string> = new Map(
  Object.entries(words).flatMap(([familyKey, spellings]) =>
    spellings.map((word): readonly [string, string] => [word, familyKey]),
  ),
);

/** Four letters, four figures and the unit. */
const longestTradeName = 11;

/** Reads a trade name or word as a row marked practice; undefined for anything else. */
export function tradeGrade(key: string): GradeRow | undefined {
  const ofWord = familyOfWord.get(key);
  if (ofWord !== undefined) return row(steelFamily(ofWord).word, ofWord);
  if (key.length > longestTradeName) return undefined;
  const plain = key.replace('Q&P', 'QP');
  const match = /^([A-Z]{2,4})(\d{3,4})(?:MPA)?$/.exec(plain) ?? /^(\d{3,4})([A-Z]{2,4})$/.exec(plain);
  if (match === null) return undefined;
  const [, first = '', second = ''] = match;
  const [letters, figures] = /^\d/.test(first) ? [second, first] : [first, second];
  // Behind the number HF is a shop's own word as well.
  if (letters === second && /^HP?F$/.test(letters)) return undefined;
  const familyKey = Object.hasOwn(prefixes, letters) ? prefixes[letters] : undefined;
  const step = Number(figures);
  if (familyKey === undefined || step < 400 || step > 2200 || step % 10 !== 0) return undefined;
  // The number of a press-hardened name is a nominal class after hardening, not a minimum.
  if (familyKey === 'press_hardening')
    return { ...row(`${letters}${figures}`, familyKey), tensileTypicalMpa: step };
  return row(`${letters}${figures}`, familyKey, standardSteps.get(step) ?? step);
}

/** Whether the figure of a trade name is one that sheet is made in. Names without a figure have none that could be wrong. */
export function isTradeStep(designation: string): boolean {
  const figures = /\d{3,4}/.exec(designation)?.[0];
  return figures === undefined || knownSteps.has(Number(figures));
}

function row(designation: string, familyKey: string, tensileMinMpa?: number): GradeRow {
  return {
    designation,
    standard: 'trade name',
    familyKey,
    ...(tensileMinMpa === undefined ? {} : { tensileMinMpa }),
    state: familyKey === 'press_hardening' ? 'hardened' : 'unknown',
    mark: 'practice',
  };
}
