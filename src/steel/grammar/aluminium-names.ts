import type { NameContent, NameForm, NameParts } from './name-form.ts';

function series(alloy: string): string {
  const first = alloy.charAt(0);
  return /[567]/.test(first) ? `aluminium_${first}xxx` : 'aluminium';
}

/**
 * Alloys of bodies by their number in the register of EN 573-3 and of the Aluminum Association, from memory. A bare number that is
 * none of them may be a slip for something else.
 */
const bodyAlloys: ReadonlySet<string> = new Set([
  ...['5005', '5042', '5049', '5050', '5052', '5082', '5083', '5086', '5154', '5182', '5251', '5252', '5454'],
  ...['5456', '5457', '5556', '5657', '5754', '6005', '6008', '6009', '6010', '6013', '6014', '6016', '6022'],
  ...['6056', '6060', '6061', '6063', '6082', '6106', '6110', '6111', '6116', '6156', '6181', '6182', '6451'],
  ...['7003', '7020', '7021', '7022', '7046', '7050', '7055', '7075', '7108', '7129', '7175', '7475'],
]);

/**
 * Further wrought alloys of that register, from memory, by their number. Bodies have hardly any; what matters is
 * that a number outside of it is no alloy: 1500 behind EN AW is a slip for a strength.
 */
const otherAlloys: ReadonlySet<string> = new Set([
  ...['1050', '1060', '1070', '1080', '1085', '1090', '1098', '1100', '1110', '1145', '1198', '1199', '1200'],
  ...['1230', '1235', '1350', '1370', '1435', '1450', '2002', '2008', '2010', '2011', '2014', '2017', '2018'],
  ...['2024', '2030', '2036', '2038', '2117', '2124', '2195', '2219', '2618', '3002', '3003', '3004', '3005'],
  ...['3102', '3103', '3104', '3105', '3203', '3207', '4004', '4006', '4007', '4015', '4032', '4043', '4045'],
  ...['4047', '4343', '8006', '8011', '8014', '8021', '8079', '8090', '8176'],
]);

/** Whether four figures are a registered alloy of the body series, 5754 or 6016. */
export function isBodyAlloy(text: string): boolean {
  return bodyAlloys.has(text);
}

/** Series whose numbers are also strengths of steel or tensile steps: there only a registered alloy is one. */
const likeStrengths = /^[12348]/;

/** Behind the prefix: sure of a registered alloy, asked about for a number of the body series that is not in the list above. */
function prefixed({ alloy = '' }: NameParts): NameContent | undefined {
  const number = alloy.slice(0, 4);
  if (bodyAlloys.has(number) || otherAlloys.has(number)) return { familyKey: series(alloy), sure: true };
  return likeStrengths.test(alloy) ? undefined : { familyKey: series(alloy), sure: false };
}

/** PX is met on drawings of body sheet: delivered for the paint oven, as the T4P of others. */
const temper = String.raw`(?:O|F|W|H\d{2,3}|T\d{1,4}[A-Z]{0,2}|PX)`;

/** By a bare number: sure of a registered body alloy. One of the first two thousands may as well be a strength of steel. */
function bare({ alloy = '' }: NameParts): NameContent | undefined {
  if (/^[12]/.test(alloy)) return undefined;
  return { familyKey: series(alloy), sure: bodyAlloys.has(alloy.slice(0, 4)) };
}

/**
 * Aluminium by EN 573 and the Aluminum Association: four figures, of which the first tells the alloying elements, and a
 * temper by EN 515. The letter P of JIS H 4000 (sheet and plate) is passed over.
 */
export const aluminiumNames: readonly NameForm[] = [
  {
    standards: ['EN 573-3', 'JIS H 4000'],
    form: new RegExp(String.raw`^(?:ENAW|AW|AA|ALUMINI?UM)(?<alloy>[1-8]\d{3}[A-CP]?)${temper}?$`),
    read: prefixed,
  },
  {
    standards: ['EN 573-3', 'JIS H 4000'],
    form: new RegExp(String.raw`^(?:EN|A)?(?<alloy>[1-8]\d{3}[A-CP]?)${temper}$`),
    read: bare,
  },
  {
    standards: ['EN 573-3', 'JIS H 4000'],
    form: /^A(?<alloy>[567]\d{3}[A-CP]?)$/,
    read: bare,
  },
  {
    standards: ['JIS H 4000', 'JIS H 4100'],
    form: new RegExp(`^A?6N01[AS]{0,2}${temper}?$`),
    read: () => ({ familyKey: 'aluminium_6xxx', sure: true }),
  },
  {
    // Letters as they were met; the table of VDA 239-200 was not seen, so the name gives its alloy group and no strength.
    standards: ['VDA 239-200'],
    form: /^AL(?<alloy>[56])(?:STD|STO|STP|ST|IBR|IIC|RSS|RS|HS|HYB|HDIP|HDI|CR|OUT|BH)(?:TZP?)?[UE]?$/,
    read: ({ alloy = '' }) => ({ familyKey: series(alloy), sure: true }),
  },
  {
    standards: ['VDA 239-200'],
    form: /^AL(?<alloy>[56])$/,
    read: ({ alloy = '' }) => ({ familyKey: series(alloy), sure: true }),
    onlyNamed: true,
  },
];
