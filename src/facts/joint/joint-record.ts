import type { FactNames } from '../../generated/fact-names.ts';
import type { Fact } from '../fact.ts';
import { computed, statedOr } from '../make-fact.ts';
import { saysNone } from '../step/step-draft.ts';
import type { JointSurvey } from '../survey.ts';

type RecordFact = Extract<FactNames['joint'], 'joint.flange_coat' | 'joint.record_kept'>;

/** What lies between the sheets, and where the joint stands in the record. */
export function jointRecordFacts({ joint, at }: JointSurvey): Readonly<Record<RecordFact, Fact>> {
  const ofCoupon = typeof joint.coupon === 'object' ? joint.coupon.record : undefined;
  return {
    'joint.flange_coat': statedOr(
      joint.flange_coat,
      `${at}/flange_coat`,
      'What lies between the sheets of the flange is not stated (`flange_coat`).',
    ),
    'joint.record_kept': computed(!saysNone(joint.record) || !saysNone(ofCoupon), `${at}/record`),
  };
}
