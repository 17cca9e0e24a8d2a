import type { Part } from '../../generated/plan-types.ts';
import { sideOfWords } from '../part/side-named.ts';

/** English words for metal that has moved or torn. What is said of sealer, paint or a gap is of no metal by itself. */
const moved =
  /\b(?:buckl\w*|bent|kink\w*|creas\w*|crack\w*|torn|tear|moved|shifted|dent\w*|deform\w*|split|rippl\w*|wrinkl\w*|twisted|crushed|folded|pushed)\b/i;
const ofSealer = /\b(?:sealer|sealant|paint|lacquer|undercoat|wax|gaps?|trim|carpet)\b/i;
const denied = /\b(?:no|not|none|nothing|without|never|sound|unhurt|intact|straightened|even again)\b/i;

/** The clause of what was found away from the impact that tells of damage to a part; undefined where none names it. */
export function clauseOfDamage(found: string, { name, kind, side }: Part): string | undefined {
  const words = new Set([core(name), kind].filter((word) => word !== undefined && word !== ''));
  return found
    .split(/[,;.:]/)
    .map((clause) => clause.trim())
    .find((clause) => {
      if (!moved.test(clause) || denied.test(clause) || ofSealer.test(clause)) return false;
      // What is under, beside or behind it is only where it was found: "floor buckled under the left front seat".
      const subject =
        clause.split(/\b(?:under|below|beneath|beside|behind|near|at|by|above|over|next to)\b/i)[0] ?? '';
      const said = sideOfWords(subject);
      const isSide = said === undefined || (side !== 'left' && side !== 'right') || said === side;
      return isSide && [...words].some((word) => holdsWord(subject, word ?? ''));
    });
}

/** The name without its side: "Front rail, left" is a front rail. */
function core(name: string | undefined): string {
  return (name ?? '')
    .toLowerCase()
    .replace(/\b(?:left|right)\b/g, '')
    .replace(/[,\s]+/g, ' ')
    .trim();
}

function holdsWord(text: string, word: string): boolean {
  const at = text.toLowerCase().indexOf(word);
  if (at === -1) return false;
  const isLetter = (one: string | undefined): boolean => one !== undefined && /[a-z]/i.test(one);
  return !isLetter(text[at - 1]) && !isLetter(text[at + word.length]);
}
