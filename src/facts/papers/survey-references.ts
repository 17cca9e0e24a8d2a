import type { Cite, Covers as StatedCovers, Plan, PlanReferencesItem } from '../../generated/plan-types.ts';
import { readYears } from '../../quantity/year-range.ts';
import { coverage } from '../../vehicle/coverage.ts';
import type { CoverageMismatch, Covers } from '../../vehicle/coverage.ts';
import { dayOf } from '../quantity-of.ts';
import { citationStandings } from '../survey.ts';
import type { CitationStanding, CitationSurvey, ReferenceSurvey } from '../survey.ts';

/** Looks up, for each reference of the plan, whether it covers the vehicle and whether its kind may permit. */
export function surveyReferences(plan: Plan): readonly ReferenceSurvey[] {
  return (plan.references ?? []).map((reference, index) => ({
    reference,
    at: `/references/${String(index)}`,
    name: nameOf(reference),
    coverage: coverage(vehicleOf(plan), coversOf(reference.covers)),
    mayPermit: mayPermit(reference.kind),
  }));
}

export function surveyCitations(
  cites: readonly Cite[],
  at: (index: number) => string,
  referenceById: ReadonlyMap<string, ReferenceSurvey>,
): readonly CitationSurvey[] {
  return cites.map((cite, index) => {
    const reference = cite.reference === undefined ? undefined : referenceById.get(cite.reference);
    return {
      at: at(index),
      ...(cite.at === undefined || namesNoPlace(cite.at) ? {} : { place: cite.at }),
      ...(cite.reference === undefined ? {} : { id: cite.reference }),
      ...(reference === undefined ? {} : { reference }),
      standing: reference === undefined ? 'not listed' : standingOf(reference),
    };
  });
}

/** What a whole document has: nobody finds the statement by it. English alone is read. */
const noPlace: ReadonlySet<string> = new Set([
  ...[
    'contents',
    'table of contents',
    'index',
    'cover',
    'cover page',
    'title',
    'title page',
    'document',
    'procedure',
  ],
  ...[
    'manual',
    'whole document',
    'whole procedure',
    'whole manual',
    'all',
    'all pages',
    'any',
    'any page',
    'everything',
  ],
  ...['everywhere', 'throughout', 'various', 'several pages'],
]);

function namesNoPlace(at: string): boolean {
  return noPlace.has(at.toLowerCase().replace(/^(?:(?:see|in|the) )+|\.$/g, ''));
}

/**
 * The citation that counts: the best standing, and among equals the one with fewest gaps. So a further document that only
 * explains never makes an operation worse.
 */
export function bestCitation(citations: readonly CitationSurvey[]): CitationSurvey | undefined {
  let best: CitationSurvey | undefined;
  for (const citation of citations) {
    if (best === undefined || rank(citation) < rank(best)) best = citation;
  }
  return best;
}

function rank(citation: CitationSurvey): number {
  const reference = citation.reference?.reference;
  const gaps =
    (citation.place === undefined && reference?.single_sheet !== true ? 1 : 0) +
    (reference?.revision === undefined ? 1 : 0) +
    (reference?.looked_up === undefined ? 1 : 0) +
    (reference?.document === undefined ? 1 : 0);
  return citationStandings.indexOf(citation.standing) * 8 + gaps;
}

function standingOf(reference: ReferenceSurvey): CitationStanding {
  if (reference.mayPermit === false) {
    return isMakerText(reference.reference.kind) ? 'maker text without permission' : 'other kind';
  }
  switch (reference.coverage.covers) {
    case 'yes':
      return reference.mayPermit === true ? 'covers' : 'cannot tell';
    case 'cannot tell':
      return 'cannot tell';
    case 'no':
      return mismatchStanding(reference.coverage.because);
  }
}

/** The widest difference names the fault: another maker's page is not mended by the right year. */
function mismatchStanding(because: readonly CoverageMismatch[]): CitationStanding {
  if (because.includes('maker')) return 'other maker';
  if (because.includes('model')) return 'other model';
  if (because.includes('body')) return 'other body';
  if (because.includes('year')) return 'other year';
  return 'vin range';
}

function mayPermit(kind: PlanReferencesItem['kind']): boolean | undefined {
  if (kind === undefined) return undefined;
  return kind === 'maker procedure' || kind === 'maker bulletin';
}

/** The maker’s own, and yet no procedure: it permits nothing. */
export function isMakerText(kind: PlanReferencesItem['kind']): boolean {
  return kind === 'maker manual' || kind === 'marking on part' || kind === 'maker position statement';
}

function nameOf(reference: PlanReferencesItem): string {
  const { document, revision, title, id } = reference;
  if (document !== undefined) return revision === undefined ? document : `${document} revision ${revision}`;
  return title ?? id ?? 'a reference without a name';
}

function vehicleOf(plan: Plan): Parameters<typeof coverage>[0] {
  const { maker, model, body, model_year, vin, build_date, plant, market } = plan.vehicle;
  return { maker, model, body, modelYear: model_year, vin, buildDate: dayOf(build_date), plant, market };
}

function coversOf(covers: StatedCovers | undefined): Covers | undefined {
  if (covers === undefined) return undefined;
  const years = covers.years === undefined ? undefined : readYears(covers.years);
  const models = [...(covers.model === undefined ? [] : [covers.model]), ...(covers.models ?? [])];
  const { from, to } = covers.vin_range ?? {};
  return {
    maker: covers.maker,
    models: models.length === 0 ? undefined : models,
    bodies: bodiesOf(covers.bodies),
    years: years?.ok === true ? { from: years.from, to: years.to } : undefined,
    vinRange: covers.vin_range === undefined ? undefined : { from: from ?? '', to: to ?? '' },
    buildRange:
      covers.built === undefined ? undefined : { from: endOf(covers.built.from), to: endOf(covers.built.to) },
    plants: covers.plants,
    markets: covers.markets,
  };
}

/** An end that is stated and is no day is not an open one. */
function endOf(day: string | undefined): number | undefined {
  return day === undefined ? undefined : (dayOf(day) ?? Number.NaN);
}

function bodiesOf(bodies: readonly string[] | undefined): readonly string[] | 'all' | undefined {
  return bodies?.some((body) => body.trim().toLowerCase() === 'all') === true ? 'all' : bodies;
}
