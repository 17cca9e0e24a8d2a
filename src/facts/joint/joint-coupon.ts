import type { Joint } from '../../generated/plan-types.ts';
import { settleMaterial } from '../../steel/settling/settle-material.ts';
import type { Fact } from '../fact.ts';
import type { JointMatter } from './joint-matter.ts';
import { jointStack } from './joint-stack.ts';
import type { JointStack } from './joint-stack.ts';
import { computed, computedOr, statedOr } from '../make-fact.ts';
import { notAfter, quantityOf, whenOf } from '../quantity-of.ts';
import type { Survey } from '../survey.ts';
import { unreadAt } from '../unread.ts';

type CouponFact =
  | 'joint.coupon_failure'
  | 'joint.coupon_at_pitch'
  | 'joint.coupon_sheets'
  | 'joint.coupon_other_setup'
  | 'joint.coupon_recorded'
  | 'joint.coupon_missing'
  | 'joint.coupon_dated'
  | 'joint.coupon_flaw';

type Test = Exclude<NonNullable<Joint['coupon']>, string>;

/** How far the coupon tells of the joint. */
export function couponFacts(matter: JointMatter): Readonly<Record<CouponFact, Fact>> {
  const { survey, operation } = matter;
  const { joint, at } = matter.one;
  const place = `${at}/coupon`;
  const test = typeof joint.coupon === 'object' ? joint.coupon : undefined;
  const sheets = couponSheets(test, matter);
  const isSized = test !== undefined && isWritten(survey, test.nugget, `${place}/nugget`);
  const isDated = test !== undefined && isWritten(survey, test.date, `${place}/date`);
  return {
    'joint.coupon_failure': statedOr(test?.failure, place, 'How the coupon broke is not stated.'),
    'joint.coupon_at_pitch': computed(test?.at_job_pitch === true, place),
    'joint.coupon_sheets': computed(sheets, place),
    'joint.coupon_other_setup': computed(test?.same_setup === false, place),
    'joint.coupon_flaw': computedOr(
      test === undefined ? undefined : flawOf(test, sheets, joint.done ?? operation.operation.done),
      place,
      'The coupon is of the sheets, the setup and the days of the joint, or nothing is said of them.',
    ),
    'joint.coupon_recorded': computed(isDated && isSized, place),
    'joint.coupon_missing': computedOr(
      [...(isSized ? [] : ['the size of the button']), ...(isDated ? [] : ['the day'])].join(' and ') ||
        undefined,
      place,
      'Size and day of the coupon are recorded.',
    ),
    'joint.coupon_dated': computed(isDated, place),
  };
}

type SheetAnswer = 'same' | 'other' | 'not stated';

function flawOf(test: Test, sheets: SheetAnswer, made: string | undefined): string | undefined {
  const [torn, joined] = [whenOf(test.date), whenOf(made)];
  if (torn !== undefined && joined !== undefined) {
    if (notAfter(torn, joined) === false) return 'it was torn after the joint was made';
    const days = joined.day - torn.day;
    if (days > 1) return `it was torn ${String(days)} days before the joint was made`;
  }
  if (sheets === 'other') return 'it is made of other sheets';
  return test.same_setup === false ? 'it was made with another setup' : undefined;
}

function isWritten(survey: Survey, text: string | undefined, at: string): boolean {
  return text !== undefined || unreadAt(survey, at) !== undefined;
}

interface Sheet {
  readonly mm: number;
  readonly class: string;
}

function couponSheets(test: Test | undefined, matter: JointMatter): SheetAnswer {
  if (test?.sheets === undefined) return 'not stated';
  const stack = stackOf(matter);
  if (stack.sheets.length < 2) return 'not stated';
  // The insert of a seam that lists no sheets may be in its coupon or not.
  if (test.sheets.length !== stack.sheets.length) return isListed(matter) ? 'other' : 'not stated';
  const made = test.sheets.map(ofCoupon);
  const joined = stack.sheets.map((sheet, index) =>
    sheetOf(sheet?.material.class, stack.thicknessesMm?.[index]),
  );
  const answers = [made, made.toReversed()].map((order) => allAlike(order, joined));
  if (answers.includes(true)) return 'same';
  return answers.includes(undefined) ? 'not stated' : 'other';
}

function isListed({ one: { joint } }: JointMatter): boolean {
  return (joint.sheets ?? []).length > 1;
}

/** A seam mostly names only what it joins the part to. */
function stackOf(matter: JointMatter): JointStack {
  const { survey, operation, one, laid } = matter;
  const [own, to] = [operation.part.part.id, one.joint.to];
  if (laid.sheets.length > 1 || own === undefined || to === undefined) return laid;
  return jointStack(survey, operation, { ...one, joint: { ...one.joint, sheets: [own, to] } });
}

function ofCoupon({
  grade,
  strength,
  class: word,
  thickness,
}: NonNullable<Test['sheets']>[number]): Sheet | undefined {
  const tensileMpa = quantityOf(strength, 'stress');
  const settled = settleMaterial({
    ...(grade === undefined ? {} : { grade }),
    ...(tensileMpa === undefined ? {} : { tensileMpa }),
    ...(word === undefined ? {} : { class: word }),
  });
  return sheetOf(settled.class, quantityOf(thickness, 'length'));
}

function sheetOf(word: string | undefined, mm: number | undefined): Sheet | undefined {
  return word === undefined || mm === undefined ? undefined : { class: word, mm };
}

/** Tolerance of rolled sheet, mm. Common practice. */
const sameThicknessMm = 0.06;

/** Undefined where no sheet is known to differ and one is not known. */
function allAlike(
  one: readonly (Sheet | undefined)[],
  other: readonly (Sheet | undefined)[],
): boolean | undefined {
  let answer: boolean | undefined = true;
  for (const [index, sheet] of one.entries()) {
    const beside = other[index];
    if (sheet === undefined || beside === undefined) answer = undefined;
    else if (sheet.class !== beside.class || Math.abs(sheet.mm - beside.mm) > sameThicknessMm) return false;
  }
  return answer;
}
