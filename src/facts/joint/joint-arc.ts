import { meltWidthMm } from '../../joint/melt-width.ts';
import { leastCarbonDioxide, sharesOff } from '../../joint/gas-shares.ts';
import { gasKind } from '../../joint/shielding-gas.ts';
import type { FactNames } from '../../generated/fact-names.ts';
import type { Fact } from '../fact.ts';
import { heatPerThickness } from '../heat/heat-sources.ts';
import { computed, computedOr, statedOr, unknown } from '../make-fact.ts';
import type { JointMatter } from './joint-matter.ts';
import { isArc } from './joint-methods.ts';

type ArcFact = Extract<
  FactNames['joint'],
  `joint.${'gas' | 'gas_kind' | 'gas_shares_off' | 'carbon_dioxide_percent' | 'melt_width'}`
>;

/** What the arc of a joint does by its settings: gas, and how wide a strip it would melt. */
export function arcFacts(matter: JointMatter): Readonly<Record<ArcFact, Fact>> {
  const { joint, at } = matter.one;
  const { gas } = joint;
  return {
    'joint.gas': statedOr(gas, `${at}/gas`, 'No gas is stated.'),
    'joint.gas_kind': computedOr(
      gas === undefined ? undefined : gasKind(gas),
      `${at}/gas`,
      gas === undefined
        ? 'No gas is stated.'
        : `What gas "${gas}" is, is not known; write its group of ISO 14175.`,
    ),
    'joint.gas_shares_off': computedOr(
      gas === undefined ? undefined : sharesOff(gas),
      `${at}/gas`,
      'The shares of the gas fit its group of ISO 14175, or are not stated.',
    ),
    'joint.carbon_dioxide_percent': computedOr(
      gas === undefined ? undefined : leastCarbonDioxide(gas),
      `${at}/gas`,
      'How much carbon dioxide the gas holds is not told.',
    ),
    'joint.melt_width': meltWidth(matter),
  };
}

/** Of steel; aluminium loses its heat so fast that the formula tells nothing of the pool. */
function meltWidth({ stack, one }: JointMatter): Fact {
  const place = `${one.at}/settings`;
  const { method } = one.joint;
  if (method === undefined || !isArc(method) || method === 'plug weld' || method === 'laser seam') {
    return unknown('It is no seam of an arc.', place);
  }
  if (stack.some((sheet) => sheet?.material.class === 'aluminium')) {
    return unknown('It is told of steel alone.', place);
  }
  const input = heatPerThickness(one.joint, one.thinnestMm);
  return 'silent' in input
    ? unknown(input.silent, place)
    : computed(meltWidthMm(input.joulePerMm2), place, 'Thin sheet, no loss to air.');
}
