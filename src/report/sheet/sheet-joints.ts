import type { JointShown } from '../../facts/part/part-shown.ts';
import { formatQuantity } from '../../quantity/format-quantity.ts';
import type { Markup } from '../html.ts';
import { bare, grid, textOf, whole } from './sheet-facts.ts';

/** The rows of joints that an operation makes: method, number, distance, size, and whether the coupon held. */
export function jointTable(joints: readonly JointShown[], caption: string): Markup {
  return grid(
    caption,
    [
      'Joined to',
      'Method',
      'Number (factory)',
      'Pitch',
      'To the edge',
      'Size',
      'One bears, at least',
      'Row against the factory’s',
      'Coupon',
      'Done',
    ],
    joints.map(({ joint, facts }) => [
      textOf(facts, 'joint.to') ?? joint.to ?? 'not stated',
      [joint.method ?? 'not stated', joint.form, joint.adhesive?.product, joint.fastener?.product]
        .filter((word) => word !== undefined)
        .join(', '),
      `${joint.count === undefined ? '—' : String(joint.count)} (${joint.factory_count === undefined ? '—' : String(joint.factory_count)})`,
      bare(facts, 'joint.pitch', 'mm'),
      bare(facts, 'joint.edge', 'mm'),
      joint.hole === undefined ? bare(facts, 'joint.button', 'mm') : `hole ${joint.hole}`,
      bearsWords(joint.method, facts),
      ratioWords(facts),
      bare(facts, 'joint.coupon'),
      whole(joint.done),
    ]),
  );
}

/** What one joint bears by the rules that the row is summed up by; of the other methods nothing is computed. */
function bearsWords(method: JointShown['joint']['method'], facts: JointShown['facts']): string {
  if (method === 'resistance spot') {
    const [shear, peel] = [bare(facts, 'joint.spot_shear', 'kN'), bare(facts, 'joint.spot_peel', 'kN')];
    return shear === '—' && peel === '—' ? '—' : `${shear} in shear, ${peel} pulled apart`;
  }
  return method === 'blind rivet' ? bare(facts, 'joint.rivet_bearing', 'kN') : '—';
}

function ratioWords(facts: JointShown['facts']): string {
  const ratio = facts['joint.row_ratio'];
  return ratio?.known === true && typeof ratio.value === 'number'
    ? formatQuantity(ratio.value * 100, '%', 0)
    : '—';
}
