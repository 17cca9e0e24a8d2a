import type { Item } from '../../generated/plan-types.ts';
import type { HeatPractice } from '../context.ts';
import { forLast } from '../../plan/for-last.ts';
import type { Exposed, Neighbour } from './exposed-neighbour.ts';
import { listedNeighbours, unlistedNeighbours } from './exposed-neighbour.ts';
import { heatSources } from './heat-sources.ts';
import type { HeatSource } from './heat-sources.ts';
import { linkedParts } from '../part/linked-parts.ts';
import type { OperationSurvey, Survey } from '../survey.ts';

/** A spot goes through fresh adhesive and beside sealer as the factory made it; its own heat ends within millimetres. Common practice. */
function liesInFlanges(item: Item | undefined): boolean {
  return item === 'structural adhesive' || item === 'sealer' || item === 'paint';
}

/** What a spark or a drill sets off, also where nobody listed it. */
const takesFire: ReadonlySet<Item> = new Set<Item>([
  ...(['airbag', 'belt pretensioner', 'fuel tank', 'fuel line', 'gas cylinder'] as const),
  ...(['traction battery', 'high-voltage cable'] as const),
]);

/** Asked for once for the sheets and once for heats that meet at a neighbour. */
const found = forLast((_survey: Survey) => new Map<OperationSurvey, readonly Exposed[]>());

/** Every neighbour of every heat source of an operation, listed or not. */
export function exposuresOf(survey: Survey, one: OperationSurvey): readonly Exposed[] {
  const ofSurvey = found(survey);
  const exposures = ofSurvey.get(one) ?? findExposures(survey, one);
  ofSurvey.set(one, exposures);
  return exposures;
}

function findExposures(survey: Survey, one: OperationSurvey): readonly Exposed[] {
  const sources = heatSources(one);
  if (sources.length === 0) return [];
  const listed = (one.operation.near ?? []).flatMap((near, index) =>
    listedNeighbours(survey, one, near, index),
  );
  const named = new Set(listed.map(({ part }) => part));
  const linked = one.offVehicle ? [] : [...linkedParts(survey, one.part)].filter((part) => !named.has(part));
  const unlisted = unlistedNeighbours(survey, one, linked);
  return sources.flatMap((source) =>
    [...listed, ...unlisted]
      .filter((neighbour) => isInReach(source, neighbour, survey.context.practice))
      .map((neighbour) => ({ source, neighbour })),
  );
}

/** The sheets that a joint joins are judged with the joint, never as victims of its heat. */
function isInReach(
  source: HeatSource,
  { part, item, listed, distanceMm, stays }: Neighbour,
  { reachMm }: HeatPractice,
): boolean {
  const isNear = distanceMm === undefined || distanceMm <= (reachMm.get(source.kind) ?? Infinity);
  const isDanger = item !== undefined && takesFire.has(item) && stays === true;
  const isItem = part === undefined && (listed || isDanger);
  switch (source.kind) {
    case 'heat':
      return true;
    case 'arc':
    case 'brazing':
      return part?.part.id === undefined || !source.joins.has(part.part.id);
    case 'resistance spot':
      return isItem && isNear && !liesInFlanges(item);
    case 'cutting or grinding':
      return isItem && isNear;
  }
}
