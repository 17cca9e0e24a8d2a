import type { FactNames } from '../generated/fact-names.ts';
import type { Fact } from './fact.ts';
import { computedOr } from './make-fact.ts';
import type { Survey } from './survey.ts';

/** The state in which the vehicle came, as far as it is not written. */
export function asReceivedFacts({
  plan,
}: Survey): Readonly<Record<Extract<FactNames['plan'], 'plan.as_received_missing'>, Fact>> {
  const { mileage, warning_lamps: lamps, works } = plan.job?.as_received ?? {};
  const missing = [
    ...(mileage === undefined ? ['mileage'] : []),
    ...(lamps === undefined ? ['warning lamps'] : []),
    ...(works === undefined ? ['what works'] : []),
  ];
  return {
    'plan.as_received_missing': computedOr(
      missing.join(', ') || undefined,
      '/job/as_received',
      'Nothing is missing.',
    ),
  };
}
