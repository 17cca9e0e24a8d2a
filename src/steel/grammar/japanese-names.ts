import type { NameForm } from './name-form.ts';
import { entry, ofTensile } from './name-form.ts';

/** Letters behind the number in JFS A 2001, A 3011 and A 1001; those missing here are not known. From memory. */
const federationLetters = {
  ...{ C: 'mild', D: 'mild', E: 'mild', F: 'mild', G: 'mild' },
  W: 'solid_solution',
  P: 'rephosphorised',
  H: 'bake_hardening',
  R: 'hsla',
  T: 'trip',
  ...{ Y: 'dual_phase', YL: 'dual_phase', YH: 'dual_phase', YN: 'dual_phase' },
};

/** Letters behind the number in JIS G 3135 and G 3134. */
const sheetLetters = { Y: 'dual_phase', H: 'bake_hardening', R: 'hsla' };

const nationalLetters = {
  DP: 'dual_phase',
  FB: 'ferrite_bainite',
  TR: 'trip',
  CP: 'complex_phase',
  MS: 'martensitic',
};

/** Names of JIS, of the iron and steel federation (JFS), and of national lists that mix them: the number is the tensile strength. */
export const japaneseNames: readonly NameForm[] = [
  {
    standards: ['JIS G 3141', 'JIS G 3131', 'JIS G 3313', 'JIS G 3302', 'JIS G 3323'],
    form: /^S(?:PC|PH|EC|EH|GC|GH|GMC|GMH)[C-G][1-4]?T?(?:[SA8421][DB]|[ZFK]\d{2}|E\d{1,2}(?:\/E?\d{1,2})?)?$/,
    read: () => ({ familyKey: 'mild' }),
  },
  {
    standards: ['JIS G 3135', 'JIS G 3134'],
    form: /^SPF[CH](?<rm>\d{3,4})(?<t>[YHR])?(?:[SA8421][DB])?$/,
    read: ({ rm, t }) => ofTensile(t === undefined ? 'unnamed' : entry(sheetLetters, t), rm),
  },
  {
    standards: ['JIS G 3113'],
    form: /^SAPH(?<rm>\d{3})(?:PO?)?$/,
    read: ({ rm }) => ofTensile('structural', rm),
  },
  {
    standards: ['JIS G 3302', 'JIS G 3323'],
    form: /^SG(?:C|H|MC|MH)(?<rm>\d{3})Y?(?:(?<coat>[ZFK])\d{2})?$/,
    read: ({ rm }) => ofTensile('structural', rm),
  },
  {
    // An M before the name is met in part lists; what it means is not known, so it is passed over with a warning.
    standards: ['JFS A 2001', 'JFS A 3011', 'JFS A 1001'],
    form: /^M?J(?:SC|SH|AC|AH|EC|EH)(?<rm>\d{3,4})(?<t>Y[LHN]?|[A-HPRTW])(?:\d{2}\/\d{2})?$/,
    read: ({ rm, t }) => ofTensile(entry(federationLetters, t) ?? 'unnamed', rm),
  },
  {
    standards: ['national list'],
    form: /^S(?:GA|G|P)[FR][CH](?<rm>\d{3,4})(?<t>DP|FB|TR|CP|MS)?(?:\d{2}\/\d{2})?$/,
    read: ({ rm, t }) => ofTensile(t === undefined ? 'unnamed' : entry(nationalLetters, t), rm),
  },
];
