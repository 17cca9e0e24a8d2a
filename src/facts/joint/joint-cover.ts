import type { Joint } from '../../generated/plan-types.ts';
import type { Fact } from '../fact.ts';
import { assumed, computedOr, stated, unknown } from '../make-fact.ts';
import { quantityOf } from '../quantity-of.ts';
import type { JointSurvey } from '../survey.ts';
import { positive } from './joint-button.ts';

type CoverFact =
  | 'joint.factory_pitch'
  | 'joint.factory_spacing'
  | 'joint.count_factor'
  | 'joint.bare_end'
  | 'joint.bare_end_factor';

/** How far a row covers its flange, and whether the row of the factory can be as it is said to be. */
export function coverFacts(
  { joint, at }: JointSurvey,
  pagedMm: number | undefined,
): Readonly<Record<CoverFact, Fact>> {
  const { count, factory_count: factoryCount } = joint;
  const [pitchMm, flangeMm] = [lengthOf(joint, 'pitch'), lengthOf(joint, 'length')];
  const bareMm = bareEndMm(joint);
  const factoryMm = pagedMm ?? factoryPitchOf(joint);
  // A row that is told only by its own pitch is held against that.
  const spacingMm =
    factoryMm === undefined || pitchMm === undefined ? (factoryMm ?? pitchMm) : Math.max(factoryMm, pitchMm);
  const noRow = 'Number, pitch or length of the flange is not stated.';
  return {
    'joint.factory_pitch': factoryPitch(joint, at),
    'joint.factory_spacing': computedOr(
      flangeMm === undefined || factoryCount === undefined ? undefined : flangeMm / (factoryCount + 1),
      `${at}/factory_count`,
      'The length of the flange, or the number of factory joints, is not stated.',
    ),
    'joint.count_factor': computedOr(
      count === undefined || factoryCount === undefined || factoryCount === 0
        ? undefined
        : count / factoryCount,
      `${at}/count`,
      'The number of joints, or that of the factory, is not stated, or the factory put none.',
    ),
    'joint.bare_end': computedOr(bareMm, `${at}/length`, noRow),
    'joint.bare_end_factor': computedOr(
      bareMm === undefined || spacingMm === undefined ? undefined : bareMm / spacingMm,
      `${at}/length`,
      noRow,
    ),
  };
}

/**
 * Distance between the factory’s joints, mm: stated, else the farthest apart that so many can stand on so long a flange, which is
 * with one at each end. Undefined where neither is told.
 */
export function factoryPitchOf(joint: Joint): number | undefined {
  return lengthOf(joint, 'factory_pitch') ?? spreadMm(joint);
}

function factoryPitch(joint: Joint, at: string): Fact {
  const place = `${at}/factory_pitch`;
  const statedMm = lengthOf(joint, 'factory_pitch');
  if (statedMm !== undefined) return stated(statedMm, place);
  const mm = spreadMm(joint);
  return mm === undefined
    ? unknown('The distance between the factory joints is not stated.', place)
    : assumed(mm, 'Not stated; so many joints spread over the whole flange were taken.', place);
}

/** What is nearer than this, mm, no gun welds; flange or number are mistyped then. The least of the table of spot spacing. */
const leastPitchMm = 9.5;

function spreadMm({ factory_count: count, ...joint }: Joint): number | undefined {
  const [flangeMm, pitchMm] = [lengthOf(joint, 'length'), lengthOf(joint, 'pitch') ?? 0];
  if (flangeMm === undefined || count === undefined || count < 2 || flangeMm <= pitchMm) return undefined;
  const mm = flangeMm / (count - 1);
  return mm < leastPitchMm ? undefined : mm;
}

/** What is left bare at either end where the row stands in the middle; the ends of a row that is longer are 0. */
function bareEndMm(joint: Joint): number | undefined {
  const [pitchMm, flangeMm] = [lengthOf(joint, 'pitch'), lengthOf(joint, 'length')];
  if (joint.count === undefined || pitchMm === undefined || flangeMm === undefined) return undefined;
  // One gap may be wider than the pitch: the row is in two pieces then.
  const wider = Math.max(0, (lengthOf(joint, 'widest_gap') ?? 0) - pitchMm);
  return Math.max(0, (flangeMm - (joint.count - 1) * pitchMm - wider) / 2);
}

function lengthOf(
  joint: Joint,
  key: 'pitch' | 'length' | 'factory_pitch' | 'widest_gap',
): number | undefined {
  return positive(quantityOf(joint[key], 'length'));
}
