import type { Tolerance as StatedTolerance } from '../../generated/pack-types.ts';
import { readQuantity } from '../../quantity/read-quantity.ts';
import type { FaultList } from './fault-list.ts';
import type { Tolerance } from '../pack.ts';
import { readHistory } from './read-history.ts';

/** Reads a tolerance that has the form of the schema; undefined when its length cannot be read. */
export function readTolerance(stated: StatedTolerance, at: string, faults: FaultList): Tolerance | undefined {
  const before = faults.faults.length;
  const history = readHistory(stated, at, 'tolerance', faults);
  const reading = readQuantity(String(stated.at_most), 'length');
  if (!reading.ok) {
    faults.at(`${at}/at_most`, reading.reason);
    return undefined;
  }
  if (faults.faults.length > before) return undefined;
  return {
    ...history,
    of: stated.of,
    atMostMm: reading.value,
    source: stated.source,
    ...(stated.note === undefined ? {} : { note: stated.note }),
  };
}
