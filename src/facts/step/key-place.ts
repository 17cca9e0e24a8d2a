/** Places in a vehicle where keys are left. English alone is read; what says it otherwise is for a person to read. */
const inside =
  /(?:^|[\s,;])(?:in|inside|on|left in|stays in)(?: (?:the|its|his|her))? (?:vehicle|car|ignition|steering lock|cup ?holder|glove ?box|(?:centre )?console|dash(?:board)?|door pocket|foot ?well|(?:driver['’]s )?seat|boot|tray)(?=$|[\s,;.])/iu;

/** Whether the words for where the key is kept say that it lies in the vehicle. "In the office, away from the car" does not. */
export function keyInVehicle(words: string | undefined): boolean {
  return words !== undefined && inside.test(words);
}
