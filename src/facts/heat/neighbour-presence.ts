import type { Item, Near, Treatment } from '../../generated/plan-types.ts';
import { goesOnWithoutWelding, isWeldedIn } from '../part/part-kinds.ts';
import { isBefore, isOffBetween } from '../step/back-on.ts';
import { inAgainBecause } from './renewed-after.ts';
import type { OperationSurvey, PartSurvey } from '../survey.ts';
import type { TriState } from '../tri-state.ts';

/** Whether a neighbour is in reach while the work is hot; where that cannot be told, `open` says what is missing. */
export interface Presence {
  readonly stays: TriState;
  readonly open?: string;
  /** Why it stays although it is said to be off. */
  readonly inAgain?: string;
}

/** What may be spoilt by the heat and put in anew: it harms nobody meanwhile. Common practice, no source. */
const renewable: ReadonlySet<Item> = new Set<Item>([
  ...([
    'structural adhesive',
    'sealer',
    'foam',
    'cavity wax',
    'sound pad',
    'wiring',
    'control unit',
  ] as const),
  ...(['sensor', 'glass', 'brake line', 'trim', 'paint'] as const),
]);

/** What no longer burns or bursts once it is empty. */
const emptiable: ReadonlySet<Item> = new Set<Item>(['brake line', 'refrigerant line']);

/** What is more dangerous empty than full, unless it is purged as a page of the maker says. */
const emptiableByPage: ReadonlySet<Item> = new Set<Item>(['fuel tank', 'fuel line', 'gas cylinder']);

const notBondedAnew =
  'Adhesive in a joint does not come off by itself: no page is cited that says how it is renewed, and no operation bonds there anew.';

/** @param isProved whether a page of the maker is cited for it, or an operation of the plan does it. */
export function itemPresence(
  item: Item,
  treatment: Treatment,
  path: Near['path'],
  isProved: boolean,
): Presence {
  if (item === 'structural adhesive' && (treatment === 'removed' || treatment === 'renewed')) {
    return isProved ? { stays: false } : { stays: undefined, open: notBondedAnew };
  }
  switch (treatment) {
    case 'stays':
      return { stays: true };
    case 'shielded':
      return { stays: path !== 'through air' };
    case 'removed':
      return { stays: false };
    case 'renewed':
      return { stays: !renewable.has(item) };
    case 'emptied':
      return { stays: !(emptiable.has(item) || (emptiableByPage.has(item) && isProved)) };
  }
}

/** A listed part that is said to be off, or to be renewed, must be so by its own operations: the word alone moves nothing. */
export function partPresence(
  part: PartSurvey,
  treatment: Treatment,
  path: Near['path'],
  source: OperationSurvey,
): Presence {
  switch (treatment) {
    case 'stays':
    case 'emptied':
      return { stays: true };
    case 'shielded':
      return { stays: path !== 'through air' };
    case 'removed':
    case 'renewed':
      return isOff(part, source.operation.step)
        ? { stays: false }
        : presenceByRenewal(part, treatment, source);
  }
}

function isOff({ part, operations }: PartSurvey, step: number | undefined): boolean {
  // What is welded in does not come off by its name.
  return operations.some(
    ({ operation }) =>
      operation.do === 'remove and refit' && !isWeldedIn(part.kind) && isOffBetween(operation, step),
  );
}

function presenceByRenewal(part: PartSurvey, treatment: Treatment, source: OperationSurvey): Presence {
  const renewals = part.operations.filter(
    ({ operation }) =>
      operation.do === 'replace' &&
      (operation.extent === 'whole' || goesOnWithoutWelding(part.part.kind)) &&
      (operation.refit_step === undefined
        ? isBefore(source.operation.step, operation.step)
        : isOffBetween(operation, source.operation.step)),
  );
  const reasons = renewals.map(({ operation }) => inAgainBecause(source, part, operation));
  if (reasons.includes(undefined)) return { stays: false };
  const [inAgain] = reasons;
  // Out for the cut, and in again for the seam.
  if (inAgain !== undefined) return { stays: true, inAgain };
  return {
    stays: undefined,
    open: `${part.name} is said to be ${treatment}, and none of its operations takes it off before this one and puts it back, or replaces it whole, after it.`,
  };
}

/** What takes a part off, or a piece out of it. */
const takesOff: ReadonlySet<string | undefined> = new Set([
  'replace',
  'remove and refit',
  'section',
  'butt weld',
  'cut for access',
]);

/** Whether a part is said to be off or to be renewed, and nothing is planned that takes off any of it. */
export function isSaidOff({
  part,
  item,
  near,
}: {
  readonly part?: PartSurvey;
  readonly item?: Item;
  readonly near?: Near;
}): boolean {
  const isSaid = near?.treatment === 'removed' || near?.treatment === 'renewed';
  if (!isSaid || part === undefined || item !== undefined) return false;
  return !part.operations.some(({ operation }) => takesOff.has(operation.do));
}
