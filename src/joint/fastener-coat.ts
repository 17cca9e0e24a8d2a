/** What the words of a plan say of the surface of a rivet or screw. */
export type FastenerCoat = 'coated' | 'bare' | 'not told';

/** Metals that need no coat beside aluminium, as they are written and stamped. From memory of ISO 3506-1 and of data sheets. */
const needsNone =
  /stainless|inox|rostfrei|\ba[245](?:-\d\d)?\b|\b1\.4\d{3}\b|alumin|\balu\b|\ben ?aw\b|titan|monel/u;

/** Names of coats in several languages, by the metal or the way of coating. */
const coat =
  /zin[ckg]|cinc|\bzn\b|\bznni\b|galvan|galvani[sz]|flake|lamell|nickel|\btin\b|\btinned\b|cadmi|plated|coated|coating|e-?coat|\bktl\b|cataph|cathod|anodi|organic|epoxy|paint|lacquer/u;

/** Words that say that there is none. */
const denied =
  /^\s*(?:none|nil|no|without|not)\b|\b(?:bare|plain|raw|blank|naked|unplated|untreated|unprotected|uncoated|ungalvani[sz]ed|unpainted)\b|\b(?:no|not|without|non)[ -](?:\w+ )?(?:coat|plat|galvan|zinc|treat)/u;

/** Anything that names neither a metal nor a coat is not told: only what is named can be held against the page. */
export function fastenerCoat(text: string): FastenerCoat {
  const words = text.toLowerCase();
  if (needsNone.test(words)) return 'coated';
  if (denied.test(words)) return 'bare';
  return coat.test(words) ? 'coated' : 'not told';
}
