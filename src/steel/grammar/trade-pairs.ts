import { vdaCoat } from '../coating/coat.ts';
import { mpaPerUnit } from '../strength/stress-unit.ts';
import { phaseLetters, yieldLetters } from './family-letters.ts';
import type { NameContent, NameFault, NameForm } from './name-form.ts';
import { entry, ofNominal, ofPair, ofYield } from './name-form.ts';

const families = {
  ...phaseLetters,
  ...yieldLetters,
  MILD: 'mild',
  // Hot-formed, press-hardened: the pair is that of the hardened part.
  HF: 'press_hardening',
  PHS: 'press_hardening',
};

function hardenedIf(content: NameContent | NameFault | undefined): NameContent | NameFault | undefined {
  return content !== undefined && 'familyKey' in content && content.familyKey === 'press_hardening'
    ? { ...content, state: 'hardened' }
    : content;
}

/**
 * Yields of bake-hardening and interstitial-free sheet end at 300 MPa in the standards (EN 10268, VDA 239-100; of EN 10346 one has 340);
 * tensile strengths begin at 340 (JIS, JFS), and in Asia the number is that.
 */
const eitherFromMpa = 320;

function ofOneNumber(letters: string | undefined, text: string | undefined): NameContent | undefined {
  const content = ofYield(entry(families, letters), text);
  const isEither = /^(?:BH|IF)$/.test(letters ?? '') && Number(text) >= eitherFromMpa;
  return content === undefined || !isEither ? content : { ...content, either: true };
}

/** Names of the application guidelines of the steel industry (DP350/600: yield, tensile) and of the trade (BH220: yield). */
export const tradePairs: readonly NameForm[] = [
  {
    standards: [],
    form: /^(?<t>DP|DH|CP|TRIP|TR|MS|MART|FB|HSLA|TWIP|BH|IF|MILD|QP|HF|PHS)(?<re>\d{3,4})\/(?<rm>\d{3,4})(?:MPA)?$/,
    read: ({ t, re, rm }) =>
      hardenedIf(ofPair(entry(families, t), re, rm, 'the yield comes first, as in DP350/600')),
  },
  {
    standards: [],
    form: new RegExp(
      String.raw`^(?:(?<t>BH|HSLA|LA|IF)(?<re>\d{3})(?:MPA)?|(?<early>\d{3})(?<u>BH|LA|IF))${vdaCoat}$`,
    ),
    read: ({ t, re, early, u }) => ofOneNumber(t ?? u, re ?? early),
    mass: 'each side',
  },
  {
    standards: [],
    form: /^(?<t>BH|HSLA|IF)(?<ksi>\d{2,3})KSI$/,
    read: ({ t, ksi }) =>
      ofYield(entry(families, t), String(Math.floor((Number(ksi) * mpaPerUnit('ksi')) / 5) * 5)),
  },
  {
    // Short for CR1500T-MB and its like; the number is a nominal class after hardening.
    standards: [],
    form: new RegExp(String.raw`^(?:(?:CR|HR|HC|HD)(?<of>\d{3,4})(?:HS|HP|PH)|(?<rm>\d{4})T?MB)${vdaCoat}$`),
    read: ({ of, rm }) => ofNominal(of ?? rm),
    mass: 'each side',
  },
];
