import type { CitationStanding } from '../../facts/survey.ts';
import type { OperationShown, PartShown } from '../../facts/part/part-shown.ts';
import type { PlannedHeat } from '../../facts/heat/plan-heat.ts';
import { html, joined, nothing, where } from '../html.ts';
import type { Markup } from '../html.ts';
import type { FindingPlaces } from './place-findings.ts';
import { isKnown, isYes, pair, pairOf, pairs, textOf, told } from './sheet-facts.ts';
import { findingList } from './sheet-finding.ts';
import { heatFigure } from './sheet-heat.ts';
import { jointTable } from './sheet-joints.ts';
import type { SheetReport } from './sheet-report.ts';

/** The parts from the outside in, each with what it is made of, what is proposed, and what was found about it. */
export function sheetParts({ shown, heats }: SheetReport, places: FindingPlaces): Markup {
  const heatsAt = new Map<string, PlannedHeat[]>();
  for (const heat of heats) heatsAt.set(heat.at, [...(heatsAt.get(heat.at) ?? []), heat]);
  const { parts } = shown;
  return html`<section aria-labelledby="parts">
    <h2 id="parts">Parts, from the outside in</h2>
    ${where(parts.length === 0, () => html`<p>The plan lists no part.</p>`)}
    ${parts.map((part, index) => partSection(part, index, heatsAt, places))}
  </section>`;
}

function partSection(
  part: PartShown,
  index: number,
  heatsAt: ReadonlyMap<string, readonly PlannedHeat[]>,
  places: FindingPlaces,
): Markup {
  const { id, facts, operations, at } = part;
  // A heading without a word is none.
  const name = part.name.trim() === '' ? 'A part without a name' : part.name;
  const own = `part-${String(index + 1)}`;
  return html`<section class="part" aria-labelledby="${own}">
    <h3 id="${own}">${name}${id === undefined || id === name ? '' : ` (${id})`}</h3>
    <p class="layer">${layerWords(part)}</p>
    ${findingList(places.atPart(at))}
    ${pairs([
      pairOf('Kind', [part.kind, part.side, part.condition].filter((word) => word !== undefined).join(', ')),
      pair('Carries crash load', told(facts, 'part.structural')),
      pair('Strength class', told(facts, 'part.class')),
      pair('Tensile strength, at least', told(facts, 'part.tensile', 'MPa')),
      where(isKnown(facts, 'part.yield'), () =>
        pair('Yield strength of the grade', told(facts, 'part.yield', 'MPa')),
      ),
      where(isKnown(facts, 'part.weldability'), () =>
        pair('Carbon equivalents', told(facts, 'part.weldability')),
      ),
      pair('Grade as written', part.grade ?? html`<em>not stated</em>`),
      pair('Material read in', part.materialFrom ?? html`<em>not stated</em>`),
      pair('Thickness', told(facts, 'part.thickness', 'mm')),
      pair('Coating', told(facts, 'part.coating')),
      where(isYes(facts, 'part.zones') === true, () => pair('Zones', 'of different strength')),
      pair('Damage', damageWords(part)),
      pairOf('Beside work on others', part.besideWork.join('; ')),
      pairOf('Note of the plan', part.note),
    ])}
    ${operations.length === 0 ? html`<p>No work is proposed for it.</p>` : operations.map((one) => operationBlock(one, name, heatsAt.get(one.at) ?? []))}
  </section>`;
}

function layerWords({ layer, under, over }: PartShown): string {
  if (under.length === 0 && over.length === 0) return 'No layer over or under it is stated.';
  const words = [
    layer === undefined
      ? 'Its layers hide each other in a circle.'
      : layer === 1
        ? 'Outermost layer.'
        : `Layer ${String(layer)}.`,
    under.length === 0 ? '' : `Under ${under.join(', ')}.`,
    over.length === 0 ? '' : `Hides ${over.join(', ')}.`,
  ];
  return words.filter((word) => word !== '').join(' ');
}

function damageWords({ facts, foundBy, damageExtent }: PartShown): Markup {
  const words = [
    damageExtent,
    foundBy === undefined ? 'not said how it was looked at' : `found by: ${foundBy}`,
  ];
  return html`${told(facts, 'part.damage')}; ${words.filter((word) => word !== undefined).join('; ')}`;
}

function operationBlock(operation: OperationShown, part: string, heats: readonly PlannedHeat[]): Markup {
  const { what, step, planned, done, by, reason, stated, citations, near, facts, joints } = operation;
  const maker = makerWords(facts);
  const title = [
    `${planned ? 'Proposed' : 'Not to be done'}: ${what}`,
    step === undefined ? undefined : `step ${String(step)}`,
    done === undefined ? undefined : `done ${done}`,
    by === undefined ? undefined : `by ${by}`,
  ];
  return html`<div class="work">
    <h4>${title.filter((word) => word !== undefined).join(', ')}</h4>
    ${where(reason !== undefined, () => html`<p><b>Reason:</b> ${reason ?? ''}</p>`)}
    ${where(
      stated.length > 0,
      () =>
        html`<p>
          ${joined(
            stated.map(
              ([name, value]) =>
                html`<span class="stated"><b>${name}:</b> ${value.replace(/\.\s*$/u, '')}</span>`,
            ),
            '; ',
          )}
        </p>`,
    )}
    <p>
      <b>By document:</b> ${
        citations.length === 0
          ? html`<em>none is cited</em>`
          : joined(
              citations.map(
                ({ text, standing }) => html`${text} <small>(${standingWords[standing]})</small>`,
              ),
              '; ',
            )
      }
    </p>
    ${where(maker !== undefined, () => html`<p><b>The maker, as the vehicle pack has it:</b> ${maker ?? ''}.</p>`)}
    ${where(near.length > 0, () => html`<p><b>Beside it:</b> ${near.join('; ')}.</p>`)}
    ${joints.length === 0 ? nothing : jointTable(joints, `Joints of ${part}, ${what}`)}
    ${heats.map(heatFigure)}
  </div>`;
}

/** Undefined where the pack is silent: that needs no line on every piece of work. */
function makerWords(facts: OperationShown['facts']): string | undefined {
  const says = textOf(facts, 'provision.says');
  return says === undefined || says === 'silent' ? undefined : `such work ${says} be done`;
}

const standingWords: Readonly<Record<CitationStanding, string>> = {
  covers: 'covers this vehicle',
  'cannot tell': 'whether it covers this vehicle cannot be told',
  'vin range': 'for other numbers, build dates, plants or markets',
  'other year': 'for other model years',
  'other body': 'for another body',
  'other model': 'for another model',
  'other maker': 'of another maker',
  'maker text without permission': 'of the maker, but it permits nothing',
  'other kind': 'no document of the maker',
  'not listed': 'not among the documents of the plan',
  none: 'no document',
};
