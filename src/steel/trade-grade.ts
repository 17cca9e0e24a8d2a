import type { GradeRow } from './grade-row.ts';
import { steelFamily } from './steel-family.ts';

/** Families that trade names of the form DP600 or 980DP announce; the number is a tensile step. */
const prefixes: Readonly<Record<string, string>> = {
  DP: 'dual_phase',
  DH: 'dual_phase_high_ductility',
  CP: 'complex_phase',
  TRIP: 'trip',
  TWIP: 'twip',
  QP: 'quench_partition',
  FB: 'ferrite_bainite',
  MS: 'martensitic',
  PHS: 'press_hardening',
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

/** Words that name a material without a grade, by comparison key. Common practice; no strength goes with them. */
const words: Readonly<Record<string, readonly string[]>> = {
  mild: ['MILDSTEEL', 'MILD', 'LOWCARBONSTEEL', 'DEEPDRAWINGSTEEL'],
  press_hardening: [
    'BORONSTEEL',
    'BORON',
    'PHS',
    'HPF',
    ...['PRESSHARDENED', 'PRESSHARDENING', 'HOTSTAMPED', 'HOTSTAMPING', 'HOTFORMED', 'HOTPRESSED'].flatMap(
      (word) => [word, `${word}STEEL`, `${word}BORON`, `${word}BORONSTEEL`],
    ),
  ],
  aluminium: ['ALUMINIUM', 'ALUMINUM', 'ALUMINIUMALLOY', 'ALUMINUMALLOY'],
  stainless: ['STAINLESSSTEEL', 'STAINLESS'],
  magnesium: ['MAGNESIUM', 'MAGNESIUMALLOY'],
  composite: ['COMPOSITE', 'FIBRECOMPOSITE', 'FIBERCOMPOSITE'],
  composite_cfrp: ['CARBONFIBRE', 'CARBONFIBER'],
  composite_gfrp: ['GLASSFIBRE', 'GLASSFIBER', 'FIBREGLASS', 'FIBERGLASS'],
};

/** Reads a trade name or word as a row marked practice; undefined for anything else. */
export function tradeGrade(key: string): GradeRow | undefined {
  for (const [familyKey, spellings] of Object.entries(words)) {
    if (spellings.includes(key)) return row(steelFamily(familyKey).word, familyKey);
  }
  const match = /^([A-Z]{2,4})(\d{3,4})$/.exec(key) ?? /^(\d{3,4})([A-Z]{2,4})$/.exec(key);
  if (match === null) return undefined;
  const [, first = '', second = ''] = match;
  const [letters, figures] = /^\d/.test(first) ? [second, first] : [first, second];
  const familyKey = Object.hasOwn(prefixes, letters) ? prefixes[letters] : undefined;
  const step = Number(figures);
  if (familyKey === undefined || step < 400 || step > 2200 || step % 10 !== 0) return undefined;
  // The number of a press-hardened name is a nominal class after hardening, not a minimum.
  if (familyKey === 'press_hardening') return row(`${letters}${figures}`, familyKey);
  return row(`${letters}${figures}`, familyKey, standardSteps.get(step) ?? step);
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
