/** Where something stands in a pack. `line` and `column` are 1-based; columns count UTF-16 code units. */
export interface PackPlace {
  readonly file: string;
  readonly line: number;
  readonly column: number;
}

/** One thing that is wrong in a pack. */
export interface PackFault extends PackPlace {
  /** What is wrong and what was expected. */
  readonly sentence: string;
  /** Known words that come nearest to what was written; already named in the sentence. */
  readonly nearest: readonly string[];
}
