import type { Category } from './category.ts';

/** One thing that points are given for, and what is to be said of it. */
export interface Mark {
  readonly category: Category;
  /** What the student calls the part; absent for what concerns the whole plan. */
  readonly part?: string;
  readonly points: number;
  readonly of: number;
  /**
   * The same for every student who made the same mistake, so that a class can be counted; absent where nothing is wrong.
   * It names the key's part, never a student's word.
   */
  readonly mistake?: string;
  /** What is to be said: one or two sentences to the student. Absent where nothing is wrong. */
  readonly said?: string;
  readonly why?: string;
  readonly lookAt?: string;
  /** The key's answer; for --reveal alone. */
  readonly answer?: string;
}

/** Marks of one student. */
export interface PlanMarks {
  readonly name: string;
  readonly file: string;
  /** False for a plan that could not be judged: it has no marks, only the reasons. */
  readonly judged: boolean;
  readonly points: number;
  readonly of: number;
  readonly passed: boolean;
  /** True when something stops the plan, or it plans what the key forbids: no points make up for it. */
  readonly unsafe: boolean;
  readonly marks: readonly Mark[];
  /** Parts of the plan that were not recognised, by the student's name for them. */
  readonly unrecognised: readonly string[];
  /** Parts of the key that were not found in the plan. */
  readonly notFound: readonly string[];
  readonly reasons: readonly string[];
}
