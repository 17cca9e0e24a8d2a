import type { Item, Near, Path, Treatment } from '../generated/plan-types.ts';
import { victimOf } from './exposure-victim.ts';
import type { VictimWord } from './exposure-victim.ts';
import { quantityOf } from './quantity-of.ts';
import type { OperationSurvey, PartSurvey, Survey } from './survey.ts';

/** One neighbour of one heat source, whatever is known of it. */
export interface Neighbour {
  readonly at: string;
  readonly listed: boolean;
  readonly name: string;
  readonly part?: PartSurvey;
  readonly item?: Item;
  readonly victim?: VictimWord;
  readonly assumption?: string;
  readonly distanceMm?: number;
  readonly path?: Path;
  readonly treatment: Treatment;
  /** Stays in reach of the heat: not off the vehicle, not renewed afterwards, not shielded from what comes through air. */
  readonly stays: boolean;
  readonly near?: Near;
}

/**
 * What one entry under `near` names: a part, an item, or an item at a part. The last are two neighbours, for the adhesive in a
 * flange and the flange itself stand different heat.
 */
export function listedNeighbours(
  survey: Survey,
  source: OperationSurvey,
  near: Near,
  index: number,
): readonly Neighbour[] {
  const part = near.part === undefined ? undefined : survey.partById.get(near.part);
  const distanceMm = quantityOf(near.distance, 'length');
  const treatment = near.treatment ?? treatmentByPlan(source, part);
  const entry = {
    at: `${source.at}/near/${String(index)}`,
    listed: true,
    ...(distanceMm === undefined ? {} : { distanceMm }),
    ...(near.path === undefined ? {} : { path: near.path }),
    treatment,
    stays: treatment === 'stays' || (treatment === 'shielded' && near.path !== 'through air'),
    near,
  };
  if (part === undefined || near.item === undefined) {
    return [{ ...neighbourOf(part, near.item, near.name ?? near.part), ...entry }];
  }
  const itemName = near.name ?? `${near.item} at ${part.name}`;
  return [
    { ...neighbourOf(part, undefined, undefined), ...entry },
    { ...neighbourOf(undefined, near.item, itemName), ...entry },
  ];
}

/** A part that is joined to or layered with the heated one and that the plan's list leaves out. */
export function unlistedNeighbour(source: OperationSurvey, part: PartSurvey): Neighbour {
  const treatment = treatmentByPlan(source, part);
  return {
    ...neighbourOf(part, undefined, undefined),
    at: source.at,
    listed: false,
    treatment,
    stays: treatment === 'stays',
  };
}

function neighbourOf(
  part: PartSurvey | undefined,
  item: Item | undefined,
  name: string | undefined,
): Pick<Neighbour, 'name' | 'part' | 'item' | 'victim' | 'assumption'> {
  if (part !== undefined) {
    const { word, assumption } = victimOf(part);
    return { name: part.name, part, victim: word, ...(assumption === undefined ? {} : { assumption }) };
  }
  if (item !== undefined) return { name: name ?? item, item, victim: item };
  return { name: name ?? 'a neighbour without a name' };
}

/** What the plan's other operations do with the neighbour by the time of the heat. Needs the order of steps to count. */
function treatmentByPlan(source: OperationSurvey, part: PartSurvey | undefined): Treatment {
  const step = source.operation.step;
  if (part === undefined || step === undefined) return 'stays';
  for (const { operation } of part.operations) {
    if (operation.step === undefined) continue;
    const isOff =
      operation.do === 'remove and refit' &&
      operation.step < step &&
      operation.refit_step !== undefined &&
      operation.refit_step > step;
    if (isOff) return 'removed';
    if (operation.do === 'replace' && operation.extent === 'whole' && operation.step > step) return 'renewed';
  }
  return 'stays';
}
