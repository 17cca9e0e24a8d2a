import type { Material } from '../material.ts';

/** A text that states a strength, or a hardness that stands for one, in place of a grade. */
export type StrengthReading =
  | {
      readonly mpa: number;
      readonly readings: readonly Material[];
      readonly ambiguity: string;
      readonly assumed: readonly string[];
    }
  | { readonly reason: string };
