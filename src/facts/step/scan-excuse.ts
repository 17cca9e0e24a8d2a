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
