import type { Range } from './node.ts';

/** Why a file cannot be judged: one plain sentence, and the place where there is one. */
export interface ReadFault {
  readonly sentence: string;
  readonly range?: Range;
}
