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
  const traits = traitsOfWord(operation, part);
  // Off the vehicle nothing of the vehicle is heated or carries current.
  return operation.off_vehicle === true ? { ...traits, hot: false, electricWelding: false } : traits;
}

function traitsOfWord(operation: Operation, part: Part): Traits {
  const joints = operation.joints ?? [];
  const butts = joints.some((joint) => joint.form === 'open butt' || joint.form === 'butt with insert');
  const joined = joining(joints);
  const word = operation.do;
  if (word === undefined) return cannotTell;
  switch (word) {
    case 'section':
    case 'butt weld': {
      // Cut and joined: unless the joints say otherwise, by an arc.
      const arc = joints.length === 0 ? { hot: true, electricWelding: true } : joined;
      return { ...nothing, cutsPartWay: true, works: true, ...arc, hot: true };
    }
    case 'replace': {
      const partWay = operation.extent === undefined ? undefined : operation.extent === 'part';
      const byItself = joints.length === 0 && goesOnWithoutWelding(part.kind);
      const welded = joints.length === 0 ? { hot: true, electricWelding: true } : joined;
      return {
        ...nothing,
        cutsPartWay: butts ? true : byItself && partWay === undefined ? false : partWay,
        works: true,
        ...(byItself ? {} : welded),
      };
    }
    case 'heat':
      return { ...nothing, heats: true, works: true, hot: true };
    case 'straighten': {
      const warm = operation.method === 'with heat' || operation.temperature !== undefined;
      return { ...nothing, heats: warm, straightens: true, works: true, hot: warm };
    }
    case 'weld':
      return {
        ...nothing,
        cutsPartWay: butts,
        works: true,
        hot: true,
        electricWelding: joints.length === 0 ? true : joined.electricWelding,
      };
    case 'braze':
      return { ...nothing, cutsPartWay: butts, works: true, hot: true, electricWelding: true };
    case 'bond':
    case 'rivet':
      return { ...nothing, cutsPartWay: butts, works: true, ...joined };
    case 'drill':
      return { ...nothing, works: true, hot: true };
    case 'cut for access':
      return { ...nothing, cutsPartWay: true, works: true, hot: true };
    case 'grind':
      return { ...nothing, hot: true };
    case 'remove and refit':
      return { ...nothing, ...joined };
    case 'fill':
    case 'refinish':
    case 'bake':
    case 'leave':
      return nothing;
  }
}

function joining(joints: readonly Joint[]): { readonly hot: TriState; readonly electricWelding: TriState } {
  return {
    hot: anyYes(joints.map(({ method }) => (method === undefined ? undefined : isWelded(method)))),
    electricWelding: anyYes(
      joints.map(({ method }) => (method === undefined ? undefined : isElectric(method))),
    ),
  };
}
