import type { FactNames } from '../../generated/fact-names.ts';
import type { DriveWord, Item, Treatment } from '../../generated/plan-types.ts';
import { saidInClause } from '../../plan/said-in-clause.ts';
import type { Fact } from '../fact.ts';
import { coversVehicle } from '../papers/maker-evidence.ts';
import { computed, computedOr, statedOr } from '../make-fact.ts';
import { fluidsAgainstParts } from './fluids-and-parts.ts';
import { itemPresence } from '../heat/neighbour-presence.ts';
import { listOf, quantityOf } from '../quantity-of.ts';
import type { Survey } from '../survey.ts';

type FireFact = Extract<
  FactNames['plan'],
  | 'plan.fluids_left'
  | 'plan.fluid_close'
  | 'plan.fuel_kept_close'
  | 'plan.refrigerant_left'
  | 'plan.refrigerant_vented'
  | 'plan.fluids_contradicted'
  | 'plan.fluids_against_parts'
  | 'plan.gas_unmentioned'
  | 'plan.fire_watch'
>;

/** What burns or bursts near hot work, and how long the place is watched. */
export function fireFacts(survey: Survey): Readonly<Record<FireFact, Fact>> {
  const at = '/make_safe/fire';
  const againstParts = fluidsAgainstParts(survey);
  const vented = refrigerantVented(survey);
  const kept = fuelKeptClose(survey);
  return {
    'plan.fluids_left': computedOr(
      fluidsLeft(survey).join(', ') || undefined,
      `${at}/fluids`,
      'The plan leaves no fuel and no gas in place.',
    ),
    'plan.fluid_close': computedOr(
      fluidsClose(survey)
        .map((one) => closeText(survey, one))
        .join('; ') || undefined,
      `${at}/fluids`,
      'The words of the fire list put no fuel and no gas close to the hot work, or it is taken off.',
    ),
    'plan.fuel_kept_close': computedOr(
      kept?.text,
      `${at}/fluids/${String(kept?.index ?? 0)}`,
      'No words of the fire list put fuel that came off in the bay or beside the work.',
    ),
    'plan.refrigerant_left': computed(isRefrigerantLeft(survey), `${at}/fluids`),
    'plan.refrigerant_vented': computedOr(
      vented?.text,
      `${at}/fluids/${String(vented?.index ?? 0)}`,
      'No words of the fire list say that refrigerant was let off.',
    ),
    'plan.fluids_contradicted': computedOr(
      fluidsContradicted(survey).join(', ') || undefined,
      `${at}/fluids`,
      'The fire list and the operations agree, or one of them says nothing.',
    ),
    'plan.fluids_against_parts': computedOr(
      againstParts?.text,
      againstParts?.at ?? `${at}/fluids`,
      'No part comes off that holds what the fire list leaves full.',
    ),
    'plan.gas_unmentioned': computed(gasUnmentioned(survey), '/vehicle/drive'),
    'plan.fire_watch': statedOr(
      quantityOf(survey.plan.make_safe?.fire?.watch, 'time'),
      `${at}/watch`,
      'No length of a fire watch of the whole job is stated.',
    ),
  };
}

/** What burns when it runs out. A brake line stays on nearly every vehicle: who lists it beside the work is asked for its distance there. */
const fuels: ReadonlySet<string> = new Set(['fuel tank', 'fuel line', 'gas cylinder']);

/** What is listed with its distance is judged there. */
function fluidsLeft(survey: Survey): readonly string[] {
  const listed = new Set(nearItems(survey).map(({ item }) => item));
  return listedFluids(survey).flatMap((one) =>
    one.stays && !listed.has(one.item) && !isClose(one) ? [leftText(one)] : [],
  );
}

/** Emptied, it still holds vapour; who reads that it "stays full" looks for another mistake. */
function leftText({ item, treatment }: Listed): string {
  return treatment === 'emptied' ? `${item} (emptied, and no page tells how its vapour was got out)` : item;
}

/** Within it fuel and gas come off or are emptied, mm. Common practice; the rule on what is listed beside hot work has the same. */
const closeMm = 300;

/** What the words of the fire list put close by: "Along the sill, 60 mm from the flange". */
function fluidsClose(survey: Survey): readonly Listed[] {
  return listedFluids(survey).filter((one) => one.stays && isClose(one));
}

function isClose({ place }: Listed): boolean {
  const mm = placedMm(place);
  return mm !== undefined && mm < closeMm;
}

/** How far off by the words of its place; a length that is no distance, "300 mm long", is left. */
function placedMm(place: string | undefined): number | undefined {
  const told =
    /(\d+(?:\.\d+)? ?(?:mm|cm|m)) (?:away|off|from|beside|behind|below|above|under|in front|to the)\b/i.exec(
      place ?? '',
    )?.[1];
  return quantityOf(told, 'length');
}

/** With the operation that claims a greater distance free of all that heat can harm. */
function closeText({ operations }: Survey, listed: Listed): string {
  const { place = '' } = listed;
  const denied = operations.find(
    ({ hot, operation }) =>
      hot !== false && (quantityOf(operation.clear_within, 'length') ?? 0) > (placedMm(place) ?? Infinity),
  );
  const clash =
    denied === undefined
      ? ''
      : `; yet the work on ${denied.part.name} says that nothing sensitive is within ${denied.operation.clear_within ?? ''}`;
  return `${leftText(listed)} (${place})${clash}`;
}

/** Under pressure it bursts; what is listed with its distance is judged there. */
function isRefrigerantLeft(survey: Survey): boolean {
  const stays = (survey.plan.make_safe?.fire?.fluids ?? []).some(
    ({ item, treatment }) =>
      item === 'refrigerant line' && treatment !== 'removed' && treatment !== 'emptied',
  );
  return stays && !nearItems(survey).some(({ item }) => item === 'refrigerant line');
}

const letOff =
  /\bvent(?:ed|ing)?\b|\blet (?:off|out|go)\b|\bbl(?:ow|ew|own|owing) (?:off|out)\b|\batmosphere\b|\bopen air\b|\bout ?doors?\b|\byard\b|\bhiss\w*|\breleased?\b/i;
const drawnOff = /drawn|recover|reclaim|station|machine|weigh|\bkg\b/i;

/** Words on a refrigerant line that say it was let off, and not drawn off into a machine. English alone is read. */
function refrigerantVented({ plan }: Survey): { readonly text: string; readonly index: number } | undefined {
  const fluids = plan.make_safe?.fire?.fluids ?? [];
  const index = fluids.findIndex(
    ({ item, place }) =>
      item === 'refrigerant line' &&
      place !== undefined &&
      saidInClause(place, letOff) !== undefined &&
      !drawnOff.test(place),
  );
  const text = fluids[index]?.place;
  return text === undefined ? undefined : { text, index };
}

/** Out of the way by one list and in it by the other. Of several of a kind, `place` says which one is meant. */
function fluidsContradicted(survey: Survey): readonly string[] {
  const near = nearItems(survey);
  return listedFluids(survey).flatMap(({ item, stays, place }) =>
    place === undefined && near.some((other) => other.item === item && other.stays !== stays) ? [item] : [],
  );
}

const besideTheWork =
  /(?:^|[\s,;])(?:on|under|beside|next to|near|by|in)(?: (?:the|a|its|this|our))? (?:\w+ ){0,2}?(?:(?:work)?bench|bay|welder|booth|oven|heater|trolley|lift|workshop floor|shop floor)(?=$|[\s,;.])/i;
const keptApart =
  /\b(?:stor(?:e|age)|cabinet|locker|outside|out of doors|outdoors|yard|shed|away from|far from)\b/i;

/** Fuel that came off and is kept where the work throws its sparks: "Under the bench beside the bay". English alone is read. */
function fuelKeptClose({ plan }: Survey): { readonly text: string; readonly index: number } | undefined {
  const fluids = plan.make_safe?.fire?.fluids ?? [];
  const index = fluids.findIndex(
    ({ item, place, treatment }) =>
      treatment === 'removed' &&
      place !== undefined &&
      item !== undefined &&
      fuels.has(item) &&
      besideTheWork.test(place) &&
      !keptApart.test(place),
  );
  const one = fluids[index];
  return one === undefined ? undefined : { text: `${one.item ?? ''} (${one.place ?? ''})`, index };
}

interface Listed {
  readonly item: Item;
  readonly stays: boolean;
  readonly treatment?: Treatment;
  readonly place?: string;
}

function listedFluids(survey: Survey): readonly Listed[] {
  const { fire } = survey.plan.make_safe ?? {};
  const isCited = listOf(fire?.cite).some((cite) => coversVehicle(survey, cite.reference));
  return (fire?.fluids ?? []).flatMap(({ item, treatment, place }) => {
    if (item === undefined || !fuels.has(item)) return [];
    const stays = itemPresence(item, treatment ?? 'stays', undefined, isCited).stays !== false;
    return [
      {
        item,
        stays,
        ...(treatment === undefined ? {} : { treatment }),
        ...(place === undefined ? {} : { place }),
      },
    ];
  });
}

function nearItems({ operations }: Survey): readonly Listed[] {
  return operations
    .flatMap(({ operation }) => operation.near ?? [])
    .flatMap(({ item, treatment }) =>
      item === undefined ? [] : [{ item, stays: treatment !== 'removed' && treatment !== 'emptied' }],
    );
}

/** Drives with gas under pressure on board. */
const gasDrives: ReadonlySet<DriveWord> = new Set<DriveWord>([
  'natural-gas',
  'liquefied-petroleum-gas',
  'fuel-cell',
]);

function gasUnmentioned(survey: Survey): boolean {
  const { plan, parts } = survey;
  if (!listOf(plan.vehicle.drive).some((drive) => gasDrives.has(drive))) return false;
  const said = [
    ...(plan.make_safe?.fire?.fluids ?? []).map(({ item }) => item),
    ...nearItems(survey).map(({ item }) => item),
    ...parts.flatMap(({ part }) => part.holds ?? []),
  ];
  return !said.includes('gas cylinder');
}
