import type { FactNames } from '../../generated/fact-names.ts';
import type { Fact } from '../fact.ts';
import { computed, computedOr } from '../make-fact.ts';
import { isPermanent, isWelded } from '../joint/joint-methods.ts';
import { recordAway } from './kept-away.ts';
import { dayOf } from '../quantity-of.ts';
import { isRunningGearOnly } from '../running-gear.ts';
import { saysNone } from '../step/step-draft.ts';
import type { Survey } from '../survey.ts';

type RecordFact = Extract<
  FactNames['plan'],
  'plan.record' | 'plan.record_away' | 'plan.record_missing' | 'plan.record_years'
>;

type Kept = readonly [name: string, words: RegExp];

/** What a record of structural work holds beside the procedures, by words that name it. Common practice, no source. */
const measured: Kept = ['measurements', /measur/i];
const coupons: Kept = ['weld coupons', /coupon|weld|test piece|peel/i];
const bondCoupons: Kept = ['joint coupons', coupons[1]];
const codes: Kept = ['codes', /\bscan|code/i];
const photographs: Kept = ['photographs', /photo|picture|image/i];

const procedures = /procedure|document|page|bulletin|reference/i;

export function recordFacts(survey: Survey): Readonly<Record<RecordFact, Fact>> {
  const { plan, context } = survey;
  const { kept = [], where, until, owner_gets: owner } = plan.record ?? {};
  const { alignment, calibrations = [] } = plan.verify ?? {};
  const missing = [
    ...keptFor(survey)
      .filter(([, words]) => !kept.some((entry) => words.test(entry)))
      .map(([name]) => name),
    ...(alignment?.values !== undefined && !kept.some((entry) => /align/i.test(entry))
      ? ['wheel alignment']
      : []),
    ...(calibrations.some(({ result }) => result === 'passed') &&
    !kept.some((entry) => /calibrat/i.test(entry))
      ? ['calibrations']
      : []),
    ...(where === undefined ? ['where it is kept'] : []),
    ...(owner === undefined || owner.every(saysNone) ? ['what the owner gets'] : []),
  ];
  const last = dayOf(until);
  const from = dayOf(plan.sign_off?.date) ?? context.asOfDay;
  return {
    'plan.record': computed(
      kept.length === 0
        ? 'none'
        : kept.some((entry) => procedures.test(entry))
          ? 'with the procedures'
          : 'without the procedures',
      '/record/kept',
    ),
    'plan.record_away': recordAway(survey),
    'plan.record_missing': computedOr(missing.join(', ') || undefined, '/record', 'Nothing is missing.'),
    'plan.record_years': computedOr(
      last === undefined ? undefined : Math.round(((last - from) / 365.2425) * 100) / 100,
      '/record/until',
      'No last day is written.',
    ),
  };
}

/** Nobody cuts a coupon for a bolt; of an arm that came off and went on by its bolts no body is measured and nothing is closed over. */
function keptFor(survey: Survey): readonly Kept[] {
  const { operations } = survey;
  // Of the bead of a windscreen nobody makes a coupon.
  const methods = operations.flatMap(({ joints, part }) =>
    part.part.kind === 'glass' ? [] : joints.flatMap(({ joint }) => joint.method ?? []),
  );
  const welds = methods.some(isWelded) || operations.some(({ electricWelding }) => electricWelding !== false);
  const ofJoints = welds ? [coupons] : methods.some(isPermanent) ? [bondCoupons] : [];
  return isRunningGearOnly(survey) ? [...ofJoints, codes] : [measured, ...ofJoints, codes, photographs];
}
