import { diameterOf } from '../../joint/button.ts';
import { margin } from '../../joint/margin.ts';
import { leastOverlap, leastPitch } from '../../joint/spot-spacing.ts';
import type { Sized } from '../../joint/sized.ts';
import type { Fact } from '../fact.ts';
import { diametersOf, positive } from './joint-button.ts';
import { factoryPitchOf } from './joint-cover.ts';
import type { PatternSurvey } from './joint-pattern.ts';
import { ofSized } from './joint-stack.ts';
import type { JointStack } from './joint-stack.ts';
import { assumed, computed, computedOr, statedOr, unknown } from '../make-fact.ts';
import { quantityOf } from '../quantity-of.ts';
import type { JointSurvey } from '../survey.ts';

type SizeFact =
  | 'joint.pitch'
  | 'joint.least_pitch'
  | 'joint.pitch_short'
  | 'joint.widest_gap'
  | 'joint.gap_factor'
  | 'joint.edge'
  | 'joint.edge_factor'
  | 'joint.overlap'
  | 'joint.overlap_short'
  | 'joint.pitch_beyond_flange'
  | 'joint.edge_beyond_overlap'
  | 'joint.far_edge_factor'
  | 'joint.hole_rim'
  | `joint.${'row_beyond_flange' | 'crowded_pitch' | 'crowded_pitch_short'}`;

/** Distances within a row and to the edges, held against the sheets that they join. */
export function sizeFacts(
  one: JointSurvey,
  stack: JointStack,
  pattern: PatternSurvey,
): Readonly<Record<SizeFact, Fact>> {
  const { joint, at } = one;
  const length = (key: 'pitch' | 'edge' | 'overlap' | 'length' | 'widest_gap' | 'hole'): number | undefined =>
    positive(quantityOf(joint[key], 'length'));
  const [pitch, edge, overlap, flange] = [
    length('pitch'),
    length('edge'),
    length('overlap'),
    length('length'),
  ];
  const { count } = joint;
  const hole = length('hole');
  // However a row is spread over its flange, one of its gaps, the ends among them, is as wide as all of them alike would be.
  const spread = flange === undefined || count === undefined ? undefined : flange / (count + 1);
  const gap = widest(widest(pitch, length('widest_gap')), pitch === undefined ? undefined : spread);
  const least = spacingOf(stack, (governingMm) => leastPitch(governingMm, stack.sheets.length));
  const width = spacingOf(stack, leastOverlap);
  const isTooLong =
    count !== undefined &&
    pitch !== undefined &&
    flange !== undefined &&
    margin((count - 1) * pitch, flange) > 0;
  // A row that goes beyond its flange by more than one of its gaps shows that the flange is misstated, and what is reckoned from it as well.
  const isBeyond =
    count !== undefined &&
    pitch !== undefined &&
    flange !== undefined &&
    margin((count - 2) * pitch, flange) > 0;
  const before =
    positive(pattern.pitchMm) ??
    (isBeyond && joint.factory_pitch === undefined ? undefined : factoryPitchOf(joint));
  // As wide as they can stand: the first and the last at the very ends of the flange.
  const crowded = isTooLong ? flange / (count - 1) : undefined;
  const rowFits = 'The row fits on its flange, or its number, pitch or length is not stated.';
  const noPitch = 'The distance between the joints is not stated.';
  return {
    'joint.pitch': statedOr(pitch, `${at}/pitch`, noPitch),
    'joint.least_pitch': ofSized(least, `${at}/pitch`),
    'joint.pitch_short': ofSized(minus(least, pitch, noPitch), `${at}/pitch`),
    'joint.widest_gap': computedOr(
      gap,
      `${at}/${joint.widest_gap === undefined ? 'pitch' : 'widest_gap'}`,
      noPitch,
    ),
    'joint.gap_factor': computedOr(
      gap === undefined || before === undefined ? undefined : gap / before,
      `${at}/pitch`,
      'The distance between the joints, or that of the factory, is not stated.',
    ),
    'joint.edge': statedOr(edge, `${at}/edge`, noEdge),
    'joint.edge_factor': edgeFactor(one, stack, edge, noEdge),
    'joint.far_edge_factor': edgeFactor(
      one,
      stack,
      edge === undefined || overlap === undefined ? undefined : positive(overlap - edge),
      'Distance to the edge or width of the flange is not stated.',
    ),
    'joint.hole_rim': computedOr(
      edge === undefined || hole === undefined ? undefined : margin(edge, hole / 2),
      `${at}/edge`,
      'The hole of the plug weld, or its distance to the edge, is not stated.',
    ),
    'joint.overlap': statedOr(overlap, `${at}/overlap`, 'The width of the flange or overlap is not stated.'),
    'joint.overlap_short': ofSized(
      minus(width, overlap, 'The width of the flange or overlap is not stated.'),
      `${at}/overlap`,
    ),
    'joint.pitch_beyond_flange': computedOr(
      pitch === undefined || flange === undefined ? undefined : margin(pitch, flange),
      `${at}/pitch`,
      'Pitch or length of the flange is not stated.',
    ),
    'joint.edge_beyond_overlap': computedOr(
      edge === undefined || overlap === undefined ? undefined : margin(edge, overlap),
      `${at}/edge`,
      'Edge distance or width of the flange is not stated.',
    ),
    'joint.row_beyond_flange': computedOr(
      count === undefined || pitch === undefined || flange === undefined
        ? undefined
        : margin((count - 1) * pitch, flange),
      `${at}/pitch`,
      'Number, pitch or length of the flange is not stated.',
    ),
    'joint.crowded_pitch': computedOr(crowded, `${at}/count`, rowFits),
    'joint.crowded_pitch_short': ofSized(minus(least, crowded, rowFits), `${at}/count`),
  };
}

const noEdge = 'The distance to the sheet edge is not stated.';

/** The larger button reaches nearer to the edge. */
function edgeFactor(one: JointSurvey, stack: JointStack, edge: number | undefined, notStated: string): Fact {
  const place = `${one.at}/edge`;
  if (edge === undefined) return unknown(notStated, place);
  const { asked, measured } = diametersOf(one);
  const diameter = widest(asked, measured);
  if (diameter !== undefined) return computed(edge / diameter, place);
  if (!stack.governing.ok) return unknown(stack.governing.reason, place);
  return assumed(
    edge / diameterOf(5, stack.governing.value),
    'No diameter is stated; 5 √t was taken.',
    place,
  );
}

/** The table is of low-carbon steel. */
function spacingOf(stack: JointStack, find: (governingMm: number) => Sized): Sized {
  if (!stack.governing.ok) return stack.governing;
  const other = stack.sheets.find((sheet) => isOtherMetal(sheet?.material.class));
  if (other !== undefined) {
    return {
      ok: false,
      reason: `The table of spot spacing is for steel, and ${other.name} is ${other.material.class ?? ''}; only a coupon at the pitch of the job, or the maker’s page, tells.`,
    };
  }
  return find(stack.governing.value);
}

function isOtherMetal(word: string | undefined): boolean {
  return word === 'aluminium' || word === 'magnesium' || word === 'composite' || word === 'plastic';
}

function minus(least: Sized, own: number | undefined, reason: string): Sized {
  if (own === undefined) return { ok: false, reason };
  return least.ok ? { ok: true, value: margin(least.value, own) } : least;
}

function widest(one: number | undefined, other: number | undefined): number | undefined {
  return one === undefined || other === undefined ? (one ?? other) : Math.max(one, other);
}
