import type { Calibration } from './step-draft.ts';

/**
 * What the plan itself says of load, tyres and floor that no maker's page asks for. Plain words are known, English alone; a text that
 * hides it better is for a person to read. Common practice, no source.
 */
export function unfitConditions({ kind, conditions }: Calibration): readonly string[] {
  const { load, tyre_pressures: pressures, floor } = conditions ?? {};
  // Whoever drives it in sits inside, and needs a road and no floor.
  const isDriven = kind === 'dynamic' || kind === 'both';
  return [
    ...(load !== undefined && !isDriven && isLoaded(load) ? [`load "${load}"`] : []),
    ...(pressures !== undefined && areUnset(pressures) ? [`tyre pressures "${pressures}"`] : []),
    ...(floor !== undefined && !isDriven && isAskew(floor) ? [`floor "${floor}"`] : []),
  ];
}

const loaded =
  /\b(?:tool ?box(?:es)?|luggage(?! (?:cover|net|blind))|cargo(?! (?:cover|net|blind))|goods|(?:people|persons?|passengers?|driver|technician|somebody|someone|mechanic) (?:inside|aboard|on board|in (?:it|the (?:car|vehicle|seat))))\b/i;
/** What is not there, was taken out, or is there because the page asks for it. */
const unloaded =
  /\b(?:no|none|nobody|nothing|without|empty|emptied|unloaded|removed|taken out|ballast|page|maker)\b/i;

function isLoaded(text: string): boolean {
  return loaded.test(text) && !unloaded.test(text);
}

const unset =
  /\b(?:low|flat|soft|as (?:it )?(?:came|received|found)|not (?:set|checked|measured|to the plate)|unset|unchecked|spare wheel (?:on|fitted))\b/i;

function areUnset(text: string): boolean {
  return unset.test(text) && (notBrought.test(text) || !brought.test(text));
}

/** What was low when the vehicle came, and is no longer. */
const brought = /\b(?:set|brought|raised|filled|pumped|inflated|corrected|adjusted|topped)\b/i;
const notBrought =
  /\b(?:not|never) (?:yet )?(?:set|brought|raised|filled|pumped|inflated|corrected|adjusted|topped)\b/i;

const askew = /\b(?:slop\w*|uneven|tilt\w*|gravel|yard|street|kerb|cobbl\w*|outdoors|outside)\b/i;
const level = /\b(?:level\w*|no slope|without|less than|within|below|under|at most)\b/i;
const notLevel = /\b(?:not (?:quite |really |yet )?level|uneven)\b/i;

function isAskew(text: string): boolean {
  return notLevel.test(text) || (askew.test(text) && !level.test(text));
}
