import { europeanCoat } from '../coating/coat.ts';
import type { NameForm } from './name-form.ts';
import { entry, ofTensile, ofYield } from './name-form.ts';

/** Letters behind a minimum yield (EN 10268, EN 10346). */
const yieldLetters = {
  LA: 'hsla',
  Y: 'high_strength_if',
  B: 'bake_hardening',
  P: 'rephosphorised',
  I: 'isotropic',
};

/** Letters behind a minimum tensile strength (EN 10338, EN 10346). */
const tensileLetters = {
  X: 'dual_phase',
  XG: 'dual_phase',
  XH: 'dual_phase',
  T: 'trip',
  C: 'complex_phase',
  F: 'ferrite_bainite',
  M: 'martensitic',
};

/**
 * Names by the logic of EN 10027-1, from memory of the standards named: D for mild sheet with a rank, H for high strength
 * (the number is the yield, behind a T the tensile strength), S for structural with the yield.
 */
export const europeanNames: readonly NameForm[] = [
  {
    standards: ['EN 10139'],
    form: /^DC0[1-6]\+?(?:LC|C(?<rm>\d{3}))$/,
    read: ({ rm }) =>
      rm === undefined
        ? { familyKey: 'mild', sure: true }
        : withState(ofTensile('cold_hardened', rm), 'cold hardened'),
  },
  {
    standards: ['EN 10139'],
    form: /^DC0[1-6]$/,
    read: () => ({ familyKey: 'mild', sure: true }),
    onlyNamed: true,
  },
  {
    standards: ['EN 10130', 'EN 10152'],
    form: new RegExp(`^DC0[1-7](?:EK|ED)?${europeanCoat}$`),
    read: () => ({ familyKey: 'mild' }),
  },
  {
    standards: ['EN 10268'],
    form: new RegExp(String.raw`^HC(?<re>\d{3})(?<t>LA|Y|B|P|I)${europeanCoat}$`),
    read: ({ re, t }) => ofYield(entry(yieldLetters, t), re),
  },
  {
    standards: ['EN 10268:1998'],
    form: new RegExp(String.raw`^H(?<re>\d{3})(?<t>LA|P|B|Y)${europeanCoat}$`),
    read: ({ re, t }) => ofYield(entry(yieldLetters, t), re),
  },
  {
    // Hot-dip coated, before EN 10346 took its place in 2009 and wrote HX for H.
    standards: ['EN 10292'],
    form: new RegExp(String.raw`^H(?<re>\d{3})(?<t>LA|P|B|Y)D${europeanCoat}$`),
    read: ({ re, t }) => ofYield(entry(yieldLetters, t), re),
  },
  {
    standards: ['EN 10338', 'EN 10346', 'EN 10336'],
    form: new RegExp(String.raw`^H[CD]T(?<rm>\d{3,4})(?<t>XG|XH|X|T|C|F|M)D?${europeanCoat}$`),
    read: ({ rm, t }) => ofTensile(entry(tensileLetters, t), rm),
  },
  {
    standards: ['EN 10346'],
    form: new RegExp(`^DX5[1-9]D${europeanCoat}$`),
    read: () => ({ familyKey: 'mild' }),
  },
  {
    standards: ['EN 10346'],
    form: new RegExp(String.raw`^HX(?<re>\d{3})(?<t>LA|Y|B|P)D${europeanCoat}$`),
    read: ({ re, t }) => ofYield(entry(yieldLetters, t), re),
  },
  {
    standards: ['EN 10346'],
    form: new RegExp(String.raw`^S(?<re>\d{3})GD${europeanCoat}$`),
    read: ({ re }) => ofYield('structural', re),
  },
  {
    standards: ['EN 10149'],
    form: new RegExp(String.raw`^S(?<re>\d{3,4})(?:MC|NC)P?O?${europeanCoat}$`),
    read: ({ re }) => ofYield(Number(re) >= 800 ? 'hsla_ultra_high' : 'hsla', re),
  },
  {
    standards: ['EN 10111'],
    form: new RegExp(`^DD1[1-4]P?O?${europeanCoat}$`),
    read: () => ({ familyKey: 'mild' }),
  },
];

function withState<T extends object>(
  content: T | undefined,
  state: 'cold hardened',
): (T & { readonly state: 'cold hardened' }) | undefined {
  return content === undefined ? undefined : { ...content, state };
}
