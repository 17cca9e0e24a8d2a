import type { FactNames } from '../generated/fact-names.ts';
import type { Fact } from './fact.ts';
import { computedOr } from './make-fact.ts';
import type { Survey } from './survey.ts';
import { troubleOnArrival } from './trouble-on-arrival.ts';

/** The state in which the vehicle came: what is not written of it, and what of it nobody answers for. */
export function asReceivedFacts(
  survey: Survey,
): Readonly<
  Record<Extract<FactNames['plan'], `plan.${'as_received_missing' | 'trouble_on_arrival'}`>, Fact>
> {
  const { mileage, warning_lamps: lamps, works } = survey.plan.job?.as_received ?? {};
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
    'plan.trouble_on_arrival': computedOr(
      troubleOnArrival(survey),
      '/job/as_received/works',
      'Nothing is said not to work in words that are known, or a part or a code answers for it.',
    ),
  };
}
