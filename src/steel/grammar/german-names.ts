import { only, yieldLetters } from './family-letters.ts';
import type { NameForm } from './name-form.ts';
import { entry, ofYield } from './name-form.ts';

const letters = { ...only(yieldLetters, 'BH', 'P', 'LA'), Z: 'hsla' };

/** Superseded names that drawings of older vehicles carry: SEW 092 to 094, DIN 1623, EN 10130:1991. From memory. */
export const germanNames: readonly NameForm[] = [
  {
    standards: ['SEW 093', 'SEW 094'],
    form: /^ZSTE(?<re>\d{3})(?<t>BH|P|LA|Z)?$/,
    read: ({ re, t }) => ofYield(t === undefined ? 'hsla' : entry(letters, t), re),
  },
  { standards: ['SEW 092'], form: /^QSTE(?<re>\d{3})(?:TM|N)$/, read: ({ re }) => ofYield('hsla', re) },
  {
    standards: ['DIN 1623-1'],
    form: /^(?:RR|U|R)?ST1[2-7](?:0[345])?$/,
    read: () => ({ familyKey: 'mild' }),
  },
  { standards: ['DIN 1614'], form: /^(?:RR)?STW2[2-4]$/, read: () => ({ familyKey: 'mild' }) },
  { standards: ['EN 10130:1991'], form: /^FEP0[1-7]G?$/, read: () => ({ familyKey: 'mild' }) },
];
