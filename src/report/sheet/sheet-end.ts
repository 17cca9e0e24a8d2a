import type { Facts, StepShown } from '../../facts/plan-shown.ts';
import type { NotJudgedReason } from '../plan-report.ts';
import { cautions } from '../cautions.ts';
import { judgedSentence } from '../judged-by.ts';
import { html, nothing, where } from '../html.ts';
import type { Markup } from '../html.ts';
import type { FindingPlaces, NumberedFinding } from './place-findings.ts';
import { bare, grid, isYes, textOf } from './sheet-facts.ts';
import { anchor, findingList, label } from './sheet-finding.ts';
import { heatFigure } from './sheet-heat.ts';
import type { SheetReport } from './sheet-report.ts';
import { signatureState } from './sheet-signature.ts';

/** The steps around the work, with the bakes of the whole vehicle. */
export function sheetSteps({ shown, heats }: SheetReport, places: FindingPlaces): Markup {
  const bakes = heats.filter(({ at }) => !at.startsWith('/parts/'));
  return html`<section aria-labelledby="steps">
    <h2 id="steps">Steps before and after the work</h2>
    ${shown.steps.length === 0 ? html`<p>The plan states none.</p>` : stepTable(shown.steps)}
    ${shown.hazards.length === 0 ? nothing : hazardTable(shown.hazards)} ${bakes.map(heatFigure)}
    ${findingList(places.inSection('steps'))}
  </section>`;
}

function stepTable(steps: readonly StepShown[]): Markup {
  return grid(
    'What goes before and after',
    ['Step', 'How', 'Done', 'Still missing', 'Needed because', 'Result'],
    steps.map(({ facts, how, done, by }) => [
      textOf(facts, 'step.name') ?? bare(facts, 'step.what'),
      how ?? statedWord(facts, done),
      [done ?? 'not yet', by].filter((word) => word !== undefined).join(', '),
      bare(facts, 'step.missing'),
      bare(facts, 'step.needed_because'),
      bare(facts, 'step.result'),
    ]),
  );
}

function hazardTable(hazards: SheetReport['shown']['hazards']): Markup {
  return grid(
    'Restraint units, fluids and gases, as the plan lists them',
    ['What', 'Where', 'State', 'What is done', 'Step'],
    hazards.map(({ what, where: place, state, treatment, step }) => [
      what,
      place ?? '—',
      state ?? '—',
      treatment ?? html`<b>not stated</b>`,
      step === undefined ? '—' : String(step),
    ]),
  );
}

function statedWord(facts: Facts, done: string | undefined): Markup | string {
  const answer = isYes(facts, 'step.stated');
  return answer === undefined
    ? html`<em>not known</em>`
    : answer
      ? done === undefined
        ? 'planned'
        : '—'
      : html`<b>not stated</b>`;
}

/** What could not be judged, what was lifted, and what was taken for granted. */
export function sheetDoubts({ report, shown, heats }: SheetReport, { all }: FindingPlaces): Markup {
  const { notJudged, lifted, setAside = [] } = report;
  const assumed = assumptionsOf(all, heats);
  return html`<section aria-labelledby="not-judged">
      <h2 id="not-judged">What could not be judged</h2>
      ${
        notJudged.length === 0
          ? html`<p>
              Every rule could be asked. What a rule could not be told stands as a hold beside its part.
            </p>`
          : html`<ul>
              ${notJudged.map(reasonItem)}
            </ul>`
      }
      ${where(report.asked !== undefined, () => html`<p>Rules were asked ${report.asked?.asked ?? 0} times; ${report.asked?.couldNotTell ?? 0} times the plan did not say enough to tell.</p>`)}
      ${
        setAside.length === 0
          ? nothing
          : html`<ul>
              ${setAside.map(({ name, version, reason }) => html`<li>Pack ${name} ${version} was not asked: ${reason}</li>`)}
            </ul>`
      }
    </section>
    ${where(
      lifted.length > 0,
      () =>
        html`<section aria-labelledby="lifted">
          <h2 id="lifted">Lifted by the maker’s statement</h2>
          <ul>
            ${lifted.map(({ rule, by, part, operation }) => html`<li>Rule ${rule}${operation === undefined ? '' : ` on ${operation}`}${part === undefined ? '' : ` of ${nameOf(part, shown.parts)}`}: ${by}.</li>`)}
          </ul>
        </section>`,
    )}
    <section aria-labelledby="assumed">
      <h2 id="assumed">What was assumed</h2>
      ${
        assumed.length === 0
          ? html`<p>Nothing.</p>`
          : html`<ul>
              ${assumed.map(([text, labels]) => html`<li>${text} <small>(${labels})</small></li>`)}
            </ul>`
      }
    </section>`;
}

function nameOf(id: string, parts: SheetReport['shown']['parts']): string {
  return parts.find((part) => part.id === id)?.name ?? id;
}

function reasonItem({ sentence, rule, place }: NotJudgedReason): Markup {
  const where = place === undefined ? '' : `Line ${String(place.line)}, column ${String(place.column)}: `;
  return html`<li>${where}${rule === undefined ? '' : `Rule ${rule} could not be asked: `}${sentence}</li>`;
}

/** As many as a reader takes in beside one assumption. */
const mostLabels = 6;

/** Each assumption once, with the findings and the computed heats that rest on it. */
function assumptionsOf(
  all: readonly NumberedFinding[],
  heats: SheetReport['heats'],
): readonly (readonly [string, string])[] {
  const labels = new Map<string, string[]>();
  const add = (text: string, of: string): void => {
    const before = labels.get(text) ?? [];
    if (before.length <= mostLabels && !before.includes(of)) labels.set(text, [...before, of]);
  };
  for (const one of all) for (const text of one.finding.assumptions) add(text, label(one));
  for (const { part, what, neighbours } of heats) {
    const of = `heat of ${[part, what].filter((word) => word !== undefined).join(', ')}`;
    for (const { assumptions } of neighbours) for (const text of assumptions) add(text, of);
  }
  return [...labels].map(([text, of]) => {
    const shown = of.slice(0, mostLabels).join(', ');
    return [text, of.length > mostLabels ? `${shown} and others` : shown];
  });
}

/** As many open questions as a signature block can list; all stand beside their parts. */
const mostOpen = 40;

/** What a person signs, and what stands against signing. */
export function sheetSignOff({ report, shown }: SheetReport, places: FindingPlaces): Markup {
  const { stop } = report.counts;
  const open = places.all.filter(
    ({ finding }) => finding.severity === 'hold' && finding.deviation === undefined,
  );
  const lines = ['Estimator', 'Body technician', 'Released by'];
  return html`<section class="sign-off" aria-labelledby="sign-off">
    <h2 id="sign-off">Sign-off</h2>
    ${findingList(places.inSection('sign-off'))}
    ${where(shown.signOff !== undefined, () => html`<p><b>The plan says that it was signed:</b> ${(shown.signOff ?? []).join('; ')}.</p>`)}
    ${shown.signature === undefined ? nothing : signatureState(shown.signature)}
    ${shown.deviations.length === 0 ? nothing : deviationTable(shown.deviations)}
    ${where(stop > 0, () => html`<p><b>Not to be signed: ${stop === 1 ? 'a stop stands' : `${String(stop)} stops stand`}. No signature passes a stop.</b></p>`)}
    ${
      open.length === 0
        ? html`<p>No hold is open.</p>`
        : html`<p><b>To be answered before anyone signs:</b></p>
            <ul class="open">
              ${open.slice(0, mostOpen).map((one) => html`<li><a href="#${anchor(one)}">${label(one)}</a> ${partWords(one)}${one.finding.message}</li>`)}
            </ul>
            ${where(open.length > mostOpen, () => html`<p>And ${open.length - mostOpen} more holds, each beside what it concerns.</p>`)}`
    }
    ${grid(
      'Signatures',
      ['Role', 'Name', 'Date', 'Signature'],
      lines.map((role) => [role, '', '', '']),
    )}
  </section>`;
}

function partWords({ finding: { partName, message } }: NumberedFinding): string {
  return partName === undefined || message.includes(partName) ? '' : `${partName}: `;
}

function deviationTable(deviations: SheetReport['shown']['deviations']): Markup {
  return grid(
    'Deviation permits in the plan',
    ['Rule', 'Part', 'Work', 'By', 'Date', 'Until', 'Reason'],
    deviations.map(({ rule, part, operation, by, date, expires, reason }) =>
      [rule, part, operation, by, date, expires, reason].map((word) => word ?? '—'),
    ),
  );
}

/** Who decides, the hazards, and by what was judged. */
export function sheetFoot({ head, report }: SheetReport): Markup {
  return html`<footer>
    <h2>Cautions</h2>
    ${cautions.map((caution) => html`<p>${caution}</p>`)}
    <p class="about">
      ${judgedSentence(head, report.packs)}${report.digest === undefined ? '' : ` Digest of the plan: ${report.digest}.`}
    </p>
  </footer>`;
}
