import type { NameForm } from './name-form.ts';

/** Numbers of EN 10027-2 without a row: only the group 1.40xx to 1.49xx tells its material, stainless and heat-resisting steel. */
export const numberNames: readonly NameForm[] = [
  {
    standards: ['EN 10027-2'],
    form: /^1\.4\d{3}(?:\+(?:CP?\d{3,4}|2[BRH]|QT|AT|A|N))?$/,
    read: () => ({ familyKey: 'stainless' }),
  },
];
