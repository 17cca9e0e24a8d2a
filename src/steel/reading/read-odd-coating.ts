import type { DesignationReading } from './known-designation.ts';
import { noteOf } from './known-designation.ts';
import { readOne } from './read-one.ts';
import { steelRank } from '../strength-class.ts';

/**
 * A press-hardened grade with a coating behind the plus that there is none of, as 22MnB5+A5150 for AS150. A slip in the coating does
 * not make it a softer steel, nor a blank of steel and aluminium. Behind a softer grade such a sign may hide another steel, so that is left unknown. Undefined for any
 * other text.
 */
export function readOddCoating(text: string): DesignationReading | undefined {
  const at = text.indexOf('+');
  const [grade, coating] = [text.slice(0, at).trim(), text.slice(at + 1).trim()];
  if (at < 0 || !oddCoating.test(coating)) return undefined;
  const reading = readOne(grade);
  if (reading?.known !== true || reading.readings.some((one) => one.class !== 'press-hardened'))
    return undefined;
  const other = readOne(coating);
  const isSheet = other?.known === true && other.readings.every((one) => steelRank(one.class) !== undefined);
  if (isSheet) return undefined;
  const doubt = `There is no coating "${coating}"; read the drawing again. The grade before it counts.`;
  const ambiguity = [doubt, reading.ambiguity].filter((one) => one !== undefined).join(' ');
  return {
    ...reading,
    ambiguity,
    ...noteOf(reading.assumed === undefined ? [] : [reading.assumed], ambiguity),
  };
}

/** Letters and figures, as coatings are written. */
const oddCoating = /^[A-Z]{1,3} ?\d{1,4}(?:\/\d{1,3})?[A-Z]{0,4}$|^[A-Z]{2,3}$/i;
