import { readVin } from '../../vehicle/identification-number.ts';
import { inVinRange } from '../../vehicle/vin-range.ts';
import type { FaultList } from './fault-list.ts';
import type { VinRange } from '../pack.ts';

/** A range of identification numbers; told and undefined when no number could be found to lie in it. */
export function readVins(stated: VinRange, at: string, faults: FaultList): VinRange | undefined {
  const ends = [
    ['from', stated.from],
    ['to', stated.to],
  ] as const;
  const malformed = ends.filter(([, text]) => !readVin(text).ok);
  for (const [key, text] of malformed) {
    faults.at(`${at}/${key}`, `\`${text}\` is no identification number of 17 characters.`);
  }
  if (malformed.length > 0) return undefined;
  const answer = inVinRange(stated.from, stated);
  if (answer === 'inside') return stated;
  const reason = answer === 'outside' ? 'the range begins after it ends' : answer.cannotTell;
  faults.at(
    at,
    `No number can be told to lie in this range: ${reason.replace("the reference's VIN range", 'the range')}.`,
  );
  return undefined;
}
