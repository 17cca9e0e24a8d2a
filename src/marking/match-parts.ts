import type { Part } from '../generated/plan-types.ts';
import { nameWords } from './bare-name.ts';
import type { KeyPart } from './key.ts';

export interface PartMatch {
  readonly key: KeyPart;
  /** Index of the student's part among the plan's. */
  readonly index: number;
  readonly part: Part;
}

export interface PartMatches {
  readonly matched: readonly PartMatch[];
  /** Parts of the key that the plan does not speak of. */
  readonly missing: readonly KeyPart[];
  /** Parts of the plan that the key does not know, by their place among the plan's. */
  readonly extra: readonly { readonly index: number; readonly part: Part }[];
}

/** What speaks for two parts being one. Practice: chosen so that a name the key knows settles it, and a kind alone with its side does. */
const weight = { sameName: 12, kind: 4, side: 2, words: 5, otherKind: -4 } as const;
const leastScore = 5;

/**
 * Which part of the plan is which of the key: by name, kind and side, whatever its id and its place in the list. Left is never
 * matched with right. Each part is used once, the surest pairs first; of equal pairs the one first in the key, then in the plan.
 */
export function matchParts(keyParts: readonly KeyPart[], parts: readonly Part[]): PartMatches {
  const named = parts.map((part) => nameOfPart(part.name ?? part.id ?? ''));
  const pairs = keyParts
    .flatMap((key, order) => {
      const names = [key.name, ...key.also].map(nameOfPart);
      return parts.map((part, index) => {
        const called = named[index] ?? nameOfPart('');
        return { key, order, part, index, score: likeness(key, names, part, called) };
      });
    })
    .filter(({ score }) => score >= leastScore)
    .sort((a, b) => b.score - a.score || a.order - b.order || a.index - b.index);
  const matched = new Map<KeyPart, PartMatch>();
  const taken = new Set<number>();
  for (const { key, index, part } of pairs) {
    if (matched.has(key) || taken.has(index)) continue;
    matched.set(key, { key, index, part });
    taken.add(index);
  }
  return {
    matched: keyParts.flatMap((key) => matched.get(key) ?? []),
    missing: keyParts.filter((key) => !matched.has(key)),
    extra: parts.map((part, index) => ({ index, part })).filter(({ index }) => !taken.has(index)),
  };
}

interface PartName {
  readonly bare: string;
  readonly side?: string;
  /** Words, sides apart. */
  readonly words: ReadonlySet<string>;
}

function nameOfPart(name: string): PartName {
  const words = nameWords(name);
  const sides = ['left', 'right'].filter((side) => words.includes(side));
  return {
    bare: words.toSorted().join(' '),
    ...(sides.length === 1 && sides[0] !== undefined ? { side: sides[0] } : {}),
    words: new Set(words.filter((word) => word !== 'left' && word !== 'right')),
  };
}

function likeness(key: KeyPart, names: readonly PartName[], part: Part, called: PartName): number {
  const ownSide = part.side ?? called.side;
  const keySide = key.side ?? names[0]?.side;
  if (ownSide !== undefined && keySide !== undefined && ownSide !== keySide) return 0;
  let score = 0;
  if (names.some(({ bare }) => bare === called.bare)) score += weight.sameName;
  else score += weight.words * Math.max(...names.map(({ words }) => sharedWords(words, called.words)));
  if (ownSide !== undefined && ownSide === keySide) score += weight.side;
  if (key.kind !== undefined && part.kind !== undefined)
    score += key.kind === part.kind ? weight.kind : weight.otherKind;
  return score;
}

/** Share of the words of two names that they have in common (Dice's coefficient). */
function sharedWords(a: ReadonlySet<string>, b: ReadonlySet<string>): number {
  if (a.size + b.size === 0) return 0;
  const shared = [...a].filter((word) => b.has(word)).length;
  return (2 * shared) / (a.size + b.size);
}
