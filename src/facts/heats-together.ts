import { oneAfterAnother } from '../heat/heating-sequence.ts';
import { pointHistory } from '../heat/point-history.ts';
import type { PointHistory } from '../heat/point-history.ts';
import type { Exposed, Neighbour } from './exposed-neighbour.ts';
import { listedNeighbours } from './exposed-neighbour.ts';
import { neighbourHeat } from './neighbour-heat.ts';
import type { OperationSurvey, Survey } from './survey.ts';

export interface HeatsTogether {
  readonly history: PointHistory;
  /** How many other heats of the plan are in it. */
  readonly others: number;
}

/**
 * What a part goes through in all heats that stand beside it in the plan, one after another: tempering adds up, and no rule that
 * looks at one heat alone would see it. Heats that cannot be computed are asked about where they stand. The order of the plan is
 * kept; it costs at most some points of the per cent (see `oneAfterAnother`).
 */
export function heatsTogether(
  survey: Survey,
  one: OperationSurvey,
  { neighbour }: Exposed,
  own: PointHistory,
): HeatsTogether {
  const { part } = neighbour;
  if (part === undefined || neighbour.stays !== true) return { history: own, others: 0 };
  const others = survey.operations
    .filter((other) => other !== one && other.heats === true)
    .flatMap((other) => historiesBeside(survey, other, part));
  if (others.length === 0) return { history: own, others: 0 };
  const peak = Math.max(own.peakCelsius, ...others.map(({ peakCelsius }) => peakCelsius));
  return { history: pointHistory(oneAfterAnother([own, ...others]), peak), others: others.length };
}

function historiesBeside(
  survey: Survey,
  other: OperationSurvey,
  part: Neighbour['part'],
): readonly PointHistory[] {
  return (other.operation.near ?? [])
    .flatMap((near, index) =>
      near.part === part?.part.id ? listedNeighbours(survey, other, near, index) : [],
    )
    .filter((neighbour) => neighbour.part === part && neighbour.stays === true)
    .flatMap((neighbour) => {
      const heat = neighbourHeat(survey.context, other, { kind: 'heat' }, neighbour);
      return heat.ok && heat.history !== undefined ? [heat.history] : [];
    });
}
