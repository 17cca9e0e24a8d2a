import type { FactNames } from '../generated/fact-names.ts';
import type { Item } from '../generated/plan-types.ts';
import { tensileLeft } from '../heat/tempering.ts';
import { coversVehicle } from './maker-evidence.ts';
import type { HeatLimit } from './context.ts';
import type { Neighbour } from './exposed-neighbour.ts';
import { listedNeighbours, unlistedNeighbours } from './exposed-neighbour.ts';
import type { Fact } from './fact.ts';
import { heatSources } from './heat-sources.ts';
import type { HeatSource } from './heat-sources.ts';
import { linkedParts } from './linked-parts.ts';
import { assumed, computed, computedOr, known, stated, statedOr, unknown } from './make-fact.ts';
import { neighbourHeat } from './neighbour-heat.ts';
import type { NeighbourHeat } from './neighbour-heat.ts';
import { listOf, quantityOf } from './quantity-of.ts';
import type { FactSheet } from './sheet.ts';
import type { OperationSurvey, Survey } from './survey.ts';

export type ExposureFacts = Readonly<Record<FactNames['exposure'], Fact>>;

/** Within this distance a resistance spot warms what lies beside it, mm. Common practice, no source. */
const spotReachMm = 25;

/** What a spark or a drill sets off, also where nobody listed it. */
const takesFire: ReadonlySet<Item> = new Set<Item>([
  ...(['airbag', 'belt pretensioner', 'fuel tank', 'fuel line', 'gas cylinder'] as const),
  ...(['traction battery', 'high-voltage cable'] as const),
]);

/** One sheet for each neighbour of each heat source of an operation. */
export function exposureSheets(
  survey: Survey,
  one: OperationSurvey,
  operationSheet: FactSheet,
): readonly FactSheet[] {
  return exposuresOf(survey, one).map((exposed) => ({
    kind: 'exposure' as const,
    at: exposed.neighbour.at,
    facts: exposureFacts(survey, one, exposed),
    standsOn: [operationSheet],
    ...(operationSheet.part === undefined ? {} : { part: operationSheet.part }),
    operation: one.at,
  }));
}

/** One neighbour in the reach of one heat source. */
export interface Exposed {
  readonly source: HeatSource;
  readonly neighbour: Neighbour;
}

/** Every neighbour of every heat source of an operation, listed or not. */
export function exposuresOf(survey: Survey, one: OperationSurvey): readonly Exposed[] {
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
      .filter((neighbour) => isInReach(source, neighbour))
      .map((neighbour) => ({ source, neighbour })),
  );
}

/** The sheets that a joint joins are judged with the joint, never as victims of its heat. */
function isInReach(source: HeatSource, { part, item, listed, distanceMm }: Neighbour): boolean {
  const isItem = part === undefined && (listed || (item !== undefined && takesFire.has(item)));
  switch (source.kind) {
    case 'heat':
      return true;
    case 'arc':
    case 'brazing':
      return part?.part.id === undefined || !source.joins.has(part.part.id);
    case 'resistance spot':
      return isItem && (distanceMm === undefined || distanceMm <= spotReachMm);
    case 'cutting or grinding':
      return isItem;
  }
}

export function exposureFacts(
  survey: Survey,
  one: OperationSurvey,
  { source, neighbour }: Exposed,
): ExposureFacts {
  const { near, at } = neighbour;
  const heat: NeighbourHeat = neighbour.listed
    ? neighbourHeat(survey.context, one, source, neighbour)
    : { ok: false, reason: `${neighbour.name} is not listed under \`near\` with its distance.` };
  return {
    'exposure.victim':
      neighbour.victim === undefined
        ? unknown('Neither a listed part nor an item is named.', at)
        : neighbour.assumption === undefined
          ? computed(neighbour.victim, at)
          : assumed(neighbour.victim, neighbour.assumption, at),
    'exposure.name': computed(neighbour.name, at),
    'exposure.listed': computed(neighbour.listed, at),
    'exposure.stays': computedOr(neighbour.stays, at, neighbour.open ?? 'Whether it stays is not stated.'),
    'exposure.treatment':
      near?.treatment === undefined
        ? computed(neighbour.treatment, at)
        : stated(near.treatment, `${at}/treatment`),
    'exposure.treatment_cited': computed(
      listOf(near?.cite).some((cite) => coversVehicle(survey, cite.reference)),
      `${at}/cite`,
    ),
    'exposure.from': computed(source.kind, at),
    'exposure.distance': statedOr(neighbour.distanceMm, `${at}/distance`, 'No distance is stated.'),
    'exposure.path': statedOr(neighbour.path, `${at}/path`, 'How the heat gets there is not stated.'),
    ...heatFacts(heat, at),
    ...limitFacts(limitOf(survey.context.limits, neighbour), heat, at),
    'exposure.tensile_left': strengthLeft(neighbour, heat, at),
  };
}

/** What the packs, and the page that the plan cites for it, let a neighbour stand; undefined when it is not known what it is. */
export function limitOf(
  limits: ReadonlyMap<string, HeatLimit>,
  { victim, near }: Neighbour,
): HeatLimit | undefined {
  if (victim === undefined) return undefined;
  const ownCelsius = quantityOf(near?.limit, 'temperature');
  const limit = limits.get(victim) ?? {};
  if (ownCelsius === undefined) return limit;
  // A page's own figure can only make the pack's limit stricter; what it may loosen is for a provision.
  return {
    ...limit,
    holdAboveCelsius: Math.min(ownCelsius, limit.holdAboveCelsius ?? ownCelsius),
    stopAboveCelsius: Math.min(ownCelsius, limit.stopAboveCelsius ?? ownCelsius),
  };
}

function heatFacts(
  heat: NeighbourHeat,
  at: string,
): Pick<ExposureFacts, 'exposure.peak' | 'exposure.peak_at'> {
  if (!heat.ok)
    return { 'exposure.peak': unknown(heat.reason, at), 'exposure.peak_at': unknown(heat.reason, at) };
  return {
    'exposure.peak': known(heat.peakCelsius, heat.assumed ? 'assumed' : 'computed', at, heat.notes.join(' ')),
    'exposure.peak_at': computedOr(
      heat.history?.peakAtSeconds,
      at,
      'One pass of an arc has no such time here.',
    ),
  };
}

type LimitFact =
  | 'exposure.limit'
  | 'exposure.stop_limit'
  | 'exposure.over_limit'
  | 'exposure.over_stop_limit'
  | 'exposure.time_above_limit'
  | 'exposure.over_time';

/** A seam's heat passes a place within minutes; this long is taken where no history is computed, s. */
const seamSeconds = 300;

/**
 * The facts about limits; also for heat that is not conducted, as in the booth. Without a limit nothing can be over it, which
 * is an answer and no open question: the margin is then minus infinity. `limit` is undefined when it is not known what
 * the neighbour is.
 */
export function limitFacts(
  limit: HeatLimit | undefined,
  heat: NeighbourHeat,
  at: string,
): Pick<ExposureFacts, LimitFact> {
  const { holdAboveCelsius: hold, stopAboveCelsius: stop, timeAbove } = limit ?? {};
  const none = unknown('The packs set no such limit for it.', at);
  const margin = (celsius: number | undefined, over: (limitCelsius: number) => Fact): Fact => {
    if (limit === undefined) return unknown('What the neighbour is, is not known.', at);
    return celsius === undefined ? noMargin(at) : over(celsius);
  };
  const over = (celsius: number): Fact =>
    heat.ok ? computed(heat.peakCelsius - celsius, at) : unknown(heat.reason, at);
  return {
    'exposure.limit': hold === undefined ? none : known(hold, 'table', at, 'Limit of the rule pack.'),
    'exposure.stop_limit': stop === undefined ? none : known(stop, 'table', at, 'Limit of the rule pack.'),
    'exposure.over_limit': margin(hold, over),
    'exposure.over_stop_limit': margin(stop, over),
    'exposure.time_above_limit':
      hold === undefined ? none : computedOr(secondsAbove(heat, hold), at, reasonOf(heat)),
    'exposure.over_time': margin(timeAbove?.celsius, (celsius) => {
      const seconds = secondsAbove(heat, celsius);
      const allowed = timeAbove?.atMostSeconds ?? 0;
      return computedOr(seconds === undefined ? undefined : seconds - allowed, at, reasonOf(heat));
    }),
  };
}

function noMargin(at: string): Fact {
  return computed(Number.NEGATIVE_INFINITY, at, 'The packs set no such limit for it.');
}

function secondsAbove(heat: NeighbourHeat, celsius: number): number | undefined {
  if (!heat.ok) return undefined;
  if (heat.history !== undefined) return heat.history.secondsAbove(celsius);
  return heat.peakCelsius <= celsius ? 0 : seamSeconds;
}

function reasonOf(heat: NeighbourHeat): string {
  return heat.ok ? 'The time is not known.' : heat.reason;
}

/** Whether the tempering curve is made for it: dual-phase and complex-phase steel soften by other laws. */
export function isTempered({ part, victim }: Pick<Neighbour, 'part' | 'victim'>): boolean {
  const of = part?.material.class;
  return (
    victim === 'hardened or multi-phase steel' && (of === 'press-hardened' || of === 'ultra-high-strength')
  );
}

function strengthLeft(neighbour: Neighbour, heat: NeighbourHeat, at: string): Fact {
  if (!isTempered(neighbour)) return unknown('The curve is for hardened steel only.', at);
  if (!heat.ok) return unknown(heat.reason, at);
  if (heat.history === undefined) return unknown('No history is computed for a seam.', at);
  const left = tensileLeft(heat.history);
  switch (left.state) {
    case 'tempered':
      return computed(left.percent, at, 'Tempering curve of hardened C-Mn-B steel; about ±30 K.');
    case 're-transformed':
      return unknown('It is heated past the start of transformation: what strength is left is unknown.', at);
    case 'not computed':
      return unknown(left.reason, at);
  }
}
