import type { OrderEvent } from '../../generated/pack-types.ts';
import type { FactNames } from '../../generated/fact-names.ts';
import { isNotAfter } from './day-order.ts';
import type { Fact } from '../fact.ts';
import { computed, computedOr, contradicted, stated } from '../make-fact.ts';
import { datedEvents } from './dated-events.ts';
import type { DatedEvent } from './dated-work.ts';
import type { FactSheet } from '../sheet.ts';
import type { Survey } from '../survey.ts';

/** What is dated before what the rows of the packs set before it; a sheet for each thing that comes too early. */
export function orderSheets(survey: Survey, vehicleSheet: FactSheet): readonly FactSheet[] {
  const met = new Map<OrderEvent, readonly DatedEvent[]>();
  const eventsOf = (word: OrderEvent): readonly DatedEvent[] => {
    const before = met.get(word);
    if (before !== undefined) return before;
    const events = datedEvents[word](survey);
    met.set(word, events);
    return events;
  };
  const early = new Map<string, TooEarly>();
  for (const { first, then, note } of survey.context.orders ?? []) {
    for (const later of eventsOf(then)) {
      const before = eventsOf(first).filter((one) => !isOfOther(one, later) && isLater(one, later));
      if (before.length === 0) continue;
      const told = early.get(later.at) ?? { event: later, first: new Map(), notes: new Set() };
      early.set(later.at, told);
      for (const one of before) told.first.set(`${one.name} ${one.done}`, one);
      if (note !== undefined) told.notes.add(note);
    }
  }
  return [...early.values()].map((told) => sheetOf(told, vehicleSheet));
}

interface TooEarly {
  readonly event: DatedEvent;
  readonly first: Map<string, DatedEvent>;
  readonly notes: Set<string>;
}

/** On one day without hours nobody can tell. */
function isLater(first: DatedEvent, then: DatedEvent): boolean {
  return isNotAfter(first.done, then.done) === false;
}

/** A radar in front does not mind what is fitted at the rear; what does not say where it sits may sit there. */
function isOfOther({ about: one }: DatedEvent, { about: other }: DatedEvent): boolean {
  return one !== undefined && other !== undefined && one !== other;
}

function sheetOf({ event, first, notes }: TooEarly, vehicleSheet: FactSheet): FactSheet {
  const { name, done, at, part } = event;
  const before = [...first.values()];
  const facts: Readonly<Record<FactNames['order'], Fact>> = {
    'order.then': computed(name, at),
    'order.then_done': stated(done, at),
    'order.first': contradicted(
      before.map((one) => `the ${one.name} (${one.done})`).join(', '),
      at,
      before.map((one) => one.at),
    ),
    'order.because': computedOr([...notes].join(' ') || undefined, at, 'No row says why.'),
  };
  return {
    kind: 'order',
    at,
    facts,
    standsOn: [vehicleSheet],
    ...(part === undefined ? {} : { part }),
  };
}
