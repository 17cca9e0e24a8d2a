import type { NameForm } from './name-form.ts';

const temper = String.raw`(?:F|O|W|H\d{2,3}|T\d{1,3})?`;

/** Alloys by ASTM B275: two letters for the main elements, then their per cent. Those of castings and sheet, from memory. */
const alloys = [
  ...[
    'AM20',
    'AM30',
    'AM50',
    'AM60',
    'AM100',
    'AE42',
    'AE44',
    'AJ52',
    'AJ62',
    'AZ31',
    'AZ61',
    'AZ63',
    'AZ80',
  ],
  ...[
    'AZ81',
    'AZ91',
    'AZ92',
    'EZ33',
    'ME20',
    'ME21',
    'WE43',
    'WE54',
    'ZC63',
    'ZE10',
    'ZE41',
    'ZEK100',
    'ZK60',
  ],
].join('|');

const elements = String.raw`(?:AL|ZN|MN|SI|RE|ZR|SR|CA|AG|CU|Y)`;

/** Magnesium by ASTM B275 and UNS, by EN 1753 and EN 1754 (symbol or number), by EN symbols alone, and by JIS H 5303. */
export const magnesiumNames: readonly NameForm[] = [
  {
    standards: ['ASTM B94', 'ASTM B90', 'ASTM B80', 'ASTM B107'],
    form: new RegExp(`^(?:(?:${alloys})[A-F]?|AS(?:21|31|41)[A-F])${temper}$`),
    read: () => ({ familyKey: 'magnesium', sure: true }),
  },
  {
    standards: ['ASTM B94', 'ASTM B90', 'ASTM B80', 'ASTM B107'],
    form: /^UNSM1\d{4}$/,
    read: () => ({ familyKey: 'magnesium', sure: true }),
  },
  {
    standards: ['EN 1753', 'EN 1754'],
    form: new RegExp(
      String.raw`^(?:ENM[ABCW])?MG(?:${elements}\d{0,2}(?:\.\d)?){0,4}${elements}\d{1,2}(?:\.\d)?(?:${elements}){0,2}[AB]?${temper}$`,
    ),
    read: () => ({ familyKey: 'magnesium', sure: true }),
  },
  {
    standards: ['EN 1753', 'EN 1754'],
    form: new RegExp(String.raw`^ENM[ABC]\d{5}${temper}$`),
    read: () => ({ familyKey: 'magnesium', sure: true }),
  },
  {
    standards: ['JIS H 5303'],
    form: /^MDC[1-6][A-D]?$/,
    read: () => ({ familyKey: 'magnesium' }),
  },
];
