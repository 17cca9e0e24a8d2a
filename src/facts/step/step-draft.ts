import type { Cites, Person, Plan, Planned } from '../../generated/plan-types.ts';
import { admitsNotLooked } from '../../plan/not-looked.ts';

export type StepWord =
  | 'batteries disconnected'
  | 'restraints made safe'
  | 'high-voltage isolation'
  | 'absence of voltage proved'
  | 'high-voltage re-commissioning'
  | 'battery damage dealt with'
  | 'cavity protection'
  | 'bake'
  | 'scan before the repair'
  | 'scan after the repair'
  | 'wheel alignment'
  | 'sensor calibration'
  | 'restraint completion'
  | 'road test'
  | 'hold point'
  | 'warning lamps'
  | 'structural release';

/** What every step of a plan can state. */
export interface StatedStep {
  readonly planned?: Planned;
  readonly done?: string;
  readonly by?: Person;
  readonly cite?: Cites;
}

export type Calibration = NonNullable<NonNullable<Plan['verify']>['calibrations']>[number];
export type HoldPoint = NonNullable<Plan['hold_points']>[number];

/** How a check after the repair came out. */
export type CheckResult = 'passed' | 'failed' | 'unfinished' | 'not required';

export interface StepDraft {
  readonly what: StepWord;
  /** What a sentence calls it, where that says more than `what`. */
  readonly name?: string;
  readonly at: string;
  readonly step: StatedStep | undefined;
  readonly person?: Person | undefined;
  /** What belongs to the step and is not there; undefined when the plan does not state the step at all. */
  readonly missing?: readonly string[];
  /** The block that it stands in is said not to be planned. */
  readonly refusedAsAWhole?: boolean;
  /** Must lie before the first hot or cutting operation, or after the last one. */
  readonly order?: 'before the work' | 'after the work';
  /** Of a check after the repair: its result, and what of the plan's work makes it necessary. */
  readonly result?: CheckResult | undefined;
  readonly neededBecause?: string | undefined;
  /** The entry of the list that it is the step of. */
  readonly calibration?: Calibration;
  /** What befell the part that the sensor of a calibration sits on or looks through, by the plan. */
  readonly disturbedBecause?: string;
  /** What befell both sides of the vehicle, where the calibration is of one side and nothing answers for the other. */
  readonly otherSideOpen?: string | undefined;
  readonly holdPoint?: HoldPoint;
}

/**
 * Why nobody can tell whether a step is taken: a block with a citation alone says neither that it is planned nor that it was
 * done, and one that is not planned and yet dated says both.
 */
export function doubtOf({ what, step, refusedAsAWhole, result }: StepDraft): string | undefined {
  // What came out of a check says that there was one.
  if (step === undefined || result !== undefined) return undefined;
  const { planned, done } = step;
  if (refusedAsAWhole === true && planned !== false)
    return `The block around it is said not to be planned (\`planned: false\`), and "${what}" in it is: which of the two is meant?`;
  if (planned === undefined && done === undefined)
    return `"${capitalised(what)}" is neither planned (\`planned\`) nor recorded (\`done\`).`;
  return planned === false && done !== undefined
    ? `"${capitalised(what)}" is said not to be planned (\`planned: false\`), and yet a day stands there on which it was done.`
    : undefined;
}

/** `none` where a name, a certificate or a lock should stand. */
export function saysNone(text: string | undefined): boolean {
  return (
    text === undefined ||
    /^(?:none|no|nil|nothing|nobody|nowhere|never|without|not used|no lock(?:ing)?|not locked)\p{P}?$/iu.test(
      text.trim(),
    )
  );
}

/** `not yet`, `to do` where what was done should stand, or an answer that leaves something unlooked at. */
export function saysNotDone(text: string): boolean {
  return (
    saysNone(text) ||
    /^(?:not|to (?:do|be done)|still (?:open|to do)|open|later|pending|outstanding|tbd)\p{P}?$/iu.test(
      text.trim(),
    ) ||
    admitsNotLooked(text)
  );
}

function capitalised(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}
