import { calledWith } from '../../facts/called-with.ts';
import { isOpen } from '../../facts/heat/exposure-verdict.ts';
import type { HeatedNeighbour, PlannedHeat } from '../../facts/heat/plan-heat.ts';
import { formatQuantity } from '../../quantity/format-quantity.ts';
import { plannedPicture, plannedTitle } from '../heat/heat-pictures.ts';
import { heatDrawing } from '../heat/heat-svg.ts';
import { Markup, html, nothing, where } from '../html.ts';
import { grid } from './sheet-facts.ts';

/** One heat of the plan: the picture of temperature against distance, and its neighbours in numbers. */
export function heatFigure(heat: PlannedHeat): Markup {
  const { neighbours, open, runs, seam } = heat;
  const title = plannedTitle(heat);
  const assumed = [...new Set(neighbours.flatMap(({ assumptions }) => assumptions))];
  return html`<figure>
    <figcaption>${captionOf(heat, title)}</figcaption>
    ${runs.length === 0 && seam === undefined ? nothing : picture(heat, title)}
    ${where(open.length > 0, () => html`<p><b>Not known:</b> ${open.join(' ')}</p>`)}
    ${neighbours.length === 0 ? html`<p>Nothing is listed beside it.</p>` : neighbourTable(neighbours, title)}
    ${where(assumed.length > 0, () => html`<p><b>Assumed:</b> ${assumed.join(' ')}</p>`)}
  </figure>`;
}

/** The picture says the rest itself. */
function captionOf({ runs, seam, statedCelsius }: PlannedHeat, title: string): string {
  const stated = statedCelsius === undefined ? '' : ` (${formatQuantity(statedCelsius, '°C')} stated)`;
  return runs.length === 0 && seam === undefined ? `Heat: ${title}` : `Heat of this work, computed${stated}`;
}

/** Ids of a drawing begin with its place in the plan, which no two heats share but by kind. */
function picture(heat: PlannedHeat, title: string): Markup {
  const own = `heat${heat.at.replaceAll('/', '-')}-${heat.from}-`;
  return new Markup(
    heatDrawing('Temperature against distance', [{ ...plannedPicture(heat, ''), title }], own),
  );
}

function neighbourTable(neighbours: readonly HeatedNeighbour[], title: string): Markup {
  return grid(
    `What lies beside it: ${title}`,
    ['Neighbour', 'Answer', 'Distance', 'Reaches', 'Limit', 'Strength left', 'Stay clear by'],
    neighbours.map((one) => {
      const numbers = numbersOf(one);
      return [
        one.victim === undefined ? one.name : calledWith(one.name, one.victim),
        answerOf(one),
        // Without a number the reasons have the room: on paper a column of them runs over pages.
        ...(numbers.every((word) => word === none) ? [] : numbers),
      ];
    }),
  );
}

function numbersOf(one: HeatedNeighbour): readonly string[] {
  const peak = quantity(one.peakCelsius, '°C');
  return [
    quantity(one.distanceMm, 'mm'),
    one.howSure === undefined ? peak : `${peak}, ${one.howSure}`,
    quantity(one.limitCelsius ?? one.stopLimitCelsius, '°C'),
    quantity(one.tensileLeft, '%'),
    clearWords(one),
  ];
}

const none = '—';

function answerOf({ verdict, reasons }: HeatedNeighbour): Markup {
  const word = isOpen(verdict) ? html`<b>${verdict}</b>` : html`${verdict}`;
  return reasons.length === 0 ? word : html`${word}. ${reasons.join(' ')}`;
}

function clearWords({ clear, verdict }: HeatedNeighbour): string {
  if (verdict === 'not in reach') return none;
  if (!clear.ok) return clear.reason;
  const away = formatQuantity(clear.distanceMm, 'mm');
  return clear.rule === undefined ? away : `${away} (rule ${clear.rule})`;
}

function quantity(value: number | undefined, unit: string): string {
  return value === undefined ? none : formatQuantity(value, unit);
}
