import { backOnStep } from './step/back-on.ts';
import type { Joint, Operation, Part } from '../generated/plan-types.ts';
import { weldedOrCut } from './goes-on-unsaid.ts';
import { isElectric, isPermanent, isWelded } from './joint/joint-methods.ts';
import { canBeWorkedOffVehicle, goesOnWithoutWelding, isWeldedIn } from './part/part-kinds.ts';
import { quantityOf } from './quantity-of.ts';
import type { OperationSurvey } from './survey.ts';
import type { TriState } from './tri-state.ts';
import { anyYes } from './tri-state.ts';

type Traits = Pick<
  OperationSurvey,
  'cutsPartWay' | 'heats' | 'straightens' | 'works' | 'hot' | 'electricWelding' | 'offVehicle'
>;

const nothing: Traits = {
  cutsPartWay: false,
  heats: false,
  straightens: false,
  works: false,
  hot: false,
  electricWelding: false,
  offVehicle: false,
};

const cannotTell: Traits = {
  cutsPartWay: undefined,
  heats: undefined,
  straightens: undefined,
  works: undefined,
  hot: undefined,
  electricWelding: undefined,
  offVehicle: false,
};

/**
 * What an operation does to its part, read off its word and off whatever else is said of it; nothing of whether it may. The word
 * alone is not believed: a cut could hide behind `leave`, a torch behind `bake`, a welding on the body behind `off_vehicle`.
 */
export function operationTraits(operation: Operation, part: Part): Traits {
  const ofWord = traitsOfWord(operation, part);
  const traits = withHeat(withJoints(ofWord, operation.joints ?? []), operation);
  return isOffVehicle(operation, part)
    ? { ...traits, hot: false, electricWelding: false, offVehicle: true }
    : traits;
}

/** A joint that is stated gets made. What is joined end to end was cut, a weld is hot, and what is welded back was cut free. */
function withJoints(traits: Traits, joints: readonly Joint[]): Traits {
  if (joints.length === 0) return traits;
  const { hot, electricWelding, permanent } = joining(joints);
  const isCut = joints.some(isButt);
  return {
    ...traits,
    ...(isCut ? { cutsPartWay: true } : {}),
    works: anyYes([traits.works, permanent, isCut]),
    hot: anyYes([traits.hot, hot]),
    electricWelding: anyYes([traits.electricWelding, electricWelding]),
  };
}

function isButt({ form }: Joint): boolean {
  return form === 'open butt' || form === 'butt with insert';
}

/** Hotter than any drying of paint or adhesive in a shop, °C. Common practice, no source. */
const warmestDryingCelsius = 100;

/** A flame or an inductor heats, whatever the word; so does anything hotter than drying, and hot air of which nobody says how hot. */
function withHeat(traits: Traits, { source, temperature, cut_with: cutWith }: Operation): Traits {
  const celsius = quantityOf(temperature, 'temperature');
  const silentAir = source === 'hot air' && temperature === undefined;
  const byFlame =
    source === 'torch' || source === 'induction' || source === 'other' || cutWith === 'flame' || silentAir;
  if (!byFlame && (celsius === undefined || celsius <= warmestDryingCelsius)) return traits;
  return { ...traits, heats: true, works: true, hot: true };
}

/** Off the vehicle nothing of the vehicle is heated or carries current. What is part of the body cannot be welded off it. */
function isOffVehicle({ do: word, off_vehicle: off, step }: Operation, part: Part): boolean {
  if (off !== true) return false;
  if (canBeWorkedOffVehicle(part.kind)) return true;
  // A new piece of the body lies on the bench until it is fitted.
  const isSurface = word === 'fill' || word === 'refinish' || word === 'bake' || word === 'grind';
  return isSurface && (!isWeldedIn(part.kind) || isBeforeFitting(step, part));
}

function isBeforeFitting(step: number | undefined, { operations }: Part): boolean {
  return (operations ?? []).some(
    (other) => other.do === 'replace' && step !== undefined && step < (backOnStep(other) ?? step),
  );
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
      const partWay = replacedInPart(operation, part);
      const byItself = arc && goesOnWithoutWelding(part.kind);
      const welded = byItself ? false : weldedOrCut(operation, part);
      return {
        ...nothing,
        cutsPartWay: byItself && partWay === undefined ? false : partWay,
        works: true,
        // However it goes on, the old part is drilled, ground or cut out, unless it was bolted.
        hot: goesOnWithoutWelding(part.kind) ? false : welded,
        electricWelding: arc ? welded : false,
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
      return isWeldedIn(part.kind) && !isOnlyBolted(operation) ? cutFree(operation) : nothing;
    case 'fill':
    case 'refinish':
    case 'bake':
    case 'leave':
      return nothing;
  }
}

/** What is welded or bonded in comes off only by drilling, grinding or cutting; what it is refitted by is for the joints to say. */
function cutFree({ extent, at }: Operation): Traits {
  const partWay = extent === 'part' || at !== undefined;
  return { ...nothing, cutsPartWay: partWay, works: true, hot: true };
}

function isOnlyBolted({ joints }: Operation): boolean {
  return joints !== undefined && joints.length > 0 && joints.every(({ method }) => method === 'bolt');
}

/** Whatever is said of a heat makes it one; only `cold` says that there is none. Nothing said is no answer. */
function isWithHeat({ method, source, temperature, hold, times, measured_by }: Operation): TriState {
  const said = [source, temperature, hold, times, measured_by].some((one) => one !== undefined);
  if (said || method === 'with heat') return true;
  return method === 'cold' ? false : undefined;
}

/** Said to be whole with a place of a cut, a stretch of the part or an insert, it is neither. */
function replacedInPart(operation: Operation, part: Part): TriState {
  const { extent, at, joints } = operation;
  if (extent !== 'whole') return extent === undefined ? undefined : true;
  const namesCut = at !== undefined || (joints ?? []).some(({ insert }) => insert !== undefined);
  return namesCut || namesStretch(operation, part) ? undefined : false;
}

/** `zone` says in which stretch of the part the cut lies, and what comes out whole has no cut. What is unbolted whole has none either way. */
function namesStretch({ zone }: Operation, { kind }: Part): boolean {
  return (
    zone !== undefined && isWeldedIn(kind) && !/^\W*(?:the )?(?:whole|all|entire|complete|full)\b/i.test(zone)
  );
}

interface Joining {
  readonly hot: TriState;
  readonly electricWelding: TriState;
  readonly permanent: TriState;
}

function joining(joints: readonly Joint[]): Joining {
  return {
    permanent: anyYes(joints.map(({ method }) => (method === undefined ? undefined : isPermanent(method)))),
    hot: anyYes(joints.map(({ method }) => (method === undefined ? undefined : isWelded(method)))),
    electricWelding: anyYes(
      joints.map(({ method }) => (method === undefined ? undefined : isElectric(method))),
    ),
  };
}
