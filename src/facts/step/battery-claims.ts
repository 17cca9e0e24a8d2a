import type { FactNames } from '../../generated/fact-names.ts';
import type { Fact } from '../fact.ts';
import { inOrder } from '../in-order.ts';
import { computed, computedOr } from '../make-fact.ts';
import { coversVehicle } from '../papers/maker-evidence.ts';
import { listOf, quantityOf } from '../quantity-of.ts';
import type { OperationSurvey, Survey } from '../survey.ts';
import { isBatteryOff } from './battery-facts.ts';
import { isBatteryFitted } from './battery-fitted.ts';
import { isOverPack } from './over-the-pack.ts';

/** Where the plan counts on a traction battery that is out, and has no operation that takes it out. */
export function batteryOffByNobody(
  survey: Survey,
): Readonly<Record<Extract<FactNames['plan'], 'plan.battery_off_by_nobody'>, Fact>> {
  const claims = survey.operations.some(isBatteryFitted) ? [] : claimsOf(survey);
  return {
    'plan.battery_off_by_nobody': computedOr(
      claims.map(({ what }) => what).join(', ') || undefined,
      claims[0]?.at ?? '/make_safe/high_voltage/battery_removed',
      'The traction battery is not said to be out, or an operation takes it out.',
    ),
  };
}

interface Claim {
  readonly what: string;
  readonly at: string;
}

function claimsOf({ plan, operations }: Survey): readonly Claim[] {
  const { make_safe: makeSafe, finish } = plan;
  return [
    ...(makeSafe?.high_voltage?.battery_removed === true
      ? [{ what: 'the steps before the work', at: '/make_safe/high_voltage/battery_removed' }]
      : []),
    ...(finish?.bake?.traction_battery === 'removed'
      ? [{ what: 'the bake', at: '/finish/bake/traction_battery' }]
      : []),
    // By name: the order of parts in the plan tells nothing.
    ...operations
      .toSorted(
        (a, b) => inOrder(a.part.name, b.part.name) || inOrder(a.part.part.id ?? '', b.part.part.id ?? ''),
      )
      .flatMap(({ operation, part, at }) =>
        (operation.near ?? []).flatMap(({ item, treatment }, index) =>
          item === 'traction battery' && treatment === 'removed'
            ? [{ what: `the work on ${part.name}`, at: `${at}/near/${String(index)}` }]
            : [],
        ),
      ),
  ];
}

/**
 * Whether the plan says what lies beside such work, leaves the traction battery out of it, and nothing shows that it is right: the
 * battery is not said to be out, and no page of the maker is cited that shows where it lies. A list that is not there at all is asked for
 * as such.
 */
export function packNotPlaced(
  survey: Survey,
  one: OperationSurvey,
): Readonly<Record<Extract<FactNames['operation'], 'operation.pack_not_placed'>, Fact>> {
  const { operation, at } = one;
  const { near, clear_within: clear, clear_cite: cite } = operation;
  const isStated = near !== undefined || quantityOf(clear, 'length') !== undefined;
  const names = (near ?? []).some(
    ({ item, part }) =>
      item === 'traction battery' ||
      (part !== undefined && survey.partById.get(part)?.part.kind === 'traction battery'),
  );
  const isOpen =
    isStated &&
    !names &&
    isOverPack(survey, one) &&
    !isBatteryOff(survey) &&
    !listOf(cite).some(({ reference }) => coversVehicle(survey, reference));
  return { 'operation.pack_not_placed': computed(isOpen, near === undefined ? at : `${at}/near`) };
}
