/** Sentences of which there may be thousands. */
export interface FewTold {
  readonly add: (sentence: string) => void;
  /** Says how many were left out. */
  readonly end: () => void;
}

/** Tells the first of many sentences that are alike, and in one more how many others there were. */
export function tellFew(
  most: number,
  tell: (sentence: string) => void,
  rest: (count: number) => string,
): FewTold {
  let count = 0;
  return {
    add: (sentence) => {
      count += 1;
      if (count <= most) tell(sentence);
    },
    end: () => {
      if (count > most) tell(rest(count - most));
    },
  };
}

/** For files of a folder that are no plans. The first are named: a plan without its `format` is among them to whoever wrote it. */
export function tellNoPlans(tell: (sentence: string) => void): FewTold {
  return tellFew(20, tell, (count) =>
    count === 1
      ? '1 more file is not a plan.'
      : `${String(count)} more files are not plans; a file that is named is always judged.`,
  );
}
