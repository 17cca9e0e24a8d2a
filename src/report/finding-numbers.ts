import type { Finding } from '../judge/finding.ts';
import { formatQuantity } from '../quantity/format-quantity.ts';

/** Facts whose names are abbreviations. */
const titles: ReadonlyMap<string, string> = new Map([
  ['operation.t85', 'longest cooling from 800 to 500 °C'],
  ['operation.haz_width', 'heat-affected width'],
]);

/** What was measured, looked up or computed, and where from: `peak 437 °C computed, stop limit 250 °C from a table`. */
export function findingNumbers({ facts }: Pick<Finding, 'facts'>): string {
  return facts
    .flatMap(({ name, value, unit, from }) => {
      if (typeof value !== 'number' || unit === undefined || !Number.isFinite(value)) return [];
      const title = titles.get(name) ?? name.slice(name.indexOf('.') + 1).replaceAll('_', ' ');
      return [`${title} ${formatQuantity(value, unit)} ${from === 'table' ? 'from a table' : from}`];
    })
    .join(', ');
}
