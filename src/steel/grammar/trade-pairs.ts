import type { NameForm } from './name-form.ts';
import { entry, ofPair, ofYield } from './name-form.ts';

const families = {
  DP: 'dual_phase',
  CP: 'complex_phase',
  TRIP: 'trip',
  MS: 'martensitic',
  HSLA: 'hsla',
  TWIP: 'twip',
  BH: 'bake_hardening',
  IF: 'high_strength_if',
  MILD: 'mild',
  QP: 'quench_partition',
};

/** Names of the application guidelines of the steel industry (DP350/600: yield, tensile) and of the trade (BH220: yield). */
export const tradePairs: readonly NameForm[] = [
  {
    standards: [],
    form: /^(?<t>DP|CP|TRIP|MS|HSLA|TWIP|BH|IF|MILD|QP)(?<re>\d{3,4})\/(?<rm>\d{3,4})$/,
    read: ({ t, re, rm }) => ofPair(entry(families, t), re, rm, 'the yield comes first, as in DP350/600'),
  },
  {
    standards: [],
    form: /^(?<t>BH|HSLA|IF)(?<re>\d{3})$/,
    read: ({ t, re }) => ofYield(entry(families, t), re),
  },
];
