import type { Operation, Part } from '../generated/plan-types.ts';
import { carriesCrashLoadByStrength } from './part/part-kinds.ts';
import type { OperationSurvey } from './survey.ts';
import type { TriState } from './tri-state.ts';

/**
 * Whether a small part that is replaced whole is welded on or cut off, where its kind does not tell: a condenser is bolted, a bracket
 * may be either. `no` joints of its own but bolts, a torque or one-time bolts, or a composite or plastic say that it is not. Undefined where
 * nothing says it. True, the safe guess, for every other part and wherever the plan reckons with welding. Common practice, no source.
 */
export function weldedOrCut(operation: Operation, part: Part): TriState {
  if (!canBeBolted(part) || reckonsWithWelding(operation, part)) return true;
  if ((operation.joints ?? []).some(({ method }) => method !== 'bolt')) return true;
  return isSaidNotWelded(operation, part) ? false : undefined;
}

/** What is said to carry crash load, or is as strong as what does, stays taken for welded. */
function canBeBolted({ kind, structural, class: strengthClass }: Part): boolean {
  return (
    (kind === 'other' || kind === 'bracket') &&
    structural !== true &&
    !carriesCrashLoadByStrength(strengthClass)
  );
}

/** A cut, a clamp for weld current or a weld in the name. */
function reckonsWithWelding(operation: Operation, { name }: Part): boolean {
  const { extent, at, zone, cut_with: cut, source, earth_clamp: clamp, earth_clamp_on: clampOn } = operation;
  return (
    extent !== 'whole' ||
    [at, zone, cut, source, clamp].some((one) => one !== undefined) ||
    (clampOn !== undefined && clampOn !== 'none needed') ||
    (name !== undefined && /weld/i.test(name))
  );
}

/** Whether nobody says how a part is joined that may as well be bolted. */
export function isJoinedUnsaid({ operation, part: { part } }: OperationSurvey): boolean {
  return operation.do === 'replace' && weldedOrCut(operation, part) === undefined;
}

export const noMethod = 'How it is joined is not stated.';

/** The reason why it cannot be told whether something is welded, in the words in which every fact gives it, so that it is asked once. */
export function howJoined(one: OperationSurvey): string {
  return isJoinedUnsaid(one)
    ? `Whether ${one.part.name} is bolted, bonded or welded in is not stated.`
    : noMethod;
}

/** Of an operation whose word is left out, or none that is known. */
export const noWord = 'What is to be done is not stated.';

/** The first operation of which it hangs whether anything is welded, or hot: where to ask, and what. */
export function firstJoinedUnsaid(
  operations: readonly OperationSurvey[],
  open: (one: OperationSurvey) => TriState,
): { readonly at: string; readonly reason: string } | undefined {
  const asked = operations.find((one) => open(one) === undefined);
  if (asked === undefined) return undefined;
  const at = `${asked.at}/do`;
  if (asked.operation.do === undefined) return { at, reason: noWord };
  if (isJoinedUnsaid(asked)) return { at, reason: howJoined(asked) };
  const joint = asked.joints.find((one) => one.joint.method === undefined);
  return joint === undefined ? undefined : { at: `${joint.at}/method`, reason: noMethod };
}

function isSaidNotWelded({ joints = [], fasteners }: Operation, part: Part): boolean {
  if (joints.length > 0 || part.class === 'composite' || part.class === 'plastic') return true;
  // `one_time: none` alone is as true of a part without any bolt.
  const { one_time: oneTime, cite, tightened } = fasteners ?? {};
  return cite !== undefined || tightened !== undefined || oneTime === 'renewed' || oneTime === 'used again';
}
