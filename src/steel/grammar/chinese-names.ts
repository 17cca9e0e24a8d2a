import { europeanCoat } from '../coat.ts';
import { only, phaseLetters } from './family-letters.ts';
import type { NameForm } from './name-form.ts';
import { entry, ofPair } from './name-form.ts';

const phases = {
  ...only(phaseLetters, 'DP', 'DH', 'TR', 'CP', 'MS', 'QP', 'FB'),
  HS: 'press_hardening',
  HE: 'ferrite_bainite',
  TW: 'twip',
};

/** Names of GB/T 20564 and GB/T 20887: yield, stroke, tensile strength, phase; the trade also begins them with HC and HD. */
export const chineseNames: readonly NameForm[] = [
  {
    standards: ['GB/T 20564', 'GB/T 20887', 'GB/T 34566'],
    form: new RegExp(
      String.raw`^(?:CR|HR|HC|HD)(?<re>\d{3,4})\/(?<rm>\d{3,4})(?<t>DP|DH|TR|CP|MS|QP|HS|HE|TW|FB)D?${europeanCoat}$`,
    ),
    read: ({ re, rm, t }) => ofPair(entry(phases, t), re, rm, 'the yield comes first, as in CR340/590DP'),
  },
];
