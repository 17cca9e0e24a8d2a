import type { Joint, Operation, Part } from '../generated/plan-types.ts';
import { isElectric, isWelded } from './joint-methods.ts';
import { goesOnWithoutWelding } from './part-kinds.ts';
import type { OperationSurvey } from './survey.ts';
import type { TriState } from './tri-state.ts';
import { anyYes } from './tri-state.ts';

type Traits = Pick<
  OperationSurvey,
  'cutsPartWay' | 'heats' | 'straightens' | 'works' | 'hot' | 'electricWelding'
>;

const nothing: Traits = {
  cutsPartWay: false,
  heats: false,
  straightens: false,
  works: false,
  hot: false,
  electricWelding: false,
};

const cannotTell: Traits = {
  cutsPartWay: undefined,
  heats: undefined,
  straightens: undefined,
  works: undefined,
  hot: undefined,
  electricWelding: undefined,
};

/** What an operation does to its part, read off its word and its joints; nothing of whether it may. */
export function operationTraits(operation: Operation, part: Part): Traits {
  const traits = withJoints(traitsOfWord(operation, part), operation.joints ?? []);
  // Off the vehicle nothing of the vehicle is heated or carries current.
  return operation.off_vehicle === true ? { ...traits, hot: false, electricWelding: false } : traits;
}

/**
 * Whatever the word: a joint that is stated gets made. What is joined end to end was cut, and a weld is hot. Without this a cut
 * could hide behind `leave`.
 */
function withJoints(traits: Traits, joints: readonly Joint[]): Traits {
  if (joints.length === 0) return traits;
  const { hot, electricWelding } = joining(joints);
  return {
    ...traits,
    ...(joints.some(isButt) ? { cutsPartWay: true, works: true } : {}),
    hot: anyYes([traits.hot, hot]),
    electricWelding: anyYes([traits.electricWelding, electricWelding]),
  };
}

function isButt({ form }: Joint): boolean {
  return form === 'open butt' || form === 'butt with insert';
}

/** What the word alone says; what the joints add comes after. */
function traitsOfWord(operation: Operation, part: Part): Traits {
  const word = operation.do;
  // Without joints it is taken that it is joined by an arc.
  const arc = (operation.joints ?? []).length === 0;
  if (word === undefined) return cannotTell;
  switch (word) {
    case 'section':
    case 'butt weld':
      return { ...nothing, cutsPartWay: true, works: true, hot: true, electricWelding: arc };
    case 'replace': {
      const partWay = operation.extent === undefined ? undefined : operation.extent === 'part';
      const byItself = arc && goesOnWithoutWelding(part.kind);
      const welded = arc && !byItself;
      return {
        ...nothing,
        cutsPartWay: byItself && partWay === undefined ? false : partWay,
        works: true,
        hot: welded,
        electricWelding: welded,
      };
    }
    case 'heat':
      return { ...nothing, heats: true, works: true, hot: true };
    case 'straighten': {
      const warm = isWithHeat(operation);
      return { ...nothing, heats: warm, straightens: true, works: true, hot: warm };
    }
    case 'weld':
      return { ...nothing, works: true, hot: true, electricWelding: arc };
    case 'braze':
      return { ...nothing, works: true, hot: true, electricWelding: true };
    case 'bond':
    case 'rivet':
      return { ...nothing, works: true };
    case 'drill':
      return { ...nothing, works: true, hot: true };
    case 'cut for access':
      return { ...nothing, cutsPartWay: true, works: true, hot: true };
    case 'grind':
      return { ...nothing, hot: true };
    case 'remove and refit':
    case 'fill':
    case 'refinish':
    case 'bake':
    case 'leave':
      return nothing;
  }
}

/** Whatever is said of a heat makes it one; only `cold` says that there is none. Nothing said is no answer. */
function isWithHeat({ method, source, temperature, hold, times, measured_by }: Operation): TriState {
  const said = [source, temperature, hold, times, measured_by].some((one) => one !== undefined);
  if (said || method === 'with heat') return true;
  return method === 'cold' ? false : undefined;
}

function joining(joints: readonly Joint[]): { readonly hot: TriState; readonly electricWelding: TriState } {
  return {
    hot: anyYes(joints.map(({ method }) => (method === undefined ? undefined : isWelded(method)))),
    electricWelding: anyYes(
      joints.map(({ method }) => (method === undefined ? undefined : isElectric(method))),
    ),
  };
}
