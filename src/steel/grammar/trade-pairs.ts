import { vdaCoat } from '../coat.ts';
import { mpaPerUnit } from '../stress-unit.ts';
import { phaseLetters, yieldLetters } from './family-letters.ts';
import type { NameForm } from './name-form.ts';
import { entry, ofPair, ofYield } from './name-form.ts';

const families = { ...phaseLetters, ...yieldLetters, MILD: 'mild' };

/** Names of the application guidelines of the steel industry (DP350/600: yield, tensile) and of the trade (BH220: yield). */
export const tradePairs: readonly NameForm[] = [
  {
    standards: [],
    form: /^(?<t>DP|DH|CP|TRIP|TR|MS|FB|HSLA|TWIP|BH|IF|MILD|QP)(?<re>\d{3,4})\/(?<rm>\d{3,4})(?:MPA)?$/,
    read: ({ t, re, rm }) => ofPair(entry(families, t), re, rm, 'the yield comes first, as in DP350/600'),
  },
  {
    standards: [],
    form: new RegExp(String.raw`^(?<t>BH|HSLA|LA|IF)(?<re>\d{3})(?:MPA)?${vdaCoat}$`),
    read: ({ t, re }) => ofYield(entry(families, t), re),
    mass: 'each side',
  },
  {
    standards: [],
    form: /^(?<t>BH|HSLA|IF)(?<ksi>\d{2,3})KSI$/,
    read: ({ t, ksi }) =>
      ofYield(entry(families, t), String(Math.floor((Number(ksi) * mpaPerUnit('ksi')) / 5) * 5)),
  },
];
