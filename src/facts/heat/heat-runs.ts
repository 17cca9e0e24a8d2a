import { heatCurve } from '../../heat/sheet/heat-curve.ts';
import type { HeatCurve } from '../../heat/sheet/heat-curve.ts';
import type { HeldHeat } from '../../heat/sheet/stay-clear.ts';
import type { Exposed, Neighbour } from './exposed-neighbour.ts';
import type { Fact } from '../fact.ts';
import { neighbourStrip } from './neighbour-strip.ts';
import { quantityOf } from '../quantity-of.ts';
import { seamCurve } from './seam-curve.ts';
import type { OperationSurvey, Survey } from '../survey.ts';
import { weldFacts } from '../joint/weld-facts.ts';

export interface HeatRun {
  readonly heat: HeldHeat;
  readonly curve: HeatCurve;
}

/** Figures of a seam; what is absent cannot be computed, and a neighbour or `open` says why. */
export interface SeamRun {
  readonly curve: HeatCurve;
  readonly heatInputKJPerMm?: number;
  readonly coolingSeconds?: number;
  readonly zoneWidthMm?: number;
}

/** The computed curves of one operation. */
export interface HeatRuns {
  /** One for each thickness in which the heat runs; none for what is not conducted along a sheet from a held place. */
  readonly runs: readonly HeatRun[];
  /** The hottest seam of an arc or a braze. */
  readonly seam?: SeamRun;
  /** Why it cannot be told what it does: a number or the list of neighbours is missing. */
  readonly open: readonly string[];
}

/** The curves of one operation: one where no neighbour shares the heat as a layer. */
export function runsOf(
  survey: Survey,
  one: OperationSurvey,
  exposed: readonly Exposed[],
): Pick<HeatRuns, 'runs' | 'open'> {
  const nobody: Neighbour = { at: one.at, listed: false, name: '', treatment: 'stays', stays: true };
  const neighbours = exposed.length === 0 ? [nobody] : exposed.map(({ neighbour }) => neighbour);
  const reach = shownReachMm(neighbours);
  const runs = new Map<string, HeatRun>();
  const open = new Set<string>();
  if (one.operation.near === undefined) open.add('What lies near it is not stated.');
  for (const neighbour of neighbours) {
    const held = neighbourStrip(survey.context, one, neighbour);
    if (!held.ok) {
      open.add(held.reason);
      continue;
    }
    const key = JSON.stringify(held.strip);
    if (runs.has(key)) continue;
    const solved = survey.context.solveStrip(held.strip);
    if (!solved.ok) {
      open.add(solved.reason);
      continue;
    }
    const reachMm = Math.min(reach, held.strip.freeEndMm ?? Infinity);
    const curve = heatCurve(solved.history, reachMm, held.strip.holdSeconds * held.strip.times);
    runs.set(key, { heat: held.strip, curve });
  }
  return { runs: [...runs.values()], open: [...open] };
}

/** As far as the farthest neighbour to which heat runs in metal; beyond, the curve has long come down. */
function shownReachMm(neighbours: readonly Neighbour[]): number {
  const inMetal = neighbours.filter(({ path }) => path !== 'through air');
  const farthest = Math.max(0, ...inMetal.map(({ distanceMm }) => distanceMm ?? 0));
  return Math.max(80, Math.min(400, Math.ceil((farthest * 1.25) / 20) * 20));
}

export function seamOf(one: OperationSurvey, exposed: readonly Exposed[]): HeatRuns {
  const [source] = exposed.flatMap((each) =>
    each.source.kind === 'arc' || each.source.kind === 'brazing' ? [each.source] : [],
  );
  if (source === undefined) return { runs: [], open: [] };
  const reach = shownReachMm(exposed.map(({ neighbour }) => neighbour));
  const reachMm = Math.min(reach, quantityOf(one.operation.free_end, 'length') ?? Infinity);
  const curve = seamCurve(one, source, reachMm);
  const facts = weldFacts(one);
  const heatInputKJPerMm = numberOf(facts['operation.heat_input']);
  const coolingSeconds = numberOf(facts['operation.t85']);
  const zoneWidthMm = numberOf(facts['operation.haz_width']);
  const seam = {
    curve,
    ...(heatInputKJPerMm === undefined ? {} : { heatInputKJPerMm }),
    ...(coolingSeconds === undefined ? {} : { coolingSeconds }),
    ...(zoneWidthMm === undefined ? {} : { zoneWidthMm }),
  };
  return { runs: [], open: [], ...(curve.distancesMm.length === 0 ? {} : { seam }) };
}

function numberOf(fact: Fact): number | undefined {
  return fact.known && typeof fact.value === 'number' ? fact.value : undefined;
}
