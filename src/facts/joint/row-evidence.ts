import type { FactNames } from '../../generated/fact-names.ts';
import { margin } from '../../joint/margin.ts';
import type { Fact } from '../fact.ts';
import { computed, computedOr } from '../make-fact.ts';
import { coversVehicle } from '../papers/maker-evidence.ts';
import { listOf, quantityOf } from '../quantity-of.ts';
import type { JointSurvey, OperationSurvey, Survey } from '../survey.ts';
import { isPermanent } from './joint-methods.ts';

type EvidenceFact = Extract<
  FactNames['joint'],
  `joint.${'pattern_factor' | 'count_done_factor' | 'made_row_beyond'}`
>;

/** What stands behind the numbers of a row. */
export function rowEvidence({ joint, at }: JointSurvey): Readonly<Record<EvidenceFact, Fact>> {
  const { count, count_done: done, factory_count: factory, pattern } = joint;
  const [pitchMm, flangeMm] = [quantityOf(joint.pitch, 'length'), quantityOf(joint.length, 'length')];
  return {
    'joint.made_row_beyond': computedOr(
      done === undefined || pitchMm === undefined || flangeMm === undefined || flangeMm <= 0
        ? undefined
        : margin((done - 2) * pitchMm, flangeMm),
      `${at}/count_done`,
      'The number that was made, the pitch or the length of the flange is not stated.',
    ),
    'joint.pattern_factor': computedOr(
      pattern?.count === undefined || factory === undefined || factory === 0
        ? undefined
        : pattern.count / factory,
      `${at}/pattern`,
      'The number that the page states, or that of the factory, is not written.',
    ),
    'joint.count_done_factor': computedOr(
      count === undefined || done === undefined || count === 0 ? undefined : done / count,
      `${at}/count_done`,
      'The number of joints that was planned, or that was made, is not written.',
    ),
  };
}

/** By a page of this vehicle: for the number itself, or for the pattern of the row with its number. */
function isCountCited(survey: Survey, { factory_count_from: from, pattern }: JointSurvey['joint']): boolean {
  const pages = [...listOf(from), ...(pattern?.count === undefined ? [] : listOf(pattern.cite))];
  return pages.some(({ reference }) => coversVehicle(survey, reference));
}

/**
 * Joints of an operation in all, where every one of them is counted and each row is of spots, plugs or rivets; a seam or a bond holds
 * without any number.
 */
export function jointsInAll(
  survey: Survey,
  { joints, at }: OperationSurvey,
): Readonly<Record<Extract<FactNames['operation'], `operation.${'joints_in_all' | 'joints_cited'}`>, Fact>> {
  const permanent = joints.filter(({ joint: { method } }) => method === undefined || isPermanent(method));
  const isCounted = permanent.every(
    ({ joint: { method, count } }) => method !== undefined && counted.has(method) && count !== undefined,
  );
  return {
    'operation.joints_in_all': computedOr(
      isCounted && permanent.length > 0
        ? permanent.reduce((sum, { joint: { count } }) => sum + (count ?? 0), 0)
        : undefined,
      `${at}/joints`,
      'No joint is listed, a number is left out, or a seam or a bond holds the part.',
    ),
    'operation.joints_cited': computed(
      permanent.some(({ joint }) => isCountCited(survey, joint)),
      `${at}/joints`,
    ),
  };
}

const counted: ReadonlySet<string> = new Set([
  // Adhesive between spots is no bond that holds by itself.
  ...['resistance spot', 'adhesive and spot', 'projection weld', 'plug weld'],
  ...['self-piercing rivet', 'blind rivet', 'solid rivet', 'flow-drill screw', 'clinch'],
]);
