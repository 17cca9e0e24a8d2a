import type { Dimension } from '../quantity/dimension.ts';
import type { Category } from './category.ts';

interface AskedNumber {
  readonly category: Category;
  /** `count` is a bare number. */
  readonly measure: Dimension | 'count';
}

interface AskedWord {
  readonly category: Category;
  /** Where the plan's schema keeps the words: a definition, and a key in it. */
  readonly words: readonly [definition: string, ...keys: readonly string[]];
}

/** What a key can ask of a part, and for which of the marks it counts. */
export const askedNames = {
  thickness: { category: 'completeness', measure: 'length' },
  class: { category: 'completeness', words: ['strength_class'] },
  coating: { category: 'completeness', words: ['part', 'coating'] },
  damage: { category: 'completeness', words: ['damage_kind'] },
  'heat source': { category: 'heat', words: ['operation', 'source'] },
  'heat temperature': { category: 'heat', measure: 'temperature' },
  'heat hold': { category: 'heat', measure: 'time' },
  'heat times': { category: 'heat', measure: 'count' },
  'clear within': { category: 'heat', measure: 'length' },
  'joint method': { category: 'joints', words: ['joint_method'] },
  'joint form': { category: 'joints', words: ['joint', 'form'] },
  'joint count': { category: 'joints', measure: 'count' },
  'joint factory count': { category: 'joints', measure: 'count' },
  'joint nugget': { category: 'joints', measure: 'length' },
  'joint pitch': { category: 'joints', measure: 'length' },
  'joint edge': { category: 'joints', measure: 'length' },
  'joint hole': { category: 'joints', measure: 'length' },
} as const satisfies Readonly<Record<string, AskedNumber | AskedWord>>;

export type AskedName = keyof typeof askedNames;

export function isAskedName(name: string): name is AskedName {
  return Object.hasOwn(askedNames, name);
}

export function askedOf(name: AskedName): AskedNumber | AskedWord {
  return askedNames[name];
}
