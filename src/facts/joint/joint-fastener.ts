import { fastenerCoat } from '../../joint/fastener-coat.ts';
import { outsideGrip, rivetBearing } from '../../joint/rivet.ts';
import type { Fact } from '../fact.ts';
import { ofSized } from './joint-stack.ts';
import type { JointStack } from './joint-stack.ts';
import { computed, computedOr, statedOr, unknown } from '../make-fact.ts';
import { quantityOf } from '../quantity-of.ts';
import type { JointSurvey } from '../survey.ts';

type FastenerFact =
  | 'joint.fastener_named'
  | 'joint.fastener_kind'
  | 'joint.fastener_head'
  | 'joint.fastener_edge_factor'
  | 'joint.fastener_far_edge_factor'
  | 'joint.fastener_pitch_factor'
  | 'joint.fastener_sheet_factor'
  | 'joint.stack_outside_grip'
  | 'joint.rivet_bearing'
  | 'joint.fastener_coated'
  | 'joint.fastener_bare'
  | 'joint.fastener_coating'
  | 'joint.old_holes'
  | 'joint.access'
  | 'joint.edges_sealed'
  | 'joint.own_tools';

/** Rivets and screws: which, where, through what, and in whose holes. */
export function fastenerFacts(
  { joint, at }: JointSurvey,
  stack: JointStack,
): Readonly<Record<FastenerFact, Fact>> {
  const place = `${at}/fastener`;
  const { fastener } = joint;
  const coatPlace = fastener?.coating === undefined ? place : `${place}/coating`;
  const coat = fastener?.coating === undefined ? undefined : fastenerCoat(fastener.coating);
  const shank = quantityOf(fastener?.diameter, 'length');
  const byShank = (key: 'edge' | 'pitch'): Fact => {
    const own = quantityOf(joint[key], 'length');
    const isKnown = own !== undefined && shank !== undefined && shank > 0;
    return computedOr(
      isKnown ? own / shank : undefined,
      `${at}/${key}`,
      `The shank diameter, or the ${key === 'edge' ? 'distance to the edge' : 'distance between the joints'}, is not stated.`,
    );
  };
  const [edge, overlap] = [quantityOf(joint.edge, 'length'), quantityOf(joint.overlap, 'length')];
  const left = edge === undefined || overlap === undefined ? 0 : overlap - edge;
  return {
    'joint.fastener_named': computed(fastener?.product !== undefined, place),
    'joint.fastener_kind': statedOr(
      fastener?.kind,
      place,
      'Whether the fastener is made to carry load is not stated.',
    ),
    'joint.fastener_head': statedOr(fastener?.head, place, 'The form of the head is not stated.'),
    'joint.fastener_edge_factor': byShank('edge'),
    // A row outside of its own lap has a finding of its own.
    'joint.fastener_far_edge_factor': computedOr(
      left > 0 && shank !== undefined && shank > 0 ? left / shank : undefined,
      `${at}/edge`,
      'The shank diameter, the distance to the edge or the width of the overlap is not stated, or they contradict each other.',
    ),
    'joint.fastener_pitch_factor': byShank('pitch'),
    'joint.fastener_sheet_factor': computedOr(
      shank === undefined || !stack.governing.ok ? undefined : shank / stack.governing.value,
      `${place}/diameter`,
      'The shank diameter, or a thickness of the stack, is not stated.',
    ),
    'joint.stack_outside_grip': gripFact({ joint, at }, stack),
    'joint.rivet_bearing': bearingFact({ joint, at }, shank, stack),
    'joint.fastener_coated': computed(coat === 'coated', coatPlace),
    'joint.fastener_bare': computed(coat === 'bare', coatPlace),
    'joint.fastener_coating': statedOr(
      fastener?.coating,
      coatPlace,
      'Neither coating nor material of the fastener is stated.',
    ),
    'joint.old_holes': statedOr(
      joint.old_holes,
      `${at}/old_holes`,
      'What becomes of the holes of the factory’s rivets or screws is not stated.',
    ),
    'joint.access': statedOr(
      joint.access,
      `${at}/access`,
      'Whether the joint is reached from both sides is not stated.',
    ),
    'joint.edges_sealed': computed(joint.edges_sealed === true, `${at}/edges_sealed`),
    'joint.own_tools': computed(joint.own_tools === true, `${at}/own_tools`),
  };
}

/** Adhesive is counted with the sheets by who states the range; its layer is thinner than what ranges are told to. */
function gripFact({ joint: { fastener }, at }: JointSurvey, stack: JointStack): Fact {
  const place = `${at}/fastener`;
  const [from, to] = [quantityOf(fastener?.grip_from, 'length'), quantityOf(fastener?.grip_to, 'length')];
  if (from === undefined || to === undefined) {
    return unknown('The range of stack that the fastener holds is not stated.', place);
  }
  if (stack.thicknessesMm === undefined) {
    return unknown('The sheets of the stack, or a thickness of theirs, are not stated.', `${at}/sheets`);
  }
  return ofSized(
    outsideGrip(
      stack.thicknessesMm.reduce((sum, one) => sum + one, 0),
      from,
      to,
    ),
    place,
  );
}

/** Of two sheets; what the rivet itself bears stands on its data sheet. */
function bearingFact({ at }: JointSurvey, shankMm: number | undefined, stack: JointStack): Fact {
  const place = `${at}/fastener`;
  const { thicknessesMm, tensilesMpa } = stack;
  if (shankMm === undefined) return unknown('The shank diameter is not stated.', place);
  if (thicknessesMm?.length !== 2 || tensilesMpa === undefined) {
    return unknown('It is told for two sheets of known thickness and strength.', place);
  }
  return ofSized(
    rivetBearing({
      thinnerMm: Math.min(...thicknessesMm),
      thickerMm: Math.max(...thicknessesMm),
      shankMm,
      tensileMpa: Math.min(...tensilesMpa),
    }),
    place,
    'EN 1993-1-3, blind rivets, from memory.',
  );
}
