import type { Limit as StatedLimit } from '../../generated/pack-types.ts';
import type { Dimension } from '../../quantity/dimension.ts';
import { readQuantity } from '../../quantity/read-quantity.ts';
import { factEntry } from '../fact-dictionary.ts';
import type { FactDictionary } from '../fact-dictionary.ts';
import type { FaultList } from './fault-list.ts';
import type { Limit } from '../pack.ts';
import { readHistory } from './read-history.ts';

/** Reads a heat limit that has the form of the schema; undefined when something in it cannot be right. */
export function readLimit(
  stated: StatedLimit,
  at: string,
  dictionary: FactDictionary,
  faults: FaultList,
): Limit | undefined {
  const before = faults.faults.length;
  const entry = factEntry(dictionary, 'exposure.victim');
  const victims = entry?.words ?? [];
  const history = readHistory(stated, at, 'limit', faults);
  if (!victims.includes(stated.victim)) {
    faults.at(
      `${at}/victim`,
      `\`${stated.victim}\` is nothing that heat is judged at.`,
      faults.nearest(stated.victim, victims, entry?.synonyms),
    );
  }
  const quantity = (
    given: string | number | undefined,
    dimension: Dimension,
    key: string,
  ): number | undefined => {
    if (given === undefined) return undefined;
    const reading = readQuantity(String(given), dimension);
    if (reading.ok) return reading.value;
    faults.at(`${at}/${key}`, reading.reason);
    return undefined;
  };
  const hold = quantity(stated.hold_above, 'temperature', 'hold_above');
  const stop = quantity(stated.stop_above, 'temperature', 'stop_above');
  const celsius = quantity(stated.time_above?.temperature, 'temperature', 'time_above/temperature');
  const seconds = quantity(stated.time_above?.at_most, 'time', 'time_above/at_most');
  if (hold !== undefined && stop !== undefined && hold > stop) {
    faults.at(`${at}/hold_above`, 'The hold begins above the stop: the two ends cross.');
  }
  if (stated.hold_above === undefined && stated.stop_above === undefined && stated.time_above === undefined) {
    faults.at(at, 'A limit says `hold_above`, `stop_above` or `time_above`.');
  }
  if (faults.faults.length > before) return undefined;
  return {
    victim: stated.victim,
    ...history,
    ...(hold === undefined ? {} : { holdAboveCelsius: hold }),
    ...(stop === undefined ? {} : { stopAboveCelsius: stop }),
    ...(celsius === undefined || seconds === undefined
      ? {}
      : { timeAbove: { celsius, atMostSeconds: seconds } }),
    ...(stated.at_work === undefined ? {} : { atWork: stated.at_work }),
    source: stated.source,
    ...(stated.note === undefined ? {} : { note: stated.note }),
  };
}
