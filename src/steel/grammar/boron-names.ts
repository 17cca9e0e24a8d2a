import { europeanCoat } from '../coating/coat.ts';
import type { NameForm } from './name-form.ts';

/** Boron steels named by their chemistry (EN 10027-1: hundredths of a per cent of carbon, then the alloying elements). */
export const boronNames: readonly NameForm[] = [
  {
    standards: ['EN 10083-3'],
    form: new RegExp(
      String.raw`^(?:[1-4]\d|[6-9])(?:MNB|MNCRB|MNSIB|MNCRMOB|MNMOB)\d(?:[-.]?\d)?V?${europeanCoat}$`,
    ),
    read: () => ({ familyKey: 'press_hardening', state: 'hardened' }),
  },
  {
    // SAE J403: B behind the kind of steel is boron, the last figures the carbon.
    standards: ['SAE J403'],
    form: /^(?:SAE|AISI)?1[05]B\d{2}$/,
    read: () => ({ familyKey: 'press_hardening', state: 'hardened' }),
  },
];
