import { vdaCoat } from '../coating/coat.ts';
import { only, phaseLetters, yieldLetters } from './family-letters.ts';
import type { NameForm } from './name-form.ts';
import { entry, ofNominal, ofPair, ofTensile, ofYield } from './name-form.ts';

const phases = only(phaseLetters, 'DP', 'DH', 'TR', 'CP', 'CH', 'MS', 'FB', 'QP');

/** Names of VDA 239-100 (yield with Y first, tensile strength with T second) and 239-500; from memory. */
export const vdaNames: readonly NameForm[] = [
  {
    standards: ['VDA 239-100'],
    form: new RegExp(
      String.raw`^(?:CR|HR)?(?<re>\d{3,4})Y(?<rm>\d{3,4})T(?<t>DP|DH|TR|CP|CH|MS|FB|QP)?${vdaCoat}$`,
    ),
    read: ({ re, rm, t }) =>
      ofPair(
        t === undefined ? 'unnamed' : entry(phases, t),
        re,
        rm,
        'the yield comes first, as in CR330Y590T-DP',
      ),
    mass: 'each side',
  },
  {
    standards: ['VDA 239-100', 'GB/T 20564'],
    form: new RegExp(String.raw`^(?:CR|HR)(?<re>\d{3,4})(?<t>IF|BH|LA)${vdaCoat}$`),
    read: ({ re, t }) => ofYield(entry(yieldLetters, t), re),
    mass: 'each side',
  },
  {
    // The yield left out. MS behind a tensile number alone is hot forming, below.
    standards: ['VDA 239-100'],
    form: new RegExp(String.raw`^(?:CR|HR)(?<rm>\d{3,4})T(?<t>DP|DH|TR|CP|CH|FB|QP)${vdaCoat}$`),
    read: ({ rm, t }) => ofTensile(entry(phases, t), rm),
    mass: 'each side',
  },
  {
    standards: ['VDA 239-500'],
    form: new RegExp(String.raw`^(?:CR|HR)(?<rm>\d{3,4})T(?:MB|PS|MS|LA)(?:DS|IS)?${vdaCoat}$`),
    read: ({ rm }) => ofNominal(rm),
    mass: 'each side',
  },
];
