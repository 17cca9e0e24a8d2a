import type { Part } from '../generated/plan-types.ts';
import { bareName, nameWords } from './bare-name.ts';
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
  const pairs = keyParts
    .flatMap((key, order) =>
      parts.map((part, index) => ({ key, order, part, index, score: likeness(key, part) })),
    )
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

function likeness(key: KeyPart, part: Part): number {
  const names = [key.name, ...key.also];
  const called = part.name ?? part.id ?? '';
  const ownSide = part.side ?? sideIn(called);
  const keySide = key.side ?? sideIn(key.name);
  if (ownSide !== undefined && keySide !== undefined && ownSide !== keySide) return 0;
  const bare = bareName(called);
  let score = 0;
  if (names.some((name) => bareName(name) === bare)) score += weight.sameName;
  else score += weight.words * Math.max(...names.map((name) => sharedWords(name, called)));
  if (ownSide !== undefined && ownSide === keySide) score += weight.side;
  if (key.kind !== undefined && part.kind !== undefined)
    score += key.kind === part.kind ? weight.kind : weight.otherKind;
  return score;
}

function sideIn(name: string): string | undefined {
  const words = nameWords(name);
  const sides = ['left', 'right'].filter((side) => words.includes(side));
  return sides.length === 1 ? sides[0] : undefined;
}

/** Share of words, sides apart, that two names have in common (Dice's coefficient). */
function sharedWords(one: string, other: string): number {
  const [a, b] = [wordsWithoutSide(one), wordsWithoutSide(other)];
  if (a.size + b.size === 0) return 0;
  const shared = [...a].filter((word) => b.has(word)).length;
  return (2 * shared) / (a.size + b.size);
}

function wordsWithoutSide(name: string): ReadonlySet<string> {
  return new Set(nameWords(name).filter((word) => word !== 'left' && word !== 'right'));
}
