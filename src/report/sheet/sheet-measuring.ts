import type { FitShown, MeasuringShown, PointShown } from '../../facts/measuring/measuring-shown.ts';
import type { Facts } from '../../facts/plan-shown.ts';
import type { PlanReport } from '../plan-report.ts';
import { Markup, html, nothing } from '../html.ts';
import { measuringDrawing } from '../measuring/measuring-svg.ts';
import { signedMillimetres } from '../measuring/signed-millimetres.ts';
import type { FindingPlaces } from './place-findings.ts';
import { bare, grid } from './sheet-facts.ts';
import { findingList } from './sheet-finding.ts';
import type { SheetReport } from './sheet-report.ts';

/** Points and openings: drawn, in numbers, and what was found about them. */
export function sheetMeasuring({ report, shown }: SheetReport, places: FindingPlaces): Markup {
  const findings = places.inSection('measuring');
  const { openings } = shown;
  return html`<section aria-labelledby="measuring">
    <h2 id="measuring">Measured points</h2>
    ${pointsPart(report.measuring)} ${openings.length === 0 ? nothing : openingTable(openings)}
    ${findingList(findings)}
  </section>`;
}

function pointsPart(measuring: PlanReport['measuring']): Markup {
  const last = measuring?.fits.at(-1);
  if (measuring === undefined || last === undefined)
    return html`<p>No measured point has a deviation to show.</p>`;
  const drawing = measuringDrawing(measuring, 'points-');
  return html`<p>${fitWords(last)}</p>
    ${
      drawing === undefined
        ? html`<p>
            The points cannot be drawn: the data sheet’s places are not stated, or lie too far apart.
          </p>`
        : html`<figure>
            <figcaption>Where the points are against the data sheet</figcaption>
            ${new Markup(drawing)}
          </figure>`
    }
    ${pointTable(measuring, last)}`;
}

function fitWords({ occasion, zeroPoints, residualMm }: FitShown): string {
  const on =
    residualMm === undefined
      ? 'Taken as written: the zero points carry no fit.'
      : `Fitted to the data sheet on the zero points ${zeroPoints.join(', ')}; at most ${residualMm.toFixed(1)} mm is left there.`;
  return `Measured ${occasion} the repair. ${on}`;
}

function pointTable({ points }: MeasuringShown, { occasion }: FitShown): Markup {
  const isAfter = occasion === 'after';
  return grid(
    `Deviations ${occasion} the repair, mm off the data sheet, the worst first`,
    ['Point', 'On', 'x', 'y', 'z', ...(isAfter ? ['Largest before'] : []), 'Tolerance', 'Answer'],
    points.map((point) => [
      point.zero ? `${point.name} (zero point)` : point.name,
      point.part ?? '—',
      ...axes(point, occasion),
      ...(isAfter ? [largest(point)] : []),
      point.toleranceMm === undefined ? '—' : String(point.toleranceMm),
      answerOf(point),
    ]),
  );
}

function answerOf({ decision, off, zero }: PointShown): Markup | string {
  const word = decision ?? (off === undefined ? '—' : off ? 'off' : 'within');
  return off === true ? html`<b>${zero ? `${word} (a zero point)` : word}</b>` : word;
}

function axes(point: PointShown, occasion: FitShown['occasion']): readonly string[] {
  const way = point[occasion];
  return way === undefined ? ['—', '—', '—'] : way.map(signedMillimetres);
}

function largest({ before }: PointShown): string {
  return before === undefined ? '—' : Math.max(...before.map(Math.abs)).toFixed(1);
}

function openingTable(openings: readonly Facts[]): Markup {
  return grid(
    'Openings',
    ['Opening', 'Off before', 'Off after', 'Shape off after', 'Tolerance'],
    openings.map((facts) => [
      bare(facts, 'opening.name'),
      bare(facts, 'opening.difference_before', 'mm'),
      bare(facts, 'opening.difference_after', 'mm'),
      bare(facts, 'opening.deformation_after', 'mm'),
      bare(facts, 'opening.tolerance', 'mm'),
    ]),
  );
}
