import type { NameContent, NameForm, NameParts } from './name-form.ts';
import { figure } from './name-form.ts';

/** Numbers that ASTM A240 and A666 (AISI) and JIS G 4304 to G 4313 (SUS, SUH) share, by structure; from memory. */
const austenitic: ReadonlySet<string> = new Set([
  ...['201', '202', '204', '205', '301', '302', '303', '304', '305', '309', '310', '314', '315', '316'],
  ...['317', '321', '347', '348', '384'],
]);
const ferritic: ReadonlySet<string> = new Set([
  ...['405', '409', '429', '430', '434', '436', '439', '441', '443', '444', '445', '446', '447'],
]);
/** Martensitic, of two phases and hardened by precipitation: stainless all the same. */
const others: ReadonlySet<string> = new Set([
  ...['329', '403', '410', '414', '416', '420', '422', '431', '440', '630', '631', '632'],
]);

/** Numbers of EN 10088-1 that sheet for vehicles is made of; another number of the group may be a slip. From memory. */
const sheetNumbers: ReadonlySet<string> = new Set([
  ...['1.4000', '1.4003', '1.4016', '1.4021', '1.4028', '1.4031', '1.4034', '1.4113', '1.4162', '1.4301'],
  ...['1.4303', '1.4306', '1.4307', '1.4310', '1.4311', '1.4318', '1.4362', '1.4369', '1.4371', '1.4372'],
  ...['1.4373', '1.4376', '1.4401', '1.4404', '1.4435', '1.4462', '1.4509', '1.4510', '1.4511', '1.4512'],
  ...['1.4513', '1.4520', '1.4521', '1.4526', '1.4541', '1.4550', '1.4571', '1.4607', '1.4618', '1.4621'],
  ...['1.4640'],
]);

/** Steps in MPa of cold hardening by EN 10088-2 and EN 10151: C is the tensile, CP the proof strength; from memory. */
const tensileSteps: ReadonlySet<number> = new Set([700, 850, 1000, 1150, 1300, 1500, 1700, 1900]);
const proofSteps: ReadonlySet<number> = new Set([350, 500, 700, 900, 1100, 1300]);

/** Finish or condition behind a number or name of EN 10088-2, and its cold hardening. */
const europeanState = String.raw`(?:\+(?:C(?<tensile>\d{3,4})|CP(?<proof>\d{3,4})|QT\d{0,3}|SR|AT|A|N))?(?:\+?(?<finish>[12][A-Z]))?`;

/** Letters behind a number of AISI: low carbon, nitrogen, stabilised; and of JIS. */
const typeLetters = String.raw`(?:LN|LX|LM|L|N[12]?|S|H|TI|CB|NB|J\dL?)?`;

/** What stands behind a grade of JIS: strip or plate, its temper, its finish. */
const japaneseEnd = String.raw`(?:CSP|CP|CS|HP|HS)?(?<temper>[13]\/[24]H|S?EH|H|DLT|LT|ST|MT|HT)?(?:2B|2D|BA|HL|NO\.?\d)?`;

/**
 * Stainless by number of ASTM A240 (AISI, UNS) and JIS, by number and symbol of EN 10088-1, and by symbol of GB/T 20878. A symbol
 * tells the chromium, and with 10.5 % or more of it steel is stainless.
 */
export const stainlessNames: readonly NameForm[] = [
  {
    standards: ['ASTM A240', 'ASTM A666'],
    form: new RegExp(`^(?:AISI|TYPE)(?<type>\\d{3})${typeLetters}$`),
    read: ofType,
  },
  {
    standards: ['ASTM A240', 'ASTM A666'],
    form: new RegExp(`^(?<type>\\d{3})${typeLetters}$`),
    read: ofType,
    onlyNamed: true,
  },
  {
    // The letters behind the number set it apart from a strength; of other letters a steel of SAE J2340 may have been meant.
    standards: ['ASTM A240'],
    form: /^(?:(?<type>201|301|304|316|317)LN?|(?<other>316)TI|(?<ferritic>409|410|430|434|436|439)L)$/,
    read: ({ type, other, ferritic: soft }) => ofType({ type: type ?? other ?? soft }),
  },
  {
    standards: ['ASTM A240'],
    form: /^(?:UNS)?S(?<type>\d{3})\d\d$/,
    read: ofType,
  },
  {
    standards: ['ASTM A240'],
    form: /^(?:UNS)?S3(?:1803|2101|2205|2304|2750|2760)$/,
    read: () => ({ familyKey: 'stainless', sure: true }),
  },
  {
    standards: ['JIS G 4305', 'JIS G 4304', 'JIS G 4313', 'JIS G 4312'],
    form: new RegExp(`^(?:SUS|SUH|STS)(?<type>\\d{3})${typeLetters}${japaneseEnd}$`),
    read: ofType,
  },
  {
    standards: ['EN 10088', 'EN 10151'],
    form: new RegExp(String.raw`^(?<number>1\.4\d{3})${europeanState}$`),
    read: ({ number = '', ...state }) => (sheetNumbers.has(number) ? inState(state) : undefined),
  },
  {
    standards: ['EN 10088', 'EN 10151'],
    form: new RegExp(
      String.raw`^X\d{1,3}CR(?:NI|MN|MO|TI|NB|AL|CU|SI|N|S|V){0,6}(?:1\d|2\d|30)\d{0,5}(?:\.\d{1,2})?${europeanState}$`,
    ),
    read: inState,
  },
  {
    standards: ['GB/T 20878', 'GB/T 3280'],
    form: /^\d{1,3}CR(?:1[1-9]|2\d)(?:(?:NI|MN|MO|TI|NB|CU|SI|AL|N)\d{0,2}){0,5}$/,
    read: () => ({ familyKey: 'stainless', sure: true }),
  },
];

function ofType({ type = '', temper }: NameParts): NameContent | undefined {
  // The tempers of JIS are all rolled cold.
  const state = temper === undefined ? {} : ({ state: 'cold hardened' } as const);
  if (austenitic.has(type)) return { familyKey: 'stainless_austenitic', sure: true, ...state };
  if (ferritic.has(type)) return { familyKey: 'stainless_ferritic', sure: true };
  return others.has(type) ? { familyKey: 'stainless', sure: true } : undefined;
}

/**
 * The figure of the state is a strength that the name promises; one beside the steps may be a slip, so that it is asked for. The
 * finish 2H is work-hardened and names no strength.
 */
function inState({ tensile, proof, finish }: NameParts): NameContent | undefined {
  if (tensile === undefined && proof === undefined) {
    return { familyKey: 'stainless', sure: true, ...(finish === '2H' ? { state: 'cold hardened' } : {}) };
  }
  const mpa = figure(tensile ?? proof, 300, 2200);
  if (mpa === undefined) return undefined;
  const steps = tensile === undefined ? proofSteps : tensileSteps;
  const strength = tensile === undefined ? { yieldMinMpa: mpa } : { tensileMinMpa: mpa };
  return {
    familyKey: 'stainless',
    ...strength,
    state: 'cold hardened',
    ...(steps.has(mpa) ? { sure: true } : {}),
  };
}
