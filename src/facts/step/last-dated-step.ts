import { whenOf } from '../quantity-of.ts';
import type { Survey } from '../survey.ts';

export function lastDatedStep({ plan, operations }: Survey): number | undefined {
  const { make_safe: makeSafe, measurements, finish, verify } = plan;
  const moments = [
    ...operations.flatMap(({ operation, joints }) => [
      operation.done,
      operation.fasteners?.tightened,
      ...joints.flatMap(({ joint }) => [joint.done, joint.adhesive?.cured]),
    ]),
    makeSafe?.low_voltage?.done,
    makeSafe?.restraints?.done,
    makeSafe?.high_voltage?.isolation?.done,
    makeSafe?.high_voltage?.proof_of_absence?.done,
    measurements?.before,
    measurements?.before_welding,
    measurements?.after,
    finish?.sealer?.done,
    finish?.primer?.done,
    finish?.underbody?.done,
    finish?.bake?.done,
    ...(finish?.cavities ?? []).map(({ done }) => done),
    verify?.scan_before?.done,
    verify?.scan_after?.done,
    verify?.alignment?.done,
    ...(verify?.calibrations ?? []).map(({ done }) => done),
    verify?.restraints?.done,
    verify?.high_voltage?.done,
    verify?.road_test?.done,
    verify?.warning_lamps?.done,
    verify?.structural_release?.done,
    ...(plan.hold_points ?? []).map(({ done }) => done),
  ];
  const days = moments.map((text) => whenOf(text)?.day).filter((day) => day !== undefined);
  return days.length === 0 ? undefined : Math.max(...days);
}
