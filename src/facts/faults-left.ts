import { admitsNotLooked } from '../plan/not-looked.ts';
import type { Fact } from './fact.ts';
import { computed } from './make-fact.ts';
import { saysNothingLeft } from './refusals.ts';

/**
 * What a text says of faults that are left: `none`, `left`, or `unclear` where the words are neither. Only a text that says none and
 * nothing else is none: "no isolation" begins like "no faults".
 */
export function faultsLeft(text: string | undefined, at: string): Fact {
  if (text === undefined) return computed('not stated', at);
  const plain = text.trim();
  if (admitsNotLooked(plain)) return computed('unclear', at);
  if (saysNothingLeft(plain)) return computed('none', at);
  const denied = /\b(?:no|not|none|without|never)\b/i;
  const present =
    /\b(?:active|present|permanent|(?:isolation|insulation) (?:fault|warning)|(?:lamp|light|warning|telltale) (?:is |stays )?(?:on|lit))\b/i;
  return computed(present.test(plain) && !denied.test(plain) ? 'left' : 'unclear', at);
}
