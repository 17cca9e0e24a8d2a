/**
 * Words with which a text that should name a step says that the step is not taken. Only plain refusals are known: a text that
 * hides one better is for a person to read.
 */
const refusals: readonly RegExp[] = [
  // "No. 3 bay" is a place; "No, it stays connected" is a refusal.
  /^(?:(?:no|none|never|false|off)\s*(?:\.(?!\s*\d)|(?![.])\p{P}|$)|not\b)/iu,
  // What is to be dead is left live. "Nothing left on" and "left on the bench" say the opposite, or a place.
  /(?<!\b(?:nothing|no|not|never|cannot|must not|does not|do not|may not) (?:\w+ ){0,2})\b(?:stay|stays|staying|remain|remains|remaining|left|leave|leaves|leaving|kept|keep|keeps|keeping)(?: (?:it|them|all|still|permanently|battery|batteries|maintainer|charger))? (?:connected|plugged in|live|energi[sz]ed|powered|switched on|on(?! (?:the|a|its) (?:bench|shelf|floor|trolley|rack|stand|pallet|left|right)\b))\b/iu,
  /(?<!\bif )\b(?:not|never) (?:(?:be|being|been|to be|going to be|get) )?(?:disconnected|isolated|unplugged|de-?energi[sz]ed|discharged|switched off|made safe|proved|proven|verified)\b/iu,
  /\b(?:do|does|did|will|shall)(?: not|n['’]t) (?:disconnect|isolate|unplug|prove|switch off)\b/iu,
  /\bwithout (?:disconnecting|isolating|unplugging|proving|isolation|proof)(?: (?:it|them|anything|(?:(?:the|any|both|either) )?(?:[\w.-]+ ){0,2}batter(?:y|ies)))?(?=\s*(?:$|\p{P}))/iu,
  /(?<!\b(?:not|never|nothing|none|no step)(?: (?:is|are|be|to be|may be|gets))? )\b(?:skipped|omitted|left out|will skip|skip (?:it|this|the)|dispensed with)\b/iu,
  /\b(?:not|un)(?: |-)?necessary$|\bnot (?:needed|required)$/iu,
];

/** Why a text names no step; undefined when it may name one. */
export function deniedStep(text: string): string | undefined {
  const plain = text.trim().replace(/\s+/gu, ' ');
  return refusals.some((refusal) => refusal.test(plain))
    ? `\`${text}\` does not plan the step; a step that is not planned is written \`false\`.`
    : undefined;
}
