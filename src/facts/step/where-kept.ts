// Words for where a thing is kept while the work lasts. English alone is read; what says it otherwise is for a person to read.

const inVehicle =
  /(?:^|[\s,;])(?:in|inside|on|left in|stays in)(?: (?:the|its|his|her))? (?:vehicle|car|ignition|steering lock|cup ?holder|glove ?box|(?:centre )?console|dash(?:board)?|door pocket|foot ?well|(?:driver['’]s )?seat|boot|tray)(?=$|[\s,;.])/iu;

/** Whether the words for where the key is kept say that it lies in the vehicle. "In the office, away from the car" does not. */
export function keyInVehicle(words: string | undefined): boolean {
  return words !== undefined && inVehicle.test(words);
}

const open =
  /(?:^|[\s,;])(?:on|under|beside|next to|near|in|by)(?: (?:the|a|its))? (?:\S+ )?(?:(?:work)?bench|shel(?:f|ves)|rack|pallet|floor|trolley|welder|booth|oven|heater|boot|vehicle|car|seat|bin|yard)(?=$|[\s,;.])/i;
const locked = /lock|cabinet|cage|safe\b|magazine|strong ?box/i;
/** A bag that fires against what it lies on throws its own housing; no lock helps against that. */
const faceDown =
  /(?<!\b(?:not|never|no|nothing|none)\b.{0,20})(?:\b(?:cushions?|covers?|faces?|bags?|trim|padded)(?: sides?)?(?: lie| lies| are| is)? (?:face )?down(?:wards?)?\b|\b(?:face|upside)[- ]down\b)/i;

/** Whether live units are said to lie where anybody and any heat gets at them, on the bench beside the welder; or on their face. */
export function liesOpen(words: string | undefined): boolean {
  return (
    words !== undefined &&
    ((!locked.test(words) && open.test(words)) || (/down/i.test(words) && faceDown.test(words)))
  );
}
