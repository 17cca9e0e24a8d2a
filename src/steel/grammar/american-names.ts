import { mpaPerUnit } from '../strength/stress-unit.ts';
import { americanCoat, saeCoat } from '../coating/coat.ts';
import { only, phaseLetters } from './family-letters.ts';
import type { NameContent, NameFault, NameForm, NameParts } from './name-form.ts';
import { entry, figure, ofPair, ofTensile, ofYield } from './name-form.ts';

const phases = { ...only(phaseLetters, 'DP', 'TRIP', 'MS'), HHE: 'ferrite_bainite' };

const yieldLetters = {
  A: 'dent_resistant_non_bh',
  B: 'bake_hardening',
  S: 'solid_solution',
  X: 'hsla',
  Y: 'hsla',
  R: 'recovery_annealed',
};

const tensileLetters = {
  DH: 'dual_phase',
  DL: 'dual_phase',
  DL1: 'dual_phase',
  DL2: 'dual_phase',
  M: 'martensitic',
};

/** Letters of SAE J1392: carbon and manganese with nothing, nitrogen, phosphorus or either; weathering; low-alloy by its spread. */
const oldLetters = {
  ...{ A: 'structural', B: 'structural', C: 'structural', S: 'structural', W: 'structural' },
  ...{ X: 'hsla', Y: 'hsla', Z: 'hsla' },
};

/** Its seven levels, in ksi and as it gives them in MPa. */
const oldYields = {
  ...{ '035': '240', '040': '280', '045': '310', '050': '340', '060': '410', '070': '480', '080': '550' },
};

const gradeWords = {
  HSLAS: 'hsla',
  HSLASF: 'hsla',
  UHSS: 'hsla_ultra_high',
  SS: 'structural',
  SHS: 'solid_solution',
  BHS: 'bake_hardening',
};

/** The MPa that ASTM prints in brackets behind its grades in ksi; from memory, those of the grade table among them. */
const bracketed: ReadonlyMap<number, number> = new Map([
  ...([
    [25, 170],
    [30, 205],
    [33, 230],
    [36, 250],
    [37, 255],
    [40, 275],
    [45, 310],
    [50, 340],
  ] as const),
  ...([
    [55, 380],
    [60, 410],
    [65, 450],
    [70, 480],
    [80, 550],
    [90, 620],
    [100, 690],
    [110, 760],
  ] as const),
]);

const sheetStandards = [
  'ASTM A1008',
  'ASTM A1011',
  'ASTM A653',
  'ASTM A463',
  'ASTM A792',
  'ASTM A875',
  'ASTM A879',
  'ASTM A1018',
  'ASTM A1046',
];

/** Yield in MPa of a grade in ksi; NaN for a bracket that does not go with it. */
function yieldOfKsi(ksi: number, bracket: number | undefined): number {
  const rounded = bracketed.get(ksi) ?? Math.floor((ksi * mpaPerUnit('ksi')) / 5) * 5;
  if (bracket === undefined) return rounded;
  return Math.abs(bracket - rounded) <= 15 ? bracket : Number.NaN;
}

function ofLetter({ n, t }: NameParts): NameContent | undefined {
  return ofYield(entry(yieldLetters, t), n) ?? ofTensile(entry(tensileLetters, t), n);
}

/** Names of SAE J2745 (tensile strength first), SAE J2340 and of the ASTM sheet standards (yield in ksi). */
export const americanNames: readonly NameForm[] = [
  {
    standards: ['SAE J2745', 'ASTM A1079', 'ASTM A1088'],
    form: new RegExp(
      String.raw`^(?:CR|HR)?(?<t>DP|TRIP|HHE|MS)?(?:GRADE)?(?<rm>\d{3,4})T\/(?<re>\d{3,4})Y(?<u>DP|TRIP|HHE|MS)?${saeCoat}$`,
    ),
    read: ({ t, u, rm, re }) =>
      ofPair(
        t === undefined && u === undefined ? 'unnamed' : entry(phases, t ?? u),
        re,
        rm,
        'the tensile strength comes first, as in DP 590T/340Y',
      ),
  },
  {
    standards: ['SAE J2340'],
    form: /^(?<n>\d{3,4})(?<t>DH|DL[12]?|A|B|S|X|Y|R|M)$/,
    read: ofLetter,
  },
  {
    // K, F and O behind the letter tell how the steel was killed and its sulphides controlled.
    standards: ['SAE J2340'],
    form: new RegExp(String.raw`^(?:CR|HR)?(?<n>\d{3,4})(?<t>DH|DL[12]?|A|B|S|X|Y|R|M)[KFO]?${saeCoat}$`),
    read: ofLetter,
    onlyNamed: true,
  },
  {
    // Superseded by J2340: the yield in ksi, the letter, then carbon (H, L) and how it was killed (K, F, O).
    standards: ['SAE J1392'],
    form: new RegExp(String.raw`^(?<ksi>0(?:35|4[05]|[5-8]0))(?<t>[ABCSWXYZ])[HL]?[KFO]?${saeCoat}$`),
    read: ({ ksi, t }) => ofYield(entry(oldLetters, t), entry(oldYields, ksi)),
  },
  {
    standards: sheetStandards,
    form: new RegExp(
      String.raw`^(?<t>HSLASF|HSLAS|UHSS|SS|SHS|BHS)(?:TYPE[AB])?GRADE(?<ksi>\d{2,3})(?:\[(?<re>\d{3})\])?(?:CLASS[1-4]|TYPE[12AB])?${americanCoat}$`,
    ),
    read: ({ t, ksi, re }: NameParts): NameContent | NameFault | undefined => {
      const mpa = yieldOfKsi(Number(ksi), figure(re, 100, 1500) ?? (re === undefined ? undefined : 0));
      if (Number.isNaN(mpa)) {
        return {
          fault: `gives ${ksi ?? ''} ksi and ${re ?? ''} MPa, which are not the same strength. Read the drawing again.`,
        };
      }
      return ofYield(entry(gradeWords, t), String(mpa));
    },
    mass: 'american',
  },
  {
    // SS or HSLAS left out: high-strength either way.
    standards: [...sheetStandards, 'ASTM A570', 'ASTM A607', 'ASTM A611', 'ASTM A715'],
    form: new RegExp(String.raw`^GRADE(?<ksi>\d{2})(?:\[\d{3}\])?(?:CLASS[1-4]|TYPE[12AB])?${americanCoat}$`),
    read: ({ ksi }) => ofYield('structural', String(yieldOfKsi(Number(ksi), undefined))),
    onlyNamed: true,
    mass: 'american',
  },
  {
    // Chemistry alone; the last figures are hundredths of a per cent of carbon.
    standards: ['SAE J403'],
    form: /^(?:SAE|AISI)10(?:0[5-9]|1[0-2])$/,
    read: () => ({ familyKey: 'mild' }),
  },
  {
    standards: sheetStandards,
    form: new RegExp(String.raw`^(?:CS|DS|DDS|EDDS|FS)(?:(?:TYPE)?[A-C]|\+)?${americanCoat}$`),
    read: () => ({ familyKey: 'mild', sure: true }),
    onlyNamed: true,
    mass: 'american',
  },
];
