import { designationKey } from '../designation-key.ts';

/** What the figures of a name stand for, by the standard that forms it (EN 10027-1, VDA 239, JIS, JFS, SAE, ASTM, GB/T). */
const meanings: readonly (readonly [form: RegExp, meaning: string])[] = [
  [/^(?:CR|HR)\d+Y\d+T/, 'minimum yield, then minimum tensile strength, in MPa'],
  [/^(?:CR|HR|HC|HD)\d+\/\d+/, 'minimum yield, then minimum tensile strength, in MPa'],
  [/\d+T\/\d+Y/, 'minimum tensile strength, then minimum yield, in MPa'],
  [
    /^(?:DP|DH|CP|TRIP|TR|MS|FB|HSLA|TWIP|BH|IF|MILD|QP)\d+\/\d+$/,
    'minimum yield, then minimum tensile strength, in MPa',
  ],
  [/^(?:CR|HR)\d+T(?:MB|PS|MS|LA)/, 'nominal tensile class after hardening, in MPa; not a minimum'],
  [/^PHS\d/, 'nominal tensile class after hardening, in MPa; not a minimum'],
  [/\+CP\d{3}/, 'proof strength of the cold-hardened state, in MPa'],
  [/\+C\d{3}/, 'tensile strength of the cold-hardened state, in MPa'],
  [/^H[CD]T\d/, 'minimum tensile strength, in MPa'],
  [/^H[CX]?\d{3}(?:LA|Y|B|P|I)/, 'minimum yield, in MPa'],
  [/^S\d{3,4}(?:MC|NC|GD)/, 'minimum yield, in MPa'],
  [/^(?:CR|HR)\d{3}(?:IF|BH|LA)/, 'minimum yield along the rolling direction, in MPa'],
  [
    /^(?:SPF|SAPH|SG[CHM]|M?J[SAE][CH]|SGA|SCGA|SHGA|SPR|SGR|SP[CH])\D*\d{3}/,
    'minimum tensile strength, in MPa',
  ],
  [/GRADE\d{2,3}|GR\.?\d{2,3}/, 'minimum yield, in ksi; in brackets in MPa'],
  [/^(?:ZSTE|QSTE)\d{3}/, 'minimum yield, in MPa'],
  [/^\d{3,4}(?:DH|DL[12]?|M)$/, 'minimum tensile strength, in MPa'],
  [/^\d{3,4}(?:A|B|S|X|Y|R)$/, 'minimum yield, in MPa'],
  [
    /^(?:BH|IF)(?:3[2-9]|[4-9]\d)\d$|^(?:3[2-9]|[4-9]\d)\d(?:BH|IF)$/,
    'minimum yield for some, minimum tensile strength for others, in MPa',
  ],
  [/^(?:BH|HSLA|IF|LA)\d{3}$|^\d{3}(?:BH|IF|LA)$/, 'minimum yield, in MPa'],
  [/^0\d\d[ABCSWXYZ]/, 'minimum yield, in ksi'],
  [
    /^(?:DP|DH|CP|TRIP|TR|TWIP|QP|FB|MS)\d{3,4}$|^\d{3,4}(?:DP|DH|CP|TRIP|TR|QP|MS|FB)$/,
    'minimum tensile strength, in MPa, as the trade rounds it',
  ],
  [
    /^(?:DX5\dD|DC0\d|DD1\d|(?:CR|HR)\d(?:$|[A-Z])|SP[CH][C-G]|FEP0\d|ST1\d)/,
    'rank of formability, not a strength',
  ],
  [/^\d{2}MNB|^\d{2}MN(?:CR|SI|MO)/, 'hundredths of a per cent of carbon, then the alloying elements'],
  [/^1\.\d{4}/, 'material number (EN 10027-2)'],
  [/^(?:ENAW|AW|AA|A)?[1-8]\d{3}/, 'alloy by its main element, then the temper (EN 573, EN 515)'],
];

/** What the figures of a designation stand for; undefined where no standard says. */
export function numberMeaning(designation: string): string | undefined {
  const key = designationKey(designation).replace(/^A\d{3,4}M?(?=(?:HSLAS|UHSS|SS|SHS|BHS))/, '');
  return meanings.find(([form]) => form.test(key))?.[1];
}
