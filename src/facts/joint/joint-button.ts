import { diameterOf, rootMultiple } from '../../joint/button.ts';
import { margin } from '../../joint/margin.ts';
import type { Fact } from '../fact.ts';
import type { JointStack } from './joint-stack.ts';
import { computed, computedOr, stated, statedOr, unknown } from '../make-fact.ts';
import { quantityOf } from '../quantity-of.ts';
import type { JointSurvey } from '../survey.ts';

type ButtonFact =
  | 'joint.button'
  | 'joint.button_factor'
  | 'joint.four_root'
  | 'joint.five_root'
  | 'joint.coupon_button'
  | 'joint.coupon_factor'
  | 'joint.coupon_below_asked';

/** The button that is asked for and the one of the coupon, held against the sheets. */
export function buttonFacts(
  one: JointSurvey,
  { governing, at }: JointStack,
): Readonly<Record<ButtonFact, Fact>> {
  const { asked, measured } = diametersOf(one);
  const noButton = 'The diameter of the nugget or button is not stated.';
  const ofCoupon = `${at}/coupon`;
  const button = asked ?? measured;
  const place = asked === undefined && measured !== undefined ? ofCoupon : `${at}/nugget`;
  const factor = (diameter: number | undefined, target: string, reason: string): Fact => {
    if (diameter === undefined) return unknown(reason, target);
    return governing.ok
      ? computed(rootMultiple(diameter, governing.value), target)
      : unknown(governing.reason, target);
  };
  const root = (multiple: number): Fact =>
    governing.ok
      ? computed(diameterOf(multiple, governing.value), `${at}/sheets`)
      : unknown(governing.reason, at);
  const noMeasure = 'No diameter was measured on the coupon.';
  return {
    'joint.button': button === undefined ? unknown(noButton, place) : stated(button, place),
    'joint.button_factor': factor(button, place, noButton),
    'joint.four_root': root(4),
    'joint.five_root': root(5),
    'joint.coupon_button': statedOr(measured, ofCoupon, noMeasure),
    'joint.coupon_factor': factor(measured, ofCoupon, noMeasure),
    'joint.coupon_below_asked': computedOr(
      asked === undefined || measured === undefined ? undefined : margin(asked, measured),
      ofCoupon,
      'The diameter that is asked, or the one of the coupon, is not stated.',
    ),
  };
}

/** Diameters of the button, mm: what is asked for and what the coupon had. */
export function diametersOf({ joint }: JointSurvey): {
  readonly asked: number | undefined;
  readonly measured: number | undefined;
} {
  const coupon = typeof joint.coupon === 'object' ? joint.coupon.nugget : undefined;
  return {
    asked: positive(quantityOf(joint.nugget, 'length')),
    measured: positive(quantityOf(coupon, 'length')),
  };
}

/** Nothing is computed from a length of nothing. */
export function positive(value: number | undefined): number | undefined {
  return value !== undefined && value > 0 ? value : undefined;
}
