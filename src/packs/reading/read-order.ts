import type { Order as StatedOrder } from '../../generated/pack-types.ts';
import type { FaultList } from './fault-list.ts';
import type { Order } from '../pack.ts';
import { readHistory } from './read-history.ts';

/** Reads an order that has the form of the schema; undefined where it can never be kept. */
export function readOrder(stated: StatedOrder, at: string, faults: FaultList): Order | undefined {
  const before = faults.faults.length;
  const history = readHistory(stated, at, 'order', faults);
  const { first, then, source, note } = stated;
  if (first === then) faults.at(`${at}/then`, `\`${then}\` cannot come before itself.`);
  if (faults.faults.length > before) return undefined;
  return { ...history, first, then, source, ...(note === undefined ? {} : { note }) };
}

/** Whether two rows set the same two things in the same order. */
export function isSameOrder(one: Order, other: Order): boolean {
  return one.first === other.first && one.then === other.then;
}
