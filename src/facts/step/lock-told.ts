import { saidInClause } from '../../plan/said-in-clause.ts';
import { saysNone } from './step-draft.ts';

/** What keeps a circuit cut off: a lock or tag at the place where it is cut. */
const held = /\b(?:pad)?lock|\btag\b|\btagged\b|\bseal(?:ed)?\b|\bcap(?:ped|s)?\b|\bhasp\b/i;
/** The plug kept where nobody else comes at it: shut away, or on a person. */
const kept =
  /\b(?:cabinet|locker|safe|strong ?box|pocket|carried|carries|key (?:with|held by)|on (?:his|her|my|the|their) (?:person|belt|body)|kept by|held by|in the hands? of)\b/i;
/** A lock that is named by its number alone: "K-7", "No. 12". */
const numbered = /^(?:no\.? ?|lock ?)?[a-z]{0,3}[- ]?\d+$/i;
const paper = /\b(?:note|notice|sign|sticker|paper|word|said|told|cone)\b/i;
const lyingOpen =
  /(?:^|[\s,;])(?:on|under|beside|next to|near|in|inside|into|behind|by)(?: (?:the|a|its|his|her))? (?:\S+ ){0,2}?(?:bench|workbench|floor|trolley|bin|yard|vehicle|car|seats?|boot|dash(?:board)?|console|foot ?well|glove ?box|roof|bonnet|shelf|table|door pocket|cabin|tray)(?=$|[\s,;.])/i;
/** A tag that says of itself that nothing holds beside it. */
const tagAlone =
  /\b(?:tags? (?:only|alone)|(?:only|just) (?:a |the )?tags?|no (?:pad)?lock|without (?:a )?(?:pad)?lock)\b/i;
const shutAway = /\blocked (?:in|into|away|cabinet|box|drawer)|cabinet|locker\b|\bsafe\b/i;
const lies = /\b(?:laid|lying|lies|left|put)\b/i;

/**
 * What is wanting in the words for how an isolation is held; undefined where they tell it. What lies on a seat anybody puts back, and
 * words that are not known are for a person to answer. English alone is read.
 */
export function lockWanting(lock: string | undefined): string | undefined {
  const text = (lock ?? '').trim();
  if (text === '' || saysNone(text)) return 'lock and tag';
  const said = (form: RegExp): boolean => saidInClause(text, form) !== undefined;
  // A lock on the plug in the boot holds; a plug that was laid there does not.
  if (lyingOpen.test(text) && !said(shutAway) && (lies.test(text) || !/\b(?:pad)?lock\b/i.test(text)))
    return `lock and tag, for what lies open (“${text}”) anybody puts back`;
  if (tagAlone.test(text) && !said(kept) && !said(shutAway))
    return `a lock, or the plug shut away, for a tag alone (“${text}”) keeps nobody from putting it back`;
  if (said(held) || said(kept) || numbered.test(text)) return undefined;
  return paper.test(text)
    ? 'lock and tag'
    : `who or what keeps it from being put back, which “${text}” does not tell`;
}
