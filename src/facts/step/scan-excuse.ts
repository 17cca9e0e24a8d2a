import type { Plan, Scan } from '../../generated/plan-types.ts';
import { saysNone } from './step-draft.ts';

/** Reasons that lie with the shop or the customer and not with the vehicle. */
const ofPeople =
  /\b(?:client|cost|customer|forgot(?:ten)?|insur\w+|money|not (?:asked|needed|necessary|ordered|wanted)|owner|pay|paid|price|too (?:busy|dear|expensive|late)|(?:no|short of|lack of|want of) (?:time|need|tool)|time|unnecessary)\b/i;

/** Reasons that lie with the vehicle: no current, no way to its diagnosis, or none built in. */
const ofVehicle =
  /\b(?:access|answer\w*|battery|burnt?|charge|communicat\w*|connector|connection|crushed|current|dead|destroyed|diagnos\w*|drowned|electric\w*|fire|flood\w*|fuse\w*|harness|ignition|interface|key|live|plug|port|power\w*|respond\w*|short(?:ed)? circuit|socket|supply|torn|volt\w*|wiring|wake)\b/i;

/** What the plan gives as the reason for no scan, where it is none of the vehicle's own. */
export function scanExcuse(notPossible: string | undefined): string | undefined {
  if (notPossible === undefined || saysNone(notPossible)) return undefined;
  const plain = notPossible.trim();
  return ofVehicle.test(plain) && !ofPeople.test(plain) ? undefined : plain;
}

/** No way to a diagnosis was ever built in. What the shop lacks, and what is only dead or torn now, is another matter. */
const neverBuiltIn =
  /\b(?:no|never had|without(?: an?)?) (?:(?:on-board|diagnos\w*) )*(?:access|connector|control units?|diagnos\w*|interface|plug|port|socket)\b/i;
const ofShop =
  /\b(?:bought|dealer|device|gateway|internet|licen[cs]e|locked|longer|login|maker|now|online|our|ours|reader|scanner|shop|software|still|subscription|tester|tool|us|we|workshop|yet)\b/i;

/** The directive 98/69/EC asks for on-board diagnosis in new petrol cars from 2001 (from memory). */
const firstYearOfDiagnosis = 2001;

/**
 * Whether a vehicle cannot be read after the repair either: it is too old for diagnosis, was not read before for such a reason, and
 * is not read now for such a reason. A vehicle that takes no current, or whose plug is torn, is not ready for the road.
 */
export function neverReads({ vehicle, verify }: Pick<Plan, 'vehicle' | 'verify'>): boolean {
  const { scan_before: before, scan_after: after } = verify ?? {};
  const { model_year: year } = vehicle;
  return (
    year !== undefined &&
    year < firstYearOfDiagnosis &&
    [before, after].every((scan) => scan !== undefined && isNeverRead(scan))
  );
}

function isNeverRead({ done, codes, not_possible: reason = '' }: Scan): boolean {
  return (
    done === undefined &&
    (codes ?? []).length === 0 &&
    scanExcuse(reason) === undefined &&
    neverBuiltIn.test(reason) &&
    !ofShop.test(reason)
  );
}
