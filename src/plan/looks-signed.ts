import { keySynonyms } from './explain-entry.ts';
import { nearestWords } from './nearest-word.ts';
import type { LocatedNode } from './node.ts';

/** Whether a plan bears a signature, or what may have been meant for one. */
export function looksSigned(root: LocatedNode): boolean {
  if (root.kind !== 'map') return false;
  return [...root.entries.values()].some(({ key, value }) => {
    const isBlank = value.kind === 'scalar' && value.value === null;
    return !isBlank && nearestWords(key, ['sign_off'], keySynonyms).includes('sign_off');
  });
}
