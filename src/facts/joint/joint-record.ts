import type { FactNames } from '../../generated/fact-names.ts';
import type { Fact } from '../fact.ts';
import { computed, computedOr, statedOr } from '../make-fact.ts';
import { saysNone } from '../step/step-draft.ts';
import type { JointSurvey, OperationSurvey, Survey } from '../survey.ts';

type RecordFact = Extract<FactNames['joint'], `joint.${'flange_coat' | 'record_kept' | 'record_shared'}`>;

/** What lies between the sheets, and where the joint stands in the record. */
export function jointRecordFacts(
  survey: Survey,
  operation: OperationSurvey,
  one: JointSurvey,
): Readonly<Record<RecordFact, Fact>> {
  const { joint, at } = one;
  const ofCoupon = typeof joint.coupon === 'object' ? joint.coupon.record : undefined;
  return {
    'joint.flange_coat': statedOr(
      joint.flange_coat,
      `${at}/flange_coat`,
      'What lies between the sheets of the flange is not stated (`flange_coat`).',
    ),
    'joint.record_shared': computedOr(
      sharingRecord(survey, operation, joint).join(', ') || undefined,
      `${at}/record`,
      'No joint of another part bears the same record number, or it is no number.',
    ),
    'joint.record_kept': computed(!saysNone(joint.record) || !saysNone(ofCoupon), `${at}/record`),
  };
}

/** One word with a digit is a number of a record; "weld book, page 4" is a place, where many may stand. */
const isNumber = /^(?=\S*\d)[\w./-]+$/;

/** Other parts with a joint under the same number. The same two parts, told from either side, are one joint; a job is no record. */
function sharingRecord(
  { plan, parts }: Survey,
  { part }: OperationSurvey,
  { record, to }: JointSurvey['joint'],
): readonly string[] {
  if (record === undefined || record === plan.job?.number || !isNumber.test(record)) return [];
  const others = parts.filter(
    (other) =>
      other !== part &&
      other.operations.some(({ joints }) =>
        joints.some(
          ({ joint }) => joint.record === record && !(to === other.part.id && joint.to === part.part.id),
        ),
      ),
  );
  return others.map(({ name }) => name);
}
