import type { PointHistory } from '../../heat/point-history.ts';
import type { DerivationContext } from '../context.ts';
import type { Neighbour } from './exposed-neighbour.ts';
import type { HeatSource } from './heat-sources.ts';
import { readLap } from './neighbour-lap.ts';
import { neighbourStrip } from './neighbour-strip.ts';
import { seamHeat } from './seam-heat.ts';
import type { SeamSource, Silence } from './seam-heat.ts';
import type { OperationSurvey } from '../survey.ts';

/** What the neighbour goes through, or why it cannot be computed. `notes` are the method and what was assumed. */
export type NeighbourHeat =
  | {
      readonly ok: true;
      readonly peakCelsius: number;
      readonly history?: PointHistory;
      /** Time above a temperature in °C, s, of all heatings; at most. */
      readonly secondsAbove: (celsius: number) => number;
      readonly assumed: boolean;
      readonly notes: readonly string[];
      /** What is open and taken at its worst in `peakCelsius`; `settledHeat` says what a limit is held against. */
      readonly silence?: Silence;
      /** The measure on the way that was counted, in words, and what the place would go through without it. */
      readonly sink?: { readonly words: string; readonly without?: PointHistory };
    }
  /** `at` is the entry of the plan that it hangs on, where that is not the neighbour's own. */
  | { readonly ok: false; readonly reason: string; readonly at?: string };

type Solvers = Pick<DerivationContext, 'practice' | 'stage' | 'solveStrip' | 'solveLap'>;

/** Computes the heat at one neighbour. Whatever the plan leaves open is taken so that the answer errs high, or refused. */
export function neighbourHeat(
  context: Solvers,
  operation: OperationSurvey,
  source: HeatSource,
  neighbour: Neighbour,
): NeighbourHeat {
  if (neighbour.distanceMm === undefined) {
    return { ok: false, reason: `The distance from the heat to ${neighbour.name} is not stated.` };
  }
  if (neighbour.path === undefined && neighbour.near?.path === 'through air') {
    return {
      ok: false,
      reason: `${neighbour.name} is joined to the heated part: heat reaches it in the metal, not \`through air\`. State \`joined\` or \`same sheet\`.`,
    };
  }
  if (neighbour.path === undefined) {
    return {
      ok: false,
      reason: `How the heat reaches ${neighbour.name} (same sheet, joined, through air) is not stated.`,
    };
  }
  if (neighbour.path === 'through air') {
    return { ok: false, reason: 'Heat through air is not computed; state what is removed or shielded.' };
  }
  switch (source.kind) {
    case 'heat':
      return heldHeat(context, operation, neighbour, neighbour.distanceMm);
    case 'arc':
    case 'brazing': {
      const heat = seamHeat(operation, source, neighbour.distanceMm, neighbour);
      const hasSink = neighbour.near?.sink !== undefined;
      if (!heat.ok) return heat;
      const more = hasSink ? ['A heat sink beside a seam is not counted.'] : [];
      return { ...heat, notes: [...heat.notes, ...more], secondsAbove: seamSecondsAbove(source, heat) };
    }
    case 'resistance spot':
      return { ok: false, reason: 'Heat of a resistance spot so near is not computed.' };
    case 'cutting or grinding':
      return { ok: false, reason: 'Sparks and heat of cutting, drilling and grinding are not computed.' };
  }
}

/** The heat of one pass goes by within minutes; this long is taken, as no history is computed, s. */
const passSeconds = 300;

/** Each pass of each seam counts, as if it alone were as hot as all. */
function seamSecondsAbove(
  { beads }: SeamSource,
  { peakCelsius }: { readonly peakCelsius: number },
): (celsius: number) => number {
  const passes = beads.reduce((sum, bead) => sum + bead.passes, 0);
  return (celsius) => (peakCelsius <= celsius ? 0 : passes * passSeconds);
}

function heldHeat(
  context: Solvers,
  operation: OperationSurvey,
  neighbour: Neighbour,
  distanceMm: number,
): NeighbourHeat {
  const held = neighbourStrip(context, operation, neighbour);
  if (!held.ok) return held;
  const { strip, assumed, sink } = held;
  const freeEndStated = operation.operation.free_end !== undefined;
  const lap = readLap(neighbour, held, distanceMm, freeEndStated);
  const solved = lap.kind === 'lap' ? lapHistory(context, lap.lap) : context.solveStrip(strip);
  if (!solved.ok) {
    const { allowanceKelvin } = held;
    // A number that the plan does not hold is told with how it came about.
    const withAllowance =
      allowanceKelvin === undefined || allowanceKelvin === 0
        ? ''
        : ` (the heat is counted with ${String(allowanceKelvin)} K for the instrument)`;
    return { ok: false, reason: `${solved.reason}${withAllowance}`, at: operation.at };
  }
  const point = solved.history.at(distanceMm);
  if (!point.ok) return point;
  const method = `Conduction along ${lap.kind === 'lap' ? 'two sheets' : 'a strip'} with its cool-down, bright surface in still air.`;
  const bare = sink === undefined ? {} : without(context, strip, distanceMm);
  const { peakCelsius } = point.point;
  const isVain = bare.without !== undefined && bare.without.peakCelsius <= peakCelsius;
  return {
    ok: true,
    peakCelsius,
    history: point.point,
    secondsAbove: (celsius) => point.point.secondsAbove(celsius),
    assumed,
    notes: [
      ...held.notes,
      ...(isVain ? ['It helps nothing there: it dries out, or lies too far off.'] : []),
      ...lap.notes,
      method,
    ],
    ...(sink === undefined ? {} : { sink: { words: sink.words, ...bare } }),
  };
}

function lapHistory(
  { solveLap }: Solvers,
  lap: Parameters<DerivationContext['solveLap']>[0],
): ReturnType<DerivationContext['solveStrip']> {
  const solved = solveLap(lap);
  return solved.ok ? { ok: true, history: solved.other } : solved;
}

/** The same place without the measure; where that cannot be computed, nothing stands for it. */
function without(
  { solveStrip }: Solvers,
  { wetCloth: _cloth, copperBar: _bar, ...strip }: Parameters<DerivationContext['solveStrip']>[0],
  distanceMm: number,
): { readonly without?: PointHistory } {
  const solved = solveStrip(strip);
  const point = solved.ok ? solved.history.at(distanceMm) : solved;
  return point.ok ? { without: point.point } : {};
}
