import type { Fact, FactValue, Provenance } from '../../facts/fact.ts';
import type { Facts } from '../../facts/plan-shown.ts';
import { formatQuantity } from '../../quantity/format-quantity.ts';
import { html, nothing } from '../html.ts';
import type { Markup } from '../html.ts';

/** What the plan states needs no remark. */
const fromWords: Readonly<Record<Provenance, string>> = {
  stated: '',
  table: 'from a table',
  computed: 'computed',
  assumed: 'assumed',
};

/** A fact for a cell: its value and how it is known, or why it is not. `unit` is that of the number. */
export function told(facts: Facts, name: string, unit?: string): Markup {
  const fact = facts[name];
  if (fact === undefined) return html`<em>not stated</em>`;
  return fact.known
    ? html`${valueWords(fact.value, unit)}${sourceMark(fact)}`
    : html`<em>Not known:</em> ${fact.reason}`;
}

/** The bare value, `—` where it is not known. */
export function bare(facts: Facts, name: string, unit?: string): string {
  const fact = facts[name];
  return fact?.known === true ? valueWords(fact.value, unit) : '—';
}

/** Whether there is a value to show. */
export function isKnown(facts: Facts, name: string): boolean {
  return facts[name]?.known === true;
}

/** True, false, or undefined where it is not known. */
export function isYes(facts: Facts, name: string): boolean | undefined {
  const fact = facts[name];
  return fact?.known === true && typeof fact.value === 'boolean' ? fact.value : undefined;
}

/** The words of a known text, undefined otherwise. */
export function textOf(facts: Facts, name: string): string | undefined {
  const fact = facts[name];
  return fact?.known === true && typeof fact.value === 'string' ? fact.value : undefined;
}

function sourceMark(fact: Extract<Fact, { known: true }>): Markup {
  const words = [fromWords[fact.from], fact.note ?? ''].filter((word) => word !== '').join('. ');
  return words === '' ? nothing : html` <small>(${words})</small>`;
}

function valueWords(value: FactValue, unit: string | undefined): string {
  if (typeof value === 'number') return unit === undefined ? String(value) : formatQuantity(value, unit);
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'string') return value;
  return value.length === 0 ? 'none' : value.join(', ');
}

/** A name and its value, for `pairs`. */
export function pair(what: string, value: Markup | string): Markup {
  return html`<div>
    <dt>${what}</dt>
    <dd>${value}</dd>
  </div>`;
}

/** The pair, where there is a value. */
export function pairOf(what: string, value: string | undefined): Markup {
  return value === undefined || value === '' ? nothing : pair(what, value);
}

/** Names with their values, in as many columns as the page has room for. */
export function pairs(rows: readonly Markup[]): Markup {
  return html`<dl class="pairs">${rows}</dl>`;
}

/** Rows of a table that paper keeps together; a longer one runs on to the next page. */
const mostTogether = 8;

/** A table with a head; what stands first in a row names it. Of a row that is shorter than the head, the last cell takes the rest. */
export function grid(
  caption: string,
  head: readonly string[],
  rows: readonly (readonly (Markup | string)[])[],
): Markup {
  const body = rows.map(
    ([first = '', ...rest]) =>
      html`<tr>
        <th scope="row">${first}</th>
        ${rest.map((cell, index) => (index === rest.length - 1 && rest.length < head.length - 1 ? html`<td colspan="${head.length - rest.length}">${cell}</td>` : html`<td>${cell}</td>`))}
      </tr>`,
  );
  return html`<div class="${rows.length > mostTogether ? 'wide' : 'wide short'}">
    <table>
      <caption>
        ${caption}
      </caption>
      <thead>
        <tr>
          ${head.map((word) => html`<th scope="col">${word}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${body}
      </tbody>
    </table>
  </div>`;
}

/** A date, or another short word of the plan, that no line end divides; a long one is. */
export function whole(words: string | undefined): Markup | string {
  if (words === undefined) return '—';
  return words.length > 24 ? words : html`<span class="whole">${words}</span>`;
}
