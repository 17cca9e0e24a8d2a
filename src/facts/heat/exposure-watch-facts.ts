import type { FactNames } from '../../generated/fact-names.ts';
import type { HeatLimit } from '../context.ts';
import type { Neighbour } from './exposed-neighbour.ts';
import type { Fact } from '../fact.ts';
import { keptLimit } from './heat-limits.ts';
import { computed, computedOr, statedOr, unknown } from '../make-fact.ts';
import type { NeighbourHeat } from './neighbour-heat.ts';
import { quantityOf } from '../quantity-of.ts';

export type WatchFact = Extract<
  FactNames['exposure'],
  | 'exposure.sink'
  | 'exposure.needs_sink'
  | 'exposure.watched'
  | 'exposure.reading'
  | 'exposure.reading_over_limit'
  | 'exposure.reading_over_stop_limit'
>;

/** What takes heat out on the way, whether the limit is kept without it, and what was read at the neighbour itself. */
export function watchFacts(
  { near, at }: Pick<Neighbour, 'near' | 'at'>,
  limit: HeatLimit | undefined,
  heat: NeighbourHeat,
): Readonly<Record<WatchFact, Fact>> {
  const place = `${at}/sink`;
  const reading = quantityOf(near?.reading, 'temperature');
  const over = (celsius: number | undefined): Fact =>
    reading === undefined
      ? unknown('No reading at the neighbour is stated.', `${at}/reading`)
      : computed(celsius === undefined ? Number.NEGATIVE_INFINITY : reading - celsius, `${at}/reading`);
  const means = near?.watched_by?.means;
  return {
    'exposure.sink': computedOr(
      heat.ok ? heat.sink?.words : undefined,
      place,
      'No heat sink is counted on the way.',
    ),
    'exposure.needs_sink': needsSink(limit, heat, place),
    // Infra-red on bare metal may read half the truth.
    'exposure.watched': computed(
      means !== undefined && means !== 'none' && means !== 'infra-red',
      `${at}/watched_by`,
    ),
    'exposure.reading': statedOr(reading, `${at}/reading`, 'No reading at the neighbour is stated.'),
    'exposure.reading_over_limit': over(limit?.holdAboveCelsius),
    'exposure.reading_over_stop_limit': over(limit?.stopAboveCelsius),
  };
}

/** Without a model of the place as it would be without the measure, the measure counts as needed. */
function needsSink(limit: HeatLimit | undefined, heat: NeighbourHeat, at: string): Fact {
  if (!heat.ok || heat.sink === undefined) return computed(false, at);
  const kept = limit === undefined ? undefined : keptLimit(limit);
  if (kept === undefined) return computed(false, at, 'The packs set no limit for it.');
  const { without } = heat.sink;
  return computed(without === undefined || !kept.isKept(without), at);
}
