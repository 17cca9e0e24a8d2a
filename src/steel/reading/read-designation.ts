import { designationKey } from '../designation-key.ts';
import { explainUnknown, nearestGrades } from './explain-unknown.ts';
import type { DesignationReading } from './known-designation.ts';
import { readBeside } from './read-beside.ts';
import { readBlank } from './read-blank.ts';
import { readOddCoating } from './read-odd-coating.ts';
import { readOne } from './read-one.ts';
import { refuseText } from './refuse-text.ts';
import { severalGrades } from './several-grades.ts';

export type { Material } from '../material.ts';
export type { DesignationReading, KnownDesignation, UnknownDesignation } from './known-designation.ts';

/**
 * Reads a grade designation, steel number, material word or strength. The grade table is asked first, then the way standards
 * form their names, then the words of the trade. A name with several readings gives all of them; a name that may hide a
 * stronger steel than it shows is unknown, with the reason.
 */
export function readDesignation(given: string): DesignationReading {
  const refusal = refuseText(given);
  if (refusal !== undefined) {
    const nearest = refusal.repaired === undefined ? [] : nearestGrades(refusal.repaired);
    return {
      known: false,
      reason: refusal.reason,
      unusable: true,
      ...(nearest.length > 0 ? { nearest } : {}),
    };
  }
  const text = unquoted(given);
  const read = readOne(text) ?? readOddCoating(text) ?? readBlank(text) ?? readBeside(text);
  if (read !== undefined) return read;
  const several = severalGrades(text);
  if (several !== undefined) return { known: false, reason: several, unusable: true };
  return { known: false, ...explainUnknown(designationKey(text), text) };
}

/** Lists and spreadsheets leave a mark of quotation or the end of a sentence on a name; no designation has one. */
function unquoted(text: string): string {
  const bare = text.trim().replace(/^["'`]+|["'`.,;:]+$/g, '');
  return bare.length >= 3 ? bare : text;
}
