import type { Plan } from '../generated/plan-types.ts';
import { nearestWords } from '../plan/nearest-word.ts';
import { sameName } from '../vehicle/same-name.ts';
import type { KeyScenario } from './key.ts';

/**
 * Why a plan is not one of this exercise; undefined when it may be. A year or body that is wrong is a mistake to be marked, a slip of
 * the pen in a name too; another maker or model is another exercise.
 */
export function otherScenario({ vehicle }: KeyScenario, plan: Plan): string | undefined {
  for (const [word, right, stated] of [
    ['maker', vehicle.maker, plan.vehicle.maker],
    ['model', vehicle.model, plan.vehicle.model],
  ] as const) {
    if (stated === undefined || sameName(right, stated)) continue;
    if (nearestWords(stated, [right]).length > 0) continue;
    return `It is for another vehicle than this exercise: its ${word} is \`${stated}\`.`;
  }
  return undefined;
}
