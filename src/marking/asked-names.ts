import type { Dimension } from '../quantity/dimension.ts';
import type { Category } from './category.ts';

interface AskedNumber {
  /** In a sentence: "the nugget diameter is not right". */
  readonly called: string;
  readonly category: Category;
  /** `count` is a bare number. */
  readonly measure: Dimension | 'count';
}

interface AskedWord {
  readonly called: string;
  readonly category: Category;
  /** Where the plan's schema keeps the words: a definition, and a key in it. */
  readonly words: readonly [definition: string, ...keys: readonly string[]];
}

/** What a key can ask of a part, and for which of the marks it counts. */
export const askedNames = {
  thickness: { called: 'thickness', category: 'completeness', measure: 'length' },
  class: { called: 'strength class', category: 'completeness', words: ['strength_class'] },
  coating: { called: 'coating', category: 'completeness', words: ['part', 'coating'] },
  damage: { called: 'kind of damage', category: 'completeness', words: ['damage_kind'] },
  'heat source': { called: 'source of heat', category: 'heat', words: ['operation', 'source'] },
  'heat temperature': { called: 'temperature of the heat', category: 'heat', measure: 'temperature' },
  'heat hold': { called: 'time at heat', category: 'heat', measure: 'time' },
  'heat times': { called: 'number of heats', category: 'heat', measure: 'count' },
  'clear within': { called: 'distance that is kept clear', category: 'heat', measure: 'length' },
  'joint method': { called: 'joining method', category: 'joints', words: ['joint_method'] },
  'joint form': { called: 'form of the joint', category: 'joints', words: ['joint', 'form'] },
  'joint count': { called: 'number of joints', category: 'joints', measure: 'count' },
  'joint factory count': { called: 'number of factory joints', category: 'joints', measure: 'count' },
  'joint nugget': { called: 'nugget diameter', category: 'joints', measure: 'length' },
  'joint pitch': { called: 'pitch of the joints', category: 'joints', measure: 'length' },
  'joint edge': { called: 'distance to the edge', category: 'joints', measure: 'length' },
  'joint hole': { called: 'hole diameter', category: 'joints', measure: 'length' },
} as const satisfies Readonly<Record<string, AskedNumber | AskedWord>>;

export type AskedName = keyof typeof askedNames;

export function isAskedName(name: string): name is AskedName {
  return Object.hasOwn(askedNames, name);
}

export function askedOf(name: AskedName): AskedNumber | AskedWord {
  return askedNames[name];
}
