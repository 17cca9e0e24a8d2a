import type { NameContent, NameForm, NameParts } from './name-form.ts';
import { figure } from './name-form.ts';

/**
 * Numbers of EN 10027-2 without a row: only the group 1.40xx to 1.49xx tells its material, stainless and heat-resisting steel. What
 * stands behind the plus is the state of EN 10088-2: +C the tensile strength and +CP the proof strength of cold-hardened strip, 2H
 * strip that was rolled hard. From memory.
 */
export const numberNames: readonly NameForm[] = [
  {
    standards: ['EN 10027-2', 'EN 10088-2', 'EN 10151'],
    form: /^1\.4\d{3}(?:\+(?:C(?<rm>\d{3,4})|CP(?<re>\d{3,4})|(?<hard>2H)|2[BDRE]|1[CDE]|QT|AT|A|N))?$/,
    read: inState,
  },
];

function inState({ rm, re, hard }: NameParts): NameContent {
  const [tensileMinMpa, yieldMinMpa] = [figure(rm, 400, 2200), figure(re, 200, 2200)];
  const isHardened = rm !== undefined || re !== undefined || hard !== undefined;
  return {
    familyKey: 'stainless',
    ...(tensileMinMpa === undefined ? {} : { tensileMinMpa }),
    ...(yieldMinMpa === undefined ? {} : { yieldMinMpa }),
    ...(isHardened ? { state: 'cold hardened' as const } : {}),
  };
}
