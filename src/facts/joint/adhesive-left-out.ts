import type { Fact } from '../fact.ts';
import { assumed, computed, unknown } from '../make-fact.ts';
import type { JointMatter } from './joint-matter.ts';
import { hasAdhesive, isResistance } from './joint-methods.ts';

/**
 * Whether adhesive that the factory put into a joint is left out. Where the factory bonds without its being seen from outside, between the
 * spots of structure and in the hem of a skin, silence is no answer.
 */
export function adhesiveLeftOut(matter: JointMatter): Fact {
  const { joint, at } = matter.one;
  const { method, factory_method: before } = joint;
  const place = `${at}/factory_adhesive`;
  if (joint.adhesive !== undefined || (method !== undefined && hasAdhesive(method))) {
    return computed(false, place);
  }
  const had = joint.factory_adhesive ?? (before !== undefined && hasAdhesive(before) ? true : undefined);
  if (had !== undefined) return computed(had, place);
  if (matter.stack.some((sheet) => sheet?.part.holds?.includes('structural adhesive'))) {
    return unknown(
      'A part of the joint holds structural adhesive; whether this joint did is not stated.',
      place,
    );
  }
  return isBondedUnseen(matter)
    ? unknown('Whether the joint of the factory held adhesive is not stated (`factory_adhesive`).', place)
    : assumed(false, 'No factory adhesive is stated for the joint.', place);
}

function isBondedUnseen({ operation, one: { joint } }: JointMatter): boolean {
  const { method, form, factory_count: count, factory_method: before } = joint;
  if (method === 'hem' || form === 'hem') return true;
  if (operation.part.structural !== true || method === undefined || count === 0) return false;
  // Spots, and plugs that stand for spots.
  return isResistance(method) || (method === 'plug weld' && (before === undefined || isResistance(before)));
}
