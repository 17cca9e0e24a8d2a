import { designationKey } from '../designation-key.ts';

/** Types of ASTM A240 and JIS G 4305 by their number of EN 10088-1; near, not equal, and of one structure. From memory. */
const typeOfNumber: Readonly<Record<string, string>> = {
  ...{
    '1.4016': '430',
    '1.4301': '304',
    '1.4307': '304L',
    '1.4310': '301',
    '1.4318': '301LN',
    '1.4372': '201',
  },
  ...{
    '1.4401': '316',
    '1.4404': '316L',
    '1.4509': '441',
    '1.4510': '439',
    '1.4512': '409',
    '1.4521': '444',
  },
};

/** The type that a number or name of annealed stainless stands for, so that `AISI 304 (1.4301)` is one grade; undefined for any other text. */
export function stainlessType(text: string): string | undefined {
  const key = designationKey(text);
  if (Object.hasOwn(typeOfNumber, key)) return typeOfNumber[key];
  return /^(?:AISI|TYPE|SUS|STS|SS)?([234]\d{2}(?:LN|L)?)$/.exec(key)?.[1];
}
