import type { Window as StatedInFile } from '../../generated/pack-types.ts';
import type { Range } from '../../joint/weld-window.ts';
import type { Dimension } from '../../quantity/dimension.ts';
import { readQuantity } from '../../quantity/read-quantity.ts';
import type { FaultList } from './fault-list.ts';
import type { StatedWindow } from '../pack.ts';
import { readHistory } from './read-history.ts';

/** Reads a window of weld settings that has the form of the schema; undefined when something in it cannot be right. */
export function readWindow(stated: StatedInFile, at: string, faults: FaultList): StatedWindow | undefined {
  const quantity = (given: string | number, dimension: Dimension, key: string): number | undefined => {
    const reading = readQuantity(String(given), dimension);
    if (reading.ok) return reading.value;
    faults.at(`${at}/${key}`, reading.reason);
    return undefined;
  };
  const range = (key: 'force' | 'current' | 'time'): Range | undefined => {
    const min = quantity(stated[key].min, key, `${key}/min`);
    const max = quantity(stated[key].max, key, `${key}/max`);
    if (min === undefined || max === undefined) return undefined;
    if (min <= max) return { min, max };
    faults.at(`${at}/${key}`, 'The two ends cross.');
    return undefined;
  };
  const before = faults.faults.length;
  const history = readHistory(stated, at, 'window', faults);
  const overMm = quantity(stated.over, 'length', 'over');
  const upToMm = quantity(stated.up_to, 'length', 'up_to');
  const [force, current, time] = [range('force'), range('current'), range('time')];
  const tipMm = stated.tip === undefined ? undefined : quantity(stated.tip, 'length', 'tip');
  if (overMm === undefined || upToMm === undefined) return undefined;
  if (overMm >= upToMm) {
    faults.at(`${at}/up_to`, 'The range of sheet ends before it begins.');
    return undefined;
  }
  if (force === undefined || current === undefined || time === undefined) return undefined;
  if (faults.faults.length > before) return undefined;
  return {
    ...history,
    coat: stated.coat,
    overMm,
    upToMm,
    force,
    current,
    time,
    ...(tipMm === undefined ? {} : { tipMm }),
    source: stated.source,
    ...(stated.note === undefined ? {} : { note: stated.note }),
  };
}
