/**
 * The first word of a text, in small letters. A long pattern takes a millisecond to compile at each start; by the first word nearly every
 * text of a plan is told apart before that.
 */
export function firstWord(text: string): string {
  return /^[a-z]*/i.exec(text.trimStart())?.[0].toLowerCase() ?? '';
}
