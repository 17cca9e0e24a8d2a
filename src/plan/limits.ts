/**
 * How much of a file is read before it is refused. A full plan (40 parts, 200 joints, 120 measured points) runs to about
 * 5,000 lines; every limit leaves room for four times that, and none can be reached by writing a repair down.
 */
export const limits = {
  /** 20,000 long lines of 200 bytes. Beyond that a file is something else, and reading it costs seconds. */
  bytes: 4 * 1024 * 1024,

  /**
   * Nested entries. A plan nests about ten deep. The parser composes by recursion, and on Node 20 two documents of some
   * 900 brackets end the process itself, past any catch; so depth is counted on the tokens, before composing.
   */
  depth: 40,

  /**
   * Pieces that the text falls into (words, colons, blanks, line ends). 20,000 lines give about 320,000, and twice that
   * when every entry is written in braces. Without this, 4 MiB of brackets and commas, each of them an error, would take
   * gigabytes of memory.
   */
  pieces: 800_000,

  /** Keys in one entry. The format knows fewer than fifty for any; a thousand is a table that has lost its way. */
  keysPerEntry: 1_000,

  /** Faults listed of one file. One slip in YAML sets off a row of others that say nothing new. */
  faultsListed: 5,
} as const;
