import type { Item, Near, Path, Treatment } from '../../generated/plan-types.ts';
import { victimOf } from './exposure-victim.ts';
import type { VictimWord } from './exposure-victim.ts';
import type { HeatSource } from './heat-sources.ts';
import { heldItems } from '../part/held-items.ts';
import { hasAdhesive } from '../joint/joint-methods.ts';
import { coversVehicle } from '../papers/maker-evidence.ts';
import { itemPresence, partPresence } from './neighbour-presence.ts';
import type { Presence } from './neighbour-presence.ts';
import { inAgainBecause } from './renewed-after.ts';
import { linkedParts } from '../part/linked-parts.ts';
import { isPyrotechnic, isWeldedIn } from '../part/part-kinds.ts';
import { listOf, quantityOf } from '../quantity-of.ts';
import type { OperationSurvey, PartSurvey, Survey } from '../survey.ts';

/** One neighbour of one heat source, whatever is known of it. */
export interface Neighbour extends Presence {
  readonly at: string;
  readonly listed: boolean;
  readonly name: string;
  readonly part?: PartSurvey;
  readonly item?: Item;
  /** The part that an item sits at. */
  readonly carrier?: PartSurvey;
  readonly victim?: VictimWord;
  readonly assumption?: string;
  readonly distanceMm?: number;
  readonly path?: Path;
  readonly treatment: Treatment;
  readonly near?: Near;
}

/** One neighbour in the reach of one heat source. */
export interface Exposed {
  readonly source: HeatSource;
  readonly neighbour: Neighbour;
}

/**
 * What one entry under `near` names: a part with what it holds, an item, or an item at a part. The adhesive in a flange and the
 * flange itself stand different heat, so each is a neighbour of its own.
 */
export function listedNeighbours(
  survey: Survey,
  source: OperationSurvey,
  near: Near,
  index: number,
): readonly Neighbour[] {
  const { operation } = source;
  const part = near.part === undefined ? undefined : survey.partById.get(near.part);
  const distanceMm = quantityOf(near.distance, 'length');
  const treatment = near.treatment ?? (part === undefined ? 'stays' : treatmentByPlan(part, source));
  const isCited = listOf(near.cite).some((cite) => coversVehicle(survey, cite.reference));
  const isBondedAnew = bondsAnew([source.part, ...(part === undefined ? [] : [part])], operation.step);
  // Between parts that are joined heat runs in the metal, whatever else it does.
  const isJoined = part !== undefined && linkedParts(survey, source.part).has(part);
  const path = isJoined && near.path === 'through air' ? undefined : near.path;
  const entry = {
    at: `${source.at}/near/${String(index)}`,
    ...(distanceMm === undefined ? {} : { distanceMm }),
    ...(path === undefined ? {} : { path }),
    treatment,
    near,
  };
  const ofItem = (item: Item, name: string): Neighbour => ({
    listed: true,
    ...entry,
    ...itemPresence(item, treatment, path, isCited || (item === 'structural adhesive' && isBondedAnew)),
    item,
    ...(part === undefined ? {} : { carrier: part }),
    name,
    victim: item,
  });
  if (part === undefined) {
    if (near.item !== undefined) return [ofItem(near.item, near.name ?? near.item)];
    const name = near.name ?? near.part ?? 'a neighbour without a name';
    return [{ listed: true, ...entry, name, stays: treatment !== 'removed' }];
  }
  const itself: Neighbour = {
    listed: true,
    ...entry,
    ...partOf(survey, part),
    ...partPresence(part, treatment, path, source),
  };
  const named =
    near.item === undefined ? [] : [ofItem(near.item, near.name ?? `${near.item} at ${part.name}`)];
  const isNamed = namedAt(operation.near ?? [], near.part);
  const held = heldItems(survey, part, operation.step).filter(
    ({ item }) => part !== source.part && !isNamed(item),
  );
  return [
    itself,
    ...named,
    ...held.map(({ item, name, stays }): Neighbour => {
      const alone = ofItem(item, name);
      // Off with its part; spoilt and renewed only by itself.
      const treated = treatment === 'removed' ? { ...alone, ...presenceOf(itself) } : alone;
      return treated.stays === true && stays === undefined
        ? { ...treated, stays: undefined, open: noOrder(name) }
        : treated;
    }),
  ];
}

/** What the plan's list leaves out: a part that is joined to or layered with the heated one, and what it and the heated one hold. */
export function unlistedNeighbours(
  survey: Survey,
  source: OperationSurvey,
  linked: readonly PartSurvey[],
): readonly Neighbour[] {
  const { operation, at } = source;
  const entry = { at, treatment: 'stays' as const };
  const holding = (part: PartSurvey): readonly Neighbour[] =>
    heldItems(survey, part, operation.step).map(({ item, name, stays }) => ({
      listed: false,
      ...entry,
      item,
      name,
      victim: item,
      stays,
      open: noOrder(name),
    }));
  const around = linked.flatMap((part): readonly Neighbour[] => {
    const treatment = treatmentByPlan(part, source);
    if (treatment !== 'stays')
      return [{ listed: false, ...entry, ...partOf(survey, part), treatment, stays: false }];
    return [{ listed: false, ...entry, ...partOf(survey, part), stays: true }, ...holding(part)];
  });
  // The old part goes whole, with what it holds; units at the part itself are asked for as such.
  if (operation.do === 'replace' && source.cutsPartWay === false) return around;
  const named = new Set((operation.near ?? []).map(({ item }) => item));
  const own = (source.part.part.holds ?? []).filter((item) => !named.has(item) && !isPyrotechnic(item));
  return [
    ...around,
    ...own.map((item) => ({
      listed: false,
      ...entry,
      item,
      name: `${item} at ${source.part.name}`,
      victim: item,
      stays: true,
    })),
  ];
}

/** Whether adhesive is laid anew on one of the parts with the heat or after it. Steps that are not written contradict nothing. */
function bondsAnew(parts: readonly PartSurvey[], step: number | undefined): boolean {
  return parts.some(({ operations }) =>
    operations.some(({ operation }) => {
      const isBefore = step !== undefined && operation.step !== undefined && operation.step < step;
      const lays =
        operation.do === 'bond' ||
        (operation.joints ?? []).some(
          ({ method, adhesive }) => adhesive !== undefined || (method !== undefined && hasAdhesive(method)),
        );
      return lays && !isBefore;
    }),
  );
}

function noOrder(name: string): string {
  return `Whether ${name} is off before this step is not stated.`;
}

function presenceOf({ stays, open }: Presence): Presence {
  return open === undefined ? { stays } : { stays, open };
}

function namedAt(near: readonly Near[], part: string | undefined): (item: Item) => boolean {
  const items = new Set(near.filter((one) => one.part === part).map(({ item }) => item));
  return (item) => items.has(item);
}

function partOf(
  survey: Survey,
  part: PartSurvey,
): Pick<Neighbour, 'name' | 'part' | 'victim' | 'assumption'> {
  const { word, assumption } = victimOf(survey, part);
  return { name: part.name, part, victim: word, ...(assumption === undefined ? {} : { assumption }) };
}

/** What the plan's other operations do with the neighbour by the time of the heat. Needs the order of steps to count. */
function treatmentByPlan(part: PartSurvey, source: OperationSurvey): Treatment {
  const { step } = source.operation;
  if (step === undefined) return 'stays';
  for (const { operation } of part.operations) {
    if (operation.step === undefined) continue;
    const isOff =
      operation.do === 'remove and refit' &&
      !isWeldedIn(part.part.kind) &&
      operation.step < step &&
      operation.refit_step !== undefined &&
      operation.refit_step > step;
    if (isOff) return 'removed';
    const { refit_step: refit } = operation;
    const isInLater = refit === undefined ? operation.step > step : operation.step < step && refit > step;
    const isLater = operation.do === 'replace' && operation.extent === 'whole' && isInLater;
    if (isLater && inAgainBecause(source, part, operation) === undefined) return 'renewed';
  }
  return 'stays';
}
