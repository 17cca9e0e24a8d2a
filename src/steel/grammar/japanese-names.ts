import type { Coating } from '../coating/coating.ts';
import { only, phaseLetters } from './family-letters.ts';
import type { NameContent, NameForm } from './name-form.ts';
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
  ...only(phaseLetters, 'DP', 'FB', 'TR', 'CP', 'MS'),
  ...{ C: 'mild', D: 'mild', E: 'mild', F: 'mild' },
};

/** By the letters behind J: S is not coated, A galvannealed, E electro-zinc; C cold rolled, H hot rolled. */
const federationProducts: readonly (readonly [
  letters: string,
  standard: string,
  coating: Coating | undefined,
])[] = [
  ['SC', 'JFS A 2001', undefined],
  ['SH', 'JFS A 1001', undefined],
  ['A[CH]', 'JFS A 3011', 'zinc-iron'],
  ['E[CH]', 'JFS A 3021', 'zinc'],
];

/**
 * Tempers of JIS G 3141 in eighths of full hardness, with the tensile strength in MPa that goes with them: strip as cold rolled, soft
 * by its rank alone. From memory of its informative table.
 */
const temperTensile: Readonly<Record<string, string>> = { 8: '290', 4: '370', 2: '440', 1: '550' };

/** Names of JIS, of the iron and steel federation (JFS), and of national lists that mix them: the number is the tensile strength. */
export const japaneseNames: readonly NameForm[] = [
  {
    standards: ['JIS G 3141'],
    form: /^SPC[C-G]N?(?<temper>[8421])[DB]?$/,
    read: ({ temper }) => hard(ofTensile('cold_hardened', entry(temperTensile, temper))),
  },
  {
    // As rolled and coated, never annealed.
    standards: ['JIS G 3302'],
    form: /^SGCH(?:(?<coat>[ZF])(?<m1>\d{2}))?$/,
    read: () => ({ familyKey: 'cold_hardened', state: 'cold hardened' }),
    mass: 'japanese',
  },
  {
    standards: ['JIS G 3141', 'JIS G 3131'],
    form: /^SP[CH][C-G]T?N?(?:[SA][DB]|PO?)?$/,
    read: () => ({ familyKey: 'mild', sure: true }),
  },
  {
    standards: ['JIS G 3313'],
    form: /^SE[CH][C-G]T?N?(?:E\d{1,2}(?:\/E?\d{1,2})?|\d{2}\/\d{2})?$/,
    read: () => ({ familyKey: 'mild', coating: 'zinc', sure: true }),
  },
  {
    standards: ['JIS G 3302'],
    form: /^SG[CH][CD][1-4]?T?N?(?:(?<coat>[ZF])(?<m1>\d{2}))?$/,
    read: () => ({ familyKey: 'mild', coating: 'zinc', sure: true }),
    mass: 'japanese',
  },
  {
    standards: ['JIS G 3323'],
    form: /^SGM[CH][CD][1-4]?T?N?(?:(?<coat>K)(?<m1>\d{2}))?$/,
    read: () => ({ familyKey: 'mild', coating: 'zinc-magnesium', sure: true }),
    mass: 'japanese',
  },
  {
    // 55 % aluminium-zinc and zinc with 5 % aluminium: soft by rank, or structural by tensile strength.
    standards: ['JIS G 3321'],
    form: /^SGL[CH](?:[CD]D?|(?<rm>[345]\d{2}))(?:AZ\d{2,3})?$/,
    read: ({ rm }) => coated(softOr(rm), 'aluminium-zinc'),
  },
  {
    standards: ['JIS G 3317'],
    form: /^SZA[CH](?:[CD][1-4]?|(?<rm>[345]\d{2}))(?:Y\d{2})?$/,
    read: ({ rm }) => coated(softOr(rm), 'zinc-aluminium'),
  },
  {
    // Aluminium with silicon, then g/m² on both sides.
    standards: ['JIS G 3314'],
    form: /^SA1[CDEF](?:\d{2,3})?$/,
    read: () => ({ familyKey: 'mild', coating: 'aluminium-silicon', sure: true }),
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
    form: /^SG(?<m>M)?[CH](?<rm>\d{3})Y?(?:(?<coat>[ZFK])(?<m1>\d{2}))?$/,
    read: ({ m, rm }) => coated(ofTensile('structural', rm), m === undefined ? 'zinc' : 'zinc-magnesium'),
    mass: 'japanese',
  },
  ...federationProducts.map(([letters, standard, coating]): NameForm => ({
    // An M before the name is met in part lists; what it means is not known, so it is passed over with a warning.
    standards: [standard],
    form: new RegExp(
      String.raw`^M?J${letters}(?<rm>\d{3,4})(?<t>Y[LHN]?|[A-HJKMNPQ-Z])(?:(?<m1>\d{2})\/(?<m2>\d{2}))?$`,
    ),
    read: ({ rm, t }) => coated(ofTensile(entry(federationLetters, t) ?? 'unnamed', rm), coating),
    mass: 'each side',
  })),
  {
    standards: ['national list'],
    form: /^S(?:G|P)[FR][CH](?<rm>\d{3,4})(?<t>DP|FB|TR|CP|MS)?(?:(?<m1>\d{2})\/(?<m2>\d{2}))?$/,
    read: ({ rm, t }) => ofTensile(t === undefined ? 'unnamed' : entry(nationalLetters, t), rm),
    mass: 'each side',
  },
  {
    // Galvannealed: SGAFC590DP, SGARC440, SCGA440-45. The C, D, E or F behind a number is the rank of soft sheet.
    standards: ['national list'],
    form: /^S(?:GA[FR][CH]|CGA|HGA)(?<rm>\d{3,4})(?<t>DP|FB|TR|CP|MS|[C-F])?(?:(?<m1>\d{2})(?:\/(?<m2>\d{2}))?)?$/,
    read: ({ rm, t }) =>
      coated(ofTensile(t === undefined ? 'unnamed' : entry(nationalLetters, t), rm), 'zinc-iron'),
    mass: 'each side',
  },
  {
    standards: ['national list'],
    form: /^SP[CH](?<rm>\d{3,4})(?:[SA8421][DB])?$/,
    read: ({ rm }) => ofTensile('unnamed', rm),
  },
  {
    // Soft sheet by rank, galvannealed: SGACC.
    standards: ['national list'],
    form: /^SGA[CH][C-F](?:(?<m1>\d{2})(?:\/(?<m2>\d{2}))?)?$/,
    read: () => ({ familyKey: 'mild', coating: 'zinc-iron' }),
    mass: 'each side',
  },
];

function hard(content: NameContent | undefined): NameContent | undefined {
  return content === undefined ? undefined : { ...content, state: 'cold hardened', sure: true };
}

function softOr(tensile: string | undefined): NameContent | undefined {
  return tensile === undefined ? { familyKey: 'mild', sure: true } : ofTensile('structural', tensile);
}

function coated(content: NameContent | undefined, coating: Coating | undefined): NameContent | undefined {
  return content === undefined || coating === undefined ? content : { ...content, coating };
}
