import type { Facts, ReferenceShown } from '../../facts/plan-shown.ts';
import { html, nothing } from '../html.ts';
import type { Markup } from '../html.ts';
import type { FindingPlaces } from './place-findings.ts';
import { bare, grid, isYes, pair, pairOf, pairs, textOf, told, whole } from './sheet-facts.ts';
import { findingList } from './sheet-finding.ts';
import type { SheetReport } from './sheet-report.ts';

/** The vehicle as it stands in the shop, and the documents that the plan leans on. */
export function sheetVehicle({ shown }: SheetReport, places: FindingPlaces): Markup {
  const { vehicleFacts: facts } = shown;
  return html`<section aria-labelledby="vehicle">
      <h2 id="vehicle">The plan and the vehicle</h2>
      <p>A value without a remark is as the plan states it.</p>
      ${findingList(places.inSection('plan'))}
      ${pairs([
        pair('Vehicle', shown.vehicle === '' ? html`<em>not named</em>` : shown.vehicle),
        pair('Model year by', told(facts, 'vehicle.model_year_from')),
        pair('Number', told(facts, 'vehicle.number')),
        pair('Number against itself', numberWords(facts)),
        pair('Market', told(facts, 'vehicle.market')),
        pair('Drive', told(facts, 'vehicle.drive')),
        pair('Traction voltage', told(facts, 'vehicle.high_voltage')),
        isYes(facts, 'vehicle.high_voltage') === false
          ? nothing
          : pair('Traction battery', told(shown.batteryFacts, 'step.battery_condition')),
        pairOf('Impact', shown.impact),
      ])}
    </section>
    <section aria-labelledby="documents">
      <h2 id="documents">Documents</h2>
      ${shown.references.length === 0 ? html`<p><b>The plan lists no document.</b></p>` : documentTable(shown.references)}
      ${findingList(places.inSection('documents'))}
    </section>`;
}

/** What the number says of itself: its check digit, its year, a second place. */
function numberWords(facts: Facts): Markup {
  return html`check digit: ${told(facts, 'vehicle.check_digit')}; year code:
  ${told(facts, 'vehicle.year_code')}; read in a second place: ${told(facts, 'vehicle.number_confirmed')}`;
}

function documentTable(references: readonly ReferenceShown[]): Markup {
  return grid(
    'What the plan leans on',
    ['Document', 'Kind', 'Published', 'Covers this vehicle', 'Looked up'],
    references.map((one) => [
      html`${one.name}${one.title === undefined || one.title === one.name ? '' : `: ${one.title}`}`,
      bare(one.facts, 'reference.kind'),
      whole(one.published),
      coversWords(one),
      lookUpWords(one),
    ]),
  );
}

function coversWords({ facts }: ReferenceShown): Markup {
  const fact = facts['reference.covers_vehicle'];
  const successor = textOf(facts, 'reference.superseded_by');
  const replaced = successor === undefined ? '' : ` Superseded by ${successor}.`;
  if (fact?.known !== true) return html`<b>Cannot be told.</b> ${fact?.reason ?? ''}${replaced}`;
  return fact.value === true
    ? html`yes${replaced === '' ? '' : `.${replaced}`}`
    : html`<b>No.</b> ${fact.note ?? ''}${replaced}`;
}

function lookUpWords({ facts, lookedUpBy }: ReferenceShown): Markup {
  const day = textOf(facts, 'reference.looked_up');
  if (day === undefined) return html`<b>not stated</b>`;
  const order = textOf(facts, 'reference.look_up');
  const late = order === undefined || order === 'in time' ? '' : `, ${order}`;
  return html`${whole(day)}${late}${lookedUpBy === undefined ? '' : `, by ${lookedUpBy}`}`;
}
