import type { Finding, Severity } from '../../judge/finding.ts';
import { againstLines } from '../against-lines.ts';
import { findingNumbers } from '../finding-numbers.ts';
import { Markup, html, nothing, where } from '../html.ts';
import type { NumberedFinding } from './place-findings.ts';

const words: Readonly<Record<Severity, string>> = { stop: 'Stop', hold: 'Hold', note: 'Note' };

/** A shape for each severity, so that it is told apart without colour and without reading. */
const shapes: Readonly<Record<Severity, string>> = {
  stop: '<path d="M6 0h8l6 6v8l-6 6H6l-6-6V6z"/><path d="M4 8.5h12v3H4z" fill="#fff"/>',
  hold: '<path d="M10 1l9 18H1z" fill="#fff" stroke="#111" stroke-width="2"/><path d="M9 7h2v6H9zM9 15h2v2H9z"/>',
  note: '<circle cx="10" cy="10" r="8" fill="#fff" stroke="#111" stroke-width="2"/><path d="M9 8h2v7H9zM9 4h2v2H9z"/>',
};

/** The sign of a severity; its word stands beside it. */
export function sign(severity: Severity): Markup {
  return new Markup(
    `<svg class="sign" viewBox="0 0 20 20" width="20" height="20" aria-hidden="true">${shapes[severity]}</svg>`,
  );
}

/** `Stop 3`. */
export function label({ finding: { severity }, number }: NumberedFinding): string {
  return `${words[severity]} ${String(number)}`;
}

/** The place on the page. */
export function anchor({ finding: { severity }, number }: NumberedFinding): string {
  return `${severity}-${String(number)}`;
}

/** Findings under what they concern. */
export function findingList(findings: readonly NumberedFinding[]): Markup {
  return findings.length === 0
    ? nothing
    : html`<ul class="findings">
        ${findings.map(findingItem)}
      </ul>`;
}

function findingItem(numbered: NumberedFinding): Markup {
  const { finding, place } = numbered;
  const { severity, message, instead, why, rule, pack, source, assumptions, deviation } = finding;
  const numbers = findingNumbers(finding);
  return html`<li class="${severity}" id="${anchor(numbered)}">
    <p><strong class="label">${sign(severity)} ${label(numbered)}</strong> ${message}</p>
    <p><b>Instead:</b> ${instead}</p>
    ${where(numbers !== '', () => html`<p><b>Numbers:</b> ${numbers}</p>`)}
    ${assumptions.map((one) => html`<p><b>Assumed:</b> ${one}</p>`)} ${acceptedBy(deviation)}
    <details>
      <summary>Why</summary>
      <p>${why}</p>
    </details>
    <p class="where">
      Line ${place.line}, column ${place.column}${againstLines(numbered)}. Rule ${rule} of pack ${pack};
      source: ${source}.
    </p>
  </li>`;
}

function acceptedBy(deviation: Finding['deviation']): Markup {
  if (deviation === undefined) return nothing;
  const { by, role, date, expires, reason } = deviation;
  return html`<p><b>Accepted</b> by ${by}, ${role}, on ${date}, until ${expires}: ${reason}</p>`;
}
