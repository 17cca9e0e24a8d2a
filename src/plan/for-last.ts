/**
 * Remembers what was made for the last one asked, a plan as a rule. What a `WeakMap` holds outlives its plan until all of the heap is
 * swept, and each plan is large.
 */
export function forLast<Key extends object, Made>(make: (key: Key) => Made): (key: Key) => Made {
  let last: { readonly key: Key; readonly made: Made } | undefined;
  return (key) => {
    if (last?.key !== key) last = { key, made: make(key) };
    return last.made;
  };
}
