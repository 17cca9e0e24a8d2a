import type { FactNames } from '../../generated/fact-names.ts';
import { sameName } from '../../vehicle/same-name.ts';
import type { Fact } from '../fact.ts';
import { computedOr } from '../make-fact.ts';
import { dayOf } from '../quantity-of.ts';
import type { JointSurvey, Survey } from '../survey.ts';

type OtherJobFact = Extract<FactNames['joint'], `joint.${'coupon_of_elsewhere' | 'record_of_other_job'}`>;

/** Whether coupon and record of a joint are those of this job. */
export function otherJobFacts(
  { plan: { job } }: Survey,
  { joint, at }: JointSurvey,
): Readonly<Record<OtherJobFact, Fact>> {
  const test = typeof joint.coupon === 'object' ? joint.coupon : undefined;
  const inCoupon = otherJob(test?.record, job?.number);
  const lot = otherLot(test?.record, joint.adhesive?.lot);
  const early = joint.adhesive === undefined ? undefined : daysBefore(job?.opened, test?.date);
  const elsewhere = [
    ...(inCoupon === undefined ? [] : [`its record names job ${inCoupon}`]),
    ...(lot === undefined ? [] : [`its record names lot ${lot}`]),
    ...(early === undefined
      ? []
      : [`it was torn ${String(early)} ${early === 1 ? 'day' : 'days'} before the job was opened`]),
  ];
  return {
    'joint.coupon_of_elsewhere': computedOr(
      elsewhere.length === 0 ? undefined : elsewhere.join(', '),
      `${at}/coupon`,
      'Nothing says that the coupon is of another job or lot.',
    ),
    'joint.record_of_other_job': computedOr(
      otherJob(joint.record, job?.number),
      `${at}/record`,
      'The record names no other job.',
    ),
  };
}

/** The number after the word "job": "B-2198-1 of job K-2198" among the papers of K-2240. */
function otherJob(record: string | undefined, own: string | undefined): string | undefined {
  if (record === undefined || own === undefined) return undefined;
  const named = /\bjob (?:no\.? ?|number )?([a-z]{0,4}[ -]?\d[\w/-]*)/i.exec(record)?.[1];
  if (named === undefined) return undefined;
  return sameName(named, own) || named.toLowerCase().startsWith(`${own.toLowerCase()}-`) ? undefined : named;
}

function otherLot(record: string | undefined, own: string | undefined): string | undefined {
  if (record === undefined || own === undefined) return undefined;
  const named = /\b(?:lot|batch) (?:no\.? ?|number )?([\w/-]*\d[\w/-]*)/i.exec(record)?.[1];
  return named === undefined || sameName(named, own) ? undefined : named;
}

function daysBefore(opened: string | undefined, torn: string | undefined): number | undefined {
  const [begun, day] = [dayOf(opened), dayOf(torn)];
  return begun === undefined || day === undefined || day >= begun ? undefined : begun - day;
}
