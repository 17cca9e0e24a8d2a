import { fillerMetal } from '../../joint/filler.ts';
import { holeOff } from '../../joint/plug.ts';
import { rootGapOff } from '../../joint/root-gap.ts';
import type { Fact } from '../fact.ts';
import { ofSized } from './joint-stack.ts';
import type { JointStack } from './joint-stack.ts';
import { computed, computedOr, statedOr, unknown } from '../make-fact.ts';
import { insertAskedMm } from '../part/condition-kept.ts';
import { quantityOf } from '../quantity-of.ts';
import type { JointSurvey, OperationSurvey } from '../survey.ts';

type SeamFact =
  | 'joint.hole'
  | 'joint.hole_off'
  | 'joint.filler_metal'
  | 'joint.insert_length'
  | 'joint.insert_asked'
  | 'joint.backed'
  | 'joint.gap_off';

/** What an arc needs beside heat: wire, hole, insert and gap. */
export function seamFacts(
  { joint, at }: JointSurvey,
  operation: OperationSurvey,
  stack: JointStack,
): Readonly<Record<SeamFact, Fact>> {
  const hole = quantityOf(joint.hole, 'length');
  const metal = joint.filler === undefined ? undefined : fillerMetal(joint.filler);
  return {
    'joint.hole': statedOr(hole, `${at}/hole`, 'The hole is not stated.'),
    'joint.hole_off': holeFact({ joint, at }, hole, stack),
    'joint.filler_metal': computedOr(
      metal,
      `${at}/filler`,
      joint.filler === undefined
        ? 'No wire is stated.'
        : `What "${joint.filler}" is made of is not known; write its standard designation.`,
    ),
    'joint.insert_length': statedOr(
      quantityOf(joint.insert?.length_each_side, 'length'),
      `${at}/insert`,
      'How far the insert reaches into each side is not stated.',
    ),
    'joint.insert_asked': computedOr(
      insertAskedMm(operation),
      `${at}/insert`,
      'No condition that is said to be met names the length of an insert.',
    ),
    'joint.backed': computed(joint.insert !== undefined || joint.backing !== undefined, `${at}/backing`),
    'joint.gap_off': gapFact({ joint, at }, operation),
  };
}

function holeFact({ joint, at }: JointSurvey, holeMm: number | undefined, stack: JointStack): Fact {
  const place = `${at}/hole`;
  if (joint.method !== 'plug weld') return unknown('Only a plug weld has a hole that is filled.', place);
  if (holeMm === undefined) return unknown('The hole of the plug weld is not stated.', place);
  const [holed] = stack.thicknessesMm ?? [];
  return holed === undefined
    ? unknown('The sheets of the stack, or a thickness of theirs, are not stated.', `${at}/sheets`)
    : ofSized(holeOff(holeMm, holed), place);
}

function gapFact({ joint, at }: JointSurvey, { part }: OperationSurvey): Fact {
  const place = `${at}/gap`;
  const { form } = joint;
  if (form !== 'open butt' && form !== 'butt with insert') return unknown('The seam is no butt.', place);
  const gapMm = quantityOf(joint.gap, 'length');
  const sheetMm = quantityOf(part.part.thickness, 'length');
  if (gapMm === undefined) return unknown('The root gap is not stated.', place);
  if (sheetMm === undefined || sheetMm === 0) return unknown('The sheet thickness is not stated.', place);
  return computed(rootGapOff(gapMm, sheetMm, form), place);
}
