import type { FaultList } from '../packs/reading/fault-list.ts';
import { planWords } from '../plan/plan-words.ts';

/** Tells of a word that the plan does not have there. */
export function checkWord(
  word: string,
  [definition, ...keys]: readonly [string, ...string[]],
  pointer: string,
  list: FaultList,
): void {
  const { known } = planWords(definition, ...keys);
  if (known.includes(word)) return;
  list.at(pointer, `\`${word}\` is not a word that a plan has here.`, list.nearest(word, known));
}
