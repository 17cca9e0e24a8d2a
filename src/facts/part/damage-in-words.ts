import type { Part } from '../../generated/plan-types.ts';

/** Damage that is never pulled straight, as it is spoken. */
const spoken: readonly (readonly [kind: 'kink' | 'tear' | 'crack', words: RegExp])[] = [
  ['kink', /\b(?:kink(?:s|ed)?|creas(?:e|es|ed)|fold(?:s|ed)?)\b/iu],
  ['tear', /\b(?:torn|tears?|ripped)\b/iu],
  ['crack', /\bcrack(?:s|ed)?\b/iu],
];

const denial = /\b(?:no|not|without|nor|neither|never|free of)\b[^,;.]*$/iu;

/** The word by which the text of a damage tells of a kink, tear or crack that its kinds do not list; undefined where it does not. */
export function damageInWords({ damage }: Part, kinds: readonly string[]): string | undefined {
  const text = damage?.extent;
  if (text === undefined) return undefined;
  for (const [kind, words] of spoken) {
    const isListed = kinds.includes(kind) || (kind === 'kink' && kinds.includes('crease'));
    const found = isListed ? null : words.exec(text);
    if (found !== null && !denial.test(text.slice(0, found.index))) return found[0];
  }
  return undefined;
}
