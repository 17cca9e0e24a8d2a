import { margin } from '../../joint/margin.ts';
import type { Fact } from '../fact.ts';
import { hasAdhesive } from './joint-methods.ts';
import { computed, computedOr, statedOr } from '../make-fact.ts';
import { dayOf, quantityOf, whenOf } from '../quantity-of.ts';
import type { JointSurvey } from '../survey.ts';

type AdhesiveFact =
  | 'joint.has_adhesive'
  | 'joint.factory_adhesive'
  | 'joint.adhesive_open'
  | 'joint.adhesive_unrecorded'
  | 'joint.adhesive_days_over'
  | 'joint.open_time_over';

export interface JoiningDay {
  /** Of the operation, where the joint bears no day of its own. */
  readonly done: string | undefined;
  readonly asOfDay: number;
}

/** Adhesive in a joint: what is said of it and whether it was still good. */
export function adhesiveFacts(
  { joint, at }: JointSurvey,
  { done, asOfDay }: JoiningDay,
): Readonly<Record<AdhesiveFact, Fact>> {
  const place = `${at}/adhesive`;
  const { adhesive, method } = joint;
  const has = adhesive !== undefined || (method !== undefined && hasAdhesive(method));
  const missing = (keys: readonly ('product' | 'preparation' | 'cure' | 'lot' | 'expires')[]): Fact => {
    const open = keys.filter((key) => adhesive?.[key] === undefined).map((key) => words[key]);
    const text = has && open.length > 0 ? open.join(', ') : undefined;
    return computedOr(text, place, 'There is no adhesive, or what is asked of it is stated.');
  };
  const expires = dayOf(adhesive?.expires);
  const joined = whenOf(joint.done ?? done)?.day ?? asOfDay;
  const [openTime, closed] = [
    quantityOf(adhesive?.open_time, 'time'),
    quantityOf(adhesive?.closed_after, 'time'),
  ];
  return {
    'joint.has_adhesive': computed(has, place),
    'joint.factory_adhesive': statedOr(
      joint.factory_adhesive,
      `${at}/factory_adhesive`,
      'Whether the factory joint held adhesive is not stated.',
    ),
    'joint.adhesive_open': missing(['product', 'preparation', 'cure']),
    'joint.adhesive_unrecorded': missing(['lot', 'expires']),
    'joint.adhesive_days_over': computedOr(
      expires === undefined ? undefined : joined - expires,
      `${place}/expires`,
      'The last day of the adhesive is not stated.',
    ),
    'joint.open_time_over': computedOr(
      openTime === undefined || closed === undefined ? undefined : margin(closed, openTime),
      place,
      'The open time of the adhesive, or when the joint is closed, is not stated.',
    ),
  };
}

const words = {
  product: 'product',
  preparation: 'preparation of the faces',
  cure: 'cure',
  lot: 'lot',
  expires: 'last day of use',
} as const;
