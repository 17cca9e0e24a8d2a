import { firstWord } from './first-word.ts';

/**
 * Words with which a text that should name a step says that the step is not taken. Only plain refusals are known: a text that
 * hides one better is for a person to read.
 */
interface Refusal {
  /** Each match holds one of these, in small letters. To compile a form takes half a millisecond, to look for a word nothing. */
  readonly cues: readonly string[];
  /** And one of these. */
  readonly and?: readonly string[];
  /** In the place of both, the first word. */
  readonly begins?: readonly string[];
  readonly form: RegExp;
}

const refusals: readonly Refusal[] = [
  // "No. 3 bay" is a place; "No, it stays connected" is a refusal.
  {
    begins: ['no', 'none', 'never', 'false', 'off', 'not'],
    cues: [],
    form: /^(?:(?:no|none|never|false|off)\s*(?:\.(?!\s*\d)|(?![.])\p{P}|$)|not\b)/iu,
  },
  // What hangs on a condition is not planned.
  {
    begins: ['if', 'unless', 'only', 'maybe', 'perhaps', 'possibly', 'as', 'where', 'when', 'in'],
    cues: [],
    form: /^(?:(?:only )?if|unless|maybe|perhaps|possibly|(?:only |as |where |when )(?:and when )?(?:needed|necessary|required|asked|requested)|in case)\b/i,
  },
  // What is to be dead is left live. "Nothing left on" and "left on the bench" say the opposite, or a place.
  {
    cues: ['stay', 'remain', 'left', 'leav', 'kept', 'keep'],
    and: ['connected', 'plugged in', 'live', 'energi', 'powered', 'switched on', ' on'],
    form: /(?<!\b(?:nothing|no|not|never|cannot|must not|does not|do not|may not) (?:\w+ ){0,2})\b(?:stay|stays|staying|remain|remains|remaining|left|leave|leaves|leaving|kept|keep|keeps|keeping)(?: (?:it|them|all|still|permanently|battery|batteries|maintainer|charger))? (?:connected|plugged in|live|energi[sz]ed|powered|switched on|on(?! (?:the|a|its) (?:bench|shelf|floor|trolley|rack|stand|pallet|left|right)\b))\b/i,
  },
  {
    cues: ['not', 'never'],
    form: /(?<!\bif )\b(?:not|never) (?:(?:be|being|been|to be|going to be|get) )?(?:disconnected|isolated|unplugged|de-?energi[sz]ed|discharged|switched off|made safe|proved|proven|verified)\b/i,
  },
  {
    cues: [' not', "n't", 'n’t'],
    form: /\b(?:do|does|did|will|shall)(?: not|n['’]t) (?:disconnect|isolate|unplug|prove|switch off)\b/iu,
  },
  {
    cues: ['without'],
    form: /\bwithout (?:disconnecting|isolating|unplugging|proving|isolation|proof)(?: (?:it|them|anything|(?:(?:the|any|both|either) )?(?:[\w.-]+ ){0,2}batter(?:y|ies)))?(?=\s*(?:$|\p{P}))/iu,
  },
  {
    cues: ['skip', 'omitted', 'left', 'dispensed'],
    form: /(?<!\b(?:not|never|nothing|none|no step)(?: (?:is|are|be|to be|may be|gets))? )\b(?:skipped|omitted|left out|will skip|skip (?:it|this|the)|dispensed with)\b/i,
  },
  {
    cues: ['necessary', 'needed', 'required'],
    form: /\b(?:not|un)(?: |-)?necessary$|\bnot (?:needed|required)$/i,
  },
];

/** Why a text names no step; undefined when it may name one. */
export function deniedStep(text: string): string | undefined {
  const plain = text.trim().replace(/\s+/gu, ' ');
  const small = plain.toLowerCase();
  const first = firstWord(small);
  const holds = (words: readonly string[]): boolean => words.some((word) => small.includes(word));
  const mayRefuse = ({ cues, and, begins }: Refusal): boolean =>
    begins === undefined ? holds(cues) && (and === undefined || holds(and)) : begins.includes(first);
  return refusals.some((refusal) => mayRefuse(refusal) && refusal.form.test(plain))
    ? `\`${text}\` does not plan the step; a step that is not planned is written \`false\`.`
    : undefined;
}
