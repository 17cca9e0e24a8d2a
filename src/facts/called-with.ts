import { wordsIn } from './words-in.ts';

/** `Pillar (plain steel)`; without the bracket where the name says it already: `glass`, `foam at Pillar`. */
export function calledWith(name: string, victim: string): string {
  return saysAlready(name, victim) ? name : `${name} (${victim})`;
}

/** Whole words only: a fibreglass flap is not called glass. */
function saysAlready(name: string, victim: string): boolean {
  return ` ${plain(name)} `.includes(` ${plain(victim)} `);
}

function plain(text: string): string {
  return wordsIn(text).join(' ');
}
