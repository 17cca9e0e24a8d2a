import type { NameContent, NameFault, NameForm, NameParts } from './name-form.ts';
import { entry, figure, ofPair, ofTensile, ofYield } from './name-form.ts';

const phases = { DP: 'dual_phase', TRIP: 'trip', HHE: 'ferrite_bainite', MS: 'martensitic' };

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

const gradeWords = {
  HSLAS: 'hsla',
  HSLASF: 'hsla',
  UHSS: 'hsla_ultra_high',
  SS: 'structural',
  SHS: 'solid_solution',
  BHS: 'bake_hardening',
};

/** NIST SP 811, rounded as the standards round their bracketed values: down to the next 5 MPa. */
const mpaPerKsi = 6.894757;

/** Names of SAE J2745 (tensile strength first), SAE J2340 and of the ASTM sheet standards (yield in ksi). */
export const americanNames: readonly NameForm[] = [
  {
    standards: ['SAE J2745', 'ASTM A1079', 'ASTM A1088'],
    form: /^(?:CR|HR)?(?<t>DP|TRIP|HHE|MS)?(?:GRADE)?(?<rm>\d{3,4})T\/(?<re>\d{3,4})Y(?<u>DP|TRIP|HHE|MS)?$/,
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
    read: ({ n, t }) => ofYield(entry(yieldLetters, t), n) ?? ofTensile(entry(tensileLetters, t), n),
  },
  {
    standards: ['ASTM A1008', 'ASTM A1011', 'ASTM A653'],
    form: /^(?<t>HSLASF|HSLAS|UHSS|SS|SHS|BHS)(?:GRADE|GR\.?)(?<ksi>\d{2,3})(?:\[(?<re>\d{3})\])?(?:(?:CLASS|TYPE)[12])?$/,
    read: ({ t, ksi, re }: NameParts): NameContent | NameFault | undefined => {
      const bracketed = figure(re, 100, 1500);
      const converted = Math.floor((Number(ksi) * mpaPerKsi) / 5) * 5;
      if (re !== undefined && (bracketed === undefined || Math.abs(bracketed - converted) > 15)) {
        return {
          fault: `gives ${ksi ?? ''} ksi and ${re} MPa, which are not the same strength. Read the drawing again.`,
        };
      }
      return ofYield(entry(gradeWords, t), String(bracketed ?? converted));
    },
  },
  {
    standards: ['ASTM A1008', 'ASTM A1011', 'ASTM A653'],
    form: /^(?:CS|DS|DDS|EDDS|FS)(?:TYPE[A-C])?$/,
    read: () => ({ familyKey: 'mild' }),
    onlyNamed: true,
  },
];
