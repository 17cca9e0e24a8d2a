import { europeanCoat } from '../coating/coat.ts';
import { only, phaseLetters } from './family-letters.ts';
import type { NameForm } from './name-form.ts';
import { entry, ofPair, ofYield } from './name-form.ts';

const phases = {
  ...only(phaseLetters, 'DP', 'DH', 'TR', 'CP', 'MS', 'QP', 'FB'),
  HS: 'press_hardening',
  HE: 'ferrite_bainite',
  TW: 'twip',
};

/** Letters behind the yield of sheet for hot-dip coating, as in EN 10346. */
const yieldLetters = { LA: 'hsla', Y: 'high_strength_if', B: 'bake_hardening', P: 'rephosphorised' };

/** Names of GB/T 20564 and GB/T 20887: yield, stroke, tensile strength, phase; the trade also begins them with HC and HD. */
export const chineseNames: readonly NameForm[] = [
  {
    // DC51D is DX51D of cold-rolled base, HC340LAD so HX340LAD.
    standards: ['GB/T 2518'],
    form: new RegExp(`^DC5[1-7]D${europeanCoat}$`),
    read: () => ({ familyKey: 'mild', sure: true }),
  },
  {
    standards: ['GB/T 2518'],
    form: new RegExp(String.raw`^HC(?<re>\d{3})(?<t>LA|Y|B|P)D${europeanCoat}$`),
    read: ({ re, t }) => ofYield(entry(yieldLetters, t), re),
  },
  {
    standards: ['GB/T 20564', 'GB/T 20887', 'GB/T 34566', 'GB/T 2518'],
    form: new RegExp(
      String.raw`^(?:CR|HR|HC|HD)(?<re>\d{3,4})\/(?<rm>\d{3,4})(?<t>DP|DH|TR|CP|MS|QP|HS|HE|TW|FB)D?${europeanCoat}$`,
    ),
    read: ({ re, rm, t }) => ofPair(entry(phases, t), re, rm, 'the yield comes first, as in CR340/590DP'),
  },
];
