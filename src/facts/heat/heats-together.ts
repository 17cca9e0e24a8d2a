import { oneAfterAnother } from '../../heat/heating-sequence.ts';
import { pointHistory } from '../../heat/point-history.ts';
import type { PointHistory } from '../../heat/point-history.ts';
import type { Exposed, Neighbour } from './exposed-neighbour.ts';
import { exposuresOf } from './exposures-of.ts';
import { heatsWithoutPause } from './heats-of-place.ts';
import { neighbourHeat } from './neighbour-heat.ts';
import type { NeighbourHeat } from './neighbour-heat.ts';
import { quantityOf } from '../quantity-of.ts';
import { forLast } from '../../plan/for-last.ts';
import type { OperationSurvey, Survey } from '../survey.ts';

type Computed = Extract<NeighbourHeat, { readonly ok: true }>;
type OtherHeat = Computed & { readonly by: OperationSurvey };

/**
 * What a neighbour goes through in all heats and seams of the plan that stand beside it. Tempering and time add up whatever lies
 * between them; the rise adds up where nothing says that the sheet was let cool (`starts_below`): conducted heat is a sum, and
 * the loss to air, which grows faster than the rise, can only make it less. That sum is no more than a possibility and is told as silence.
 * Heats that cannot be computed are asked about where they stand.
 */
export function withOtherHeats(
  survey: Survey,
  one: OperationSurvey,
  exposed: Exposed,
  heat: NeighbourHeat,
): NeighbourHeat {
  if (!heat.ok || exposed.neighbour.stays === false) return heat;
  const others = othersBeside(survey, one, exposed);
  if (others.length === 0) return heat;
  const own = onWarmSheet(heat, quantityOf(one.operation.starts_below, 'temperature'));
  const following = others.filter(({ by }) => !isPauseBetween(survey, one, by));
  const secondsAbove = timeOfAll(own, others, following);
  const whole = addRises(addHistories(own, others), following);
  // What walks the history asks it for the time too.
  const { history } = whole;
  return {
    ...whole,
    secondsAbove,
    ...(history === undefined ? {} : { history: { ...history, secondsAbove } }),
  };
}

function othersBeside(survey: Survey, one: OperationSurvey, { source, neighbour }: Exposed): OtherHeat[] {
  const key = keyOf(neighbour, one);
  if (key === undefined) return [];
  const inOneHold = source.kind === 'heat' ? new Set(heatsWithoutPause(one).map(({ at }) => at)) : new Set();
  return (byNeighbour(survey).get(key) ?? []).flatMap(([by, other]) => {
    // What may be off by then is asked about there.
    if (other.neighbour.stays !== true) return [];
    const isItself = by.at === one.at && other.source.kind === source.kind;
    if (isItself || (other.source.kind === 'heat' && inOneHold.has(by.at))) return [];
    const heat = neighbourHeat(survey.context, by, other.source, other.neighbour);
    return heat.ok ? [{ ...heat, by }] : [];
  });
}

/** A heat that begins on sheet not quite cold, °C, ends as much warmer. */
function onWarmSheet(heat: Computed, startCelsius = ambientCelsius): Computed {
  const more = Math.max(0, startCelsius - ambientCelsius);
  if (more === 0) return heat;
  const { history, peakCelsius } = heat;
  return {
    ...heat,
    peakCelsius: peakCelsius + more,
    secondsAbove: (celsius) => heat.secondsAbove(celsius - more),
    ...(history === undefined
      ? {}
      : {
          history: pointHistory(
            { seconds: history.seconds, celsius: history.celsius.map((celsius) => celsius + more) },
            peakCelsius + more,
          ),
        }),
  };
}

const ambientCelsius = 20;

function addHistories(heat: Computed, others: readonly OtherHeat[]): Computed {
  const { history } = heat;
  const more = others.flatMap((other) => (other.history === undefined ? [] : [other.history]));
  if (history === undefined || more.length === 0) return heat;
  const peak = Math.max(...[history, ...more].map(({ peakCelsius }) => peakCelsius));
  const whole = pointHistory(oneAfterAnother([history, ...more]), peak);
  const ownPeak: Pick<PointHistory, 'peakCelsius' | 'peakAtSeconds'> = {
    peakCelsius: heat.peakCelsius,
    peakAtSeconds: history.peakAtSeconds,
  };
  const note = `Time and tempering count together with ${String(more.length)} other ${more.length === 1 ? 'heat' : 'heats'} beside it.`;
  return { ...heat, history: { ...whole, ...ownPeak }, notes: [...heat.notes, note] };
}

/**
 * Times add up. Of rises that may add up too, at least one is above its share of the limit whenever their sum is above it: the
 * times above the shares, as the rises are to each other, come to more than the time of the sum, however the heats follow.
 */
function timeOfAll(
  own: Computed,
  others: readonly OtherHeat[],
  following: readonly OtherHeat[],
): Computed['secondsAbove'] {
  const joined = [own, ...following];
  const alone = others.filter((other) => !following.includes(other));
  const whole = joined.reduce((sum, { peakCelsius }) => sum + peakCelsius - ambientCelsius, 0);
  return (celsius) => {
    const shares = joined.map(({ peakCelsius, secondsAbove }) => {
      const share = whole > 0 ? (peakCelsius - ambientCelsius) / whole : 1;
      return secondsAbove(ambientCelsius + (celsius - ambientCelsius) * share);
    });
    return [...shares, ...alone.map(({ secondsAbove }) => secondsAbove(celsius))].reduce((a, b) => a + b, 0);
  };
}

function addRises(heat: Computed, following: readonly OtherHeat[]): Computed {
  const rise = following.reduce((sum, { peakCelsius }) => sum + peakCelsius - ambientCelsius, 0);
  if (rise === 0) return heat;
  const reason = `${String(following.length)} other ${following.length === 1 ? 'heat or seam lies' : 'heats or seams lie'} beside it, and how far the sheet cools between them (\`starts_below\`) is not stated.`;
  const sureCelsius = heat.silence === undefined ? heat.peakCelsius : heat.silence.sureCelsius;
  return {
    ...heat,
    peakCelsius: heat.peakCelsius + rise,
    assumed: true,
    notes: [...heat.notes, `${reason} They are taken to follow each other without a pause.`],
    silence: {
      reason: heat.silence?.reason ?? reason,
      ...(sureCelsius === undefined ? {} : { sureCelsius }),
    },
  };
}

/** Whether the later of two operations is stated to begin on cooled sheet; without steps the order is that of the plan. */
function isPauseBetween(survey: Survey, one: OperationSurvey, other: OperationSurvey): boolean {
  if (one.at === other.at) return false;
  const [a, b] = [one.operation.step, other.operation.step];
  const isLater =
    a !== undefined && b !== undefined && a !== b
      ? a > b
      : survey.operations.indexOf(one) > survey.operations.indexOf(other);
  return (isLater ? one : other).operation.starts_below !== undefined;
}

/** An item that the plan ties to no part and gives no name is one with its like beside the same heated part, and with no other. */
function keyOf({ part, item, near }: Neighbour, by: OperationSurvey): string | undefined {
  if (part !== undefined) return part.at;
  return item === undefined ? undefined : `${item} at ${near?.part ?? near?.name ?? by.part.at}`;
}

type Beside = readonly [OperationSurvey, Exposed];

/** Every listed neighbour with all that heats it; looked up once a plan. */
const byNeighbour = forLast((survey: Survey): ReadonlyMap<string, readonly Beside[]> => {
  const found = new Map<string, Beside[]>();
  for (const one of survey.operations) {
    for (const exposed of exposuresOf(survey, one)) {
      const { source, neighbour } = exposed;
      const isComputed = source.kind === 'heat' || source.kind === 'arc' || source.kind === 'brazing';
      const key = neighbour.listed && isComputed ? keyOf(neighbour, one) : undefined;
      if (key !== undefined) found.set(key, [...(found.get(key) ?? []), [one, exposed]]);
    }
  }
  return found;
});
