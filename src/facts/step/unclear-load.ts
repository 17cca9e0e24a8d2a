import type { Calibration } from './step-draft.ts';

/**
 * The load of a calibration, where a part of it says neither that nothing is there nor what the maker's page asks for: "tool chest in
 * the boot, tank full". Plain words are known, English alone; what is written otherwise is asked for. Common practice, no source.
 */
export function unclearLoad({ kind, conditions }: Calibration): string | undefined {
  const load = conditions?.load;
  // Whoever drives it in sits inside.
  if (load === undefined || kind === 'dynamic' || kind === 'both') return undefined;
  const clauses = load.split(/[,;]|\.(?!\d)/);
  const isSaid = clauses.every((clause, index) => isClear(clause) || byPage.test(clauses[index + 1] ?? ''));
  return isSaid ? undefined : load;
}

/** "75 kg on the driver's seat, as the page says": a clause that says so of the one before it. */
const byPage = /^\s*(?:as|by|like) (?:the |their |its )?(?:maker\S* )?(?:page|procedure|manual)\b/i;

/** What is taken out at the end of its clause is all that the clause names. */
const takenOut = /\b(?:removed|taken out|cleared|unloaded|emptied|outside)\s*$/i;
/** What goes on from "nothing in the boot and". */
const goesOn = /^(?:in|on|at|inside|aboard|under|behind|beside|or|nor)\b/i;

function isClear(clause: string): boolean {
  const text = clause.trim();
  if (text === '' || takenOut.test(text)) return true;
  return text
    .split(/\s+(?:and|with|but|plus|except(?: for)?|apart from|save for)\s+|\s*[&+]\s*/i)
    .every(
      (piece, index) => saysNothingThere.test(piece) || isAsked(piece) || (index > 0 && goesOn.test(piece)),
    );
}

const saysNothingThere =
  /\b(?:no|none|nobody|nothing|without|empty|emptied|unloaded|unladen|unoccupied|not (?:loaded|occupied)|removed|taken out|outside|0 kg|kerb weight)\b/i;
const isWithPage =
  /\b(?:page|maker\S*|procedure|manual|specified|specification|as (?:asked|required|prescribed)|ballast)\b/i;
/** Tank, charge and fluids are no load; what belongs to the vehicle may stay in it. */
const belongs =
  /\b(?:tank|fuel|fuelled|petrol|diesel|charged?|fluids?|n\/a|standard|series|as delivered|ready to drive|(?:luggage|cargo|load) (?:cover|net|blind)|parcel shelf|spare wheel|warning triangle|first-aid kit|(?:floor )?mats|on-board tools?|(?:doors?|bonnet|boot|tailgate) (?:shut|closed)|ignition (?:on|off)|engine (?:on|off|running))\b/i;
/** Of such things in number, or apart from the vehicle's own: a fuel can in the boot. */
const brings = /\b(?:\d+ ?(?:kg|lbs?)|cans?|canisters?|drums?|chest|box(?:es)?|parts)\b/i;

function isAsked(piece: string): boolean {
  return isWithPage.test(piece) || (belongs.test(piece) && !brings.test(piece));
}
